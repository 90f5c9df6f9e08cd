export { DEFAULT_LIMITS, hands, type HandsOptions, type HandsReport, type LimbReport, type Limits } from './hands.ts';
export { gapsOf, type Gap, type GapKind, type GapOptions } from './gaps.ts';
export { isHigh, motions, type Motion } from './motion.ts';
export { longestRuns, type LongestRuns, type Run } from './runs.ts';
