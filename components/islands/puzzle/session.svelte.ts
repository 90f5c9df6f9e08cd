/** One puzzle after another: what is laid or chosen, what was said of it, and how it went. */
import {
  gradePuzzle,
  hintFor,
  levelOf,
  LEVELS,
  makePuzzle,
  nextLevel,
  otherAnswer,
  printPuzzleAddress,
  readPuzzleAddress,
  seedFor,
  solutionOf,
  type Answer,
  type Grade,
  type Level,
  type Outcome,
  type Puzzle,
  type PuzzleCell,
  type PuzzleKind,
  type SlotIndex,
} from '../../../src/core/index.ts';
import { today } from './day.ts';
import { openPuzzles, type PuzzleRecord } from '../../../src/storage/index.ts';
import {
  anotherSays,
  hintSays,
  NOTHING_CHOSEN,
  puzzleRightSays,
  puzzleWrongSays,
  type Saying,
} from '../../../src/words/puzzle-sentences.ts';
import type { PuzzleLabels } from '../../../src/words/puzzles.ts';
import { shownSays, troubleSays } from '../../../src/words/puzzle-shown.ts';

/** What has just been said of an answer. */
export interface Verdict {
  /** Right, wrong, or only a hint. */
  kind: 'right' | 'wrong' | 'hint';
  lines: string[];
  /** Slots that it is about. */
  slots: SlotIndex[];
}

/** Bars are counted from one; anything else begins with nothing chosen. */
const unchosen = (kind: PuzzleKind): number | undefined => (kind === 'resolves' ? 1 : undefined);

const outcomeOf = ({ right, misses, hints }: PuzzleRecord): Outcome => ({ right, misses, hints });

/** What the part of an address after # says; nothing where there is none. */
function readHash(hash: string): ReturnType<typeof readPuzzleAddress> | undefined {
  const text = hash.replace(/^#/, '');
  try {
    return text ? readPuzzleAddress(decodeURIComponent(text)) : undefined;
  } catch {
    return readPuzzleAddress(text);
  }
}

/** A session of one kind of puzzle, from a certain one on. */
export function createSession(
  kind: PuzzleKind,
  saying: Saying,
  seed: number,
  labels: Pick<PuzzleLabels, 'instead' | 'stays'>,
) {
  const store = openPuzzles();
  let puzzle = $state.raw<Puzzle>(makePuzzle(kind, seed));
  let laid = $state.raw<PuzzleCell[]>([]);
  let chosen = $state.raw<number | undefined>(unchosen(kind));
  let verdict = $state.raw<Verdict | undefined>();
  let misses = 0;
  let hints = 0;
  let over = $state(false);
  let trouble = $state('');

  /** The level one has reached in this kind: that of the latest, or a step from it. */
  function level(): Level {
    const own = store.puzzles().filter((record) => record.kind === kind);
    const last = own.at(-1);
    if (!last) return 1;
    const now = levelOf(last.seed);
    return nextLevel(now, own.filter((record) => levelOf(record.seed) === now).map(outcomeOf));
  }

  function open(next: number): void {
    puzzle = makePuzzle(kind, next);
    laid = [];
    chosen = unchosen(kind);
    verdict = undefined;
    trouble = '';
    [misses, hints, over] = [0, 0, false];
  }

  /** The next one: of the level that the last ones have earned, or one easier or harder. */
  function another(step: -1 | 0 | 1 = 0): void {
    const from = step ? puzzle.level : level();
    const next = LEVELS[Math.min(LEVELS.length, Math.max(1, from + step)) - 1];
    open(seedFor(next, Math.random));
  }

  const laidIds = (): string[] => laid.map(({ id }) => id);

  function answer(): Answer | undefined {
    return 'shelf' in puzzle ? laidIds() : chosen;
  }

  function note(right: boolean): void {
    if (over) return;
    over = true;
    store.notePuzzle({ kind, seed: puzzle.seed, day: today().text, right, misses, hints });
  }

  function judged(grade: Grade): Verdict {
    if (grade.right) return { kind: 'right', lines: rightLines(), slots: [] };
    const slots = grade.wrongs.flatMap((wrong) => ('slot' in wrong ? [wrong.slot] : []));
    return { kind: 'wrong', lines: grade.wrongs.map((wrong) => puzzleWrongSays(puzzle, wrong, saying)), slots };
  }

  function rightLines(): string[] {
    const other = 'shelf' in puzzle ? otherAnswer(puzzle, laidIds()) : undefined;
    return [puzzleRightSays(puzzle), ...(other ? [anotherSays(other, saying)] : [])];
  }

  function check(): void {
    const given = answer();
    if (given === undefined) {
      verdict = { kind: 'hint', lines: [NOTHING_CHOSEN], slots: [] };
      return;
    }
    const grade = gradePuzzle(puzzle, given);
    verdict = judged(grade);
    if (grade.right) note(true);
    else if (!over) misses += 1;
  }

  function hint(): void {
    if (!('shelf' in puzzle)) return;
    const said = hintFor(puzzle, laidIds(), hints);
    if (!over) hints += 1;
    verdict = { kind: 'hint', lines: [hintSays(puzzle, said, saying)], slots: [] };
  }

  /** Shows one right answer; that counts as not solved. */
  function show(): void {
    note(false);
    const solution = solutionOf(puzzle);
    if (typeof solution === 'number') chosen = solution;
    else if ('shelf' in puzzle) laid = cellsBy(solution);
    verdict = { kind: 'hint', lines: [shownSays(puzzle, solution, saying)], slots: [] };
  }

  const cellsBy = (ids: readonly string[]): PuzzleCell[] =>
    ids.flatMap((id) => ('shelf' in puzzle && puzzle.shelf.find((cell) => cell.id === id)) || []);

  /** What is laid has changed, so what was said of it holds no longer. */
  function lay(next: PuzzleCell[]): void {
    laid = next;
    verdict = undefined;
  }

  return {
    get puzzle() {
      return puzzle;
    },
    get laid() {
      return laid;
    },
    get chosen() {
      return chosen;
    },
    set chosen(next: number | undefined) {
      chosen = next;
      verdict = undefined;
    },
    get verdict() {
      return verdict;
    },
    /** Whether it has been solved or shown. */
    get over() {
      return over;
    },
    /** Why the address could not be followed; empty where it could. */
    get trouble() {
      return trouble;
    },
    get forgetful() {
      return !store.persistent;
    },
    lay,
    check,
    hint,
    show,
    another,
    /** Opens what an address names, `#1-4182`, or else another one; says so where the address names none. */
    begin(hash: string): void {
      const read = readHash(hash);
      if (read?.ok) return open(read.seed);
      another();
      if (read) trouble = `${troubleSays(read.fault.message)} ${labels.instead}`;
    },
    /** Goes where a changed address leads; where it names no puzzle, the one that is open stays as it is. */
    follow(hash: string): void {
      const read = readHash(hash);
      if (read?.ok && read.seed !== puzzle.seed) open(read.seed);
      else trouble = !read || read.ok ? '' : `${troubleSays(read.fault.message)} ${labels.stays}`;
    },
    address: (): string => `#${printPuzzleAddress(puzzle.seed)}`,
  };
}

export type Session = ReturnType<typeof createSession>;
