/** What the page for authors says. Its reader knows Markdown, or learns it here, and has never seen code. */
import { sayBar } from './grammar.ts';

/** Labels beside fields and words. */
export const WRITE_LABELS = {
  needed: 'must be there',
  onPage: 'The steps',
  attributes: 'What can stand in',
  kinds: 'What a question can ask: the words for',
} as const;

const WORDS = {
  title: 'Write your own lesson',
  description: 'How a teacher writes a lesson for this course: the file, the words, the sticking text, the check.',
  idea: 'A lesson is a text file. Whoever can write a message can write one.',
  file: '1. Make the file',
  fileSays:
    'You need a copy of this course on your computer, and one window in which commands are typed, opened in the folder of that copy. Type this, with a title and the number of a part of your own:',
  fileThen:
    'It makes a folder under content/lessons with a file index.mdx in it, and says where. That file is a whole lesson already, a small one. Open it with any editor for plain text; a word processor would add things of its own. To begin from a lesson you like, copy its folder instead and change id, order and title at its head. Begin ids of your own with the name of your school, and no later version of this course will have the same.',
  head: '2. The head of the file',
  headSays:
    'Between two lines of three hyphens stand the facts of the lesson, one a line: a name, a colon, a space, the value.',
  text: '3. The text',
  textSays:
    'Below the head you write as you would talk. An empty line begins a new paragraph. A heading is a line that begins with ## and a space.',
  marks: [
    ['*e*', 'leans: use it for a count or a word you mean as a word'],
    ['**flam drag**', 'stands out: seldom'],
    ['`R LL R`', 'a sticking inside a sentence stands between these marks, on most keyboards left of 1'],
    ['[the first lesson](/lessons/the-bar-as-a-ruler/)', 'a link to a page of this course, slash at both ends'],
  ] as const,
  textThen:
    'Two signs mean something else here: a plain { or < in a sentence would be taken for the beginning of a word of the kind below. Write \\{ and \\< instead. A lesson has at most 120 lines: one idea each.',
  words: '4. The words that draw, play and ask',
  wordsSays:
    'Bars, exercises and questions are words between < and >. Each stands on a line of its own, with an empty line before and after. What it is about stands in it: a name, an equals sign, and the value, texts in "quotes" and numbers in {braces}. Each unfolds: in the frames is what you write, below each what becomes of it. Try the bars: they play.',
  needs: 'Every lesson has at least one bar and one question.',
  sticking: '5. Sticking text',
  stickingSays:
    'A bar is written in the letters drummers use anyway. A space goes to the next slot, and slots are all the same length: with four slots a beat, sixteen letters with spaces between them fill a bar of 4/4. Each sign unfolds to a bar with it; below them is a field to try your own.',
  mirror: 'Write for the right hand leading. The other leads are worked out from it.',
  check: '6. Check it',
  checkSays:
    'This reads all lessons and names every mistake, with its file, its line, and what could stand there. A bar that does not add up is one of them:',
  checkThen:
    'Mend it and run it again, until it says that the content is sound. Nothing is published while it finds something.',
  look: '7. Look at it',
  lookSays:
    'This shows the site on your own computer and prints the address to open. It changes as you save. Play every bar, press every answer, and look at it on a phone too.',
  send: '8. Send it',
  sendSays:
    'Send the folder of your lesson to whoever looks after the site. If that is you: this makes the folder dist, and what is in it goes onto the web server.',
};

/**
 * The text of the page.
 *
 * @example WRITE_WORDS.title // 'Write your own lesson'
 */
export const WRITE_WORDS = Object.fromEntries(
  Object.entries(WORDS).map(([key, text]) => [key, typeof text === 'string' ? sayBar(text) : text]),
) as typeof WORDS;

/** The steps of the page, in order, by their anchors. */
const STEPS = ['file', 'head', 'text', 'words', 'sticking', 'check', 'look', 'send'] as const;

/**
 * What the page leads to: its steps, and the words of the step that is about them.
 *
 * @example writeSteps(WRITE_WORDS, [{ name: 'Bar' }])[3].words // [{ id: 'word-Bar', title: '<Bar>' }]
 */
export function writeSteps(words: Record<(typeof STEPS)[number], string>, vocabulary: readonly { name: string }[]) {
  return STEPS.map((id) => ({
    id,
    // The list counts them by itself.
    title: words[id].replace(/^\d+\. /, ''),
    ...(id === 'words' && { words: vocabulary.map(({ name }) => ({ id: `word-${name}`, title: `<${name}>` })) }),
  }));
}

/** The commands an author types. */
export const COMMANDS = {
  make: 'npm run new -- lesson "Ghosts on the way" --part 6',
  check: 'npm run check:content',
  look: 'npm run dev',
  publish: 'npm run build',
} as const;

/** The head of a lesson, as it is written. */
export const LESSON_HEAD = `---
id: ghosts-on-the-way
part: 6
order: 6
title: Ghosts on the way
idea: The soft strokes between the flam drags keep the time.
meter: 4/4
grid: 4
level: 2
tempo: { from: 50, to: 80 }
rudiments: [flam-drag]
terms: [cell, flam, ghost-note]
listen: [{ title: The door of the practice room, at: 0:03, says: Which of its two sounds is the flam? }]
---`;

/** Labels of the field in which a sticking is tried. */
export const TRY_IT = {
  title: 'Try it',
  sticking: 'Sticking',
  meter: 'Meter',
  grid: 'Slots a beat',
  paste: 'For your lesson:',
  what: 'What you wrote',
  notDrawn: 'It is right, but could not be drawn: the connection may be gone.',
  notRead: 'It could not be read: the connection may be gone.',
  reading: 'Reading …',
  stop: 'Stop reading',
  stopped: 'Stopped. Change the text to go on.',
  loading: 'Loading …',
  failed: 'This did not load: the connection may be gone. Press again to try again.',
} as const;

/**
 * That a sticking fills its bars.
 *
 * @example fillsSay(1, 16, 'sixteenths') // 'Fills one bar: 16 sixteenths.'
 */
export function fillsSay(bars: number, slots: number, names: string): string {
  return `Fills ${bars === 1 ? 'one bar' : `${bars} bars`}: ${slots} ${names}.`;
}
