import { slotCount } from '../sticking/expand.ts';
import type { ArrangeCell, ArrangeRequest, ArrangeRules } from './types.ts';

const LEADS = ['written', 'left', 'alternating'];
const RULES = [
  'first', 'last', 'accentOn', 'noAccentOn', 'lastStrokeOn', 'withinBars', 'noJoins', 'maxRun', 'graces', 'loop', 'lead',
]; // prettier-ignore
const LISTS = ['accentOn', 'noAccentOn', 'noJoins'] as const;
const SWITCHES = ['withinBars', 'graces', 'loop'] as const;
const USES = 'a whole number from 0, or the least and the most';

const isObject = (x: unknown): boolean => typeof x === 'object' && x !== null && !Array.isArray(x);
const whole = (n: unknown, from: number): boolean => Number.isSafeInteger(n) && (n as number) >= from;

function must(holds: boolean, name: string, value: unknown, limit: string): void {
  if (!holds) throw new RangeError(`${name} is ${typeof value === 'string' ? `"${value}"` : String(value)}; ${limit}`);
}

/** Refuses what is malformed: RangeError with the value and its limit. */
export function checkRequest(request: ArrangeRequest): void {
  must(isObject(request), 'what is asked for', request, 'an object of cells and slots');
  const { cells, slots, barSlots, mostStates, rules = {} } = request;
  must(Array.isArray(cells), 'cells', cells, 'a list of cells');
  must(isObject(rules), 'rules', rules, 'an object of rules');
  must(whole(slots, 0), 'slots', slots, 'a whole number from 0');
  if (barSlots !== undefined) must(whole(barSlots, 1), 'barSlots', barSlots, 'a whole number from 1');
  if (mostStates !== undefined) must(whole(mostStates, 1), 'mostStates', mostStates, 'a whole number from 1');
  cells.forEach(checkCell);
  const ids = cells.map((c) => c.id);
  const twice = ids.find((id, i) => ids.indexOf(id) !== i);
  must(twice === undefined, 'cell id', twice, 'each id stands once');
  checkRules(rules, ids, slots, barSlots);
  cells.forEach((cell) => checkSticking(cell, needsStickings(rules)));
}

function checkCell(cell: ArrangeCell): void {
  must(isObject(cell), 'cell', cell, 'an object of id and slots');
  must(typeof cell.id === 'string' && cell.id !== '', 'cell id', cell.id, 'a text that is not empty');
  must(whole(cell.slots, 1), `slots of "${cell.id}"`, cell.slots, 'a whole number from 1');
  const times: unknown = cell.times;
  must(times === undefined || typeof times === 'number' || isObject(times), `times of "${cell.id}"`, times, USES);
  const { min, max } = usesOf(cell);
  must(whole(min, 0), `least times of "${cell.id}"`, min, 'a whole number from 0');
  must(max === Infinity || whole(max, 0), `most times of "${cell.id}"`, max, 'a whole number from 0');
  must(min <= max, `least times of "${cell.id}"`, min, `at most ${max}, its most times`);
}

/** How often a cell may be used. */
export function usesOf({ times }: ArrangeCell): { min: number; max: number } {
  if (typeof times === 'number') return { min: times, max: times };
  return { min: times?.min ?? 0, max: times?.max ?? Infinity };
}

function checkRules(rules: ArrangeRules, ids: string[], slots: number, barSlots?: number): void {
  const unknown = Object.keys(rules).find((name) => !RULES.includes(name));
  must(unknown === undefined, 'rule', unknown, `one of ${RULES.join(', ')}`);
  for (const name of LISTS) must(rules[name] === undefined || Array.isArray(rules[name]), name, rules[name], 'a list');
  for (const name of SWITCHES)
    must(rules[name] === undefined || typeof rules[name] === 'boolean', name, rules[name], 'true or false');
  for (const pair of rules.noJoins ?? [])
    must(Array.isArray(pair) && pair.length === 2, 'pair in noJoins', pair, 'two ids');
  const named = [rules.first, rules.last, ...(rules.noJoins ?? []).flat()].filter((id) => id !== undefined);
  for (const id of named) must(ids.includes(id), 'cell in a rule', id, `one of ${ids.join(', ') || 'none'}`);
  const places = [...(rules.accentOn ?? []), ...(rules.noAccentOn ?? []), ...[rules.lastStrokeOn ?? []].flat()];
  for (const slot of places) must(whole(slot, 0) && slot < slots, 'slot in a rule', slot, `0 to ${slots - 1}`);
  if (rules.withinBars)
    must(barSlots !== undefined, 'barSlots', barSlots, 'a whole number, where no cell may cross a bar line');
  if (rules.maxRun !== undefined) must(whole(rules.maxRun, 1), 'maxRun', rules.maxRun, 'a whole number from 1');
  if (rules.lead !== undefined) must(LEADS.includes(rules.lead), 'lead', rules.lead, `one of ${LEADS.join(', ')}`);
}

/** Whether a rule looks at strokes. */
export function needsStickings({ accentOn, noAccentOn, lastStrokeOn, maxRun }: ArrangeRules): boolean {
  const listed = (list?: readonly number[]): boolean => (list?.length ?? 0) > 0;
  return listed(accentOn) || listed(noAccentOn) || lastStrokeOn !== undefined || maxRun !== undefined;
}

function checkSticking(cell: ArrangeCell, needed: boolean): void {
  must(
    !needed || cell.sticking !== undefined,
    `sticking of "${cell.id}"`,
    cell.sticking,
    'a sticking, which a rule needs',
  );
  if (cell.sticking === undefined) return;
  const slots = slotCount(cell.sticking.hands);
  must(slots === cell.slots, `slots of "${cell.id}"`, cell.slots, `${slots}, as its sticking has`);
}
