import { MAX_STATES, mostOf, tooLarge } from './limits.ts';
import type { Joins } from './joins.ts';
import type { Fits } from './places.ts';
import type { Tally } from './tally.ts';
import type { ArrangeRequest } from './types.ts';

/** What a rule needs to know while a phrase is laid: uses so far, places, memory of joins. */
export interface Machine {
  tally: Tally;
  fits: Fits;
  joins: Joins;
}

/** Every state that can be reached, by number: slots laid, uses so far, memory of joins. */
export interface States {
  /** How many cells there are to choose from. */
  readonly cells: number;
  readonly size: number;
  /** `next[state * cells + cell]` is the state after one more cell; 0, the beginning, stands for none. */
  readonly next: Int32Array;
  /** The states that stand at each slot. */
  readonly layers: readonly (readonly number[])[];
  readonly slot: readonly number[];
  readonly memory: readonly number[];
  /** Whether the phrase may end in this state. */
  ends(state: number): boolean;
}

/**
 * All states that can be reached from an empty phrase and leave room for the least uses of every cell. Throws TooLarge
 * where there are more than `most`.
 */
export function explore(request: ArrangeRequest, machine: Machine, most = MAX_STATES): States {
  const { cells, slots } = request;
  if (slots > MAX_STATES) throw tooLarge();
  const { tally, fits, joins } = machine;
  const lengths = cells.map((cell) => cell.slots);
  const width = cells.length;
  const lookup = finder(slots, tally.size, joins.size);
  const found = listOfStates(width, slots, lookup, mostOf(request, most));
  found.number(0, 0, 0);
  // Where the least uses fill the phrase to its end, whatever fits leaves room for them.
  const debts = tally.owed > 0 && tally.owed !== slots ? [tally.owed] : undefined;
  for (let slot = 0; slot < slots; slot += 1) {
    for (const state of found.layers[slot])
      for (let cell = 0; cell < width; cell += 1) {
        const end = slot + lengths[cell];
        if (end > slots || !fits(cell, slot)) continue;
        const memory = joins.next(found.memory[state], cell);
        const uses = memory < 0 ? -1 : tally.add(found.uses[state], cell);
        if (uses < 0) continue;
        const debt = debts ? debts[state] - tally.pays(found.uses[state], cell) : 0;
        if (end + debt > slots) continue;
        const to = found.number(end, uses, memory);
        found.link(state * width + cell, to);
        if (debts) debts[to] = debt;
      }
    lookup.leave(slot);
  }
  const { uses, memory, slot, layers } = found;
  const ends = (state: number): boolean =>
    slot[state] === slots && tally.enough(uses[state]) && joins.closes(memory[state]);
  return { cells: width, size: slot.length, next: found.links(), layers, slot, memory, ends };
}

interface StateList {
  readonly slot: number[];
  readonly uses: number[];
  readonly memory: number[];
  readonly layers: number[][];
  /** The number of a state, which is new where it was not met before. */
  number(slot: number, uses: number, memory: number): number;
  link(from: number, to: number): void;
  links(): Int32Array;
}

function listOfStates(cells: number, slots: number, lookup: Finder, most: number): StateList {
  const [slot, uses, memory]: number[][] = [[], [], []];
  const layers = Array.from({ length: slots + 1 }, (): number[] => []);
  let next = new Int32Array(cells * 64);
  const number = (end: number, used: number, remembered: number): number => {
    const known = lookup.find(end, used, remembered, slot.length);
    if (known < slot.length) return known;
    if (known === most) throw tooLarge(most);
    slot.push(end);
    uses.push(used);
    memory.push(remembered);
    layers[end].push(known);
    if (slot.length * cells > next.length) next = withRoom(next, 2 * next.length);
    return known;
  };
  return { slot, uses, memory, layers, number, link: (at, to) => (next[at] = to), links: () => next };
}

function withRoom(array: Int32Array, length: number): Int32Array<ArrayBuffer> {
  const more = new Int32Array(length);
  more.set(array);
  return more;
}

/** How states are told apart. */
interface Finder {
  /** Finds the number of a state, or gives it the next one. */
  find(slot: number, uses: number, memory: number, fresh: number): number;
  /** Forgets the states of a slot, when no further one can come to stand there. */
  leave(slot: number): void;
}

/** Up to so many keys a state is looked up by its place in a table, beyond by a hash. */
const TABLE = 2 ** 18;

/** A finder of states with so many numbers of uses and of memories. */
function finder(slots: number, tally: number, memories: number): Finder {
  if (tally * memories > Number.MAX_SAFE_INTEGER) throw tooLarge();
  return (slots + 1) * tally * memories <= TABLE ? byPlace(slots, tally, memories) : byHash(slots, memories);
}

function byPlace(slots: number, tally: number, memories: number): Finder {
  const table = new Int32Array((slots + 1) * tally * memories);
  const find = (slot: number, uses: number, memory: number, fresh: number): number => {
    const key = (slot * tally + uses) * memories + memory;
    if (table[key] === 0) table[key] = fresh + 1;
    return table[key] - 1;
  };
  return { find, leave: () => undefined };
}

/** A table for each slot, small enough to stay near. */
function byHash(slots: number, memories: number): Finder {
  const tables: (Layer | undefined)[] = Array.from({ length: slots + 1 });
  return {
    find: (slot, uses, memory, fresh) => (tables[slot] ??= layer())(uses * memories + memory, fresh),
    leave: (slot) => (tables[slot] = undefined),
  };
}

type Layer = (key: number, fresh: number) => number;

/** Keys and numbers, each at the first free place from its hash on; at most half of the places are taken. */
function layer(): Layer {
  let keys = new Float64Array(64);
  let numbers = new Int32Array(64);
  let taken = 0;
  const placeOf = (key: number): number => {
    const mask = keys.length - 1;
    let at = hashOf(key) & mask;
    while (numbers[at] > 0 && keys[at] !== key) at = (at + 1) & mask;
    return at;
  };
  const grow = (): void => {
    const [oldKeys, oldNumbers] = [keys, numbers];
    keys = new Float64Array(2 * oldKeys.length);
    numbers = new Int32Array(2 * oldKeys.length);
    for (let i = 0; i < oldKeys.length; i += 1)
      if (oldNumbers[i] > 0) put(placeOf(oldKeys[i]), oldKeys[i], oldNumbers[i]);
  };
  const put = (at: number, key: number, number: number): void => {
    keys[at] = key;
    numbers[at] = number;
  };
  return (key, fresh) => {
    const at = placeOf(key);
    if (numbers[at] > 0) return numbers[at] - 1;
    put(at, key, fresh + 1);
    if (2 * (taken += 1) > keys.length) grow();
    return fresh;
  };
}

/** Mixes a key; it may be more than 32 bits. */
function hashOf(key: number): number {
  const mixed = Math.imul(key | 0, 0x9e3779b1) ^ Math.imul((key / 2 ** 32) | 0, 0x85ebca6b);
  const again = Math.imul(mixed ^ (mixed >>> 15), 0xc2b2ae35);
  return again ^ (again >>> 13);
}
