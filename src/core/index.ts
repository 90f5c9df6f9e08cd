/**
 * Barwright's core: sticking text, bars, time and hands. Pure: no document, no sound, no clock, no chance of its own.
 */
export type { Fault, Result } from './fault.ts';
export * from './time/index.ts';
export * from './sticking/index.ts';
export * from './phrase/index.ts';
export * from './timeline/index.ts';
export * from './written/index.ts';
export * from './orchestration/index.ts';
export * from './hands/index.ts';
export * from './arrange/index.ts';
export * from './timing/index.ts';
export * from './puzzle/index.ts';
export * from './math/index.ts';
