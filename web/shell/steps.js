// On a touch screen: two buttons under the entry last touched, which step its
// figure. They do what the arrow keys do; the core says how far a step goes.
(function () {
  if (!matchMedia('(any-pointer: coarse)').matches) return;
  let entry = null;
  let repeat = null;
  let repeated = false;

  const step = (key) => entry.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true }));
  const stop = () => clearTimeout(repeat);
  const pair = document.createElement('span');
  pair.className = 'nudges';
  const buttons = [
    ['−', 'less', 'ArrowDown'],
    ['+', 'more', 'ArrowUp'],
  ].map(([sign, words, key]) => {
    const button = document.createElement('button');
    button.type = 'button';
    button.textContent = sign;
    pair.append(button);
    const again = () => {
      repeated = true;
      step(key);
      repeat = setTimeout(again, 120);
    };
    button.addEventListener('pointerdown', () => {
      stop();
      repeated = false;
      repeat = setTimeout(again, 500);
    });
    button.addEventListener('click', () => {
      stop();
      if (!repeated) step(key);
      repeated = false;
    });
    return { button, words };
  });
  for (const end of ['pointerup', 'pointercancel', 'pointerleave']) {
    pair.addEventListener(end, stop, true);
  }
  // A long press is a long press here.
  pair.addEventListener('contextmenu', (event) => event.preventDefault());

  // They stay until another entry is touched, so that nothing moves away from
  // under a thumb.
  document.addEventListener('focusin', ({ target }) => {
    if (target === entry || !target.matches('[data-keydown="nudge"]')) return;
    stop();
    entry = target;
    const name = entry.labels[0]?.firstChild.textContent ?? '';
    for (const { button, words } of buttons) button.ariaLabel = `${name}: ${words}`;
    entry.closest('.entry').after(pair);
  });
})();
