/** What is said about how far a player has come; done is the player's own mark. */

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
