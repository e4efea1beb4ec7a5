// A page asked for again lies where it lay: the browser cannot see to that, as
// what is out of sight has no height yet.
(function () {
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
})();
