import { slotsOf } from '../../time/meter.ts';
import type { Bpm, Grid, MeterText } from '../../time/units.ts';
import { bankCells, cellsFor, onShelf, type PuzzleCell } from '../bank.ts';
import { BY_CELLS, type CellsHint } from '../by-cells.ts';
import { fillings, shelfLimits, type CellsPuzzle } from '../cells.ts';
import { soundsOf, type CellsWrong } from '../grade-cells.ts';
import type { PuzzleKindRecord } from '../kind.ts';
import { difficultyOf, levelOf, type Level } from '../level.ts';
import { puzzleChance, type Chance } from '../random.ts';

/** By ear: a bar is heard, and the cells it is made of are placed. */
export type EarPuzzle = CellsPuzzle<'ear'>;

const NUMBER = 4;

interface LevelSpec {
  bars: readonly (readonly [MeterText, Grid])[];
  shelf: number;
  bpm: Bpm;
}

const BY_LEVEL: Record<Level, LevelSpec> = {
  1: { bars: [['2/4', 4], ['4/4', 2]], shelf: 2, bpm: 60 },
  2: { bars: [['3/4', 4], ['4/4', 3]], shelf: 3, bpm: 60 },
  3: { bars: [['4/4', 4], ['4/4', 3]], shelf: 3, bpm: 66 },
  4: { bars: [['4/4', 4], ['6/8', 6]], shelf: 4, bpm: 72 },
  5: { bars: [['5/4', 4], ['7/8', 2], ['4/4', 6]], shelf: 4, bpm: 72 },
}; // prettier-ignore

const TRIES = 60;

/**
 * A bar that is heard and put together from a shelf whose cells all sound different, so that one order alone sounds like it.
 * @example
 * makePuzzle('ear', 4182).heard.bpm // → 66
 */
function make(seed: number): EarPuzzle {
  const level = levelOf(seed);
  const chance = puzzleChance(NUMBER, seed);
  const spec = BY_LEVEL[level];
  for (let tries = 0; tries < TRIES; tries += 1) {
    const puzzle = draw(chance, spec, seed, level);
    if (puzzle) return puzzle;
  }
  return heard({ seed, level, bpm: spec.bpm, meter: '2/4', grid: 4 }, bankCells('rll', 'two-singles'), [
    'rll',
    'two-singles',
    'rll',
  ]);
}

function draw(
  chance: Chance,
  { bars, shelf: size, bpm }: LevelSpec,
  seed: number,
  level: Level,
): EarPuzzle | undefined {
  const [meter, grid] = chance.pick(bars);
  const slots = slotsOf(meter, grid);
  const shelf = soundApart(chance.shuffle(cellsFor(level, slots / 2)), size);
  const all = fillings({ shelf, before: [], after: [], slots, barSlots: slots, rules: {}, uses: [] });
  if (all.count < 2n) return undefined;
  const order = all.sample(chance.unit);
  if (new Set(order).size < 2) return undefined;
  const puzzle = heard({ seed, level, bpm, meter, grid }, shelf, order);
  return puzzle.difficulty.answers === 1n ? puzzle : undefined;
}

/** Of two cells that sound the same, the shelf has the first. */
function soundApart(cells: readonly PuzzleCell[], size: number): PuzzleCell[] {
  const kept = new Map<string, PuzzleCell>();
  for (const cell of cells) {
    const key = soundsOf([cell]).join(' ');
    if (kept.size < size && !kept.has(key)) kept.set(key, cell);
  }
  return onShelf([...kept.values()]);
}

type Facts = Pick<EarPuzzle, 'seed' | 'level' | 'meter' | 'grid'> & { bpm: Bpm };

function heard({ bpm, ...facts }: Facts, shelf: PuzzleCell[], solution: string[]): EarPuzzle {
  const slots = slotsOf(facts.meter, facts.grid);
  const base = { shelf, before: [], after: [], slots, barSlots: slots, rules: {}, uses: shelfLimits(shelf) };
  const cells = bankCells(...solution);
  const answers = countSoundingLike(cells, shelf);
  const difficulty = difficultyOf(
    { answers, choices: fillings(base).count, rules: 0, depth: solution.length },
    facts.grid,
  );
  return { kind: 'ear', ...facts, ...base, gap: slots, heard: { cells, bpm }, solution, difficulty };
}

/** In how many orders the cells of a shelf sound like what is heard: from each slot on, counted from the end. */
function countSoundingLike(cells: readonly PuzzleCell[], shelf: readonly PuzzleCell[]): bigint {
  const sounds = soundsOf(cells);
  const ways = Array.from({ length: sounds.length + 1 }, () => 0n);
  ways[sounds.length] = 1n;
  const own = shelf.map((cell) => soundsOf([cell]));
  for (let slot = sounds.length - 1; slot >= 0; slot -= 1)
    for (const cell of own)
      if (cell.every((sound, i) => sounds[slot + i] === sound)) ways[slot] += ways[slot + cell.length];
  return ways[0];
}

/** The kind `ear`. */
export const record: PuzzleKindRecord<EarPuzzle, readonly string[], CellsWrong, CellsHint> = {
  number: NUMBER,
  make,
  ...BY_CELLS,
};
