import {
  arrangements,
  countNames,
  meterOf,
  quartersPerMinute,
  resolution,
  TICKS_PER_QUARTER,
} from '../../core/index.ts';
import { cellIds } from '../fields.ts';
import { countAnswer, missOf, no, number, numberMiss, type Answer, type Miss, type MissReason } from './answers.ts';
import {
  barOf,
  countsAround,
  isGrace,
  nextTick,
  noneOf,
  placeOf,
  strokesNamed,
  type Compute,
  type Question,
  type QuestionBar,
  type QuestionRecord,
} from './place.ts';

/** Slots in as many bars as the question is over. */
const slotsOver = ({ over = 1 }: Question, { timeline }: QuestionBar): number => over * timeline.bars[0].slots;

/** On which count a cell of the phrase starts. */
const cellStart: Compute = ({ of }, { phrase }) => {
  const cell = typeof of === 'number' ? phrase.cells[of - 1] : undefined;
  if (!cell) return no('of', `of is the number of a cell, of={1} to of={${phrase.cells.length}} here`);
  return countAnswer(cell.count, cell.bar);
};

/** Which slot of its cell a count is. */
const placeAt: Compute = (question, { phrase, timeline }) => {
  const place = placeOf(question, timeline);
  if (!place.ok) return place;
  const index = phrase.slots.findIndex(({ tick }) => tick === place.found.tick);
  const cell = phrase.cells[phrase.slots[index].cell];
  if (!cell) return no('at', 'no cell stands there');
  return { ok: true, answer: { kind: 'place', place: index - cell.from + 1 } };
};

/** The count of a slot by its number. */
const slotName: Compute = (question, { timeline }) => {
  const asked = barOf(question, timeline);
  if (!asked.ok) return asked;
  const { meter, grid, slots } = asked.found;
  const name = countNames(meter, grid)[Number(question.of) - 1];
  return name ? countAnswer(name, question.in ?? 1) : no('of', `of is the number of a slot, of={1} to of={${slots}}`);
};

/** The count some slots after another; past the end the phrase begins again. */
const countAfter: Compute = (question, { timeline: { bars }, timeline }) => {
  const place = placeOf(question, timeline);
  if (!place.ok) return place;
  if (typeof question.of !== 'number') return no('of', 'of is a number of slots, like of={7}');
  let { number: bar, slot } = place.found;
  const barAt = () => bars[(bar - 1) % bars.length];
  for (slot += question.of; slot >= barAt().slots; bar += 1) slot -= barAt().slots;
  return countAnswer(countNames(barAt().meter, barAt().grid)[slot], bar);
};

const slotCount: Compute = (question, bar) => {
  const asked = barOf(question, bar.timeline);
  return asked.ok ? number(question.in ? asked.found.slots : slotsOver(question, bar)) : asked;
};

/** How long a bar lasts at a tempo in beats a minute. */
const barSeconds: Compute = (question, { timeline }) => {
  const asked = barOf(question, timeline);
  if (!asked.ok) return asked;
  if (typeof question.of !== 'number') return no('of', 'of is a tempo in beats a minute, like of={60}');
  const { meter } = asked.found;
  const quarters = meterOf(meter).barTicks / TICKS_PER_QUARTER;
  return number((quarters * 60) / quartersPerMinute(meter, question.of));
};

/** From the length of a cell, or of several in a row, and of the room for it. */
function ofCell(compute: (slots: number, room: number) => number): Compute {
  return (question, bar) => {
    const lengths = cellIds(question.cell ?? '').map((id) => [id, bar.cellSlots(id)] as const);
    const unknown = lengths.find(([, slots]) => !slots);
    if (unknown) return no('cell', `there is no cell "${unknown[0]}"`);
    const slots = lengths.reduce((sum, [, one]) => sum + (one ?? 0), 0);
    return number(compute(slots, slotsOver(question, bar)));
  };
}

/** How many slots the cell takes. */
const cellSlots = ofCell((slots) => slots);
const cellsFit = ofCell((slots, room) => Math.floor(room / slots));
/** How many slots are left where as many stand as fit. */
const slotsLeft = ofCell((slots, room) => room % slots);
/** After how many bars, repeated, it starts on beat 1 again. */
const barsToResolve = ofCell((slots, room) => resolution(slots, room).bars);
const cellsToResolve = ofCell((slots, room) => resolution(slots, room).cells);

/** How many gaps of an even spread are a slot longer than the others. */
const longerGaps: Compute = (question, bar) => {
  const room = slotsOver(question, bar);
  const { of } = question;
  if (typeof of !== 'number' || of > room) return no('of', `of is a number of strokes, of={1} to of={${room}} here`);
  return number(room % of);
};

/** In how many orders the cells of the phrase can stand. */
const orders: Compute = ({ cell }, { phrase }) => {
  const kinds = Map.groupBy(phrase.cells, ({ id }) => id);
  if (kinds.size < 2) return no('from', 'one kind of cell has one order; the bar needs cells="…" with several');
  if (cell && !kinds.has(cell)) return no('cell', `there is no cell "${cell}" in this bar`);
  const cells = [...kinds].map(([id, all]) => ({ id, slots: all[0].slots, times: all.length }));
  const slots = phrase.cells.reduce((sum, one) => sum + one.slots, 0);
  return number(Number(arrangements({ cells, slots, rules: cell ? { first: cell } : {} }).count));
};

/** The cell before or after, if anything sounds in it. */
function neighbor(question: Question, bar: QuestionBar, by: number, why: MissReason): Miss | undefined {
  const of = Number(question.of) + by;
  return bar.timeline.strokes.some(({ cell }) => cell === of - 1)
    ? missOf(cellStart({ ...question, of }, bar), why)
    : undefined;
}

/** On which count the next stroke of a name comes. */
const nextCount: Compute = (question, { timeline }) => {
  const meant = strokesNamed(question.of, timeline);
  if (!meant) return noneOf(question.of);
  const place = question.at === undefined ? undefined : placeOf(question, timeline);
  if (place && !place.ok) return place;
  const tick = nextTick(
    meant.map((stroke) => stroke.tick),
    place ? place.found.tick : -Infinity,
    timeline,
  );
  const stroke = meant.find((one) => tick !== undefined && [tick, tick % timeline.ticks].includes(one.tick));
  if (tick === undefined || !stroke) return no('of', 'no such stroke is in this bar');
  return countAnswer(stroke.count, stroke.bar + (tick >= timeline.ticks ? timeline.bars.length : 0));
};

/** How many slots it is from a count to the next stroke of a name, or to the next cell. */
const gap: Compute = (question, { timeline, phrase }) => {
  const place = placeOf(question, timeline);
  if (!place.ok) return place;
  const meant = strokesNamed(question.of, timeline) ?? (question.of === 'cells' ? phrase.cells : undefined);
  if (!meant) return noneOf(question.of);
  const { slot, number: bar, slotTicks } = place.found;
  const here = timeline.strokes.filter((stroke) => stroke.bar === bar && stroke.slot === slot);
  const from = Math.max(place.found.tick, ...here.map(({ tick }) => tick));
  const to = nextTick(
    meant.map(({ tick }) => tick),
    from,
    timeline,
  );
  return to === undefined ? no('of', 'no such stroke is in this bar') : number((to - from) / slotTicks);
};

/** How many whole slots stay empty after a count. */
const restsAfter: Compute = (question, { timeline }) => {
  const place = placeOf(question, timeline);
  if (!place.ok) return place;
  const heard = strokesNamed(question.of ?? 'all', timeline);
  if (!heard) return noneOf(question.of);
  const { tick, slotTicks } = place.found;
  const ends = heard.filter((stroke) => !isGrace(stroke)).map((stroke) => stroke.tick);
  const next = nextTick(ends, tick + slotTicks - 1, timeline);
  return next === undefined ? no('at', 'nothing is struck here') : number(Math.floor((next - tick) / slotTicks) - 1);
};

/** One more, which counts the slot one starts from, and one less. */
function offByOne(_question: Question, _bar: QuestionBar, right: Answer): (Miss | undefined)[] {
  const value = right.kind === 'number' ? right.value : NaN;
  return [numberMiss(value + 1, 'start-counted'), numberMiss(value - 1, 'end-not-counted')];
}

/** The answers a number of slots too early and too late. */
const besideBy =
  (compute: Compute) =>
  (question: Question, bar: QuestionBar): (Miss | undefined)[] => [
    missOf(compute({ ...question, of: Number(question.of) - 1 }, bar), 'slot-before'),
    missOf(compute({ ...question, of: Number(question.of) + 1 }, bar), 'slot-after'),
  ];

/** What another computation finds, told as a miss. */
const takenFor =
  (compute: Compute, why: MissReason) =>
  (question: Question, bar: QuestionBar): (Miss | undefined)[] => [missOf(compute(question, bar), why)];

const PLACES: Answer[] = [1, 2, 3].map((place) => ({ kind: 'place', place }));

/** The kinds of question about counts, slots, cells and bars. */
export const COUNT_KINDS = {
  'place-at': {
    needs: ['at'],
    may: ['in'],
    says: 'which slot of its cell stands on "at": 1 for the first',
    answer: placeAt,
    choices: () => PLACES,
  },
  'cell-start': {
    needs: ['of'],
    may: [],
    says: 'on which count cell number "of" starts',
    answer: cellStart,
    choices: countsAround,
    misses: (question, bar) => [neighbor(question, bar, -1, 'cell-before'), neighbor(question, bar, 1, 'cell-after')],
  },
  'slot-name': {
    needs: ['of'],
    may: ['in'],
    says: 'the count of slot number "of" of a bar',
    answer: slotName,
    choices: countsAround,
    misses: besideBy(slotName),
  },
  'count-after': {
    needs: ['at', 'of'],
    may: ['in'],
    says: 'on which count you are "of" slots after "at"',
    answer: countAfter,
    choices: countsAround,
    misses: besideBy(countAfter),
  },
  next: {
    needs: ['of'],
    may: ['at', 'in'],
    says: 'on which count the next of these strokes comes after "at", or the first one where "at" is left out',
    answer: nextCount,
    choices: countsAround,
  },
  gap: {
    needs: ['at', 'of'],
    may: ['in'],
    says: 'how many slots it is from the last stroke on "at" to the next of these strokes; "of" may also be cells',
    answer: gap,
    misses: offByOne,
  },
  'rests-after': {
    needs: ['at'],
    may: ['in', 'of'],
    says: 'how many slots stay empty after "at"; with "of" only such strokes are listened to',
    answer: restsAfter,
    misses: offByOne,
  },
  slots: {
    needs: [],
    may: ['in', 'over'],
    says: 'how many slots a bar has, or as many bars as "over" says',
    answer: slotCount,
  },
  'bar-seconds': {
    needs: ['of'],
    may: ['in'],
    says: 'how many seconds a bar lasts at "of" beats a minute',
    answer: barSeconds,
  },
  'cell-slots': { needs: ['cell'], may: [], says: 'how many slots the cell takes', answer: cellSlots },
  'cells-fit': {
    needs: ['cell'],
    may: ['over'],
    says: 'how many of the cell fit into the bar, or into "over" bars',
    answer: cellsFit,
    misses: takenFor(slotsLeft, 'slots-for-cells'),
  },
  'slots-left': {
    needs: ['cell'],
    may: ['over'],
    says: 'how many slots are left when as many of the cell as fit stand in the bar, or in "over" bars',
    answer: slotsLeft,
    misses: takenFor(cellsFit, 'cells-for-slots'),
  },
  'bars-home': {
    needs: ['cell'],
    may: [],
    says: 'after how many bars the cell, repeated, starts on beat 1 again',
    answer: barsToResolve,
    misses: takenFor(cellsToResolve, 'cells-for-bars'),
  },
  'cells-home': {
    needs: ['cell'],
    may: [],
    says: 'after how many of the cell it starts on beat 1 again',
    answer: cellsToResolve,
    misses: takenFor(barsToResolve, 'bars-for-cells'),
  },
  'longer-gaps': {
    needs: ['of'],
    may: [],
    says: 'how many gaps are the longer ones when "of" strokes are spread over the bar as evenly as whole slots allow',
    answer: longerGaps,
  },
  orders: {
    needs: [],
    may: ['cell'],
    says: 'in how many different orders the cells of the bar can stand; "cell" is the one that must come first',
    answer: orders,
  },
} satisfies Record<string, QuestionRecord>;
