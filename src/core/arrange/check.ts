import { isObject, list, must, oneOf, whole } from '../check.ts';
import { checkSticking as checkOne } from '../sticking/check-sticking.ts';
import { LEADS } from '../phrase/types.ts';
import { slotCount } from '../sticking/expand.ts';
import type { ArrangeCell, ArrangeRequest, ArrangeRules } from './types.ts';

const RULES = [
  'first', 'last', 'accentOn', 'noAccentOn', 'lastStrokeOn', 'withinBars', 'noJoins', 'maxRun', 'graces', 'loop', 'lead',
]; // prettier-ignore
const LISTS = ['accentOn', 'noAccentOn', 'noJoins'] as const;
const SWITCHES = ['withinBars', 'graces', 'loop'] as const;
const USES = 'a whole number from 0, or the least and the most';

/** Refuses what is malformed: RangeError with the value and its limit. */
export function checkRequest(request: ArrangeRequest): void {
  must(isObject(request), 'what is asked for', request, 'an object of cells and slots');
  const { cells, slots, barSlots, mostStates, rules = {} } = request;
  list('cells', cells, 'cells');
  must(isObject(rules), 'rules', rules, 'an object of rules');
  whole('slots', slots, 0);
  if (barSlots !== undefined) whole('barSlots', barSlots, 1);
  if (mostStates !== undefined) whole('mostStates', mostStates, 1);
  cells.forEach(checkCell);
  const ids = cells.map((c) => c.id);
  const seen = new Set<string>();
  const twice = ids.find((id) => seen.has(id) || !seen.add(id));
  must(twice === undefined, 'cell id', twice, 'each id stands once');
  checkRules(rules, ids, slots, barSlots);
  cells.forEach((cell) => checkSticking(cell, needsStickings(rules)));
}

function checkCell(cell: ArrangeCell): void {
  must(isObject(cell), 'cell', cell, 'an object of id and slots');
  must(typeof cell.id === 'string' && cell.id !== '', 'cell id', cell.id, 'a text that is not empty');
  whole(`slots of "${cell.id}"`, cell.slots, 1);
  const times: unknown = cell.times;
  must(times === undefined || typeof times === 'number' || isObject(times), `times of "${cell.id}"`, times, USES);
  if (isObject(times))
    for (const key of Object.keys(times as object)) oneOf(`limit of "${cell.id}"`, key, ['min', 'max']);
  const { min, max } = usesOf(cell);
  whole(`least times of "${cell.id}"`, min, 0);
  if (max !== Infinity) whole(`most times of "${cell.id}"`, max, 0);
  must(min <= max, `least times of "${cell.id}"`, min, `at most ${max}, its most times`);
}

/** How often a cell may be used. */
export function usesOf({ times }: ArrangeCell): { min: number; max: number } {
  if (typeof times === 'number') return { min: times, max: times };
  return { min: times?.min ?? 0, max: times?.max ?? Infinity };
}

const isId = (id: unknown): boolean => typeof id === 'string';

function checkRules(rules: ArrangeRules, ids: string[], slots: number, barSlots?: number): void {
  for (const name of Object.keys(rules)) oneOf('rule', name, RULES);
  for (const name of LISTS) must(rules[name] === undefined || Array.isArray(rules[name]), name, rules[name], 'a list');
  for (const name of SWITCHES)
    must(rules[name] === undefined || typeof rules[name] === 'boolean', name, rules[name], 'true or false');
  for (const pair of rules.noJoins ?? [])
    must(Array.isArray(pair) && pair.length === 2 && pair.every(isId), 'pair in noJoins', pair, 'two ids');
  const named = [rules.first, rules.last, ...(rules.noJoins ?? []).flat()].filter((id) => id !== undefined);
  const known = new Set(ids);
  for (const id of named) if (!known.has(id)) must(false, 'cell in a rule', id, `one of ${ids.join(', ') || 'none'}`);
  const inside = slots > 0 ? `0 to ${slots - 1}` : 'none, where there are no slots';
  for (const slot of placesIn(rules))
    must(Number.isInteger(slot) && slot >= 0 && slot < slots, 'slot in a rule', slot, inside);
  if (rules.withinBars)
    must(barSlots !== undefined, 'barSlots', barSlots, 'a whole number, where no cell may cross a bar line');
  if (rules.maxRun !== undefined) whole('maxRun', rules.maxRun, 1);
  if (rules.lead !== undefined) oneOf('lead', rules.lead, LEADS);
}

/** The slots that rules name. */
const placesIn = ({ accentOn = [], noAccentOn = [], lastStrokeOn }: ArrangeRules): readonly number[] => [
  ...accentOn,
  ...noAccentOn,
  ...(lastStrokeOn === undefined ? [] : [lastStrokeOn]),
];

/** Whether a rule looks at strokes. */
export function needsStickings({ accentOn, noAccentOn, lastStrokeOn, maxRun }: ArrangeRules): boolean {
  const listed = (list?: readonly number[]): boolean => (list?.length ?? 0) > 0;
  return listed(accentOn) || listed(noAccentOn) || lastStrokeOn !== undefined || maxRun !== undefined;
}

function checkSticking(cell: ArrangeCell, needed: boolean): void {
  const { sticking } = cell;
  const name = `sticking of "${cell.id}"`;
  must(!needed || sticking !== undefined, name, sticking, 'a sticking, which a rule needs');
  if (sticking === undefined) return;
  checkOne(sticking, name);
  const slots = slotCount(sticking.hands);
  must(slots === cell.slots, `slots of "${cell.id}"`, cell.slots, `${slots}, as its sticking has`);
}
