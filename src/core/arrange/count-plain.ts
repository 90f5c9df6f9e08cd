import type { Counter } from './walk.ts';
import { MAX_DIGITS, MAX_STATES, tooLarge, tooWide } from './limits.ts';

/**
 * Counts where nothing is limited and no rule asked for: the ways to fill n slots are the ways to fill what each cell
 * leaves of them, summed. A state is the slots that are laid.
 */
export function countPlain(lengths: readonly number[], slots: number): Counter {
  const filled = waysToFill(lengths, slots);
  const ways = (slot: number): bigint => filled[slots - slot];
  return {
    start: 0,
    count: ways(0),
    next: (slot, cell) => (slot + lengths[cell] > slots ? -1 : slot + lengths[cell]),
    isOpen: (slot) => ways(slot) > 0n,
    isFull: (slot) => slot === slots,
    remainder: (k) => remainderOf(k, ways),
    sum: () => sumOf(ways),
  };
}

/** A number from which ways are taken away, as bigints. */
export function remainderOf(k: bigint, ways: (state: number) => bigint): (state: number) => boolean {
  let left = k;
  return (state) => {
    const part = ways(state);
    if (left < part) return false;
    left -= part;
    return true;
  };
}

/** A sum of ways, as bigints. */
export function sumOf(ways: (state: number) => bigint): { add(state: number): void; total(): bigint } {
  let sum = 0n;
  return { add: (state) => void (sum += ways(state)), total: () => sum };
}

/** How often the room that numbers take is looked at. */
const OFTEN = 256;

/** The ways to fill 0, 1, 2 … slots. Throws RangeError where there are too many or too large ones. */
function waysToFill(lengths: readonly number[], slots: number): bigint[] {
  if (slots >= MAX_STATES) throw tooLarge();
  const { back, times, less } = recurrence(lengths);
  const ways = [1n];
  let digits = 0;
  for (let n = 1; n <= slots; n += 1) {
    let sum = n === 1 ? -less : 0n;
    for (let i = 0; i < back.length && back[i] <= n; i += 1) sum += scaled(ways[n - back[i]], times[i]);
    ways.push(sum);
    if (n % OFTEN === 0) digits += OFTEN * (sum.toString(16).length / 8);
    if (digits > MAX_DIGITS) throw tooWide();
  }
  return ways;
}

/** Spares the multiplication where it would be by one. */
function scaled(n: bigint, times: bigint): bigint {
  if (times === 1n) return n;
  return times === -1n ? -n : times * n;
}

interface Recurrence {
  /** Each term: so many times the number so many slots before. */
  back: number[];
  times: bigint[];
  /** What the number for one slot has less than the terms say. */
  less: bigint;
}

/**
 * The recurrence of fewest terms. Where lengths follow one another, the difference of two neighbors is short: for cells of
 * 1 to 6 slots it is twice the number before less the seventh before, two terms instead of six.
 */
function recurrence(lengths: readonly number[]): Recurrence {
  const sums = new Map<number, number>();
  for (const length of lengths) add(sums, length, 1);
  const differences = new Map([[1, 1]]);
  for (const [back, times] of sums) {
    add(differences, back, times);
    add(differences, back + 1, -times);
  }
  const [plain, short] = [sums, differences].map((terms) => [...terms].filter(([, n]) => n !== 0).sort(byBack));
  const terms = short.length < plain.length ? short : plain;
  return {
    back: terms.map(([back]) => back),
    times: terms.map(([, n]) => BigInt(n)),
    less: terms === short ? 1n : 0n,
  };
}

const byBack = ([a]: [number, number], [b]: [number, number]): number => a - b;
const add = (terms: Map<number, number>, back: number, n: number): void =>
  void terms.set(back, (terms.get(back) ?? 0) + n);
