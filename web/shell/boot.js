// Starts the worksheet, then the service worker that keeps it for offline use.

const page = document.documentElement;
const here = document.baseURI;
const { js, wasm } = document.querySelector('script[data-wasm]').dataset;

const say = (id, text) => {
  document.getElementById(id).textContent = text;
};

async function start() {
  // Meanwhile hand.js looks for what a killed browser left behind.
  const [{ default: init }] = await Promise.all([import(new URL(js, here).href), globalThis.ampwrightMended]);
  await init({ module_or_path: new URL(wasm, here).href });
}

// What the foot says about opening without a network.
const OFFLINE = {
  copy: 'This is the copy in one file. It opens without a network; worksheets kept here stay apart from those of the page.',
  coming: 'It is being put by for use without a network.',
  ready: 'It is kept on this device and opens without a network.',
  partly:
    'It is not kept for use without a network yet: part of it did not arrive as it should. The next visit tries again.',
  unavailable: 'It cannot be kept here for use without a network; a copy in one file can.',
};
const tellOffline = (state) => {
  page.dataset.offline = state;
  say('offline', OFFLINE[state]);
};

async function keep() {
  if (wasm.startsWith('data:')) return tellOffline('copy');
  const workers = navigator.serviceWorker;
  if (!workers) return tellOffline('unavailable');
  const tell = () => {
    page.dataset.update = 'waiting';
    window.dispatchEvent(new CustomEvent('ampwright:update'));
  };
  const registration = await workers.register('sw.js', { updateViaCache: 'none' });

  // A new version waits until the visitor says so, in each window by itself.
  let wanted = false;
  window.addEventListener('ampwright:take-over', () => {
    wanted = true;
    if (registration.waiting) registration.waiting.postMessage('take-over');
    else location.reload();
  });
  workers.addEventListener('controllerchange', () => {
    if (!wanted) return tell();
    wanted = false;
    location.reload();
  });
  const watch = (coming) =>
    coming?.addEventListener('statechange', () => {
      if (coming.state === 'installed' && registration.active) tell();
      if (coming.state === 'redundant' && !registration.active) tellOffline('partly');
    });
  const { installing, waiting, active } = registration;
  watch(installing);
  registration.addEventListener('updatefound', () => watch(registration.installing));
  if (waiting && active) tell();

  tellOffline(active ? 'ready' : installing || waiting ? 'coming' : 'partly');
  (await workers.ready).active.postMessage('tidy');
  tellOffline('ready');
}

// The whole page as one file; what makes it is loaded when it is wanted.
function offerCopy() {
  const button = document.getElementById('aboard');
  button?.addEventListener('click', async () => {
    say('aboard-said', 'It is being put together.');
    try {
      const { default: save } = await import(new URL(button.dataset.js, here).href);
      await save();
      say('aboard-said', 'It is among your downloads. Opened from there, it needs no network.');
    } catch (reason) {
      say('aboard-said', 'It could not be put together: part of the page is not here. Reload the page and try again.');
      console.error(reason);
    }
  });
}

try {
  await start();
  offerCopy();
  keep().catch(() => tellOffline('unavailable'));
} catch (reason) {
  // The figures in the markup answer nobody.
  page.dataset.kept = '';
  document.getElementById('opening').hidden = true;
  document.getElementById('no-start').hidden = false;
  // hand.js shows the panel of last resort if the worksheet itself broke down.
  if (reason instanceof WebAssembly.RuntimeError) reportError(reason);
  else console.error(reason);
}
