import type { LayPuzzle, PuzzleCell, Wrong } from '../../../src/core/index.ts';

/** One slot as its text says it: told from the letters alone, by nothing that core computes. */
interface PlainSlot {
  cell: string;
  starts: boolean;
  accent: boolean;
  /** Main strokes in order, a letter each. */
  letters: string[];
}

/** The slots of cells laid one after another. */
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
export function plainWrongs(puzzle: LayPuzzle, ids: readonly string[]): Wrong[] {
  const laid = ids.map((id) => puzzle.shelf.find((cell) => cell.id === id)!);
  const length = plainSlots(laid).length;
  const begin = plainSlots(puzzle.before).length;
  if (length < puzzle.gap) return [{ wrong: 'short', left: puzzle.gap - length, slot: begin + length }];
  if (length > puzzle.gap) return [{ wrong: 'long', over: length - puzzle.gap }];
  const slots = plainSlots([...puzzle.before, ...laid, ...puzzle.after]);
  return [
    ...plainUses(puzzle, ids),
    ...plainPlaces(puzzle, ids, slots),
    ...plainRuns(puzzle, slots),
    ...plainSound(puzzle, slots),
  ];
}

function plainUses({ uses }: LayPuzzle, ids: readonly string[]): Wrong[] {
  return uses.flatMap(({ cell, min, max }): Wrong[] => {
    const used = ids.filter((id) => id === cell).length;
    if (max !== undefined && used > max) return [{ wrong: 'too-often', cell, used, most: max }];
    return used < min ? [{ wrong: 'too-seldom', cell, used, least: min }] : [];
  });
}

function plainPlaces({ rules, barSlots }: LayPuzzle, ids: readonly string[], slots: PlainSlot[]): Wrong[] {
  const wrongs: Wrong[] = [];
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

function plainRuns({ rules: { maxRun } }: LayPuzzle, slots: PlainSlot[]): Wrong[] {
  if (maxRun === undefined) return [];
  return (['R', 'L'] as const).flatMap((hand): Wrong[] => {
    const { length, slot } = plainRun(slots, hand);
    return length > maxRun ? [{ wrong: 'run', hand, length, most: maxRun, slot }] : [];
  });
}

/** By ear: the texts with all hands made one, slot by slot. */
function plainSound({ heard, shelf: _shelf }: LayPuzzle, slots: PlainSlot[]): Wrong[] {
  if (!heard) return [];
  const sound = ({ accent, letters }: PlainSlot, text: string): string =>
    `${accent} ${letters.map((letter) => (letter === 'K' ? 'K' : 'hand')).join('+')} ${/[rl]/.test(text)}`;
  const texts = (cells: readonly PuzzleCell[]): string[] => cells.flatMap(({ text }) => text.split(' '));
  const cellsOf = slots.flatMap(({ starts, cell }) => (starts ? [cell] : []));
  const laid = cellsOf.map((id) => _shelf.find((cell) => cell.id === id)!);
  const [a, b] = [texts(laid), texts(heard.cells)];
  const wanted = plainSlots(heard.cells);
  const slot = slots.findIndex((one, i) => sound(one, a[i]) !== sound(wanted[i], b[i]));
  return slot < 0 ? [] : [{ wrong: 'sound', slot }];
}
