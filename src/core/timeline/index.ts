export * from './types.ts';
export { perform, type PerformOptions } from './perform.ts';
export { DEFAULT_FLAM_MS, schedule, secondsAt } from './schedule.ts';
