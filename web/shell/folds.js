// Remembers on this device which folds lie open, and leads from a button to a
// place of the page, from a fold also back. No worksheet and no link knows of it.
(function () {
  const KEPT = 'ampwright.folds';
  // What is drawn later comes and goes, and is not remembered.
  const folds = new Set(document.querySelectorAll('details[id]'));
  try {
    for (const id of (localStorage.getItem(KEPT) ?? '').split(' ')) {
      const fold = id && document.getElementById(id);
      if (folds.has(fold)) fold.open = true;
    }
  } catch (blocked) {
    // Storage is refused here: every fold begins closed.
  }
  document.addEventListener(
    'toggle',
    ({ target }) => {
      if (!folds.has(target)) return;
      const open = [...folds].filter((fold) => fold.open).map((fold) => fold.id);
      try {
        if (open.length) localStorage.setItem(KEPT, open.join(' '));
        else localStorage.removeItem(KEPT);
      } catch (blocked) {
        return;
      }
    },
    true,
  );

  // A page asked for again lies where it lay. The browser cannot see to that:
  // what is out of sight has no height yet.
  const PLACE = 'ampwright.place';
  const marks = [...document.querySelectorAll('h2[id], details[id]')];
  addEventListener('pagehide', () => {
    const above = marks.filter((mark) => mark.offsetParent);
    const tops = above.map((mark) => Math.abs(mark.getBoundingClientRect().top - 150));
    const nearest = above[tops.indexOf(Math.min(...tops))];
    try {
      const top = Math.round(nearest?.getBoundingClientRect().top);
      if (scrollY) sessionStorage.setItem(PLACE, `${nearest.id} ${top}`);
      else sessionStorage.removeItem(PLACE);
    } catch (blocked) {
      return;
    }
  });
  try {
    const [id, top] = (sessionStorage.getItem(PLACE) ?? '').split(' ');
    const mark = id && document.getElementById(id);
    const again = performance.getEntriesByType('navigation')[0]?.type !== 'navigate';
    if (mark && again) {
      history.scrollRestoration = 'manual';
      // Until the worksheet has started and what it draws has its height.
      let looks = 20;
      const stop = () => (looks = 0);
      for (const touch of ['pointerdown', 'wheel', 'keydown']) {
        addEventListener(touch, stop, { once: true, passive: true });
      }
      (function look() {
        const off = mark.getBoundingClientRect().top - Number(top);
        if (Math.abs(off) > 1) scrollBy(0, off);
        if (!document.getElementById('paper').disabled) looks -= 1;
        if (looks > 0) requestAnimationFrame(look);
      })();
    }
  } catch (blocked) {
    // Storage is refused here: the browser does what it can.
  }

  // Where a fold was asked for, and how far the page was then.
  let from = null;
  document.addEventListener('click', ({ target }) => {
    const to = target.closest('[data-to]');
    if (to) {
      const place = document.getElementById(to.dataset.to);
      from = { button: to, top: scrollY };
      if (place.tagName === 'DETAILS') place.open = true;
      place.querySelector('.back')?.classList.remove('hidden');
      // What was out of sight is laid out on the way, and moves what follows.
      let looks = 6;
      (function look() {
        place.scrollIntoView();
        looks -= 1;
        if (looks) requestAnimationFrame(look);
      })();
      // A heading takes the cursor only for this.
      const start = place.querySelector('summary') ?? place;
      if (start === place) place.tabIndex = -1;
      start.focus({ preventScroll: true });
      return;
    }
    const back = target.closest('[data-back]');
    if (!back || !from) return;
    document.getElementById(back.dataset.back).open = false;
    back.parentElement.classList.add('hidden');
    scrollTo(0, from.top);
    from.button.focus({ preventScroll: true });
    from = null;
  });
})();
