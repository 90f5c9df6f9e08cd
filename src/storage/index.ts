/** The player's own data, kept in this browser: the one door to it. */
export { openStorage } from './store.ts';
export { DEFAULTS, VERSION } from './shape.ts';
export type { PlayerStore, StorageArea } from './store.ts';
export type { ExerciseMemory, SiteSettings } from './shape.ts';
