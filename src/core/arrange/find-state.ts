import { tooLarge } from './limits.ts';

/** How states are told apart. */
export interface Finder {
  /** Finds the number of a state, or gives it the next one. */
  find(slot: number, uses: number, memory: number, fresh: number): number;
  /** Forgets the states of a slot, when no further one can come to stand there. */
  leave(slot: number): void;
}

/** Up to so many keys a state is looked up by its place in a table, beyond by a hash. */
const TABLE = 2 ** 18;

/** A finder of states with so many numbers of uses and of memories. */
export function finder(slots: number, tally: number, memories: number): Finder {
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
