import { checkRequest, needsStickings } from './check.ts';
import { countByStates, tallyOf, type Counter, type State } from './count.ts';
import { countByTypes } from './count-types.ts';
import { hasJoins, joinsOf } from './joins.ts';
import { hasPlaces, placesOf } from './places.ts';
import { profileOf } from './profile.ts';
import { reasonOf } from './reason.ts';
import type { ArrangeRequest, Arrangements } from './types.ts';

/**
 * All orders of cells that fill the slots and keep to the rules, without listing them. Throws RangeError for malformed
 * input and for problems of more states than can be counted.
 * @example
 * arrangements({ cells: [{ id: 'a', slots: 1 }, { id: 'b', slots: 2 }], slots: 4 }).count // → 5n
 * arrangements({ cells: [{ id: 'a', slots: 3 }, { id: 'b', slots: 5 }], slots: 7 }).reason // → 'cells of 3 and 5 cannot fill 7'
 */
export function arrangements(request: ArrangeRequest): Arrangements {
  checkRequest(request);
  return arranged(request, counterOf(request));
}

function counterOf(request: ArrangeRequest): Counter {
  const tally = tallyOf(request);
  const plain = !hasPlaces(request) && !hasJoins(request);
  if (plain && tally.limited) return countByTypes(request);
  const { cells, rules = {} } = request;
  const graces = rules.graces ?? false;
  const profiles = cells.map((c) => (needsStickings(rules) ? profileOf(c.sticking!, graces) : undefined));
  return countByStates(request, tally, placesOf(request, profiles), joinsOf(request, profiles));
}

const countOf = (request: ArrangeRequest): bigint => {
  const counter = counterOf(request);
  return counter.ways(counter.start);
};

function arranged(request: ArrangeRequest, counter: Counter): Arrangements {
  const count = counter.ways(counter.start);
  const walk: Walk = { request, counter };
  let reason: string | undefined;
  return {
    count,
    at: (k) => {
      if (typeof k !== 'bigint' || k < 0n || k >= count) throw new RangeError(`k is ${k}; 0 to below ${count}`);
      return nth(walk, k);
    },
    indexOf: (ids) => indexOf(walk, ids),
    sample: (random) => {
      if (count === 0n) throw new RangeError(`count is 0; there is nothing to choose from`);
      return nth(walk, below(count, random));
    },
    [Symbol.iterator]: () => each(walk),
    get reason() {
      return count === 0n ? (reason ??= reasonOf(request, countOf)) : undefined;
    },
  };
}

interface Walk {
  request: ArrangeRequest;
  counter: Counter;
}

function nth({ request, counter }: Walk, k: bigint): string[] {
  const ids: string[] = [];
  let state = counter.start;
  let left = k;
  while (state.slot < request.slots) {
    const step = pick({ request, counter }, state, left);
    ids.push(request.cells[step.cell].id);
    state = step.state;
    left = step.left;
  }
  return ids;
}

function pick({ request, counter }: Walk, from: State, k: bigint): { cell: number; state: State; left: bigint } {
  let left = k;
  for (let cell = 0; cell < request.cells.length; cell += 1) {
    const state = counter.after(from, cell);
    const ways = state ? counter.ways(state) : 0n;
    if (left < ways) return { cell, state: state!, left };
    left -= ways;
  }
  throw new RangeError(`k is ${k}; beyond the ways from slot ${from.slot}`);
}

function indexOf({ request, counter }: Walk, ids: readonly string[]): bigint {
  let index = 0n;
  let state: State | undefined = counter.start;
  for (const id of ids) {
    const chosen = request.cells.findIndex((c) => c.id === id);
    if (chosen < 0) return -1n;
    for (let cell = 0; cell < chosen; cell += 1) {
      const other = counter.after(state, cell);
      if (other) index += counter.ways(other);
    }
    state = counter.after(state, chosen);
    if (!state || counter.ways(state) === 0n) return -1n;
  }
  return state.slot === request.slots && counter.ways(state) > 0n ? index : -1n;
}

/** So many random bits; a source that leaves 0 to below 1 would never let a draw end. */
function bitsOf(random: () => number, bits: number): bigint {
  const drawn = random();
  if (!(drawn >= 0 && drawn < 1)) throw new RangeError(`random gave ${drawn}; 0 to below 1`);
  return BigInt(Math.floor(drawn * 2 ** bits));
}

/** A fair number below a limit: as many random bits as it has, drawn again until they are below it. */
function below(limit: bigint, random: () => number): bigint {
  const bits = (limit - 1n).toString(2).length;
  for (;;) {
    let drawn = 0n;
    for (let got = 0; got < bits; got += 16) {
      const take = Math.min(16, bits - got);
      drawn = (drawn << BigInt(take)) | bitsOf(random, take);
    }
    if (drawn < limit) return drawn;
  }
}

/** All of them in order, each found from the one before by the last cell that can be changed. */
function* each({ request, counter }: Walk): Generator<string[], undefined> {
  const { cells, slots } = request;
  if (counter.ways(counter.start) === 0n) return;
  const path: { state: State; cell: number }[] = [{ state: counter.start, cell: -1 }];
  while (path.length) {
    const here = path[path.length - 1];
    if (here.state.slot === slots) {
      yield path.slice(0, -1).map((step) => cells[step.cell].id);
      path.pop();
      continue;
    }
    here.cell += 1;
    if (here.cell === cells.length) path.pop();
    else {
      const state = counter.after(here.state, here.cell);
      if (state && counter.ways(state) > 0n) path.push({ state, cell: -1 });
    }
  }
}
