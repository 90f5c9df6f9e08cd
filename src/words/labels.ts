/** What the site says on its pages, in one place. */
import { BAR_WORD, SITE_NAME, type BarWord } from './site.ts';

/** Labels that hold for every school. */
export const LABELS = {
  skip: 'Skip to the page',
  mainNav: 'Main',
  course: 'Course',
  exercises: 'Exercises',
  rudiments: 'Rudiments',
  barMath: 'Bar math',
  puzzles: 'Puzzles',
  glossary: 'Glossary',
  search: 'Search',
  privacy: 'Privacy',
  license: 'License',
  write: 'Write your own lesson',
  proof: 'How we know',
  searchSite: 'This site',
  lessonNav: 'Lessons before and after this one',
  previous: 'Before this',
  next: 'After this',
  arrowKeys: 'The arrow keys ← and → turn to the lesson before and after.',
  inWords: 'In words',
  aim: 'Tempo',
  leads: 'Lead',
  enough: 'Good enough',
  madeOf: 'Made of',
  sticking: 'Sticking',
  meter: 'Meter',
  subdivision: 'Subdivision',
  rhythm: 'Rhythm',
  related: 'Related rudiments',
  sameHands: 'The same hands',
  accents: 'Accents',
  length: 'Length',
  exercise: 'Exercise',
  seeAlso: 'See also',
  alsoCalled: 'Also',
  practised: 'Lessons and exercises with it',
  alsoIn: 'Also in',
  check: 'Check',
  yourNumber: 'Your answer, a number',
  yourAnswer: 'Your answer',
  showAnswer: 'Show the answer',
  readMore: 'More, with sources',
  hearingCaution: 'Your ears',
  wristsCaution: 'Your wrists',
} as const;

/** What search can be narrowed to; the keys are the values the pages carry. */
export const KINDS = {
  lesson: 'Lessons',
  exercise: 'Exercises',
  rudiment: 'Rudiments',
  term: 'Words',
  page: 'Other pages',
} as const;

/** One of the kinds of page that search knows. */
export type Kind = keyof typeof KINDS;

/**
 * Where a lesson stands.
 *
 * @example lessonPlace(1, 5) // 'Lesson 1 of 5'
 */
export function lessonPlace(place: number, of: number): string {
  return `Lesson ${place} of ${of}`;
}

/**
 * What a lesson says where the school counts in other syllables than its text, beat by beat; nothing where it counts in
 * the same.
 *
 * @example countsApart([{ text: '1 e & a', notes: '1 ta te ta' }]) // 'This text counts 1 e & a where the notes have 1 ta te ta.'
 */
export function countsApart(beats: readonly { text: string; notes: string }[]): string | undefined {
  const said = beats.map(({ text, notes }, at) => `${text} where ${at ? 'they' : 'the notes'} have ${notes}`);
  const [last, ...before] = said.toReversed();
  return last && `This text counts ${[...before.toReversed(), before.length ? `and ${last}` : last].join(', ')}.`;
}

/**
 * A part's number.
 *
 * @example partNumber(7) // 'Part 7'
 */
export const partNumber = (number: number): string => `Part ${number}`;

/**
 * How many lessons there are.
 *
 * @example lessonCount(5) // '5 lessons'
 */
export function lessonCount(count: number): string {
  return count === 1 ? 'one lesson' : `${count} lessons`;
}

/**
 * A part's number and title.
 *
 * @example partName({ number: 6, title: 'The flam drag' }) // 'Part 6 · The flam drag'
 */
export function partName(part: { number: number; title: string }): string {
  return `Part ${part.number} · ${part.title}`;
}

/**
 * The title of a page as a browser tab shows it.
 *
 * @example pageTitle('The flam drag') // 'The flam drag · Drum course'
 */
export function pageTitle(title: string): string {
  return title === SITE_NAME ? SITE_NAME : `${title} · ${SITE_NAME}`;
}

/**
 * A list in a sentence.
 *
 * @example inSentence(['right', 'left', 'alternating']) // 'right, left and alternating'
 */
export function inSentence(items: readonly string[], joint = 'and'): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${joint} ${items[items.length - 1]}`;
}

/**
 * A sentence with the school's word for a bar: "bar" in, "bar" or "measure" out. A bar line is one in both.
 *
 * @example sayBar('A bar is a length to be filled.', 'measure') // 'A measure is a length to be filled.'
 */
export function sayBar(sentence: string, word: BarWord = BAR_WORD): string {
  if (word === 'bar') return sentence;
  const measure: Record<string, string> = { bar: 'measure', bars: 'measures', Bar: 'Measure', Bars: 'Measures' };
  return sentence.replace(/\b[Bb]ars?\b(?!\s+lines?\b)/g, (found) => measure[found] ?? found);
}

/**
 * Sentences by their names, all with the school's word for a bar.
 *
 * @example sayBars({ countIn: 'count in a bar' }) // { countIn: 'count in a bar' }
 */
/* @__NO_SIDE_EFFECTS__ */
export function sayBars<T extends Record<string, string>>(texts: T): { [K in keyof T]: string } {
  return Object.fromEntries(Object.entries(texts).map(([key, text]) => [key, sayBar(text)])) as {
    [K in keyof T]: string;
  };
}
