// Puts the whole page into one file that opens from disk, out of the page's own
// files; `cargo xtask bundle` writes the same, see tests/src/bundle.rs.

const NAMED = /^[\w./-]+\.(css|js|svg|wasm)$/;
const KINDS = {
  css: 'text/css',
  js: 'text/javascript',
  svg: 'image/svg+xml',
  wasm: 'application/wasm',
};

async function part(address) {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return answer;
}

// A file as an address that holds it.
async function held(name, kind) {
  const bytes = await (await part(name)).arrayBuffer();
  const reader = new FileReader();
  const done = new Promise((good, bad) => {
    reader.onload = () => good(reader.result);
    reader.onerror = bad;
  });
  reader.readAsDataURL(new Blob([bytes], { type: KINDS[kind] }));
  return done;
}

export default async function save() {
  const page = (await (await part('./')).text())
    .replace(/<!--served-->.*?<!--\/served-->/gs, '')
    .replace(/<!--aboard | aboard-->/g, '');
  const end = page.indexOf('</head>');
  // At the odd places stands what was quoted.
  const pieces = page.slice(0, end).split('"');
  const head = await Promise.all(
    pieces.map((piece, at) => {
      const named = at % 2 && piece.match(NAMED);
      return named ? held(piece, named[1]) : piece;
    }),
  );
  const file = new Blob([head.join('"'), page.slice(end)], { type: 'text/html' });
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  // Always the same name: some browsers keep worksheets by it.
  link.download = 'ampwright.html';
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
