export { compareTiming } from './compare.ts';
export type { ExtraHit, Hit, Spread, TimedStroke, Timing, TimingOptions, Widths } from './types.ts';
