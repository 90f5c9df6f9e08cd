/** What the words of all kinds of puzzle share. */
import { saySlot, type PuzzleBase, type PuzzleCell, type PuzzleKindRecord, type SlotIndex } from '../../core/index.ts';
import { capital } from '../grammar.ts';
import { quoted, slotWords, spell } from '../numbers.ts';
import { BAR_WORD, COUNTING, WORDS_LANGUAGE } from '../site.ts';
import { slotNames } from '../../core/time/slot-names.ts';

/** A cell's name by its id, as the school says it. */
export type NameOf = (cell: string) => string;

/** What a card asks for: a sentence that says what to do, then the rules, a sentence each. */
export interface Card {
  task: string;
  rules: string[];
}

/** What the site says of a kind of puzzle: P, A, W and H are as in the kind's record. */
export interface PuzzleWords<P, A, W, H> {
  title: string;
  /** In a sentence: what one does. */
  idea: string;
  /** What is learned, and how it is answered. */
  how: string;
  card(puzzle: P, nameOf: NameOf): Card;
  /** An answer as it stands in a sentence. */
  answer(puzzle: P, answer: A, nameOf: NameOf): string;
  /** What is wrong with an answer, and where. */
  wrong(puzzle: P, wrong: W, nameOf: NameOf): string;
  /** Said of a right answer; "Right." where left out. */
  right?(puzzle: P): string;
  hint?(puzzle: P, hint: H, nameOf: NameOf): string;
}

/** The words for a kind's record. */
export type WordsFor<R> =
  R extends PuzzleKindRecord<infer P, infer A, infer W, infer H> ? PuzzleWords<P, A, W, H> : never;

/** Slots as the trade names them: "one sixteenth", "three sixteenths". */
export function slotsSay({ meter, grid }: PuzzleBase, count: number): string {
  const { one, many } = slotWords(meter, grid);
  return `${spell(count, 'counted')} ${count === 1 ? one : many}`;
}

/** So many bars: "one bar", "three measures". */
export const barsSay = (count: number): string => `${spell(count, 'counted')} ${BAR_WORD}${count === 1 ? '' : 's'}`;

/** A slot as one says it, with its bar where there are several. */
export function placeSays({ meter, grid, barSlots, slots }: PuzzleBase, slot: SlotIndex): string {
  const count = saySlot(meter, grid, slot % barSlots, COUNTING);
  return slots > barSlots ? `${count} in ${BAR_WORD} ${Math.floor(slot / barSlots) + 1}` : count;
}

/** " in triplets", where a slot is called a partial and the word would be missing. */
export function tupletsSay({ meter, grid }: PuzzleBase): string {
  const { many } = slotNames(meter, grid);
  return slotWords(meter, grid).many === many ? '' : ` in ${many}`;
}

/** A cell by its name, its sticking and its length. */
export const cellSays = (puzzle: PuzzleBase, { text, slots }: PuzzleCell, name: string): string =>
  `${name}, ${text}, ${slotsSay(puzzle, slots)}`;

/** A cell in a sentence, "the flam drag"; a name that is a number stands in quotation marks. */
export const theCell = (name: string): string => `the ${quoted(name)}`;

/** How often: "once", "twice", "five times". */
export const times = (count: number): string =>
  count === 1 ? 'once' : count === 2 ? 'twice' : `${spell(count, 'counted')} times`;

const ORDINALS = 'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth'.split(' ');
const ENDINGS: Partial<Record<Intl.LDMLPluralRule, string>> = { one: 'st', two: 'nd', few: 'rd', other: 'th' };

/**
 * Which in a row: "third", "13th".
 *
 * @example ordinal(13) // '13th'
 */
export const ordinal = (n: number): string =>
  ORDINALS[n - 1] ?? `${n}${ENDINGS[new Intl.PluralRules(WORDS_LANGUAGE, { type: 'ordinal' }).select(n)]}`;

/**
 * Some of all: both numbers as words or both in figures.
 *
 * @example partOf(6, 24) // '6 of 24'
 */
export const partOf = (some: number, of: number): string =>
  spell(of, 'counted') === String(of) ? `${some} of ${of}` : `${spell(some, 'counted')} of ${spell(of, 'counted')}`;

/** The rule that a hand plays no more than so many strokes in a row. */
export const runRule = (most: number): string =>
  most === 1
    ? 'The hands take turns: none plays twice in a row.'
    : `No hand plays ${spell(most + 1, 'counted')} in a row.`;

/** Clauses as one more sentence after a rule, each after a comma; nothing where there are none. */
export function noteOf(clauses: readonly string[]): string {
  const last = clauses.length - 1;
  return clauses.length
    ? ` ${capital(clauses.map((one, i) => (i && i === last ? `and ${one}` : one)).join(', '))}.`
    : '';
}

/** Said where cells are led by a hand, if one of them has grace notes. */
export const leadNote = (text: string): string =>
  /[rl]/.test(text) ? ' The main stroke says which hand leads, not its grace note.' : '';
