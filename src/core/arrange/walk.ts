import { must } from '../check.ts';

/** Counts completions from any state a phrase can pass through while it is laid. States are numbers; -1 is none. */
export interface Counter {
  readonly start: number;
  readonly count: bigint;
  /** The state after one more cell; -1 where a rule, a use or the slots forbid it. */
  next(state: number, cell: number): number;
  /** Whether there is any way to complete the phrase from here. */
  isOpen(state: number): boolean;
  /** Whether all slots are filled. */
  isFull(state: number): boolean;
  /** A number from which the ways of states are taken away: false where it is less than they are. */
  remainder(k: bigint): (state: number) => boolean;
  /** A sum to which the ways of states are added. */
  sum(): { add(state: number): void; total(): bigint };
}

/** The cells of the k-th order, by index. */
export function nth(counter: Counter, cells: number, k: bigint): number[] {
  const takeAway = counter.remainder(k);
  const path: number[] = [];
  let state = counter.start;
  while (!counter.isFull(state)) {
    const cell = pick(counter, cells, state, takeAway);
    path.push(cell);
    state = counter.next(state, cell);
  }
  return path;
}

/** The first cell whose ways are more than what is left; those of the ones before it are taken away. */
function pick(counter: Counter, cells: number, from: number, takeAway: (state: number) => boolean): number {
  for (let cell = 0; cell < cells; cell += 1) {
    const state = counter.next(from, cell);
    if (state >= 0 && counter.isOpen(state) && !takeAway(state)) return cell;
  }
  throw new RangeError(`k is beyond the ways from state ${from}`);
}

/** Which order this is; -1n where it is none. */
export function indexOf(counter: Counter, path: readonly number[]): bigint {
  const sum = counter.sum();
  let state = counter.start;
  if (!counter.isOpen(state)) return -1n;
  for (const chosen of path) {
    if (chosen < 0 || counter.isFull(state)) return -1n;
    for (let cell = 0; cell < chosen; cell += 1) {
      const other = counter.next(state, cell);
      if (other >= 0 && counter.isOpen(other)) sum.add(other);
    }
    state = counter.next(state, chosen);
    if (state < 0 || !counter.isOpen(state)) return -1n;
  }
  return counter.isFull(state) ? sum.total() : -1n;
}

/** All orders, each found from the one before by the last cell that can be changed; cells by the names given. */
export function* each<T>(
  counter: Pick<Counter, 'start' | 'next' | 'isOpen' | 'isFull'>,
  names: readonly T[],
): Generator<T[], undefined> {
  if (!counter.isOpen(counter.start)) return;
  const states = [counter.start];
  const tried = [-1];
  const laid: T[] = [];
  while (states.length) {
    const depth = states.length - 1;
    const full = counter.isFull(states[depth]);
    if (full) yield laid.slice();
    const cell = full ? names.length : (tried[depth] += 1);
    if (cell >= names.length) {
      states.pop();
      tried.pop();
      laid.pop();
      continue;
    }
    const state = counter.next(states[depth], cell);
    if (state < 0 || !counter.isOpen(state)) continue;
    states.push(state);
    tried.push(-1);
    laid.push(names[cell]);
  }
}

function bitsOf(random: () => number, bits: number): bigint {
  const drawn = random();
  must(typeof drawn === 'number' && drawn >= 0 && drawn < 1, 'a number of random', drawn, '0 to below 1');
  return BigInt(Math.floor(drawn * 2 ** bits));
}

function draw(random: () => number, bits: number): bigint {
  let drawn = 0n;
  for (let got = 0; got < bits; got += 16) {
    const take = Math.min(16, bits - got);
    drawn = (drawn << BigInt(take)) | bitsOf(random, take);
  }
  return drawn;
}

/** A fair source is below the limit at least every other time: one that never is in so many draws always says the same. */
const DRAWS = 128;

/**
 * A fair number below a limit: as many random bits as it has, drawn again until they are below it. A source that always
 * says the same would be asked for ever, so what it says last is brought below the limit.
 */
export function below(limit: bigint, random: () => number): bigint {
  const bits = (limit - 1n).toString(2).length;
  let drawn = draw(random, bits);
  for (let n = 1; n < DRAWS && drawn >= limit; n += 1) drawn = draw(random, bits);
  return drawn % limit;
}
