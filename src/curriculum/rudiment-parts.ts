import { otherHands, strokesOf } from './rudiment-hands.ts';

/** What is looked at of a rudiment's file. */
export interface RudimentRow {
  hands: string;
  rhythm: string;
}

/** A main stroke: its hand, how many grace notes lead to it, how long it is to the next one, in quarters. */
interface TimedStroke {
  hand: string;
  graces: number;
  quarters: number;
}

/**
 * Whether one rudiment is made of another, among other things: the unit of the other one stands in the unit of the
 * first, stroke after stroke, by the same hands or by the other ones, with the same ratios of length between their
 * beginnings. A unit is the shortest row that a statement repeats, by the same hands or by turns with the other ones:
 * `R L R R` of a paradiddle. Accents are not compared, and grace notes only where the unit has any: a flam paradiddle is
 * made of a paradiddle and of flams. What is short stands in nearly everything and tells nothing, so a unit counts as a
 * part where it is one stroke with its grace notes (flam, drag), three strokes or more of both hands without any, or four
 * or more with; and it must be shorter than the unit it stands in, or as long and without its grace notes.
 * A double ratamacue is made of drags: its first stroke has two grace notes.
 */
export function madeOf(whole: RudimentRow, part: RudimentRow): boolean {
  const [unit, within] = [unitOf(part), unitOf(whole)];
  const plainer = isGraced(within) && !isGraced(unit);
  if (!isTelling(unit) || unit.length > within.length || (unit.length === within.length && !plainer)) return false;
  return within.some((_, from) => startsWith(within.slice(from), unit));
}

/**
 * The rudiments that one is made of, out of all of them, without those that stand in another of these: a triple
 * ratamacue is made of a double one, and that of a single one.
 */
export function partsOf<T extends { data: RudimentRow }>(whole: T, all: readonly T[]): T[] {
  const parts = all.filter((one) => one !== whole && madeOf(whole.data, one.data));
  return parts.filter((part) => !parts.some((other) => other !== part && madeOf(other.data, part.data)));
}

function isTelling(unit: TimedStroke[]): boolean {
  if (isGraced(unit)) return unit.length === 1 || unit.length >= 4;
  return unit.length >= 3 && new Set(unit.map(({ hand }) => hand)).size === 2;
}

const isGraced = (unit: readonly TimedStroke[]) => unit.some(({ graces }) => graces > 0);

function timed({ hands, rhythm }: RudimentRow): TimedStroke[] {
  const lengths = rhythm.split(' ').map(quartersOf);
  return strokesOf(hands).map(({ hand, graces }, index) => ({ hand, graces: graces.length, quarters: lengths[index] }));
}

/** The length of a note value: `16t` is a sixth of a quarter. */
const quartersOf = (value: string) => (4 / parseInt(value, 10)) * (value.endsWith('t') ? 2 / 3 : 1);

function unitOf(row: RudimentRow): TimedStroke[] {
  const strokes = timed(row);
  const lengths = Array.from(strokes, (_, index) => index + 1).filter((one) => strokes.length % one === 0);
  const length = lengths.find((one) => repeats(strokes, one)) ?? strokes.length;
  return strokes.slice(0, length);
}

/** Whether a row is its first strokes over and over, by the same hands or by turns with the other ones. */
function repeats(strokes: TimedStroke[], length: number): boolean {
  const turns = length < strokes.length && strokes[length].hand !== strokes[0].hand;
  return strokes.every((stroke, index) => {
    const model = strokes[index % length];
    const turned = turns && Math.floor(index / length) % 2 === 1;
    const hand = turned ? otherHands(model.hand) : model.hand;
    return stroke.hand === hand && stroke.graces === model.graces && isEven(stroke.quarters / model.quarters - 1);
  });
}

function startsWith(strokes: TimedStroke[], unit: TimedStroke[]): boolean {
  if (strokes.length < unit.length) return false;
  const turned = strokes[0].hand !== unit[0].hand;
  const stretch = strokes[0].quarters / unit[0].quarters;
  return unit.every(
    ({ hand, graces, quarters }, index) =>
      strokes[index].hand === (turned ? otherHands(hand) : hand) &&
      (!isGraced(unit) || strokes[index].graces === graces) &&
      // How long the last stroke lasts, nobody hears.
      (index === unit.length - 1 || isEven(strokes[index].quarters / quarters / stretch - 1)),
  );
}

/** Thirds of a quarter are no exact numbers. */
const isEven = (difference: number) => Math.abs(difference) < 1e-9;
