/** The player's own data, kept in this browser: the one door to it. */
export { openPlayers, type PlayerStore } from './players.ts';
export { openLessons, type LessonStore } from './lessons.ts';
export { openPuzzles, type PuzzleStore } from './puzzles.ts';
export { openOwnData, type Kept, type OwnData } from './own-data.ts';
export { openVisit, type Visit } from './visit.ts';
export { LARGEST_FILE, readFile, writeFile, type FileFault, type FileReading, type Saved } from './file.ts';
export { changesBetween, merged, undone, type Change } from './merge.ts';
export { DEFAULTS, LIMITS, type ExerciseMemory, type SiteSettings } from './players.ts';
export type { PuzzleRecord } from './puzzles.ts';
export type { Stored } from './kept.ts';
export { between, fit, fitWhole, type LeftOut, matching, oneOf, whole } from './fitting.ts';
export type { StorageArea, StorageOptions } from './shelf.ts';
