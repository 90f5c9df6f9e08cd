import { encode } from 'uqr';

/** A square code as a drawing: dark squares of size 1 in a field of `size`, the quiet edge included. */
export interface SquareCode {
  size: number;
  /** For the `d` of an SVG path. */
  path: string;
}

/** Light squares around the code; the standard (ISO/IEC 18004) asks for four. */
const QUIET = 4;

/**
 * A text as a square code that a telephone reads; it stays readable with up to 15 % of it spoiled (level M). Throws where
 * the text is longer than such a code can hold (2,331 bytes).
 */
export function squareCode(text: string): SquareCode {
  const { data, size } = encode(text, { ecc: 'M', border: QUIET });
  const runs = data.flatMap((row, y) => runsOf(row).map(([x, length]) => `M${x} ${y}h${length}v1h-${length}z`));
  return { size, path: runs.join('') };
}

/** Where dark squares stand side by side, and how many. */
function runsOf(row: readonly boolean[]): [x: number, length: number][] {
  return row.flatMap((dark, x): [number, number][] => {
    if (!dark || row[x - 1]) return [];
    const end = row.indexOf(false, x);
    return [[x, (end < 0 ? row.length : end) - x]];
  });
}
