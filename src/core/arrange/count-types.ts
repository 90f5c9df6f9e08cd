import { usesOf } from './check.ts';
import { remainderOf, sumOf } from './count-plain.ts';
import type { Counter } from './walk.ts';
import { checkMixed, MAX_MIXINGS, tooMixed } from './limits.ts';
import type { ArrangeRequest } from './types.ts';

interface Kind {
  slots: number;
  min: number;
  max: number;
}

/**
 * Counts where no rule looks at order: how many of each cell, times the ways to mix them. A state is the list of uses so
 * far, so far fewer numbers are needed than by states of the phrase; in return each is dear, and found when it is asked for.
 * Throws TooLarge where there is too much to be mixed.
 */
export function countByTypes({ cells, slots }: ArrangeRequest): Counter {
  const kinds = cells.map((cell) => ({ slots: cell.slots, ...usesOf(cell) }));
  checkMixed(mostCells(kinds, slots));
  const states = [{ used: kinds.map(() => 0), slot: 0 }];
  const numbers = new Map<string, number>([[states[0].used.join(), 0]]);
  const known = new Map<string, bigint>();
  const number = (used: number[], slot: number): number => {
    const key = used.join();
    if (!numbers.has(key)) numbers.set(key, states.push({ used, slot }) - 1);
    return numbers.get(key)!;
  };
  const next = (state: number, cell: number): number => {
    const used = [...states[state].used];
    used[cell] += 1;
    const slot = states[state].slot + kinds[cell].slots;
    return slot > slots || used[cell] > kinds[cell].max ? -1 : number(used, slot);
  };
  const ways = (state: number): bigint => {
    const { used, slot } = states[state];
    const left = used.map((n, i) => rest(kinds[i], n));
    const key = `${slots - slot}:${left.map((k) => `${k.min},${k.max}`).join(';')}`;
    if (!known.has(key)) known.set(key, mixtures(left, slots - slot));
    return known.get(key)!;
  };
  return {
    start: 0,
    count: ways(0),
    next,
    isOpen: (state) => ways(state) > 0n,
    isFull: (state) => states[state].slot === slots,
    remainder: (k) => remainderOf(k, ways),
    sum: () => sumOf(ways),
  };
}

/** How many cells an order can have. */
function mostCells(kinds: readonly Kind[], slots: number): number {
  const used = kinds.reduce((sum, kind) => sum + Math.min(kind.max, Math.floor(slots / kind.slots)), 0);
  return Math.min(used, Math.floor(slots / Math.min(...kinds.map((kind) => kind.slots))));
}

const rest = (kind: Kind, used: number): Kind => ({
  slots: kind.slots,
  min: Math.max(0, kind.min - used),
  max: kind.max - used,
});

/** Rows of Pascal's triangle, as far as they have been needed. */
const pascal: bigint[][] = [[1n]];

function choose(n: number, k: number): bigint {
  while (pascal.length <= n) {
    const above = pascal[pascal.length - 1];
    pascal.push([1n, ...above.map((x, i) => x + (above[i + 1] ?? 0n))]);
  }
  return pascal[n][k];
}

/** Ways by slots laid and by cells laid. */
type Laid = Map<number, Map<number, bigint>>;

/** Ways to lay so many slots: kind after kind, by slots laid and cells laid, each new one mixed in among the others. */
function mixtures(kinds: Kind[], slots: number): bigint {
  let laid: Laid = new Map([[0, new Map([[0, 1n]])]]);
  let sums = 0;
  kinds.slice(0, -1).forEach((kind, i) => {
    const later = kinds.slice(i + 1).reduce((sum, k) => sum + k.min * k.slots, 0);
    for (const byCells of laid.values()) sums += byCells.size * Math.min(kind.max + 1, slots / kind.slots);
    if (sums > MAX_MIXINGS) throw tooMixed();
    laid = mixIn(laid, kind, slots - later);
  });
  return fillWith(laid, kinds[kinds.length - 1], slots);
}

/** The last kind takes what is left, so only one number of it can fill each remainder. */
function fillWith(laid: Laid, kind: Kind, slots: number): bigint {
  let sum = 0n;
  for (const [slot, byCells] of laid) {
    const n = (slots - slot) / kind.slots;
    if (!Number.isInteger(n) || n < kind.min || n > kind.max) continue;
    for (const [cells, ways] of byCells) sum += ways * choose(cells + n, n);
  }
  return sum;
}

function mixIn(laid: Laid, kind: Kind, room: number): Laid {
  const mixed: Laid = new Map();
  for (const [slot, byCells] of laid)
    for (let n = kind.min; n <= kind.max && slot + n * kind.slots <= room; n += 1) {
      const end = slot + n * kind.slots;
      if (!mixed.has(end)) mixed.set(end, new Map());
      const row = mixed.get(end)!;
      for (const [cells, ways] of byCells)
        row.set(cells + n, (row.get(cells + n) ?? 0n) + (n === 0 ? ways : ways * choose(cells + n, n)));
    }
  return mixed;
}
