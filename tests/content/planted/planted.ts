import { BAR, EXERCISE, GOOD, lesson, LESSON, QUESTION, TEXT_LINE, type Tree } from '../plant.ts';

/** One thing wrong: what is planted, and the place, the words and the hint that must come back. */
export interface Planted {
  name: string;
  changes: Tree;
  /** Where it must be found: `file:line:column`; the file alone stands for 1:1. */
  at: string;
  says: RegExp;
  hint?: RegExp;
}

/** The lesson with another text. */
export const text = (words: string): Tree => ({ [LESSON]: lesson(words) });
/** A lesson that lacks nothing, with something more as its first line. */
export const also = (words: string): Tree => text(`${words}\n\n${BAR}\n\n${QUESTION}`);
/** The exercise with one thing replaced. */
export const exercise = (from: string, to: string): Tree => ({
  [EXERCISE]: (GOOD[EXERCISE] as string).replace(from, to),
});
/** A file of the good tree with one thing replaced. */
export const changed = (path: string, from: string, to: string): Tree => ({
  [path]: (GOOD[path] as string).replace(from, to),
});
/** One cell more. */
export const cell = (content: string): Tree => ({ 'content/cells/extra.yaml': content });
/** A place in the text of the lesson. */
export const here = (column = 1, line = TEXT_LINE): string => `${LESSON}:${line}:${column}`;
