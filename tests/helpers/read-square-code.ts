/**
 * Reads a square code back into text, by the standard (ISO/IEC 18004) and by nothing of the library that draws it: format
 * bits, mask, the way of the bits through the field, blocks, bytes. It corrects no errors: what it reads must be clean.
 * The tables of blocks are the standard's table 9, versions 1 to 10, from memory; a wrong row would not read.
 */

/** Dark squares, without the quiet edge. */
type Field = readonly (readonly boolean[])[];

/** Codewords for correction in a block, and number of blocks, by version from 1, for levels L and M. */
const BLOCKS: Record<string, { correction: number[]; blocks: number[] }> = {
  L: { correction: [7, 10, 15, 20, 26, 18, 20, 24, 30, 18], blocks: [1, 1, 1, 1, 1, 2, 2, 2, 2, 4] },
  M: { correction: [10, 16, 26, 18, 24, 16, 18, 22, 22, 26], blocks: [1, 1, 1, 2, 2, 4, 4, 4, 5, 5] },
};
const LEVELS = ['M', 'L', 'H', 'Q'];

/** Where the centers of the small squares stand, by version. */
const CENTERS = [[], [6, 18], [6, 22], [6, 26], [6, 30], [6, 34], [6, 22, 38], [6, 24, 42], [6, 26, 46], [6, 28, 50]];

const MASKS: ((x: number, y: number) => boolean)[] = [
  (x, y) => (x + y) % 2 === 0,
  (_x, y) => y % 2 === 0,
  (x) => x % 3 === 0,
  (x, y) => (x + y) % 3 === 0,
  (x, y) => (Math.floor(x / 3) + Math.floor(y / 2)) % 2 === 0,
  (x, y) => ((x * y) % 2) + ((x * y) % 3) === 0,
  (x, y) => (((x * y) % 2) + ((x * y) % 3)) % 2 === 0,
  (x, y) => (((x + y) % 2) + ((x * y) % 3)) % 2 === 0,
];

/** Level and mask, from the fifteen bits beside the upper left corner. */
function formatOf(field: Field): { level: string; mask: number } {
  const places = [...[0, 1, 2, 3, 4, 5, 7, 8].map((x) => [x, 8]), ...[7, 5, 4, 3, 2, 1, 0].map((y) => [8, y])];
  const bits = places.reduce((value, [x, y]) => value * 2 + Number(field[y][x]), 0) ^ 0b101010000010010;
  return { level: LEVELS[bits >> 13], mask: (bits >> 10) & 7 };
}

/** Whether a place belongs to the frame of the code and not to the data. */
function isFrame(size: number, version: number, x: number, y: number): boolean {
  const corner = (x < 9 && y < 9) || (x >= size - 8 && y < 9) || (x < 9 && y >= size - 8);
  const timing = x === 6 || y === 6;
  const versionBits = version >= 7 && ((x < 6 && y >= size - 11) || (y < 6 && x >= size - 11));
  const centers = CENTERS[version - 1];
  const last = centers.length - 1;
  const small = centers.some((cx, i) =>
    centers.some((cy, j) => {
      const taken = (i === 0 && j === 0) || (i === 0 && j === last) || (i === last && j === 0);
      return !taken && Math.abs(x - cx) <= 2 && Math.abs(y - cy) <= 2;
    }),
  );
  return corner || timing || versionBits || small;
}

/** The data bits in their order: two columns at a time from the right, up and down in turn, unmasked. */
function bitsOf(field: Field, version: number, mask: number): boolean[] {
  const size = field.length;
  const bits: boolean[] = [];
  let up = true;
  for (let right = size - 1; right > 0; right -= 2) {
    if (right === 6) right = 5;
    for (let step = 0; step < size; step += 1) {
      const y = up ? size - 1 - step : step;
      for (const x of [right, right - 1])
        if (!isFrame(size, version, x, y)) bits.push(field[y][x] !== MASKS[mask](x, y));
    }
    up = !up;
  }
  return bits;
}

const numberOf = (bits: readonly boolean[]) => bits.reduce((value, bit) => value * 2 + Number(bit), 0);

/** The data bytes of all blocks, one block after another. */
function dataOf(codewords: readonly number[], level: string, version: number): number[] {
  const { correction, blocks } = BLOCKS[level];
  const count = blocks[version - 1];
  const data = codewords.length - correction[version - 1] * count;
  const short = Math.floor(data / count);
  const longFrom = count - (data % count);
  const into: number[][] = Array.from({ length: count }, () => []);
  let at = 0;
  for (let place = 0; place <= short; place += 1)
    for (let block = 0; block < count; block += 1)
      if (place < short || block >= longFrom) into[block].push(codewords[at++]);
  return into.flat();
}

/**
 * The text of a square code of version 1 to 10, level L or M, in bytes. Throws where it is anything else.
 */
export function readSquareCode(field: Field): string {
  const version = (field.length - 17) / 4;
  const { level, mask } = formatOf(field);
  if (!BLOCKS[level] || !CENTERS[version - 1]) throw new RangeError(`version ${version}, level ${level}`);
  const bits = bitsOf(field, version, mask);
  const codewords = Array.from({ length: Math.floor(bits.length / 8) }, (_, at) =>
    numberOf(bits.slice(at * 8, at * 8 + 8)),
  );
  const data = dataOf(codewords, level, version).flatMap((byte) =>
    [7, 6, 5, 4, 3, 2, 1, 0].map((at) => ((byte >> at) & 1) === 1),
  );
  if (numberOf(data.slice(0, 4)) !== 4) throw new RangeError('not in bytes');
  const lengthBits = version < 10 ? 8 : 16;
  const length = numberOf(data.slice(4, 4 + lengthBits));
  const from = 4 + lengthBits;
  const bytes = Array.from({ length }, (_, at) => numberOf(data.slice(from + at * 8, from + at * 8 + 8)));
  return new TextDecoder('utf-8', { fatal: true }).decode(new Uint8Array(bytes));
}
