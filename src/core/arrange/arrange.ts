import { ids as checkIds, must } from '../check.ts';
import { checkRequest, needsStickings } from './check.ts';
import type { Counter } from './walk.ts';
import { countPlain } from './count-plain.ts';
import { countByStates } from './count-states.ts';
import { countByTypes } from './count-types.ts';
import { hasJoins, joinsOf } from './joins.ts';
import { MAX_STATES, mostOf } from './limits.ts';
import { hasPlaces, placesOf } from './places.ts';
import { profileOf } from './profile.ts';
import { reasonOf } from './reason.ts';
import { explore, type Machine, type States } from './states.ts';
import { tallyOf, type Tally } from './tally.ts';
import type { ArrangeRequest, Arrangements } from './types.ts';
import { below, each, indexOf, nth } from './walk.ts';

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

/** Up to so many uses they are counted one by one, because each order is then found more quickly. */
const MANY_USES = 20_000;

function counterOf(request: ArrangeRequest): Counter {
  const tally = tallyOf(request);
  const ordered = hasPlaces(request) || hasJoins(request);
  if (!ordered && !tally.limited)
    return countPlain(
      request.cells.map((cell) => cell.slots),
      request.slots,
    );
  // By types a state costs as much as thousands of the others: they are no way round a low limit.
  if (!ordered && tally.size > MANY_USES && mostOf(request, MAX_STATES) >= MANY_USES) return countByTypes(request);
  return countByStates(statesOf(request, tally));
}

/** All states that the rules of a request can lead through. */
export const statesOf = (request: ArrangeRequest, tally?: Tally): States =>
  explore(request, machineFor(request, tally));

/** Uses, places and joins as a request has them. */
export function machineFor(request: ArrangeRequest, tally: Tally = tallyOf(request)): Machine {
  const { cells, rules = {} } = request;
  const graces = rules.graces ?? false;
  const profiles = cells.map((c) => (needsStickings(rules) ? profileOf(c.sticking!, graces) : undefined));
  return { tally, fits: placesOf(request, profiles), joins: joinsOf(request, profiles) };
}

function arranged(request: ArrangeRequest, counter: Counter): Arrangements {
  const { cells } = request;
  const { count } = counter;
  const numbers = new Map(cells.map((cell, i) => [cell.id, i]));
  const ids = cells.map((cell) => cell.id);
  const idsOf = (path: number[]): string[] => path.map((cell) => ids[cell]);
  let reason: string | undefined;
  return {
    count,
    at: (k) => {
      must(typeof k === 'bigint', 'k', k, 'a bigint');
      must(k >= 0n && k < count, 'k', k, `0 to below ${count}`);
      return idsOf(nth(counter, cells.length, k));
    },
    indexOf: (order) => {
      checkIds('order', order);
      const path = order.map((id) => numbers.get(id) ?? -1);
      return indexOf(counter, path);
    },
    sample: (random) => {
      must(typeof random === 'function', 'random', random, 'a source of numbers from 0 to below 1');
      must(count > 0n, 'count', count, 'at least one to choose from');
      return idsOf(nth(counter, cells.length, below(count, random)));
    },
    [Symbol.iterator]: () => each(counter, ids),
    get reason() {
      return count === 0n ? (reason ??= reasonOf(request, (asked) => counterOf(asked).count)) : undefined;
    },
  };
}
