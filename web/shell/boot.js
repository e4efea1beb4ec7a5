// Starts the worksheet, then the service worker that keeps it for offline use.

const page = document.documentElement;

async function start() {
  const { js, wasm } = document.querySelector('script[data-wasm]').dataset;
  const here = document.baseURI;
  // Meanwhile hand.js looks for what a killed browser left behind.
  const [{ default: init }] = await Promise.all([import(new URL(js, here).href), globalThis.ampwrightMended]);
  await init({ module_or_path: new URL(wasm, here).href });
}

async function keep() {
  const workers = navigator.serviceWorker;
  if (!workers) {
    page.dataset.offline = 'unavailable';
    return;
  }
  const tell = () => {
    page.dataset.update = 'waiting';
    window.dispatchEvent(new CustomEvent('ampwright:update'));
  };
  const registration = await workers.register('sw.js', { updateViaCache: 'none' });

  // A new version waits until the visitor says so.
  window.addEventListener('ampwright:take-over', () => {
    registration.waiting?.postMessage({ type: 'take-over' });
  });
  let reloading = false;
  workers.addEventListener('controllerchange', () => {
    if (reloading) return;
    reloading = true;
    location.reload();
  });
  const watch = (coming) =>
    coming?.addEventListener('statechange', () => {
      if (coming.state === 'installed' && registration.active) tell();
    });
  watch(registration.installing);
  registration.addEventListener('updatefound', () => watch(registration.installing));
  if (registration.waiting && registration.active) tell();

  await workers.ready;
  page.dataset.offline = 'ready';
}

try {
  await start();
  document.getElementById('static').hidden = true;
  document.getElementById('paper').disabled = false;
  keep().catch(() => {
    page.dataset.offline = 'unavailable';
  });
} catch (reason) {
  // The figures in the markup answer nobody.
  page.dataset.kept = '';
  document.getElementById('opening').hidden = true;
  document.getElementById('no-start').hidden = false;
  // hand.js shows the panel of last resort if the worksheet itself broke down.
  if (reason instanceof WebAssembly.RuntimeError) reportError(reason);
  else console.error(reason);
}
