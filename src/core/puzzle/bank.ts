/**
 * The cells that puzzles of version 1 are made of. A puzzle's address names only a number, so a row is never changed or
 * moved once it has been published: a new bank is a new version.
 *
 * Columns: id, sticking, slots. Ids are those of the course's cells, so that a school's own names hold here too.
 */
const ROWS = [
  ['kick', 'K', 1],
  ['kick-doubled', 'KK', 1],
  ['single', 'R', 1],
  ['single-left', 'L', 1],
  ['flam', '>lR', 1],
  ['two-singles', 'R L', 2],
  ['double', 'R R', 2],
  ['accented-two', '>R L', 2],
  ['rll', 'R L L', 3],
  ['three-singles', 'R L R', 3],
  ['accented-three', '>R L R', 3],
  ['flam-accent', '>lR L R', 3],
  ['flam-drag', '>lR LL R', 3],
  ['four-singles', 'R L R L', 4],
  ['accented-four', '>R L R L', 4],
  ['paradiddle', '>R L R R', 4],
  ['flam-paradiddle', '>lR L R R', 4],
  ['six-stroke-roll', '>R LL RR >L', 4],
  ['five', '>R L R L L', 5],
  ['double-paradiddle', '>R L R L R R', 6],
  ['paradiddle-diddle', '>R L R R L L', 6],
  ['seven', '>R L R L R L L', 7],
  ['two-and-rest', 'R L -', 3],
  ['kick-and-rest', 'K -', 2],
] as const;

/** A cell of a puzzle. */
export interface PuzzleCell {
  id: string;
  text: string;
  slots: number;
}

/** All cells that puzzles may use. */
export const BANK: readonly PuzzleCell[] = ROWS.map(([id, text, slots]) => ({ id, text, slots }));

/** From this level on cells may end in a rest, so that a bar's last stroke need not fall into its last slot. */
const RESTS_FROM = 4;

/** The cells of at most so many slots that puzzles of a level are made of. */
export const cellsFor = (level: number, longest: number): PuzzleCell[] =>
  BANK.filter(({ text, slots }) => slots <= longest && (level >= RESTS_FROM || !text.includes('-')));

/** Cells as they are offered: by length, the longest first, then as in the bank. */
export const onShelf = (cells: readonly PuzzleCell[]): PuzzleCell[] =>
  [...cells].sort((a, b) => b.slots - a.slots || BANK.indexOf(a) - BANK.indexOf(b));

const byId = new Map(BANK.map((cell) => [cell.id, cell]));

/** Cells by their ids. Throws RangeError for an id that the bank does not have. */
export function bankCells(...ids: string[]): PuzzleCell[] {
  return ids.map((id) => {
    const cell = byId.get(id);
    if (!cell) throw new RangeError(`cell is "${id}"; one of ${[...byId.keys()].join(', ')}`);
    return cell;
  });
}
