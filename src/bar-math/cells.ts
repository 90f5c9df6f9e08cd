/** Cells as they are typed or picked, and how they lie on a ruler. */
import {
  cellsOf,
  faultText,
  layPhrase,
  parseSticking,
  perform,
  printSticking,
  slotCount,
  type Grid,
  type Item,
  type MeterText,
  type Sticking,
  type Timeline,
} from '../core/index.ts';
import { rulerSays } from '../words/bar-math-answers.ts';
import { MATH_FAULTS, wholeSays } from '../words/bar-math.ts';
import { asSentence } from '../words/grammar.ts';
import { spell } from '../words/numbers.ts';
import { strokesIn } from './limits.ts';
import type { RulerCell } from './ruler.ts';
import { marksOf } from './marks.ts';
import type { Reading } from './read.ts';
import type { NamedCell } from './types.ts';

/** A figure of one or more cells. */
export interface Figure {
  text: string;
  sticking: Sticking;
  slots: number;
  /** Strokes, rests and grace notes included. */
  strokes: number;
  /** What it is called; its text where it has no name. */
  name: string;
  /** Its cells, as they lie on a ruler. */
  cells: RulerCell[];
}

/** The longest cell that can be given by its length. */
export const MAX_LENGTH = 32;

/** An accent and taps, hand to hand. */
const singles = (slots: number): string =>
  Array.from({ length: slots }, (_, i) => (i === 0 ? '>R' : i % 2 ? 'L' : 'R')).join(' ');

/**
 * The text behind what stands in a field for a cell: that of a cell of the course where its id stands there, accented
 * singles where a length does.
 *
 * @example textOfCell('3', []) // '>R L R'
 */
export function textOfCell(typed: string, named: readonly NamedCell[]): string {
  const length = /^\d{1,3}$/.test(typed.trim()) ? Number(typed) : 0;
  if (length >= 1 && length <= MAX_LENGTH) return singles(length);
  return named.find(({ id }) => id === typed.trim())?.text ?? typed;
}

/** Reads a field for a cell: an id of the course, a length, or sticking text. Throws TooLarge beyond the reading's limits. */
export function readFigure(read: Reading, field: string, typed: string, named: readonly NamedCell[]) {
  const text = textOfCell(typed, named);
  if (/^-?[\d.,]*$/.test(text.trim())) return read.refuse(field, wholeSays(typed, 1, MAX_LENGTH));
  const parsed = parseSticking(text);
  if (!parsed.ok) {
    const [message, ...caret] = faultText(text, parsed.fault).split('\n');
    return read.refuse(field, asSentence(message), caret.join('\n'));
  }
  if (hasBars(parsed.sticking.hands)) return read.refuse(field, MATH_FAULTS.cell);
  read.lay(strokesIn(parsed.sticking));
  return figureOf(text, parsed.sticking, named, /^\d+$/.test(typed.trim()) ? spell(Number(typed)) : undefined);
}

const hasBars = (items: readonly Item[]): boolean =>
  items.some((item) => item.kind === 'bar' || item.kind === 'head' || (item.kind === 'group' && hasBars(item.items)));

function figureOf(text: string, sticking: Sticking, named: readonly NamedCell[], length?: string): Figure {
  const nameOf = (one: Sticking) => length ?? named.find((cell) => cell.text === printSticking(one))?.name;
  const cells = cellsOf(sticking).map((one) => ({
    name: nameOf(one),
    slots: slotCount(one.hands),
    marks: marksOf(one),
  }));
  const name = cells.length === 1 ? cells[0].name : undefined;
  const size = { slots: slotCount(sticking.hands), strokes: strokesIn(sticking) };
  return { text, sticking, ...size, name: name ?? text, cells };
}

/** A text with its sticking. */
type Read = Pick<Figure, 'text' | 'sticking'>;

/** The strokes of stickings one after another, the last bar filled with rests; undefined where they make no phrase. */
export function timelineOf(figures: readonly Read[], meter: MeterText, grid: Grid): Timeline | undefined {
  const cellsIn = new Map([...new Set(figures)].map((figure) => [figure, cellsOf(figure.sticking)]));
  const cells = figures.flatMap((figure) => cellsIn.get(figure)!.map((sticking) => ({ id: figure.text, sticking })));
  const phrase = layPhrase({ cells, meter, grid, fill: 'rests' });
  return phrase.ok ? perform(phrase.phrase) : undefined;
}

/** So many of the same. */
export const repeated = <T>(times: number, what: readonly T[]): T[] => Array.from({ length: times }, () => what).flat();

/** The cells of a ruler in words; those without a name are called by the text of their figure. */
export const labelOf = ({ text }: Figure, cells: readonly RulerCell[]): string =>
  rulerSays(cells.map(({ name }) => name ?? text));

/** A whole bar of time is no cell to build with. */
const MOST_SLOTS = 8;

/**
 * The cells that can be laid on a ruler as they are: short ones, on no surface of their own, each text once.
 *
 * @example
 * plainCells(new Map([['rll', { name: 'R L L', sticking: 'R L L' }]])); // [{ id: 'rll', name: 'R L L', text: 'R L L' }]
 */
export function plainCells(cells: ReadonlyMap<string, { name: string; sticking: string }>): NamedCell[] {
  const all = [...cells].map(([id, { name, sticking }]) => ({ id, name, text: sticking }));
  const short = all.filter(({ text }) => !/[@[\n|]/.test(text) && text.split(' ').length <= MOST_SLOTS);
  const named = short.filter(
    ({ text }, i) => /[RLKH]/.test(text) && short.findIndex((cell) => cell.text === text) === i,
  );
  return named.sort((a, b) => a.name.localeCompare(b.name, 'en'));
}
