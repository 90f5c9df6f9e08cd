import { whole } from '../check.ts';
import { refuse, type Result } from '../fault.ts';

/** What makes puzzles now; an address of an older version is answered by the makers of that version. */
export const PUZZLE_VERSION = 1;
/** Numbers of puzzles go from 1 to this. */
export const MAX_SEED = 999_999_999;

/**
 * The number in an address, `1-4182`: version and seed.
 * @example
 * readPuzzleAddress('1-4182').seed // → 4182
 * readPuzzleAddress('2-4182').fault.expected // → '1'
 */
export function readPuzzleAddress(text: string): Result<'seed', number> {
  const [, version, digits] = /^(\d{1,3})-(\d{1,12})$/.exec(text) ?? [];
  if (version === undefined)
    return refuse(
      0,
      text || 'nothing',
      '1-4182',
      `"${shortened(text)}" is no number of a puzzle; one looks like 1-4182`,
    );
  if (Number(version) !== PUZZLE_VERSION)
    return refuse(
      0,
      version,
      String(PUZZLE_VERSION),
      `there is no version ${version} of the puzzles, only ${PUZZLE_VERSION}`,
    );
  const seed = Number(digits);
  const at = version.length + 1;
  if (seed < 1 || seed > MAX_SEED)
    return refuse(
      at,
      digits,
      `1 to ${MAX_SEED}`,
      `puzzles are numbered from 1 to ${MAX_SEED}; ${digits} is none of them`,
    );
  return { ok: true, seed };
}

/** As much of an address as a sentence can hold. */
const shortened = (text: string): string => (text.length > 24 ? `${text.slice(0, 24)} …` : text);

/**
 * How a number stands in an address. Throws RangeError for what is no number of a puzzle.
 * @example
 * printPuzzleAddress(4182) // → '1-4182'
 */
export function printPuzzleAddress(seed: number): string {
  checkSeed(seed);
  return `${PUZZLE_VERSION}-${seed}`;
}

/** Throws RangeError for what is no number of a puzzle. */
export function checkSeed(seed: number): void {
  whole('seed', seed, 1, MAX_SEED);
}
