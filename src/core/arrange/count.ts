import { usesOf } from './check.ts';
import type { Joins } from './joins.ts';
import type { Fits } from './places.ts';
import type { ArrangeRequest } from './types.ts';

/** The most states that are counted before a problem is refused as too large. */
export const MAX_STATES = 2_000_000;

/** Where a phrase stands while it is laid: slots laid, uses so far (as one number), memory of joins. */
export interface State {
  slot: number;
  uses: number;
  memory: number;
}

/** Counts completions from any state that can be reached. */
export interface Counter {
  start: State;
  /** The state after one more cell, or nothing where a rule or the slots forbid it. */
  after(state: State, cell: number): State | undefined;
  /** How many ways there are to complete the phrase from here. */
  ways(state: State): bigint;
}

/** How uses are counted: each cell whose number of uses is limited has a digit. */
export interface Tally {
  /** Uses after one more of a cell; -1 where it is used up. */
  add(uses: number, cell: number): number;
  /** Whether every cell has been used often enough. */
  enough(uses: number): boolean;
  /** Whether any cell is limited. */
  limited: boolean;
}

/** A cell needs a digit only where its limits bind in so many slots; with no upper limit it stops at its least. */
export function tallyOf({ cells, slots }: ArrangeRequest): Tally {
  let place = 1;
  const digits = cells.map((cell) => {
    const { min, max } = usesOf(cell);
    const binds = max < Math.floor(slots / cell.slots);
    const top = binds ? max : min;
    const digit = { place, top, min, binds };
    place *= top + 1;
    return digit;
  });
  if (place > Number.MAX_SAFE_INTEGER) throw tooLarge();
  const used = (uses: number, { place: at, top }: (typeof digits)[number]): number => Math.floor(uses / at) % (top + 1);
  return {
    limited: digits.some((d) => d.top > 0 || d.binds),
    add: (uses, cell) => {
      const digit = digits[cell];
      if (used(uses, digit) < digit.top) return uses + digit.place;
      return digit.binds ? -1 : uses;
    },
    enough: (uses) => digits.every((d) => used(uses, d) >= d.min),
  };
}

const tooLarge = (): RangeError =>
  new RangeError(
    `the states are more than ${MAX_STATES.toLocaleString('en')}; fewer cells, slots or limits can be counted`,
  );

/** Counts by states: forward to find the ones that can be reached, backward to count from each. */
export function countByStates(request: ArrangeRequest, tally: Tally, fits: Fits, joins: Joins): Counter {
  const { cells, slots } = request;
  const start: State = { slot: 0, uses: 0, memory: 0 };
  const after = ({ slot, uses, memory }: State, cell: number): State | undefined => {
    const end = slot + cells[cell].slots;
    if (end > slots || !fits(cell, slot)) return undefined;
    const tallied = tally.add(uses, cell);
    if (tallied < 0) return undefined;
    const next = joins.next(memory, cell);
    return next < 0 ? undefined : { slot: end, uses: tallied, memory: next };
  };
  const layers = reach(request, start, after);
  const counted = countBack(
    layers,
    cells.length,
    after,
    (state) => tally.enough(state.uses) && joins.closes(state.memory),
  );
  return { start, after, ways: (state) => counted[state.slot].get(state.uses)?.get(state.memory) ?? 0n };
}

/** For each slot the states that stand there, by uses and memory. */
type Layer<T> = Map<number, Map<number, T>>;

function put<T>(layer: Layer<T>, state: State, value: T): boolean {
  let row = layer.get(state.uses);
  if (!row) layer.set(state.uses, (row = new Map()));
  if (row.has(state.memory)) return false;
  row.set(state.memory, value);
  return true;
}

function reach(
  { cells, slots }: ArrangeRequest,
  start: State,
  after: (state: State, cell: number) => State | undefined,
): Layer<State>[] {
  const layers = Array.from({ length: slots + 1 }, (): Layer<State> => new Map());
  put(layers[0], start, start);
  let states = 1;
  for (const layer of layers)
    for (const row of layer.values())
      for (const state of row.values())
        for (let cell = 0; cell < cells.length; cell += 1) {
          const next = after(state, cell);
          if (next && put(layers[next.slot], next, next) && (states += 1) > MAX_STATES) throw tooLarge();
        }
  return layers;
}

function countBack(
  layers: Layer<State>[],
  cells: number,
  after: (state: State, cell: number) => State | undefined,
  closes: (state: State) => boolean,
): Layer<bigint>[] {
  const counted = layers.map((): Layer<bigint> => new Map());
  const last = layers.length - 1;
  for (let slot = last; slot >= 0; slot -= 1)
    for (const row of layers[slot].values())
      for (const state of row.values()) {
        let ways = slot === last && closes(state) ? 1n : 0n;
        for (let cell = 0; cell < cells; cell += 1) {
          const next = after(state, cell);
          if (next) ways += counted[next.slot].get(next.uses)?.get(next.memory) ?? 0n;
        }
        if (ways > 0n) put(counted[slot], state, ways);
      }
  return counted;
}
