// The panel of last resort: the page's program broke down, and what is on the
// page may no longer be true. It hands over the open boat as a text, and relies
// on nothing but itself.

const LAST = 'ampwright.last';
const by = (id) => document.getElementById(id);

// The boat worked on last, as it is kept.
function kept() {
  try {
    return localStorage.getItem(`ampwright.sheet.${localStorage.getItem(LAST)}`) ?? '';
  } catch {
    return '';
  }
}

function broke(reason, file) {
  const ours = file?.startsWith(document.baseURI.replace(/[^/]*$/, ''));
  if (by('wrong').open || !(ours || reason instanceof WebAssembly.RuntimeError)) return;
  by('wrong-text').value = by('link').value || kept();
  by('wrong-fresh').hidden = 'ready' in document.documentElement.dataset;
  by('wrong').showModal();
}
window.addEventListener('error', (event) => broke(event.error, event.filename));
window.addEventListener('unhandledrejection', (event) => broke(event.reason));

by('wrong-copy').addEventListener('click', () => {
  const say = (text) => {
    by('wrong-said').textContent = text;
  };
  by('wrong-text').select();
  say('Selected; copy it by hand if nothing is pasted.');
  // Begun inside the click: browsers refuse it after waiting.
  navigator.clipboard?.writeText(by('wrong-text').value).then(
    () => say('Copied.'),
    () => {},
  );
});
by('wrong-reload').addEventListener('click', () => location.reload());
by('wrong-fresh').addEventListener('click', () => {
  try {
    // No boat has this number: an empty one opens.
    localStorage.setItem(LAST, '0');
  } catch {
    // Storage is full or refused; then there is nothing to leave out either.
  }
  location.reload();
});
