/** The words an author may use in a lesson, as components; `src/curriculum/vocabulary.ts` says what each takes. */
import type { WordName } from '../../src/curriculum/index.ts';
import Bar from './Bar.astro';
import Caution from './Caution.astro';
import Counts from './Counts.astro';
import Exercise from './Exercise.astro';
import LinkedHeading from './LinkedHeading.astro';
import Picture from './Picture.astro';
import Puzzle from './Puzzle.astro';
import Question from './Question.astro';
import Rudiment from './Rudiment.astro';
import Term from './Term.astro';
import Video from './Video.astro';

/** Handed to a lesson when it is rendered. */
export const lessonWords = {
  Bar,
  Exercise,
  Question,
  Puzzle,
  Counts,
  Caution,
  Term,
  Rudiment,
  Picture,
  Video,
} satisfies Record<WordName, unknown>;

/** The headings of a text, each with a link to copy; handed to a lesson with its words. */
export const headings = { h2: LinkedHeading, h3: LinkedHeading, h4: LinkedHeading };
