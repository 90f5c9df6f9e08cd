import { SIZE } from './sizes.ts';

/** Heights of the rows over and under the staff, the same in every picture of a piece. */
export interface Rows {
  top: number;
  /** Baselines of the cell names, the lower row first, and the line of their brackets. */
  names: [number, number];
  bracket: number;
  /** Baselines of the letters: hands, and feet where they have a row of their own. */
  letters: number;
  feet: number;
  /** The ruler: where its long marks begin, its line, and the baseline of its counts. */
  marks: number;
  ruler: number;
  counts: number;
  bottom: number;
}

/** What the rows depend on. */
export interface RowsNeeded {
  musicTop: number;
  musicBottom: number;
  /** How many rows of names over the brackets; 0 where there are none. */
  names: 0 | 1 | 2;
  letters: boolean;
  feetApart: boolean;
  counts: boolean;
}

/** Lays the rows round the music; a row that is not wanted takes no room. */
export function layRows({ musicTop, musicBottom, names, letters, feetApart, counts }: RowsNeeded): Rows {
  const bracket = Math.floor(musicTop) - (names ? 15 : 0);
  const name = bracket - (names ? 6 : 0);
  const upper = name - SIZE.nameStep;
  const top = names > 1 ? upper : name;
  const hands = Math.ceil(musicBottom) + (letters ? 5 + Math.round(SIZE.letter * 0.72) : 0);
  const feet = hands + (letters && feetApart ? Math.round(SIZE.letter) + 1 : 0);
  const marks = feet + (counts ? 9 : 0);
  const ruler = marks + (counts ? 17 : 0);
  const labels = ruler + (counts ? 16 : 0);
  return {
    top: Math.floor(top - (names ? SIZE.name * 0.8 : 0)) - 2,
    names: [name, upper],
    bracket,
    letters: hands,
    feet,
    marks,
    ruler,
    counts: labels,
    bottom: Math.ceil(labels) + 5,
  };
}
