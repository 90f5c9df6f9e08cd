/** The player's own data, kept in this browser: the one door to it. */
export { openStorage } from './store.ts';
export { openOwnData, type OwnData } from './own-data.ts';
export { LARGEST_FILE, merged, readFile, writeFile } from './file.ts';
export type { FileFault, FileReading } from './file.ts';
export type { StorageArea } from './keys.ts';
export { DEFAULTS } from './shape.ts';
export type { PlayerStore } from './store.ts';
export type { ExerciseMemory, PuzzleRecord, SiteSettings, Stored } from './shape.ts';
