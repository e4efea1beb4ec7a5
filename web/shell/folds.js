// Remembers on this device which folds lie open, and leads from a button to a
// fold and back. No worksheet and no link knows of it.
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

  // Where a fold was asked for, and how far the page was then.
  let from = null;
  document.addEventListener('click', ({ target }) => {
    const to = target.closest('[data-to]');
    if (to) {
      const fold = document.getElementById(to.dataset.to);
      from = { button: to, top: scrollY };
      fold.open = true;
      fold.querySelector('.back').classList.remove('hidden');
      fold.scrollIntoView();
      fold.querySelector('summary').focus({ preventScroll: true });
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
