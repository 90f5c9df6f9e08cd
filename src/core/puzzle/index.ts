export { MAX_SEED, printPuzzleAddress, PUZZLE_VERSION, readPuzzleAddress } from './address.ts';
export { BANK, bankCells, type PuzzleCell } from './bank.ts';
export { cellsHint, completion, type CellsHint } from './by-cells.ts';
export {
  answersTo,
  fillings,
  performCells,
  placeNearest,
  slotsIn,
  stickingOf,
  wholeLine,
  withoutFixed,
  type CellsPuzzle,
  type Uses,
} from './cells.ts';
export { dailyPuzzle, dayOf, printDay, type Day } from './daily.ts';
export { gradeCells, soundsOf, type CellsWrong } from './grade-cells.ts';
export { type Answer, type Grade, type PuzzleBase, type PuzzleKindRecord } from './kind.ts';
export { changed, type FixPuzzle, type FixRule, type FixWrong } from './kinds/fix.ts';
export { type ResolvesPuzzle, type ResolvesWrong } from './kinds/resolves.ts';
export { type StartPuzzle, type StartWrong } from './kinds/start.ts';
export { performHeard, type Heard, type WhichPuzzle, type WhichWrong } from './kinds/which.ts';
export { levelNear, levelOf, LEVELS, nextLevel, seedFor, type Difficulty, type Level, type Outcome } from './level.ts';
export {
  gradePuzzle,
  makePuzzle,
  PUZZLE_KINDS,
  PUZZLES,
  solutionOf,
  type Puzzle,
  type PuzzleKind,
  type PuzzleOf,
} from './puzzles.ts';
export { chanceOf, splitMix64, type Chance } from './random.ts';
export { barOfTime, performTimeBar } from './time-bar.ts';
