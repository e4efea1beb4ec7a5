// Starts the page's program, or says that it did not start.

const here = document.baseURI;
const { js, wasm } = document.querySelector('script[data-wasm]').dataset;

try {
  const { default: init } = await import(new URL(js, here).href);
  await init({ module_or_path: new URL(wasm, here).href });
} catch (reason) {
  // The figures in the markup answer nobody.
  document.documentElement.dataset.kept = '';
  document.getElementById('opening').hidden = true;
  document.getElementById('no-start').hidden = false;
  // rescue.js shows the panel of last resort if the program itself broke down.
  if (reason instanceof WebAssembly.RuntimeError) reportError(reason);
  else console.error(reason);
}
