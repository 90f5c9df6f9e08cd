import { readLesson } from '../build/content/text-files.ts';
import {
  barAttributes,
  countsAttributes,
  type BarAttributes,
  type CountsAttributes,
} from '../curriculum/vocabulary.ts';

/** What a lesson's text holds of bars and exercises, each in the order of the text. */
export interface LessonWords {
  bars: readonly BarAttributes[];
  counts: readonly CountsAttributes[];
  /** Ids; one that is shown twice stands twice. */
  exercises: readonly string[];
}

/** A lesson is asked about by many pages and read once. */
const known = new Map<string, LessonWords>();

/**
 * The words of a lesson's text, read as the content checker reads them, which has told of those that are faulty.
 *
 * @example lessonWords({ body: '<Exercise id="b" />' }).exercises // ['b']
 */
export function lessonWords({ body = '' }: { body?: string | undefined }): LessonWords {
  const words = known.get(body) ?? wordsIn(body);
  known.set(body, words);
  return words;
}

function wordsIn(body: string): LessonWords {
  const { words } = readLesson('', body);
  const of = (name: string) =>
    words.flatMap(({ word, attributes }) => (word.name === name && attributes ? [attributes] : []));
  return {
    bars: of('Bar').flatMap((bar) => barAttributes.safeParse(bar).data ?? []),
    counts: of('Counts').flatMap((counts) => countsAttributes.safeParse(counts).data ?? []),
    exercises: of('Exercise').map(({ id }) => String(id)),
  };
}
