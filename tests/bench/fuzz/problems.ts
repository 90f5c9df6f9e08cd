import { arrangements, type ArrangeRequest } from '../../../src/core/index.ts';
import { attackOf, between, pick } from './attack.ts';

/** Small problems of cells, uses and rules, against all their orders tried one by one. */
export const problems = attackOf('arrangements', { short: 1_000, long: 100_000 }, (random, about) => {
  const request = problem(random);
  about(JSON.stringify(request));
  const all = everyOrder(request);
  const found = arrangements(request);
  if (found.count !== BigInt(all.length)) return `${found.count} orders, not ${all.length}`;
  if ((found.count === 0n) !== (found.reason !== undefined)) return `a reason for ${found.count} orders`;
  if ([...found].join('|') !== all.join('|')) return 'other orders, or in another order';
  const k = BigInt(between(random, 0, Math.max(0, all.length - 1)));
  if (all.length === 0) return found.indexOf([request.cells[0].id]) === -1n ? undefined : 'an order of none';
  if (found.at(k).join() !== all[Number(k)].join()) return `another order at ${k}`;
  if (found.indexOf(found.at(k)) !== k) return `${k} is found elsewhere`;
  return found.indexOf(found.sample(random)) >= 0n ? undefined : 'an order drawn that is none';
});

const IDS = ['a', 'b', 'c', 'd'];

function problem(random: () => number): ArrangeRequest {
  const ids = IDS.slice(0, between(random, 1, 4));
  const some = <T>(value: () => T): T | undefined => (random() < 0.25 ? value() : undefined);
  const pair = (): [string, string] => [pick(random, ids), pick(random, ids)];
  const cells = ids.map((id) => {
    const min = between(random, 0, 2);
    const times = pick(random, [undefined, undefined, { min, max: min + between(random, 0, 2) }, { max: 2 }, min]);
    return { id, slots: between(random, 1, 4), ...(times === undefined ? {} : { times }) };
  });
  const rules = {
    first: some(() => pick(random, ids)),
    last: some(() => pick(random, ids)),
    noJoins: some(() => [pair(), pair()]),
    withinBars: some(() => true),
    loop: some(() => true),
  };
  const slots = between(random, 0, 10);
  return { cells, slots, barSlots: between(random, 1, 6), rules: JSON.parse(JSON.stringify(rules)) };
}

/** All orders that fill the slots and keep to the rules, by cells as given. */
function everyOrder({ cells, slots, barSlots = 1, rules = {} }: ArrangeRequest): string[][] {
  const found: string[][] = [];
  const lay = (order: string[], at: number): void => {
    if (at === slots && keeps(order)) found.push(order);
    for (const { id, slots: length } of cells)
      if (at + length <= slots && (!rules.withinBars || (at % barSlots) + length <= barSlots))
        lay([...order, id], at + length);
  };
  const keeps = (order: string[]): boolean =>
    cells.every(({ id, times }) => {
      const uses = order.filter((one) => one === id).length;
      if (typeof times === 'number') return uses === times;
      return uses >= (times?.min ?? 0) && uses <= (times?.max ?? Infinity);
    }) && holds(order);
  const holds = (order: string[]): boolean => {
    if (order.length === 0) return true;
    const joins = order.slice(1).map((id, i) => [order[i], id]);
    if (rules.loop) joins.push([order[order.length - 1], order[0]]);
    const forbidden = (rules.noJoins ?? []).map((pair) => pair.join());
    return (
      (rules.first === undefined || order[0] === rules.first) &&
      (rules.last === undefined || order[order.length - 1] === rules.last) &&
      joins.every((pair) => !forbidden.includes(pair.join()))
    );
  };
  lay([], 0);
  return found;
}
