import {
  levelNear,
  levelOf,
  nextLevel,
  printDay,
  printPuzzleAddress,
  readPuzzleAddress,
  seedFor,
  type Answer,
  type Day,
  type Level,
  type Puzzle,
  type PuzzleKindRecord,
  type SlotIndex,
} from '../../../src/core/index.ts';
import { openPuzzles, type PuzzleRecord } from '../../../src/storage/index.ts';
import { capital } from '../../../src/words/grammar.ts';
import { PUZZLE_LABELS as labels } from '../../../src/words/puzzle/page.ts';
import type { NameOf, PuzzleWords } from '../../../src/words/puzzle/say.ts';

/** What has just been said of an answer. */
export interface Verdict {
  /** Right, wrong, or only help. */
  kind: 'right' | 'wrong' | 'hint';
  lines: string[];
  /** Slots that it is about. */
  slots: SlotIndex[];
}

interface Parts<P, A> {
  record: PuzzleKindRecord<P, A>;
  words: PuzzleWords<P, A, { wrong: string }, { hint: string }>;
}

/** The puzzle that is open, one of a kind after another: the answer so far, what was said of it, and how it went. */
export class OpenPuzzle<P extends Puzzle = Puzzle, A extends Answer = Answer> {
  readonly #parts: Parts<P, A>;
  readonly #nameOf: NameOf;
  readonly #today: () => Day;
  readonly #store = openPuzzles();
  #puzzle: P;
  #answer: A | undefined;
  #verdict = $state.raw<Verdict | undefined>();
  #over = $state(false);
  #trouble = $state('');
  #misses = 0;
  #hints = 0;

  constructor(parts: Parts<P, A>, nameOf: NameOf, seed: number, today: () => Day) {
    this.#today = today;
    this.#parts = parts;
    this.#nameOf = nameOf;
    this.#puzzle = $state.raw(parts.record.make(seed));
    this.#answer = $state.raw(parts.record.unanswered);
  }

  get puzzle(): P {
    return this.#puzzle;
  }

  get answer(): A | undefined {
    return this.#answer;
  }

  /** Another answer: what was said of the one before holds no longer. */
  set answer(next: A | undefined) {
    this.#answer = next;
    this.#verdict = undefined;
  }

  get verdict(): Verdict | undefined {
    return this.#verdict;
  }

  /** Whether it has been solved or shown. */
  get over(): boolean {
    return this.#over;
  }

  /** Why the address could not be followed; empty where it could. */
  get trouble(): string {
    return this.#trouble;
  }

  get forgetful(): boolean {
    return !this.#store.persistent;
  }

  get address(): string {
    return `#${printPuzzleAddress(this.#puzzle.seed)}`;
  }

  check = (): void => {
    const { record, words } = this.#parts;
    if (this.#answer === undefined) {
      this.#verdict = { kind: 'hint', lines: [labels.nothingChosen], slots: [] };
      return;
    }
    const { right, wrongs } = record.grade(this.#puzzle, this.#answer);
    if (right) this.#verdict = { kind: 'right', lines: this.#rightLines(this.#answer), slots: [] };
    else {
      const lines = wrongs.map((wrong) => words.wrong(this.#puzzle, wrong, this.#nameOf));
      const slots = wrongs.flatMap((wrong) => ('slot' in wrong ? [wrong.slot as SlotIndex] : []));
      this.#verdict = { kind: 'wrong', lines, slots };
    }
    if (right) this.#end(true);
    else if (!this.#over) this.#misses += 1;
  };

  #rightLines(answer: A): string[] {
    const { record, words } = this.#parts;
    const other = record.another?.(this.#puzzle, answer);
    const more =
      other === undefined ? [] : [`${labels.anotherAnswer} ${words.answer(this.#puzzle, other, this.#nameOf)}.`];
    return [words.right?.(this.#puzzle) ?? labels.right, ...more];
  }

  /** Whether this kind can help. */
  get hasHints(): boolean {
    return this.#parts.record.hint !== undefined;
  }

  hint = (): void => {
    const { record, words } = this.#parts;
    if (!record.hint || !words.hint || this.#answer === undefined) return;
    const hint = record.hint(this.#puzzle, this.#answer, this.#hints);
    if (!this.#over) this.#hints += 1;
    this.#verdict = { kind: 'hint', lines: [words.hint(this.#puzzle, hint, this.#nameOf)], slots: [] };
  };

  /** Shows one right answer; that counts as not solved. */
  show = (): void => {
    const { record, words } = this.#parts;
    this.#end(false);
    this.answer = record.solution(this.#puzzle);
    const shown = `${capital(words.answer(this.#puzzle, this.#answer!, this.#nameOf))}.`;
    this.#verdict = { kind: 'hint', lines: [shown], slots: [] };
  };

  /** The next one: of the level that the last ones have earned, or one easier or harder than this. */
  another(step: -1 | 0 | 1 = 0): void {
    const level = step ? levelNear(this.#puzzle.level, step) : this.#earnedLevel();
    this.#open(seedFor(level, Math.random));
  }

  /** Opens what an address names, `#1-4182`, or else another one; says so where the address names none. */
  begin(hash: string): void {
    const read = readHash(hash);
    if (read?.ok) return this.#open(read.seed);
    this.another();
    if (read) this.#trouble = `${capital(read.fault.message)}. ${labels.instead}`;
  }

  /** Goes where a changed address leads; where it names no puzzle, the one that is open stays as it is. */
  follow(hash: string): void {
    const read = readHash(hash);
    if (read?.ok && read.seed !== this.#puzzle.seed) this.#open(read.seed);
    else this.#trouble = !read || read.ok ? '' : `${capital(read.fault.message)}. ${labels.stays}`;
  }

  #open(seed: number): void {
    this.#puzzle = this.#parts.record.make(seed);
    this.answer = this.#parts.record.unanswered;
    this.#over = false;
    this.#trouble = '';
    this.#misses = 0;
    this.#hints = 0;
  }

  #end(right: boolean): void {
    if (this.#over) return;
    this.#over = true;
    const { kind, seed } = this.#puzzle;
    const day = printDay(this.#today());
    this.#store.notePuzzle({ kind, seed, day, right, misses: this.#misses, hints: this.#hints });
  }

  /** The level one has reached in this kind: that of the latest, or a step from it. */
  #earnedLevel(): Level {
    const own = this.#store.puzzles().filter(({ kind }: PuzzleRecord) => kind === this.#puzzle.kind);
    const last = own.at(-1);
    if (!last) return 1;
    const now = levelOf(last.seed);
    return nextLevel(
      now,
      own.filter(({ seed }) => levelOf(seed) === now),
    );
  }
}

/** What the part of an address after # says; nothing where there is none. */
function readHash(hash: string): ReturnType<typeof readPuzzleAddress> | undefined {
  const text = hash.replace(/^#/, '');
  try {
    return text ? readPuzzleAddress(decodeURIComponent(text)) : undefined;
  } catch {
    return readPuzzleAddress(text);
  }
}
