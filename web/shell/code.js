// The link as a code to scan: a matrix of modules after ISO/IEC 18004:2015, in
// bytes and with the least error correction, drawn as one path. Written out
// here because a library's would be three times as large.

// By version: bytes of text and what begins and ends it, check bytes of each
// block, and blocks (tables 7 and 9). The last is the largest that a phone still
// scans off another phone's screen: 97 modules and the margin, each half a
// millimetre on a narrow one (own reckoning).
const ROOM = [19, 34, 55, 80, 108, 136, 156, 194, 232, 274, 324, 370, 428, 461, 523, 589, 647, 721, 795, 861];
const CHECK = [7, 10, 15, 20, 26, 18, 20, 24, 30, 18, 20, 24, 26, 30, 22, 24, 28, 30, 28, 28];
const BLOCKS = [1, 1, 1, 1, 1, 2, 2, 2, 2, 4, 4, 4, 4, 4, 6, 6, 6, 6, 7, 8];

const numbers = (count) => [...Array(count).keys()];
const bit = (value, at) => (value >> at) & 1;

// A product in the field of 256 elements over x^8 + x^4 + x^3 + x^2 + 1.
const times = (one, other) =>
  numbers(8).reduce((sum, at) => (sum << 1) ^ (bit(sum, 7) * 0x11d) ^ (bit(other, 7 - at) * one), 0);

// What a value leaves of a generator polynomial, for versions (annex D).
const rest = (value, steps, generator) =>
  numbers(steps).reduce((left) => (left << 1) ^ (bit(left, steps - 1) * generator), value);

// How many bytes follow, the bytes, and what fills the room (7.4).
function filled(bytes, at) {
  const head = at < 9 ? [bytes.length] : [bytes.length >> 8, bytes.length & 255];
  const data = [];
  let left = 4;
  for (const byte of [...head, ...bytes, 0]) {
    data.push(((left & 15) << 4) | (byte >> 4));
    left = byte;
  }
  for (let fill = 0xec; data.length < ROOM[at]; fill ^= 0xfd) data.push(fill);
  return data;
}

// Data in blocks, each with its check bytes, in turn (7.5 and 7.6).
function woven(data, at) {
  const [degree, blocks] = [CHECK[at], BLOCKS[at]];
  const divisor = Array(degree).fill(0);
  divisor[degree - 1] = 1;
  let root = 1;
  for (const _ of divisor) {
    divisor.forEach((part, i) => (divisor[i] = times(part, root) ^ (divisor[i + 1] ?? 0)));
    root = times(root, 2);
  }
  const short = Math.floor(data.length / blocks);
  const parts = numbers(blocks).map((n) => data.splice(0, short + (n >= blocks - (ROOM[at] % blocks))));
  const checks = parts.map((part) =>
    part.reduce((left, byte) => {
      const factor = byte ^ left[0];
      return divisor.map((by, i) => times(by, factor) ^ (left[i + 1] ?? 0));
    }, Array(degree).fill(0)),
  );
  const inTurn = (lists, most) => numbers(most).flatMap((i) => lists.map((list) => list[i]));
  return [...inTurn(parts, short + 1), ...inTurn(checks, degree)].filter((byte) => byte !== undefined);
}

function modules(text) {
  const bytes = new TextEncoder().encode(text);
  const at = ROOM.findIndex((room, at) => bytes.length + (at < 9 ? 2 : 3) <= room);
  if (at < 0) return [];
  const size = 21 + 4 * at;
  const grid = numbers(size).map(() => Array(size));
  const set = (x, y, dark) => {
    if (grid[y] && x in grid) grid[y][x] = Number(dark);
  };
  // Squares within squares: the rings at these distances are light (6.3.3, 6.3.6).
  const square = (x, y, reach, light) => {
    for (const i of numbers(2 * reach + 1)) {
      for (const j of numbers(2 * reach + 1)) {
        set(x + i - reach, y + j - reach, !light.includes(Math.max(Math.abs(i - reach), Math.abs(j - reach))));
      }
    }
  };
  for (const i of numbers(size)) {
    set(6, i, i % 2 === 0);
    set(i, 6, i % 2 === 0);
  }
  const far = size - 7;
  for (const [x, y] of [[3, 3], [far + 3, 3], [3, far + 3]]) square(x, y, 4, [2, 4]);
  if (at > 0) {
    // Annex E.
    const gaps = Math.floor((at + 1) / 7) + 1;
    const step = 2 * Math.ceil((size - 13) / (2 * gaps));
    const lines = [6, ...numbers(gaps).map((i) => far - i * step)];
    for (const x of lines) {
      for (const y of lines) {
        if ((x > 6 && y > 6) || (x !== y && x + y !== far + 6)) square(x, y, 2, [1]);
      }
    }
  }
  // Least correction, first mask (7.9, annex C): any mask can be read, and the
  // search for the prettiest would double this file.
  const format = 0x77c4;
  for (const i of numbers(15)) {
    const dark = bit(format, i);
    set(8, i < 6 ? i : i < 8 ? i + 1 : size - 15 + i, dark);
    set(i < 8 ? size - 1 - i : i < 9 ? 7 : 14 - i, 8, dark);
  }
  set(8, size - 8, 1);
  if (at > 5) {
    const version = ((at + 1) << 12) | (rest(at + 1, 12, 0x1f25) & 0xfff);
    for (const i of numbers(18)) {
      const [a, b] = [size - 11 + (i % 3), Math.floor(i / 3)];
      set(a, b, bit(version, i));
      set(b, a, bit(version, i));
    }
  }
  // Two columns at a time, up and down (7.7.3).
  const stream = woven(filled(bytes, at), at);
  let next = 0;
  for (let right = size - 1; right > 0; right -= right === 8 ? 3 : 2) {
    for (const i of numbers(size)) {
      for (const x of [right, right - 1]) {
        const y = (right + 1) & 2 ? i : size - 1 - i;
        if (grid[y][x] !== undefined) continue;
        grid[y][x] = bit(stream[next >> 3], 7 - (next & 7)) ^ ((x + y + 1) % 2);
        next += 1;
      }
    }
  }
  return grid;
}

// The quiet zone is four modules wide (6.3.8).
function draw(text) {
  const grid = modules(text);
  const wide = grid.length + 8;
  const rows = grid.flatMap((row, y) => row.map((dark, x) => (dark ? `M${x + 4} ${y + 4}h1v1h-1z` : '')));
  document.getElementById('code').innerHTML = grid.length
    ? `<svg class=code viewBox="0 0 ${wide} ${wide}" role=img aria-label="Code with the link to this worksheet"><path d="${rows.join('')}"/></svg>`
    : '';
}

const place = document.getElementById('code');
new MutationObserver(() => draw(place.dataset.text ?? '')).observe(place, { attributeFilter: ['data-text'] });
// Paper says where to find it again.
window.addEventListener('beforeprint', () => draw(document.getElementById('link').value));
