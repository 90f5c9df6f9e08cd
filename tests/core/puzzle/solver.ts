/**
 * A second opinion on puzzles, told from the letters of their texts by nothing that core computes: what is wrong with an answer,
 * and which answers are right.
 */
import type { Answer, CellsPuzzle, CellsWrong, FixPuzzle, Puzzle, PuzzleCell } from '../../../src/core/index.ts';

/** One slot as its text says it: told from the letters alone, by nothing that core computes. */
interface PlainSlot {
  cell: string;
  starts: boolean;
  accent: boolean;
  /** Main strokes in order, a letter each. */
  letters: string[];
}

/** The slots of cells one after another. */
export function plainSlots(cells: readonly PuzzleCell[]): PlainSlot[] {
  return cells.flatMap((cell) =>
    cell.text.split(' ').map((slot, i) => ({
      cell: cell.id,
      starts: i === 0,
      accent: slot.includes('>'),
      letters: [...slot].filter((letter) => /[RLKH]/.test(letter)),
    })),
  );
}

/** Where the longest row of one hand begins and how long it is, feet left out. */
export function plainRun(slots: readonly PlainSlot[], hand: string): { length: number; slot: number } {
  const strokes = slots.flatMap(({ letters }, slot) => letters.map((letter) => ({ letter, slot })));
  let best = { length: 0, slot: -1 };
  let run = { length: 0, slot: -1 };
  for (const { letter, slot } of strokes.filter((stroke) => /[RL]/.test(stroke.letter))) {
    run = letter === hand ? { length: run.length + 1, slot: run.length ? run.slot : slot } : { length: 0, slot: -1 };
    if (run.length > best.length) best = run;
  }
  return best;
}

/** The reasons an answer is wrong for, found anew by looking at letters; `short` and `long` stop the rest. */
export function plainWrongs(puzzle: CellsPuzzle, ids: readonly string[]): CellsWrong[] {
  const placed = ids.map((id) => puzzle.shelf.find((cell) => cell.id === id)!);
  const length = plainSlots(placed).length;
  const begin = plainSlots(puzzle.before).length;
  if (length < puzzle.gap) return [{ wrong: 'short', left: puzzle.gap - length, slot: begin + length }];
  if (length > puzzle.gap) return [{ wrong: 'long', over: length - puzzle.gap }];
  const slots = plainSlots([...puzzle.before, ...placed, ...puzzle.after]);
  return [
    ...plainUses(puzzle, ids),
    ...plainPlaces(puzzle, ids, slots),
    ...plainRuns(puzzle, slots),
    ...plainSound(puzzle, slots),
  ];
}

function plainUses({ uses }: CellsPuzzle, ids: readonly string[]): CellsWrong[] {
  return uses.flatMap(({ cell, min, max }): CellsWrong[] => {
    const used = ids.filter((id) => id === cell).length;
    if (max !== undefined && used > max) return [{ wrong: 'too-often', cell, used, most: max }];
    return used < min ? [{ wrong: 'too-seldom', cell, used, least: min }] : [];
  });
}

function plainPlaces({ rules, barSlots }: CellsPuzzle, ids: readonly string[], slots: PlainSlot[]): CellsWrong[] {
  const wrongs: CellsWrong[] = [];
  if (rules.first && ids[0] !== rules.first) wrongs.push({ wrong: 'first', wanted: rules.first, found: ids[0] });
  if (rules.last && ids.at(-1) !== rules.last) wrongs.push({ wrong: 'last', wanted: rules.last, found: ids.at(-1)! });
  const over = slots.findIndex(({ starts }, slot) => slot > 0 && slot % barSlots === 0 && !starts);
  if (rules.withinBars && over >= 0) {
    const from = slots.findLastIndex(({ starts }, slot) => slot < over && starts);
    wrongs.push({ wrong: 'over-bar-line', cell: slots[from].cell, slot: from });
  }
  for (const slot of rules.accentOn ?? []) if (!slots[slot].accent) wrongs.push({ wrong: 'no-accent', slot });
  for (const slot of rules.noAccentOn ?? []) if (slots[slot].accent) wrongs.push({ wrong: 'accent', slot });
  const found = slots.findLastIndex(({ letters }) => letters.length > 0);
  const wanted = rules.lastStrokeOn;
  return wanted === undefined || wanted === found ? wrongs : [...wrongs, { wrong: 'last-stroke', wanted, found }];
}

function plainRuns({ rules: { maxRun } }: CellsPuzzle, slots: PlainSlot[]): CellsWrong[] {
  if (maxRun === undefined) return [];
  return (['R', 'L'] as const).flatMap((hand): CellsWrong[] => {
    const { length, slot } = plainRun(slots, hand);
    return length > maxRun ? [{ wrong: 'run', hand, length, most: maxRun, slot }] : [];
  });
}

/** By ear: the texts with all hands made one, slot by slot. */
function plainSound({ heard, shelf: _shelf }: CellsPuzzle, slots: PlainSlot[]): CellsWrong[] {
  if (!heard) return [];
  const sound = ({ accent, letters }: PlainSlot, text: string): string =>
    `${accent} ${letters.map((letter) => (letter === 'K' ? 'K' : 'hand')).join('+')} ${/[rl]/.test(text)}`;
  const texts = (cells: readonly PuzzleCell[]): string[] => cells.flatMap(({ text }) => text.split(' '));
  const cellsOf = slots.flatMap(({ starts, cell }) => (starts ? [cell] : []));
  const placed = cellsOf.map((id) => _shelf.find((cell) => cell.id === id)!);
  const [a, b] = [texts(placed), texts(heard.cells)];
  const wanted = plainSlots(heard.cells);
  const slot = slots.findIndex((one, i) => sound(one, a[i]) !== sound(wanted[i], b[i]));
  return slot < 0 ? [] : [{ wrong: 'sound', slot }];
}

/** Whether a bar keeps the rule of a puzzle that asks for its one wrong stroke. */
export function plainKeeps({ asked }: FixPuzzle, strokes: readonly string[]): boolean {
  const slots = plainSlots([{ id: 'bar', text: strokes.join(' '), slots: strokes.length }]);
  const hands = strokes.map((stroke) => stroke.replace(/[^RL]/g, ''));
  const longest = Math.max(plainRun(slots, 'R').length, plainRun(slots, 'L').length);
  if (asked.rule === 'hand-to-hand') return hands.every((hand, i) => i === 0 || hand !== hands[i - 1]);
  if (asked.rule === 'no-more-than') return longest <= asked.most;
  if (asked.rule === 'accents') return slots.every(({ accent }, i) => accent === (i % asked.every === 0));
  const own = asked.cell.text.split(' ').map((stroke) => stroke.replace(/[^RL]/g, ''));
  const turned = (turn: boolean): string[] => own.map((hand) => (turn ? otherHand(hand) : hand));
  let leader = 'L';
  const whole = Array.from({ length: strokes.length / own.length }, () => {
    const turn = asked.lead === 'alternating' && leader === own[0];
    leader = turned(turn)[0];
    return turned(turn);
  }).flat();
  return hands.join(' ') === whole.join(' ');
}

const otherHand = (hand: string): string => (hand === 'R' ? 'L' : 'R');

/** The strokes of a bar with one of them changed: its accent, where the rule is about accents, else all its hands. */
function plainChanged({ asked, strokes }: FixPuzzle, slot: number): string[] {
  const turn = (stroke: string): string =>
    asked.rule === 'accents'
      ? stroke.startsWith('>')
        ? stroke.slice(1)
        : `>${stroke}`
      : stroke.replace(/[RLrl]/g, (letter) => ({ R: 'L', L: 'R', r: 'l', l: 'r' })[letter]!);
  return strokes.map((stroke, i) => (i === slot ? turn(stroke) : stroke));
}

/** Whether an answer is right. */
export function plainRight(puzzle: Puzzle, answer: Answer): boolean {
  if ('shelf' in puzzle) return plainWrongs(puzzle, answer as readonly string[]).length === 0;
  switch (puzzle.kind) {
    case 'start': {
      const { cells, ask, pickup, barSlots } = puzzle;
      const before = cells.slice(0, ask).flatMap(({ text }) => text.split(' ')).length;
      return answer === (before - pickup) % barSlots;
    }
    case 'fix':
      return plainKeeps(puzzle, plainChanged(puzzle, answer as number));
    case 'resolves': {
      const length = puzzle.cell.text.split(' ').length;
      let bars = 1;
      while ((bars * puzzle.barSlots) % length) bars += 1;
      return answer === bars;
    }
    case 'which':
      return puzzle.heard[(answer as number) - 1].id === puzzle.ask;
  }
}

/** Ways to fill a puzzle with the cells it offers, whatever its rules say; undefined where there are more than so many. */
export function plainFillings({ shelf, gap, uses }: CellsPuzzle, most: number): string[][] | undefined {
  const found: string[][] = [];
  const walk = (ids: string[], left: number): boolean => {
    if (left === 0) found.push(ids);
    if (left <= 0 || found.length > most) return found.length <= most;
    return shelf.every(({ id, text }) => {
      const limit = uses.find(({ cell }) => cell === id)?.max ?? Infinity;
      const length = text.split(' ').length;
      if (length > left || ids.filter((one) => one === id).length >= limit) return true;
      return walk([...ids, id], left - length);
    });
  };
  return walk([], gap) ? found : undefined;
}
