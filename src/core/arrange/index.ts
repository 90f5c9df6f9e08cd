export * from './types.ts';
export { arrangements } from './arrange.ts';
export { loopArrangements } from './loops.ts';
export { MAX_PATH, neighbors, practicePath, swapChain, swapDistance } from './swaps.ts';
export { rankArrangements, scoreOrder } from './rank.ts';
export { MAX_RANKED_STATES, MAX_STATES, TooLarge } from './limits.ts';
