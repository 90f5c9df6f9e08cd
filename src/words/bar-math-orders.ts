/** What the calculator of orders says: its rules, which orders hands like, and ways from one order to others. */
import { slotNames } from '../core/time/slot-names.ts';
import type { Grid, MeterText } from '../core/time/units.ts';
import type { HandScore } from '../core/arrange/types.ts';
import { capital, sayBar, sayBars } from './grammar.ts';
import { figures, many, spell } from './numbers.ts';

/** The labels of the calculator of orders. */
export const ORDER_LABELS = sayBars({
  rarer: 'Rarer rules',
  dropRules: 'Drop all rules',
  never: 'never',
  rightBefore: 'right before',
  join: 'forbidden join',
  addJoin: 'Forbid a join',
  takeJoin: 'Allow it again',
  lead: 'who leads',
  written: 'as written',
  left: 'left, all mirrored',
  alternating: 'in turn, cell by cell',
  loop: 'the bar goes round: its end meets its beginning',
  liked: 'Which do the hands like?',
  score:
    'The measure is ours. First counts the longest run of one hand, grace notes included; then at how many joins the same hand goes on; then the tightest gap. What a hand has practiced it likes better than any measure says.',
  easiest: 'The easiest',
  hardest: 'The hardest',
  inOrder: 'All of them, the easiest first',
  near: 'One swap away',
  practice: 'A row to practice',
  keep: 'Keep it to practice',
  takeOut: 'Take it out',
  takeFromRow: 'Take it out of the row',
  five: 'The five easiest of these cells',
  between: 'Lay the steps between',
  empty: 'Take them all out',
  loops: 'The same loop, begun elsewhere',
  play: 'Play',
  stop: 'Stop',
  shown: 'on the ruler',
});

/** Those labels. */
export type OrderLabels = typeof ORDER_LABELS;

/** The rules that are set, each as it was typed or chosen; cells by their names. */
export interface RulesSaid {
  first?: string | undefined;
  last?: string | undefined;
  accents: string;
  quiet: string;
  end: string;
  run: string;
  graces: boolean;
  within: boolean;
  joins: readonly (readonly [before: string, after: string])[];
  lead: string;
  loop: boolean;
}

const LEAD_SAYS: Record<string, string> = { left: 'the left hand leads', alternating: 'the hands lead in turn' };

/**
 * The rules in one sentence; nothing where there are none.
 *
 * @example rulesSay({ first: 'kick', accents: '', quiet: '', end: '', run: '2', graces: true, within: false, joins: [], lead: '', loop: false }) // 'Rules: kick first; at most two in a row by one hand, grace notes counted.'
 */
export function rulesSay(rules: RulesSaid): string {
  const run =
    rules.run && `at most ${/^\d+$/.test(rules.run) ? spell(Number(rules.run)) : rules.run} in a row by one hand`;
  const said = [
    rules.first && `${rules.first} first`,
    rules.last && `${rules.last} last`,
    rules.accents && `accents on ${rules.accents}`,
    rules.quiet && `no accent on ${rules.quiet}`,
    rules.end && `the last stroke on ${rules.end}`,
    run && `${run}${rules.graces ? ', grace notes counted' : ''}`,
    rules.within && 'no cell over a bar line',
    ...rules.joins.map(([before, after]) => `no ${before} right before ${after}`),
    LEAD_SAYS[rules.lead],
    rules.loop && 'round and round',
  ].filter(Boolean);
  return said.length ? `Rules: ${said.join('; ')}.` : '';
}

/** Why a lead cannot stand there. */
export const leadFault = (typed: string): string => `“${typed}” cannot stand here: left, alternating or nothing can.`;

/** Why a cell cannot be used that often. */
export const usesFault = (typed: string): string => `“${typed}” cannot stand here: 3, 1-4, 2+ or any can.`;

/** Why joins cannot stand there. */
export const joinsFault = (typed: string, rows: number): string =>
  `“${typed}” cannot stand here: pairs of cells by their number, 1 to ${rows}, such as 1-1, can.`;

/** The rules may be folded away: what is wrong with one is said in the open too. */
export const ruleFaultSays = (field: string | undefined, faults: Record<string, { says: string }>): string =>
  field ? `One of the rules cannot be kept. ${faults[field].says}` : '';

/** Why a problem is not counted. */
export const tooManySays = (states: number): string =>
  sayBar(
    `This is too much to count here: with so many cells, limits and rules there are more than ${figures(states)} half-laid bars to tell apart. Fewer bars, fewer cells with a limit of their own or fewer rules can be counted.`,
  );

/** Why nothing is ranked. */
export const tooManyToRank = (): string =>
  'Too many orders differ for the hands here to be looked through. Fewer cells, or a limit on how often each is used, can be.';

/** Core's names of rules are not a drummer's. */
const RULE_WORDS: Record<string, string> = {
  accentOn: 'the accents',
  noAccentOn: 'the places without an accent',
  lastStrokeOn: 'the last stroke',
  withinBars: 'the bar lines',
  maxRun: 'so few in a row by one hand',
  graces: 'the grace notes',
  first: 'the first cell',
  last: 'the last cell',
  noJoins: 'the forbidden joins',
  lead: 'the lead',
  loop: 'the way round',
};

/** Why there is no order at all, in a drummer's words. */
export const reasonSays = (reason: string): string => reason.replace(/\w+/g, (word) => RULE_WORDS[word] ?? word);

/** A part of a slot or some slots: "half a sixteenth". */
function gapSays(gap: number, { one, many: more }: { one: string; many: string }): string {
  if (gap === 0.5) return `half ${/^[aeiou]/.test(one) ? 'an' : 'a'} ${one}`;
  if (Number.isInteger(gap)) return `${spell(gap)} ${gap === 1 ? one : more}`;
  return `${figures(gap, 2)} ${more}`;
}

const GAP_OF = { hand: '(hand)', grace: 'after a grace note', foot: '(foot)' };

/**
 * What an order asks of the hands, in a few words.
 *
 * @example scoreSays({ run: 2, joins: 1, gaps: { hand: 1, grace: 1, foot: 4 } }, '4/4', 4) // 'At most two in a row, one join on the same hand, tightest gap one sixteenth (hand).'
 */
export function scoreSays({ run, joins, gaps }: HandScore, meter: MeterText, grid: Grid): string {
  const row = run > 1 ? `At most ${spell(run)} in a row` : run === 1 ? 'Hand to hand throughout' : 'No hand strikes';
  const joint = `${joins ? spell(joins) : 'no'} ${many(joins || 1, 'join')} on the same hand`;
  const kinds = Object.keys(gaps) as (keyof HandScore['gaps'])[];
  const tightest = kinds.reduce((least, kind) => (gaps[kind] < gaps[least] ? kind : least));
  const gap = gaps[tightest];
  if (gap >= 4) return `${row}, ${joint}.`;
  return `${row}, ${joint}, tightest gap ${gapSays(gap, slotNames(meter, grid))} ${GAP_OF[tightest]}.`;
}

/** A swap of two neighbors, by the place of the first of them from 0. */
export const swapSays = (place: number, before: string, after: string): string =>
  `Cells ${place + 1} and ${place + 2} change places: ${before} before ${after}`;

/** What the list of swaps holds. */
export function nearSays(swaps: number, kept: number, most: number): string {
  if (swaps === 0) return 'All its cells are the same: no swap makes another order.';
  const broken = swaps - kept;
  const all = `Two cells that stand side by side change places, and all the rest stays. ${capital(spell(swaps))} ${many(swaps, 'swap')} ${swaps === 1 ? 'makes' : 'make'} another order`;
  const rules =
    broken === 0
      ? ''
      : broken === swaps
        ? `, and ${broken === 1 ? 'it breaks' : 'all of them break'} a rule`
        : `; ${spell(broken)} of them ${broken === 1 ? 'breaks' : 'break'} a rule and ${broken === 1 ? 'is' : 'are'} left out`;
  return `${all}${rules}.${kept > most ? ` The first ${spell(most)} are told.` : ''}`;
}

/** Why a number of a kept order is none. */
export const keptFault = (typed: string, count: bigint): string =>
  `“${typed}” cannot be kept: the orders are numbered from 1 to ${figures(count)}.`;

/** What to do with the kept orders. */
export function keptSays(orders: number, apart: number): string {
  if (orders === 0)
    return sayBar(
      'Nothing is kept yet. Keep the order on the ruler, turn to another, keep that too: they are put in a row in which each bar is a small change from the last.',
    );
  if (orders === 1) return 'One is kept. Keep another, and the two make a row.';
  const row = `Practice these ${spell(orders)} in this order: each is a small change from the last.`;
  const how =
    orders - apart > 2
      ? ' The row is found by a rule of thumb, always on to the nearest; now and then a shorter one exists.'
      : '';
  return `${row}${how}${apart ? ' At the end stands what is made of other cells: no swap leads there.' : ''}`;
}

/** What a step of the row changes; 0 is where it begins, -1 what no swap leads to. */
export function stepSays(swaps: number, place = 0, names: readonly string[] = []): string {
  if (swaps < 0) return 'Made of other cells.';
  if (swaps === 0) return 'Begin here.';
  if (swaps > 1) return `${capital(spell(swaps))} swaps from the one before.`;
  return `${swapSays(place, names[0], names[1])}.`;
}

/** How many loops there are. */
export function loopsSay(count: bigint, told: number): string {
  const loops = count === 1n ? 'one loop' : `${count < 100n ? spell(Number(count)) : figures(count)} loops`;
  const some = count > BigInt(told) ? ` The first ${spell(told)}, one order of each:` : ' One order of each:';
  return `Begun at another of its cells a loop stays the same loop. Counted so, there ${count === 1n ? 'is' : 'are'} ${loops}.${some}`;
}

/** Why loops are not told apart. */
export const noLoopsSay = (): string =>
  'A rule that names a place, or a lead that alternates, changes when a loop is begun elsewhere. Without such rules it is told here which orders are the same loop.';

/** Why no more is kept. */
export const fullSays = (most: number): string =>
  `${capital(spell(most))} are kept, which is plenty. Take one out before you keep another.`;

/** What was done with the row, for those who hear it. */
export const rowDone = (number: string, orders: number): string =>
  orders === 0
    ? 'Nothing is kept.'
    : `${number ? `Number ${figures(BigInt(number))}: ` : ''}${capital(spell(orders))} kept.`;

/** Names of one list, told apart by their place where two are alike. */
export function apartSays(names: readonly string[]): string[] {
  return names.map((name, i) => (names.indexOf(name) === names.lastIndexOf(name) ? name : `${name} (cell ${i + 1})`));
}

/** A number of an order. */
export const numberSays = (number: string): string => `Number ${figures(BigInt(number))}`;
