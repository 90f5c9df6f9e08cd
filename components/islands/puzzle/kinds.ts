import type { Component } from 'svelte';
import type { Answer, Puzzle, PuzzleKind, PuzzleKindRecord, PUZZLES } from '../../../src/core/index.ts';
import type { NameOf, PuzzleWords, WordsFor } from '../../../src/words/puzzle/say.ts';
import type { OpenPuzzle } from './open-puzzle.svelte.ts';

/** What the component of a kind is handed. */
export interface ViewProps<P extends Puzzle = Puzzle, A extends Answer = Answer> {
  open: OpenPuzzle<P, A>;
  nameOf: NameOf;
}

/** Everything a page needs of one kind. */
export interface PuzzleParts {
  record: PuzzleKindRecord<Puzzle>;
  words: PuzzleWords<Puzzle, Answer, { wrong: string }, { hint: string }>;
  View: Component<ViewProps>;
}

type ViewOf<R> =
  R extends PuzzleKindRecord<infer P extends Puzzle, infer A extends Answer> ? Component<ViewProps<P, A>> : never;

type Modules<R> = Promise<[{ record: R }, { words: WordsFor<R> }, { default: ViewOf<R> }]>;

/** Every kind: its record, its words and its component, loaded when it is opened and no other's with it. */
const KINDS: { [K in PuzzleKind]: () => Modules<(typeof PUZZLES)[K]> } = {
  fill: () => all(import('../../../src/core/puzzle/kinds/fill.ts'), import('../../../src/words/puzzle/fill.ts'), import('./kinds/Cells.svelte')),
  missing: () => all(import('../../../src/core/puzzle/kinds/missing.ts'), import('../../../src/words/puzzle/missing.ts'), import('./kinds/Cells.svelte')),
  start: () => all(import('../../../src/core/puzzle/kinds/start.ts'), import('../../../src/words/puzzle/start.ts'), import('./kinds/Start.svelte')),
  fix: () => all(import('../../../src/core/puzzle/kinds/fix.ts'), import('../../../src/words/puzzle/fix.ts'), import('./kinds/Fix.svelte')),
  ear: () => all(import('../../../src/core/puzzle/kinds/ear.ts'), import('../../../src/words/puzzle/ear.ts'), import('./kinds/Cells.svelte')),
  resolves: () => all(import('../../../src/core/puzzle/kinds/resolves.ts'), import('../../../src/words/puzzle/resolves.ts'), import('./kinds/Resolves.svelte')),
  which: () => all(import('../../../src/core/puzzle/kinds/which.ts'), import('../../../src/words/puzzle/which.ts'), import('./kinds/Which.svelte')),
}; // prettier-ignore

const all = <A, B, C>(...modules: [Promise<A>, Promise<B>, Promise<C>]): Promise<[A, B, C]> => Promise.all(modules);

/** Loads a kind; rejects where the connection is gone. */
export async function loadKind(kind: PuzzleKind): Promise<PuzzleParts> {
  const [{ record }, { words }, { default: View }] = await KINDS[kind]();
  // The list has tied the three to one kind; from here on they are used together only.
  return { record, words, View: View as Component<ViewProps> };
}
