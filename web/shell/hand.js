// What only the browser can do for the worksheet: copy, share, print, save and
// read files; and the panel shown when the worksheet itself breaks down.

const SHEET = 'ampwright.sheet.';
const by = (id) => document.getElementById(id);
const say = (button, text) => {
  button.parentNode.querySelector('[role=status]').textContent = text;
};
const kept = (key) => {
  try {
    return localStorage.getItem(key) ?? '';
  } catch {
    return '';
  }
};
const keep = (key, text) => {
  try {
    localStorage.setItem(key, text);
  } catch {
    // Storage is full or refused: the worksheet itself says so.
  }
};

// What is kept reaches the disk some seconds later. A journal of the same texts
// gets there at once, so that a browser that is killed takes nothing with it.
const COUNT = 'ampwright.count';
const LAST = 'ampwright.last';
const journal = new Promise((ready, failed) => {
  const asked = indexedDB.open('ampwright', 1);
  asked.onupgradeneeded = () => asked.result.createObjectStore('kept');
  asked.onsuccess = () => ready((how) => asked.result.transaction('kept', how).objectStore('kept'));
  asked.onerror = failed;
});
const mended = journal.then((table) => new Promise((done) => {
  const known = Number(kept(COUNT));
  let newest = known;
  const walk = table('readwrite').openCursor();
  walk.onerror = done;
  walk.onsuccess = () => {
    const at = walk.result;
    if (!at) return done();
    const { key, value: { count, text } } = at;
    if (count > known) keep(SHEET + key, text);
    else if (!kept(SHEET + key)) at.delete();
    if (count > newest) {
      newest = count;
      keep(LAST, key);
      keep(COUNT, count);
    }
    at.continue();
  };
})).catch(() => {});
// boot.js waits for it, but not for ever.
globalThis.ampwrightMended = Promise.race([mended, new Promise((done) => setTimeout(done, 500))]);
window.addEventListener('ampwright:kept', () => {
  const [key, count] = [kept(LAST), 1 + Number(kept(COUNT))];
  keep(COUNT, count);
  journal.then((table) => table('readwrite').put({ count, text: kept(SHEET + key) }, key)).catch(() => {});
});

// A text becomes a file of the user's.
function save(name, text) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'text/plain' }));
  link.download = name.replace(/[^\p{L}\p{N}.]+/gu, '-');
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
}

// Whatever was typed last is kept first, as when the page is left.
const settle = () => window.dispatchEvent(new Event('blur'));

// Begun inside the click: browsers refuse some of it after waiting.
const doing = {
  copy(button) {
    const field = by(button.dataset.on);
    field.select();
    say(button, 'Selected; copy it by hand if nothing is pasted.');
    navigator.clipboard?.writeText(field.value).then(
      () => say(button, 'Copied.'),
      () => {},
    );
  },
  share(button) {
    navigator.share({ url: by(button.dataset.on).value }).catch(() => {});
  },
  print: () => window.print(),
  reload: () => location.reload(),
  fresh() {
    keep(LAST, '0');
    location.reload();
  },
  // One worksheet as it is kept, even if it cannot be read.
  file(button) {
    settle();
    const name = button.parentNode.querySelector('.title').textContent;
    save(`${name}.json`, kept(SHEET + button.dataset.on));
  },
  // Everything that can be read, and what lies open even if it is not kept.
  files() {
    settle();
    const texts = [by('carry').dataset.unkept];
    try {
      texts.push(...Object.keys(localStorage).filter((key) => key.startsWith(SHEET)).map(kept));
    } catch {
      // Storage is refused here.
    }
    const whole = texts.filter((text) => {
      try {
        return JSON.parse(text).type;
      } catch {
        return false;
      }
    });
    save('ampwright-worksheets.json', `{"type":"ampwright-worksheets","version":2,"worksheets":[${whole}]}`);
  },
};

window.addEventListener('click', (event) => {
  const button = event.target.closest?.('[data-do]');
  if (button) doing[button.dataset.do](button);
});
window.addEventListener('ampwright:save', () => {
  const { name, text } = by('carry').dataset;
  save(name, text);
});

// A file of the user's becomes a text for the worksheet.
window.addEventListener('change', async ({ target }) => {
  const file = target.id === 'import' && target.files[0];
  if (!file) return;
  // More than any browser keeps for one page.
  const text = file.size > 2e7 ? '' : await file.text().catch(() => '');
  target.value = '';
  by('carry').dataset.text = text;
  by('carry').dispatchEvent(new Event('input', { bubbles: true }));
});

// Once something is kept, the browser is asked not to clear it away.
window.addEventListener(
  'ampwright:kept',
  () => navigator.storage?.persist?.().catch(() => {}),
  { once: true },
);

// Paper shows every entry, and the code that leads back here.
let closed = [];
window.addEventListener('beforeprint', () => {
  closed = [...document.querySelectorAll(':is(.rest .section, .rest .section details, #scan):not([open])')];
  for (const fold of closed) fold.open = true;
});
window.addEventListener('afterprint', () => {
  for (const fold of closed) fold.open = false;
});

if (navigator.share) by('share-link').classList.remove('hidden');

// The panel of last resort; what is on the page may no longer be true.
function broke(reason, file) {
  const panel = by('wrong');
  const ours = file?.startsWith(document.baseURI.replace(/[^/]*$/, ''));
  if (panel.open || !(ours || reason instanceof WebAssembly.RuntimeError)) return;
  by('wrong-text').value = by('link').value || kept(SHEET + kept(LAST));
  by('wrong-fresh').hidden = 'ready' in document.documentElement.dataset;
  panel.showModal();
}
window.addEventListener('error', (event) => broke(event.error, event.filename));
window.addEventListener('unhandledrejection', (event) => broke(event.reason));
