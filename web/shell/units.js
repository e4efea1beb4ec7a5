// Tells figures in the units the reader chose, and with the reader's decimal
// sign. Only what is shown changes: what is reckoned, kept and sent does not.
(function () {
  const KEPT = 'ampwright.units';
  const lists = [...document.querySelectorAll('select[data-units]')];
  let chosen = [];
  try {
    chosen = (localStorage.getItem(KEPT) ?? '').split(' ');
  } catch (blocked) {
    // Storage is refused here: the worksheet's own units do.
  }
  // Unit by unit: the other one, its factor and its offset.
  const others = new Map();
  for (const list of lists) {
    list.value = chosen.includes(list.id) ? 'other' : '';
    list.addEventListener('change', () => {
      const ids = lists.filter((list) => list.value).map((list) => list.id);
      try {
        localStorage.setItem(KEPT, ids.join(' '));
      } catch (blocked) {
        return;
      }
      location.reload();
    });
    if (!list.value) continue;
    for (const pair of list.dataset.units.split(';')) {
      const [unit, other, scale, offset] = pair.split('=');
      others.set(unit, { other, scale: Number(scale), offset: Number(offset) });
    }
  }
  const point = (1.5).toLocaleString(navigator.language).charAt(1);
  if (!others.size && point === '.') return;
  if (point !== '.') document.documentElement.dataset.point = point;

  const NUMBER = '[+\u2212-]?\\d+(?:\\.\\d+)?';
  const LINK = ' to | of | and | or | \u00b1 |\u2013|, ';
  const units = [...others.keys()].sort((a, b) => b.length - a.length).join('|');
  const figures = new RegExp(
    `(?<![\\p{L}\\d.-])((?:${NUMBER}(?:${LINK}))*${NUMBER})([ \u00a0])(${units})(?![\\p{L}\\d\u00b2\u00b3\u00b7])`,
    'gu',
  );
  const volts = () => Number(document.getElementById('sheet-bank_nominal_v')?.value) || 12;

  // One number, with digits as sensible as it had.
  function told(number, unit, difference) {
    const { other, scale, offset } = others.get(unit);
    const by = scale || volts();
    const value = Number(number.replace('\u2212', '-')) * by + (difference ? 0 : offset || 0);
    const decimals = (number.split('.')[1] ?? '').length - Math.floor(Math.log10(by));
    const text = value.toFixed(Math.min(Math.max(decimals, 0), 4)).replace('-', '\u2212');
    return [number.startsWith('+') ? `+${text}` : text, other];
  }

  function chain(numbers, unit) {
    let difference = false;
    return numbers
      .split(new RegExp(`(${LINK})`, 'u'))
      .map((part, at) => {
        if (at % 2 === 0) return told(part, unit, difference)[0];
        difference = part === ' \u00b1 ';
        return part;
      })
      .join('');
  }

  // The unit that a heading ends with: "Air °C", "Sun A·h/day".
  function named(words) {
    const last = words.split(' ').pop();
    return others.has(last) ? last : last.split('/')[0];
  }

  // The unit that a bare number stands under or beside.
  function unitOf(text) {
    const cell = text.parentElement?.closest('td');
    if (!cell) return null;
    const beside = cell.nextElementSibling;
    if (beside?.classList.contains('unit')) return (beside.dataset.was ??= beside.textContent);
    const head = cell.closest('table')?.tHead?.rows[0]?.cells[cell.cellIndex];
    return head && named((head.dataset.was ??= head.textContent));
  }

  function inOthers(words) {
    return words.replace(figures, (all, numbers, gap, unit) =>
      chain(numbers, unit) + gap + others.get(unit).other,
    );
  }

  function say(text) {
    const was = text.data;
    if (!/\d/.test(was) || text.parentElement?.closest('textarea, code, kbd')) return;
    let now = was;
    // Drawings keep the unit they name.
    if (others.size && !text.parentElement?.closest('svg')) {
      now = inOthers(was);
      if (now === was && new RegExp(`^${NUMBER}$`, 'u').test(was)) {
        const unit = unitOf(text);
        if (others.has(unit)) now = told(was, unit, false)[0];
      }
    }
    // The number of a rule has no decimals.
    if (point !== '.') now = now.replace(/(?<!CFR \d*)(?<=\d)\.(?=\d)/g, point);
    if (now !== was) text.data = now;
  }

  // Units that stand by themselves: of an entry, a line, a column.
  function name(element) {
    const text = element.textContent;
    const entry = element.closest('.entry');
    const unit = entry ? text : named(text);
    // What is filled in in A·h stays so: its volts may be filled in next.
    if (!others.has(unit) || (entry && !others.get(unit).scale)) return;
    element.dataset.was = text;
    element.textContent = text.replace(unit, others.get(unit).other);
    entry?.querySelector('input')?.toggleAttribute('data-other', true);
  }

  function all(root, css) {
    return [root, ...root.querySelectorAll(css)].filter((element) => element.matches(css));
  }

  function walk(root) {
    if (root.nodeType === Node.TEXT_NODE) return say(root);
    if (root.nodeType !== Node.ELEMENT_NODE) return;
    const texts = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
    while (texts.nextNode()) say(texts.currentNode);
    all(root, '.entry > .unit, td.unit, thead th').forEach(name);
    // What a screen reader says of it.
    if (!others.size) return;
    all(root, '[aria-label]').forEach((element) => {
      const was = element.ariaLabel;
      const now = inOthers(was);
      if (now !== was) element.ariaLabel = now;
    });
  }

  const seen = { childList: true, characterData: true, subtree: true };
  const watch = new MutationObserver((changes) => {
    for (const { type, target, addedNodes } of changes) {
      if (type === 'characterData') say(target);
      else addedNodes.forEach(walk);
    }
    watch.takeRecords();
  });
  walk(document.body);
  watch.observe(document.body, seen);
})();
