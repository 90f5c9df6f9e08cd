/** The rules of a bar to be, as they are typed: `2-3,3-3` are joins that must not be, first cell and next by their rows. */
import { slotsOfCounts } from '../../core/index.ts';
import type { ArrangeRules, Grid, Lead, MeterText } from '../../core/index.ts';
import { apartSays, joinsFault, leadFault, rulesSay } from '../../words/bar-math-orders.ts';
import { COUNTING } from '../../words/site.ts';
import type { Reading } from '../read.ts';
import type { Inputs } from '../types.ts';

/** The fields of the rules, as the address has them. */
export const RULE_FIELDS = [
  'first',
  'last',
  'accents',
  'quiet',
  'end',
  'run',
  'graces',
  'within',
  'joins',
  'lead',
  'loop',
] as const;

/** What rules are read against. */
export interface RuleContext {
  rows: number;
  bars: number;
  meter: MeterText;
  grid: Grid;
  barSlots: number;
}

/** The most joins that are forbidden one by one. */
export const MOST_JOINS = 8;

/** A join by the rows of its two cells, from 1. */
export type Join = readonly [before: number, after: number];

/**
 * Reads joins; what is none is left out.
 *
 * @example readJoins('2-3,3-3') // [[2, 3], [3, 3]]
 */
export function readJoins(text: string): Join[] {
  const found = text.split(',').flatMap((pair): Join[] => {
    const [, before, after] = /^\s*(\d{1,2})-(\d{1,2})\s*$/.exec(pair) ?? [];
    return before ? [[Number(before), Number(after)]] : [];
  });
  return found.slice(0, MOST_JOINS);
}

/**
 * Writes joins.
 *
 * @example writeJoins([[2, 3], [3, 3]]) // '2-3,3-3'
 */
export const writeJoins = (joins: readonly Join[]): string => joins.map((pair) => pair.join('-')).join(',');

/** What becomes of the rules where a row of cells is taken away: those that name it go, those after it move up. */
export function withoutRow(inputs: Inputs, row: number): Inputs {
  const moved = (named: number): number | undefined => (named === row ? undefined : named > row ? named - 1 : named);
  const one = (text: string): string => (/^\d+$/.test(text) ? String(moved(Number(text)) ?? '') : text);
  const joins = readJoins(inputs.joins).flatMap(([a, b]): Join[] => {
    const [before, after] = [moved(a), moved(b)];
    return before && after ? [[before, after]] : [];
  });
  return { first: one(inputs.first), last: one(inputs.last), joins: writeJoins(joins) };
}

/** The rules that are set. Counts hold in every bar; the last stroke is the last bar's. */
export function rulesOf(inputs: Inputs, read: Reading, context: RuleContext): ArrangeRules {
  const { bars, barSlots, meter, grid } = context;
  const counts = (field: string): number[] =>
    read.take(field, 'slots', slotsOfCounts(meter, grid, inputs[field] ?? '', COUNTING)) ?? [];
  const everyBar = (slots: number[]) =>
    Array.from({ length: bars }, (_, bar) => slots.map((slot) => slot + bar * barSlots)).flat();
  const [accents, quiet, [end]] = [counts('accents'), counts('quiet'), counts('end')];
  const lead = leadOf(inputs, read);
  const joins = joinsOf(inputs, read, context);
  return {
    ...rowRule(inputs, read, 'first', context),
    ...rowRule(inputs, read, 'last', context),
    ...(accents.length ? { accentOn: everyBar(accents) } : {}),
    ...(quiet.length ? { noAccentOn: everyBar(quiet) } : {}),
    ...(end === undefined ? {} : { lastStrokeOn: end + (bars - 1) * barSlots }),
    ...runRule(inputs, read),
    ...(inputs.within === 'yes' ? { withinBars: true } : {}),
    ...(joins.length ? { noJoins: joins } : {}),
    ...(inputs.loop === 'yes' ? { loop: true } : {}),
    ...(lead === 'written' ? {} : { lead }),
  };
}

/** Whether a rule keeps orders out; lead and loop alone keep out none. */
export const isRuled = ({ lead: _lead, loop: _loop, ...rules }: ArrangeRules): boolean => Object.keys(rules).length > 0;

function runRule(inputs: Inputs, read: Reading): ArrangeRules {
  const run = inputs.run ? read.whole('run', 1, 8) : undefined;
  return run ? { maxRun: run, ...(inputs.graces === 'yes' ? { graces: true } : {}) } : {};
}

function leadOf({ lead }: Inputs, read: Reading): Lead {
  if (lead === 'left' || lead === 'alternating') return lead;
  if (lead.trim()) read.refuse('lead', leadFault(lead.trim()));
  return 'written';
}

/** A rule that names a cell names it by its row, from 1. */
function rowRule(inputs: Inputs, read: Reading, field: 'first' | 'last', { rows }: RuleContext) {
  if (!inputs[field]) return {};
  const row = read.whole(field, 1, rows);
  return row ? { [field]: idOfRow(row) } : {};
}

function joinsOf({ joins }: Inputs, read: Reading, { rows }: RuleContext): [string, string][] {
  const pairs = readJoins(joins);
  const sound = pairs.every((pair) => pair.every((row) => row >= 1 && row <= rows));
  if (joins.trim() && (!sound || writeJoins(pairs) !== joins.trim()))
    read.refuse('joins', joinsFault(joins.trim(), rows));
  return sound ? pairs.map(([before, after]) => [idOfRow(before), idOfRow(after)]) : [];
}

/** The id of a cell is its row, from 0. */
const idOfRow = (row: number): string => String(row - 1);

/** The rules that are set, in a sentence; the cells have their names row by row. */
export function rulesSaid(inputs: Inputs, names: readonly string[]): string {
  const apart = apartSays(names);
  const nameOf = (row: string | number): string => apart[Number(row) - 1] ?? '';
  return rulesSay({
    first: nameOf(inputs.first),
    last: nameOf(inputs.last),
    accents: inputs.accents.trim(),
    quiet: inputs.quiet.trim(),
    end: inputs.end.trim(),
    run: inputs.run,
    graces: inputs.graces === 'yes',
    within: inputs.within === 'yes',
    joins: readJoins(inputs.joins).map(([before, after]) => [nameOf(before), nameOf(after)]),
    lead: inputs.lead,
    loop: inputs.loop === 'yes',
  });
}
