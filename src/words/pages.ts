/** What the pages of the site say, each by its name, and the labels that several of them share. */
import { sayBars } from './grammar.ts';
import { SITE_NAME } from './site.ts';

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
  practiced: 'Lessons and exercises with it',
  alsoIn: 'Also in',
  check: 'Check',
  yourNumber: 'Your answer, a number',
  yourAnswer: 'Your answer',
  showAnswer: 'Show the answer',
  readMore: 'More, with sources',
  hearingCaution: 'Your ears',
  wristsCaution: 'Your wrists',
} as const;

/**
 * The title of a page as a browser tab shows it.
 *
 * @example pageTitle('The flam drag') // 'The flam drag · Drum course'
 */
export function pageTitle(title: string): string {
  return title === SITE_NAME ? SITE_NAME : `${title} · ${SITE_NAME}`;
}

/** The sentences of one page: its title for the tab, what it is about, and what it says. */
export interface PageWords {
  title: string;
  description: string;
}

const HOME = {
  title: 'A bar is a ruler',
  description:
    'A course in building drum-set bars from short stickings: written out, played, counted, and always exactly full.',
  idea: 'Take one short sticking. Count it, turn it, slide it over the beat, and fill bars with it that add up.',
  first:
    'If you are new here, start with the first lesson. Every lesson has one idea, a bar to play, and a question. You need two sticks and a pad; a drum kit only for the parts that go around it.',
  begin: 'Begin with',
  parts: 'The parts of the course',
};

const COURSE = {
  title: 'The course',
  description: 'From where beat one is to a bar of your own: every part and every lesson, with its idea.',
  idea: 'In the order a careful teacher would take it. One idea a lesson. Go on when the exercises are good enough at a slow tempo; the goals may take months.',
};

const EXERCISES = {
  title: 'Exercises',
  description: 'Every exercise of the course on one page: what it is for, its subdivision and its tempos.',
  idea: 'Each has an address of its own that does not change, so that a teacher can send it.',
};

const RUDIMENTS = {
  title: 'The rudiments',
  description: 'Every rudiment of the trade’s list: notation, sticking, counts, to read and to play.',
  idea: 'Short stickings the trade has names for. Each is written over its counts, and can be played.',
};

const GLOSSARY = {
  title: 'Glossary',
  description: 'The words of the trade as this course uses them, one meaning each.',
  idea: 'One meaning each, the way it is used here.',
};

const SEARCH = {
  title: 'Search',
  description: 'Find lessons, exercises, rudiments and words.',
  idea: 'Any word of the course: a rudiment, a count, a thing that will not come right. Or a sticking, like R L L.',
  without: 'Search needs JavaScript, which is off or did not load. These lists hold everything there is to find:',
  kind: 'Kind',
  part: 'Part',
  grid: 'Subdivision',
  any: 'any',
  more: 'Show more',
};

const HEARING = {
  title: 'Hearing and strain',
  description: 'How loud drums are, how long ears last, and what to do when a wrist complains; with sources.',
};

const LOST = {
  title: 'No such page',
  description: 'There is nothing at this address.',
  idea: 'This bar is empty: there is nothing at this address.',
  help: 'It may have been typed with a slip, or never have been here. Look for a word, or go by the contents.',
};

/** Everything the site's own pages say. */
export const PAGES = {
  home: sayBars(HOME),
  course: sayBars(COURSE),
  exercises: sayBars(EXERCISES),
  rudiments: sayBars(RUDIMENTS),
  glossary: sayBars(GLOSSARY),
  search: sayBars(SEARCH),
  hearing: sayBars(HEARING),
  lost: sayBars(LOST),
};

/** On the page of something that the school has taken out of its lists. */
export const NOT_LISTED = {
  lesson: 'Not part of the course here; the page stays for those who have its address',
  exercise: 'Not among the exercises here; the page stays for those who have its address',
} as const;
