import { arrangements, countNames, meterOf, quartersPerMinute, resolution, TICKS_PER_QUARTER } from '../core/index.ts';
import { countAnswer, no, number } from './question-answers.ts';
import { barAsked, placeAsked } from './question-place.ts';
import type { Compute, QuestionBar } from './question-compute.ts';
import { cellIds, type QuestionAttributes } from './vocabulary.ts';

/** Slots in as many bars as the question is over. */
const slotsOver = ({ over = 1 }: QuestionAttributes, { timeline }: QuestionBar): number =>
  over * timeline.bars[0].slots;

/** On which count a cell of the phrase starts. */
export const cellStart: Compute = ({ of }, { phrase }) => {
  const cell = typeof of === 'number' ? phrase.cells[of - 1] : undefined;
  if (!cell) return no('of', `of is the number of a cell, of={1} to of={${phrase.cells.length}} here`);
  return countAnswer(cell.count, cell.bar);
};

/** Which slot of its cell a count is. */
export const placeAt: Compute = (question, { phrase, timeline }) => {
  const place = placeAsked(question, timeline);
  if (!place.ok) return place;
  const index = phrase.slots.findIndex(({ tick }) => tick === place.found.tick);
  const cell = phrase.cells[phrase.slots[index].cell];
  if (!cell) return no('at', 'no cell stands there');
  return { ok: true, answer: { kind: 'place', place: index - cell.from + 1 } };
};

/** The count of a slot by its number. */
export const slotName: Compute = (question, { timeline }) => {
  const asked = barAsked(question, timeline);
  if (!asked.ok) return asked;
  const { meter, grid, slots } = asked.found;
  const name = countNames(meter, grid)[Number(question.of) - 1];
  return name ? countAnswer(name, question.in ?? 1) : no('of', `of is the number of a slot, of={1} to of={${slots}}`);
};

/** The count some slots after another; past the end the phrase begins again. */
export const countAfter: Compute = (question, { timeline: { bars }, timeline }) => {
  const place = placeAsked(question, timeline);
  if (!place.ok) return place;
  if (typeof question.of !== 'number') return no('of', 'of is a number of slots, like of={7}');
  let { number: bar, slot } = place.found;
  const barAt = () => bars[(bar - 1) % bars.length];
  for (slot += question.of; slot >= barAt().slots; bar += 1) slot -= barAt().slots;
  return countAnswer(countNames(barAt().meter, barAt().grid)[slot], bar);
};

/** How many slots there are. */
export const slotCount: Compute = (question, bar) => {
  const asked = barAsked(question, bar.timeline);
  return asked.ok ? number(question.in ? asked.found.slots : slotsOver(question, bar)) : asked;
};

/** How long a bar lasts at a tempo in beats a minute. */
export const barSeconds: Compute = (question, { timeline }) => {
  const asked = barAsked(question, timeline);
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
export const cellSlots = ofCell((slots) => slots);
/** How many of it fit. */
export const cellsFit = ofCell((slots, room) => Math.floor(room / slots));
/** How many slots are left where as many stand as fit. */
export const slotsLeft = ofCell((slots, room) => room % slots);
/** After how many bars, repeated, it starts on beat 1 again. */
export const barsHome = ofCell((slots, room) => resolution(slots, room).bars);
/** After how many of itself. */
export const cellsHome = ofCell((slots, room) => resolution(slots, room).cells);

/** How many gaps of an even spread are a slot longer than the others. */
export const longerGaps: Compute = (question, bar) => {
  const room = slotsOver(question, bar);
  const { of } = question;
  if (typeof of !== 'number' || of > room) return no('of', `of is a number of strokes, of={1} to of={${room}} here`);
  return number(room % of);
};

/** In how many orders the cells of the phrase can stand. */
export const orders: Compute = ({ cell }, { phrase }) => {
  const kinds = Map.groupBy(phrase.cells, ({ id }) => id);
  if (kinds.size < 2) return no('from', 'one kind of cell has one order; the bar needs cells="…" with several');
  if (cell && !kinds.has(cell)) return no('cell', `there is no cell "${cell}" in this bar`);
  const cells = [...kinds].map(([id, all]) => ({ id, slots: all[0].slots, times: all.length }));
  const slots = phrase.cells.reduce((sum, one) => sum + one.slots, 0);
  return number(Number(arrangements({ cells, slots, rules: cell ? { first: cell } : {} }).count));
};
