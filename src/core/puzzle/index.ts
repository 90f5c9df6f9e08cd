export {
  dailyPuzzle,
  LEVELS,
  levelOf,
  MAX_SEED,
  printPuzzleAddress,
  PUZZLE_KINDS,
  PUZZLE_VERSION,
  readPuzzleAddress,
  seedFor,
  type Day,
  type Level,
  type PuzzleKind,
} from './address.ts';
export { BANK, bankCells, type PuzzleCell } from './bank.ts';
export { makeEar } from './ear.ts';
export { makeFill } from './fill.ts';
export { gradeFix, holds, makeFix, mended } from './fix.ts';
export { gradeLaid, soundsOf } from './grade-lay.ts';
export { barOfTime } from './groove.ts';
export { completion, hintFor, otherAnswer, type LayHint } from './hint.ts';
export { answersTo, fillings, laidOnly, performCells, slotsIn, stickingOf } from './lay.ts';
export { makeMissing } from './missing.ts';
export { gradePuzzle, makePuzzle, solutionOf, type Answer } from './puzzle.ts';
export { chanceOf, splitMix64, type Chance } from './random.ts';
export { gradeResolves, makeResolves } from './resolves.ts';
export { gradeStart, makeStart } from './start.ts';
export { nextLevel, type Outcome } from './step.ts';
export * from './types.ts';
export { gradeWhich, makeWhich } from './which.ts';
