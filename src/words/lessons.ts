/** What stands around and in a lesson: its place, its questions, its pictures and films, how far a player is. */
import { sayBar, sayBars } from './grammar.ts';

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

/** What is said to a wrong answer, by the kind of question. */
export const QUESTION_HINTS = sayBars({
  'hand-at': 'Put a finger on that count and read the letter above it.',
  'grace-at': 'Look at the small letter. It is never the hand of the big one.',
  'motion-at': 'Ask two things: is this stroke loud, and is the next one of the same hand loud?',
  'kind-at': 'Put a finger on that count and look at the note above it.',
  'surface-at': 'Put a finger on that count and follow the note to its line.',
  'place-at': 'Go back to the start of its bracket and count from there.',
  'cell-start': 'Say the counts and move a finger along by the length of a cell each time.',
  'slot-name': 'Say the counts from 1 and keep track on your fingers.',
  'count-after': 'Say the counts aloud from there, one finger for each.',
  next: 'Count along the ruler with a finger and stop where it happens.',
  gap: 'Leave out the slot you start from, and count the one you arrive at.',
  'rests-after': 'Say the silent counts aloud, and nothing else.',
  strokes: 'Count them once more, aloud, with a finger on the bar.',
  'longest-run': 'Write the letters in a row, small ones too, and look for neighbors that are alike.',
  slots: 'How many beats are there, and how many slots in each?',
  'bar-seconds': 'How long is one beat, and how many of them has the bar?',
  'cell-slots': 'Each place between two spaces is one slot, whatever stands in it.',
  'cells-fit': 'How many slots has the bar, and how many does one cell take?',
  'slots-left': 'Add up the slots of the cells and take them from the slots of the bar.',
  'bars-home': 'Count in cells and in bars, and stop at the first number that is in both rows.',
  'cells-home': 'Count in cells and in bars, and stop at the first number that is in both rows.',
  'longer-gaps': 'Share out the slots until each gap has the same. What is left over goes round once more.',
  orders: 'Lay them out on paper and move one of them at a time.',
} as const);

/** What is said to a wrong answer where nothing is computed. */
export const LOOK_AGAIN = sayBar('Read the lesson once more from the last bar on, or play it.');

/** What is said to an answer that shows what was thought. */
export const MISS_SAYS = sayBars({
  'grace-note-hand': 'That hand plays the grace note. Who has the big letter?',
  'primary-hand': 'That hand has the big letter. The grace note is the small one before it.',
  'foot-not-hand': 'Something sounds there, but is it a hand?',
  'cell-before': 'The cell before it starts there.',
  'cell-after': 'That is the start of the cell after it.',
  'slot-before': 'One slot further.',
  'slot-after': 'One slot too far.',
  'graces-left-out': 'Have you counted the grace notes?',
  'diddles-as-one': 'A diddle is two strokes.',
  'both-left-out': 'Have you counted the grace notes, and both strokes of each diddle?',
  'seam-left-out': 'And when the bar goes round? Look at its end and its beginning together.',
  'cells-for-slots': 'That is how often it fits. What is left after that?',
  'slots-for-cells': 'That is what is left over. How many cells stand before it?',
  'cells-for-bars': 'So many cells, yes. How many bars do they fill?',
  'bars-for-cells': 'So many bars, yes. How many cells stand in them?',
  'start-counted': 'Do not count the slot you start from.',
  'end-not-counted': 'One is still missing. Say every count on the way aloud.',
  'start-right': 'It does begin at that height. Where does the stick have to be afterward?',
  'end-right': 'It does end at that height. Where does it begin?',
} as const);

/**
 * What is said to a right answer.
 *
 * @example rightSays('left') // 'Yes: left.'
 */
export function rightSays(answer: string): string {
  return `Yes: ${answer}.`;
}

/**
 * What is said to a wrong one, before the hint: for a number which way to look.
 *
 * @example wrongSays('4', '5') // 'More than 4.'
 */
export function wrongSays(given: string, right: string): string {
  const [is, should] = [Number(given), Number(right)];
  return Number.isFinite(is) && Number.isFinite(should) && is !== should
    ? `${is < should ? 'More' : 'Fewer'} than ${is}.`
    : `Not ${given}.`;
}

/** What is said to an empty field. */
export const NOTHING_GIVEN = 'Write a number or a word first.';

/** What is said about pictures, films and things to listen to. */
export const MEDIA_WORDS = {
  listen: 'Listen to',
  at: 'at',
  film: 'A film on the page:',
  captions: 'Captions',
} as const;

/** Labels and sentences. */
export const PROGRESS_WORDS = {
  canPlay: 'I can play this',
  kept: 'Ticked off in the contents of the course. Press again to take it back.',
  taken: 'Taken back.',
  notKept: 'This browser keeps nothing for this site, so the tick is gone when you leave the page.',
  done: 'done',
  left: 'You were reading',
  next: 'Next comes',
  here: 'you were here',
} as const;

/**
 * How many of some lessons are done.
 *
 * @example doneOf(3, 5) // '3 of 5 done'
 */
export function doneOf(done: number, of: number): string {
  return done === of ? `all ${of} done` : `${done} of ${of} done`;
}

/**
 * How many of all lessons are done, in a sentence.
 *
 * @example lessonsDone(12, 52) // '12 of 52 lessons done.'
 */
export function lessonsDone(done: number, of: number): string {
  return done === of ? `All ${of} lessons done.` : `${done} of ${of} lessons done.`;
}
