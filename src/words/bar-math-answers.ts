/** The answers of the calculators, each in a sentence a student can repeat. */
import { saySlot, type Grid, type HandWay, type MeterText, type BarSlot } from '../core/index.ts';
import { slotNames } from '../core/time/slot-names.ts';
import { capital, inSentence, sayBar } from './grammar.ts';
import { figures, many, oftenSays, slotWords, spell } from './numbers.ts';
import { BAR_WORD, COUNTING } from './site.ts';

/** The ruler an answer is about. */
export interface RulerSaid {
  meter: MeterText;
  grid: Grid;
  bars: number;
  barSlots: number;
}

/** A place by its count, with its bar where there are several. */
export function placeSays(slot: number, { meter, grid, bars, barSlots }: RulerSaid): string {
  const count = saySlot(meter, grid, slot, COUNTING);
  return bars > 1 ? `${count} in ${BAR_WORD} ${Math.floor(slot / barSlots) + 1}` : count;
}

/**
 * How often a cell goes into a stretch: "Three into sixteen goes five times and leaves one, the a of 4."
 */
export function fitSays(
  { cell, slots, times, left, from }: { cell: number; slots: number; times: number; left: number; from: number },
  ruler: RulerSaid,
): string {
  const sum = `${capital(spell(cell))} into ${spell(slots)}`;
  if (times === 0) return `${sum} does not go: the cell is ${spell(cell - slots)} too long.`;
  if (left === 0) return `${sum} goes ${oftenSays(times)} and leaves nothing.`;
  const where = `${left === 1 ? '' : 'from '}${placeSays(from, ruler)}`;
  return `${sum} goes ${oftenSays(times)} and leaves ${spell(left)}, ${where}.`;
}

/** What is left on a ruler, over its dashed bracket. */
export const leftSays = (left: number, from: number, ruler: RulerSaid): string =>
  `${left} left, ${left === 1 ? '' : 'from '}${placeSays(from, ruler)}`;

/** What could fill what is left: how many ways there are with the cells at hand. */
export function fillingsSay(left: number, ways: bigint, names: readonly string[]): string {
  return `${capital(spell(left))} can be filled in ${countOf(ways)} ${ways === 1n ? 'way' : 'ways'} by ${inSentence(names, 'or')}.`;
}

/**
 * When a cell starts on beat 1 again: "Three over sixteen is back on beat 1 after three bars and sixteen cells."
 */
export function resolveSays(cell: number, bars: number, cells: number, { barSlots }: RulerSaid): string {
  const sum = `${capital(spell(cell))} over ${spell(barSlots)} is back on beat 1 after`;
  return `${sum} ${bars === 1 ? `one ${BAR_WORD}` : `${spell(bars)} ${BAR_WORD}s`} and ${spell(cells)} ${many(cells, 'cell')}.`;
}

/** Where the cells of one bar start: "Bar 2: the & of 1, the e of 2 …" */
export function startsSay(bar: number, starts: readonly BarSlot[], ruler: RulerSaid): string {
  const counts = starts
    .filter((start) => start.bar === bar)
    .map(({ slot }) => saySlot(ruler.meter, ruler.grid, slot, COUNTING));
  return counts.length ? `${inSentence(counts)}.` : 'none starts here.';
}

/** A count, its number in the bar and its tick. */
export function countSays(slot: number, tick: number, ruler: RulerSaid): string {
  const { one } = slotWords(ruler.meter, ruler.grid);
  const count = capital(saySlot(ruler.meter, ruler.grid, slot, COUNTING));
  return `${count} is ${one} ${slot + 1} of ${ruler.barSlots}, at tick ${figures(tick)}.`;
}

/** Where one ends who starts on a slot and plays so many. */
export function endSays(slot: number, length: number, ruler: RulerSaid): string {
  const names = slotWords(ruler.meter, ruler.grid);
  const last = slot + length - 1;
  const whole = { ...ruler, bars: Math.floor((last + 1) / ruler.barSlots) + 1 };
  const start = saySlot(ruler.meter, ruler.grid, slot, COUNTING);
  return `Start on ${start} and play ${spell(length)} ${many(length, names.one, names.many)}: the last is on ${placeSays(last, whole)}, and the next stroke comes on ${placeSays(last + 1, whole)}.`;
}

const WAY_SAYS: Record<HandWay, string> = {
  singles: 'hand to hand',
  doubles: 'in doubles',
  diddles: 'with a diddle in each',
  'one-hand': 'by one hand alone',
};

const ms = (value: number): string => `${figures(value, 1)} ms`;

/** What a tempo asks of one hand. */
export function speedSays(
  grid: Grid,
  tempo: number,
  way: HandWay,
  hand: { turns: number; strokes: number; turnMs: number; reboundMs?: number },
): string {
  const { many: slots } = slotNames('4/4', grid);
  const what = `${capital(slots)} at ${figures(tempo, 1)} ${WAY_SAYS[way]}`;
  const who = way === 'one-hand' ? 'the hand' : 'each hand';
  if (hand.reboundMs === undefined)
    return `${what}: ${who} strikes ${perSecond(hand.turns)}, one stroke every ${ms(hand.turnMs)}.`;
  return `${what}: ${who} turns ${perSecond(hand.turns)} and plays ${figures(hand.strokes, 1)} strokes; the rebound comes ${ms(hand.reboundMs)} after the first.`;
}

const perSecond = (times: number): string => {
  const shown = figures(times, 1);
  return `${shown === '1' ? 'once' : shown === '2' ? 'twice' : `${shown} times`} a second`;
};

/** How long a slot and a thirty-second last. */
export function lengthsSay(grid: Grid, slot: number, thirtySecond: number): string {
  return `A ${slotWords('4/4', grid).one} lasts ${ms(slot)}, a thirty-second ${ms(thirtySecond)}.`.replace(
    'A eighth',
    'An eighth',
  );
}

/** A flam as a share of the slot; it is never wider than half of what is before it. */
export function flamSays(flamMs: number, grid: Grid, slot: number): string {
  const share = Math.round((100 * flamMs) / slot);
  const sum = `A flam of ${ms(flamMs)} is ${figures(share)} % of the ${slotWords('4/4', grid).one}`;
  return share > 50
    ? `${sum}: more than half, so it is played at ${ms(slot / 2)}, or the next note would swallow it.`
    : `${sum}.`;
}

/** The tempo at which one hand turns so often, and the one at which the rebound is so close. */
export function limitsSay(turns: number, atTurns: number, rebound: number, atRebound: number | undefined): string {
  const first = `One hand turns ${perSecond(turns)} at ${figures(atTurns, 1)}`;
  return atRebound === undefined
    ? `${first}; there are no rebounds here.`
    : `${first}; the rebound is ${ms(rebound)} behind at ${figures(atRebound, 1)}. Whichever tempo is lower is where it gets tight.`;
}

/** The tempo at which the hands do the same on another grid: "120 in sixteenths is 160 in triplets." */
export function sameSays(tempo: number, grid: Grid, other: Grid, same: number): string {
  return `For the hands, ${figures(tempo, 1)} in ${slotNames('4/4', grid).many} is ${figures(same, 1)} in ${slotNames('4/4', other).many}.`;
}

/** Spelled while it is small. */
const countOf = (count: bigint): string => (count < 100n ? spell(Number(count)) : figures(count));

/** How many orders there are: "Sixty orders fill the bar." */
export function ordersSay(count: bigint, bars: number, ruled: boolean): string {
  const what = bars === 1 ? `the ${BAR_WORD}` : `the ${spell(bars)} ${BAR_WORD}s`;
  const [order, fill, keep] = count === 1n ? ['order', 'fills', 'keeps'] : ['orders', 'fill', 'keep'];
  return `${capital(countOf(count))} ${order} ${fill} ${what}${ruled ? ` and ${keep} to the rules` : ''}.`;
}

/** Why there is no order at all. */
export const noOrderSays = (reason: string): string => `None: ${reason}.`;

/** Which order is shown. */
export const orderSays = (number: bigint, count: bigint, names: readonly string[]): string =>
  `Number ${figures(number)} of ${figures(count)}: ${cellsSay(names)}.`;

/** The cells that lie on a ruler, in order: "flam drag × 5, 1 left, the a of 4." */
export const rulerSays = (names: readonly string[]): string => `${cellsSay(names)}.`;

/**
 * How many bars are drawn, where it is not all of them.
 *
 * @example drawnSays(8) // 'The first 8 bars are drawn.'
 */
export const drawnSays = (bars: number): string =>
  sayBar(bars === 1 ? 'The first bar is drawn.' : `The first ${bars} bars are drawn.`);

/** For how many bars it is told where the cells start. */
export const startsToldSay = (bars: number): string =>
  sayBar(`Where the cells start is told for the first ${bars} bars.`);

/**
 * Why nothing can be played.
 *
 * @example tooLongToPlay(32, 8192) // 'This is too long to be played here: at most 32 bars and 8,192 strokes can be.'
 */
export const tooLongToPlay = (bars: number, strokes: number): string =>
  sayBar(`This is too long to be played here: at most ${bars} bars and ${figures(strokes)} strokes can be.`);

/** The same within a sentence. */
export const cellsSay = (names: readonly string[]): string => runs(names).join(', ');

/** Neighbors of one name are told once, with how many there are. */
function runs(names: readonly string[]): string[] {
  const all: { name: string; times: number }[] = [];
  for (const name of names) {
    const before = all.at(-1);
    if (before?.name === name) before.times += 1;
    else all.push({ name, times: 1 });
  }
  return all.map(({ name, times }) => (times === 1 ? name : `${name} × ${times}`));
}

/** An even spread: "Three accents in eight, as even as can be: 3 3 2, on 1, 2 & and 4." */
export function spreadSays(accents: number, slots: number, gaps: readonly number[], counts: readonly string[]): string {
  const gapsSaid = new Set(gaps).size === 1 ? everySays(gaps[0]) : gaps.join(' ');
  return `${capital(spell(accents))} ${many(accents, 'accent')} in ${spell(slots)}, as even as can be: ${gapsSaid}, on ${inSentence(counts)}.`;
}

const ORDINALS =
  'second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth'.split(
    ' ',
  );

/** One in so many: "every third". */
const everySays = (n: number): string => (n === 1 ? 'every slot' : `every ${ORDINALS[n - 2] ?? `${n}th`}`);

/** How many turns a spread has. */
export const turnsSay = (turns: number): string =>
  turns === 1
    ? 'However you turn it, it is the same.'
    : `Turned slot by slot it has ${spell(turns)} forms; this is one.`;

/** No bar of equal beats holds so many slots. */
export function noBarSays(slots: number): string {
  return `${capital(spell(slots))} slots make no ${BAR_WORD} of equal beats that could be written; ${spell(slots - 1)} and ${spell(slots + 1)} do.`;
}

/** Two against each other: "Four against three: twelve slots. The right hand plays every third, the left every fourth." */
export function againstSays(a: number, b: number, slots: number, together: number, where: readonly string[]): string {
  const meet = together === 1 ? 'they meet on 1 alone' : `they meet ${oftenSays(together)}, on ${inSentence(where)}`;
  return `${capital(spell(a))} against ${spell(b)} takes ${spell(slots)} ${many(slots, 'slot')}: the right hand plays ${everySays(slots / a)}, the left ${everySays(slots / b)}, and ${meet}.`;
}

/** Why two against each other cannot be written in a bar. */
export function cannotSay(a: number, b: number, perBeatA: number, perBeatB: number): string {
  return `${capital(spell(a))} against ${spell(b)} cannot be written here: with ${spell(b)} beats it needs ${spell(perBeatA)} slots a beat, with ${spell(a)} beats ${spell(perBeatB)}, and a beat is written with eight at most.`;
}
