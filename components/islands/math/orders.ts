import { arrangements, slotsOf, slotsOfCounts, slotTicks } from '../../../src/core/index.ts';
import type {
  ArrangeCell,
  Arrangements,
  ArrangeRequest,
  ArrangeRules,
  Grid,
  MeterText,
} from '../../../src/core/index.ts';
import { noOrderSays, orderSays, ordersSay } from '../../../src/words/bar-math-answers.ts';
import { wholeSays } from '../../../src/words/bar-math.ts';
import { readFigure, timelineOf, type Figure } from './cells.ts';
import { countsOf, reading, rulerSaid, type Reading } from './read.ts';
import { readRows, readUses } from './rows.ts';
import type { Answer, Inputs, SumProps } from './types.ts';

/** What stands in the fields before anyone types. */
export const ORDERS: Inputs = {
  cells: 'kick*1,flam-drag*3,rll*2',
  bars: '1',
  meter: '4/4',
  grid: '4',
  first: '',
  last: '',
  accents: '',
  quiet: '',
  end: '',
  run: '',
  graces: '',
  within: '',
  order: '1',
};

const MOST_BARS = 8;

/** An answer, and how many orders there are. */
export interface OrdersAnswer extends Answer {
  count?: bigint;
  /** The number of any one of them, drawn fairly. */
  another?: (random: () => number) => bigint;
}

/** Cells, and the stretch they are to fill. */
interface Stones {
  figures: Figure[];
  cells: ArrangeCell[];
  bars: number;
  meter: MeterText;
  grid: Grid;
  barSlots: number;
}

/** How many orders of the cells fill the bars and keep to the rules, and one of them. */
export function answerOrders(inputs: Inputs, props: SumProps): OrdersAnswer {
  const read = reading(inputs);
  const stones = stonesOf(inputs, read, props);
  const rules = stones && rulesOf(inputs, read, stones, props);
  if (!stones || !rules || Object.keys(read.faults).length) return { says: ruleFaultSays(read), faults: read.faults };
  const { cells, bars, barSlots } = stones;
  const all = counted({ cells, slots: bars * barSlots, barSlots, rules });
  if (typeof all === 'string') return { says: '', faults: { cells: { says: all } } };
  if (all.count === 0n) return { says: noOrderSays(reasonSays(all.reason ?? '')), faults: read.faults, count: 0n };
  const says = ordersSay(all.count, bars, Object.keys(rules).length > 0, props.barWord);
  const another = (random: () => number) => all.indexOf(all.sample(random)) + 1n;
  const counts = { count: all.count, another };
  const number = orderIn(inputs, read, all.count);
  if (number === undefined) return { says, faults: read.faults, ...counts };
  const order = all.at(number - 1n).map((id) => stones.figures[Number(id)]);
  const which = orderSays(
    number,
    all.count,
    order.map(({ name }) => name),
  );
  return { says, more: [which], faults: read.faults, ...counts, ...shown(order, which, stones, props) };
}

const RULE_FIELDS = ['first', 'last', 'accents', 'quiet', 'end', 'run'];

/** The rules may be folded away: what is wrong with one is said in the open too. */
function ruleFaultSays({ faults }: Reading): string {
  const field = RULE_FIELDS.find((rule) => faults[rule]);
  return field ? `One of the rules cannot be kept. ${faults[field].says}` : '';
}

function stonesOf(inputs: Inputs, read: Reading, { named }: SumProps): Stones | undefined {
  const rows = readRows(inputs.cells);
  const figures = rows.map(({ cell }, i) => readFigure(read, `cell${i}`, cell, named));
  const uses = rows.map((row, i) => readUses(read, `uses${i}`, row.uses));
  const bars = read.whole('bars', 1, MOST_BARS);
  const meter = read.meter('meter');
  const grid = read.whole('grid', 1, 8);
  if (!bars || !meter || !grid) return undefined;
  const known = figures.filter((figure) => figure !== undefined);
  if (known.length < figures.length) return undefined;
  const cells = known.map(({ slots, sticking }, i) => ({ id: String(i), slots, sticking, ...timesOf(uses[i]) }));
  return { figures: known, cells, bars, meter, grid, barSlots: slotsOf(meter, grid) };
}

const timesOf = (times: ReturnType<typeof readUses>): Pick<ArrangeCell, 'times'> =>
  times === undefined ? {} : { times };

/** The rules that are set. Counts hold in every bar; the last stroke is the last bar's. */
function rulesOf(inputs: Inputs, read: Reading, stones: Stones, props: SumProps): ArrangeRules {
  const { bars, barSlots } = stones;
  const everyBar = (slots: number[]) =>
    Array.from({ length: bars }, (_, bar) => slots.map((slot) => slot + bar * barSlots)).flat();
  const accents = countsIn(inputs, read, 'accents', stones, props);
  const quiet = countsIn(inputs, read, 'quiet', stones, props);
  const end = countsIn(inputs, read, 'end', stones, props)[0];
  const run = inputs.run ? read.whole('run', 1, 8) : undefined;
  return {
    ...rowRule(inputs, read, 'first', stones),
    ...rowRule(inputs, read, 'last', stones),
    ...(accents.length ? { accentOn: everyBar(accents) } : {}),
    ...(quiet.length ? { noAccentOn: everyBar(quiet) } : {}),
    ...(end === undefined ? {} : { lastStrokeOn: end + (bars - 1) * barSlots }),
    ...(run ? { maxRun: run, ...(inputs.graces === 'yes' ? { graces: true } : {}) } : {}),
    ...(inputs.within === 'yes' ? { withinBars: true } : {}),
  };
}

function countsIn(
  inputs: Inputs,
  read: Reading,
  field: string,
  { meter, grid }: Stones,
  { counting }: SumProps,
): number[] {
  return read.take(field, 'slots', slotsOfCounts(meter, grid, inputs[field] ?? '', counting)) ?? [];
}

/** A rule that names a cell names it by its row, from 1. */
function rowRule(inputs: Inputs, read: Reading, field: 'first' | 'last', { cells }: Stones) {
  if (!inputs[field]) return {};
  const row = read.whole(field, 1, cells.length);
  return row ? { [field]: String(row - 1) } : {};
}

/** The last problem that was counted: turning from one order to the next counts nothing anew. */
let last: { key: string; all: Arrangements } | undefined;

/** All orders, or a sentence where they are too many states to be counted. */
function counted(request: ArrangeRequest): Arrangements | string {
  const key = JSON.stringify(request);
  if (last?.key === key) return last.all;
  try {
    last = { key, all: arrangements(request) };
    return last.all;
  } catch (error) {
    if (error instanceof RangeError)
      return 'That is more than can be counted here. Fewer bars, fewer cells or fewer rules can.';
    throw error;
  }
}

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
};

const reasonSays = (reason: string): string => reason.replace(/\w+/g, (word) => RULE_WORDS[word] ?? word);

function orderIn(inputs: Inputs, read: Reading, count: bigint): bigint | undefined {
  const typed = inputs.order.trim();
  const number = /^\d{1,400}$/.test(typed) ? BigInt(typed) : 0n;
  if (number >= 1n && number <= count) return number;
  return read.refuse('order', wholeSays(typed, 1, count));
}

function shown(order: readonly Figure[], label: string, { bars, meter, grid }: Stones, props: SumProps) {
  const ruler = rulerSaid(meter, grid, bars, props);
  const timeline = timelineOf(
    order.map(({ text }) => text),
    meter,
    grid,
  );
  return {
    ruler: { label, counts: countsOf(ruler), grid, bars, cells: order.flatMap(({ cells }) => cells) },
    ...(timeline ? { play: { timeline, meter, slotTicks: slotTicks(meter, grid) } } : {}),
  };
}
