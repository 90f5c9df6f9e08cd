/** The words an author may use in a lesson, as components; `src/curriculum/vocabulary.ts` says what each takes. */
import type { WordName } from '../../src/curriculum/index.ts';
import Bar from './Bar.astro';
import Caution from './Caution.astro';
import Counts from './Counts.astro';
import Exercise from './Exercise.astro';
import Question from './Question.astro';
import Rudiment from './Rudiment.astro';
import Term from './Term.astro';

/** Handed to a lesson when it is rendered. */
export const lessonWords = { Bar, Exercise, Question, Counts, Caution, Term, Rudiment } satisfies Record<
  WordName,
  unknown
>;
