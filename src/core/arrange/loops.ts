import { arrangements, statesOf } from './arrange.ts';
import { checkRequest, usesOf } from './check.ts';
import { countByStates } from './count-states.ts';
import type { Counter } from './walk.ts';
import { checkLoop } from './limits.ts';
import type { ArrangeCell, ArrangeRequest, ArrangeRules, LoopArrangements } from './types.ts';

/** Rules that say what stands where; turning a loop would break them. */
const OF_PLACE = ['first', 'last', 'accentOn', 'noAccentOn', 'lastStrokeOn', 'withinBars'] as const;

/**
 * All orders of cells round a loop that is as long as the slots, one of each that are the same up to rotation. Two orders
 * are the same up to rotation where one is the other begun at another of its cells: the sequence of cells, laid in a ring,
 * is the same. (Turning by slots that begin no cell gives no order of cells, so nothing else is the same.)
 *
 * The joins from the last cell to the first count as all others. Rules that look at places (first, last, accentOn,
 * noAccentOn, lastStrokeOn, withinBars), an alternating lead, which depends on where one begins, and `loop: false` throw
 * RangeError with the name of the rule; loops of more than 4,096 slots, and of too many states, throw it with the limit.
 * @example
 * loopArrangements({ cells: [{ id: 'a', slots: 1 }, { id: 'b', slots: 2 }], slots: 4 }).count // → 3n
 * [...loopArrangements({ cells: [{ id: 'a', slots: 1, times: 2 }, { id: 'b', slots: 1, times: 2 }], slots: 4 })] // → [['a', 'a', 'b', 'b'], ['a', 'b', 'a', 'b']]
 */
export function loopArrangements(request: ArrangeRequest): LoopArrangements {
  checkRequest(request);
  checkRules(request.rules ?? {});
  const looped = { ...request, rules: { ...request.rules, loop: true } };
  let counter: Counter | undefined;
  const count = countLoops(looped);
  return {
    count,
    *[Symbol.iterator]() {
      yield* representatives(looped, (counter ??= countByStates(statesOf(looped))));
    },
    get reason() {
      return count === 0n ? arrangements(looped).reason : undefined;
    },
  };
}

function checkRules(rules: ArrangeRules): void {
  const refuse = (name: keyof ArrangeRules, why: string): never => {
    throw new RangeError(`${name} is ${JSON.stringify(rules[name])}; ${why}`);
  };
  for (const name of OF_PLACE)
    if (isAsked(rules[name])) refuse(name, 'no rule of places, where orders are the same up to rotation');
  if (rules.lead === 'alternating') refuse('lead', 'written or left, where orders are the same up to rotation');
  if (rules.loop === false) refuse('loop', 'true, where orders are the same up to rotation');
}

const isAsked = (rule: unknown): boolean =>
  Array.isArray(rule) ? rule.length > 0 : rule !== undefined && rule !== false;

/**
 * Burnside's count (Cauchy and Frobenius): for n cells, the mean over all n turns of how many orders each turn leaves as they
 * are. A turn that does so d-fold leaves the orders that are d times the same shorter loop, and φ(d) turns are d-fold.
 */
function countLoops(request: ArrangeRequest): bigint {
  // No cells, and no turns of them: nothing is the one way to fill nothing, where no cell must be used.
  if (request.slots === 0) return arrangements(request).count;
  checkLoop(request.slots, 0);
  const fixed: bigint[] = [];
  for (const d of divisorsOf(request.slots))
    byCells(partOf(request, d)).forEach((ways, n) => {
      fixed[n * d] = (fixed[n * d] ?? 0n) + BigInt(totient(d)) * ways;
    });
  return fixed.reduce((sum, ways, n) => sum + (n > 0 ? ways / BigInt(n) : 0n), 0n);
}

const divisorsOf = (n: number): number[] => Array.from({ length: n }, (_, i) => i + 1).filter((d) => n % d === 0);

/** How many numbers from 1 to n have no divisor in common with it. */
function totient(n: number): number {
  const coprime = (a: number, b: number): boolean => (b === 0 ? a === 1 : coprime(b, a % b));
  return Array.from({ length: n }, (_, i) => i + 1).filter((a) => coprime(a, n)).length;
}

/**
 * The loop that, played d times, is as long as the whole and uses each cell as often; its rules are the same ones. Nothing
 * where a cell cannot be used so often.
 */
function partOf(request: ArrangeRequest, d: number): ArrangeRequest | undefined {
  const uses = request.cells.map((cell) => usesOf(cell));
  const parts = uses.map(({ min, max }) => ({ min: Math.ceil(min / d), max: Math.floor(max / d) }));
  if (parts.some(({ min, max }) => min > max)) return undefined;
  const cells = request.cells.map((cell, i): ArrangeCell => ({ ...cell, times: parts[i] }));
  return { ...request, cells, slots: request.slots / d };
}

/** How many orders there are of each number of cells: forward over the states, each forgotten once it is left. */
function byCells(request: ArrangeRequest | undefined): bigint[] {
  if (!request) return [];
  const { cells, size, next, layers, ends } = statesOf(request);
  checkLoop(request.slots, size);
  const ways = new Map([[0, [1n]]]);
  for (const layer of layers.slice(0, -1))
    for (const state of layer) {
      const here = ways.get(state)!;
      ways.delete(state);
      for (let at = state * cells; at < (state + 1) * cells; at += 1)
        if (next[at] > 0) ways.set(next[at], onward(here, ways.get(next[at])));
    }
  return layers[layers.length - 1].filter(ends).reduce((sum: bigint[], state) => added(sum, ways.get(state)!), []);
}

const added = (into: bigint[], more: readonly bigint[]): bigint[] => {
  more.forEach((n, i) => (into[i] = (into[i] ?? 0n) + n));
  return into;
};

/** One cell more than here, added to what came from elsewhere. */
const onward = (here: readonly bigint[], known: bigint[] = []): bigint[] => added(known, [0n, ...here]);

/**
 * The orders that come first among their rotations, in order: each begins with nothing greater than any later stretch of
 * it, so a cell that would make a smaller stretch is not tried (the rule of Fredricksen, Kessler and Maiorana, 1978).
 */
function* representatives(request: ArrangeRequest, counter: Counter): Generator<string[], undefined> {
  const { cells } = request;
  if (!counter.isOpen(counter.start)) return;
  const path: Ring[] = [{ state: counter.start, cell: -1, period: 1 }];
  while (path.length) {
    const here = path[path.length - 1];
    const laid = path.length - 1;
    const least = laid === 0 ? 0 : path[laid - here.period].cell;
    const full = counter.isFull(here.state);
    if (full && laid % here.period === 0) yield path.slice(0, laid).map(({ cell }) => cells[cell].id);
    here.cell = Math.max(here.cell + 1, least);
    if (full || here.cell >= cells.length) path.pop();
    else {
      const state = counter.next(here.state, here.cell);
      const period = laid === 0 || here.cell !== least ? laid + 1 : here.period;
      if (state >= 0 && counter.isOpen(state)) path.push({ state, cell: -1, period });
    }
  }
}

/** A place in the ring: where the phrase stands, the cell chosen there, and how long what repeats before it is. */
interface Ring {
  state: number;
  cell: number;
  period: number;
}
