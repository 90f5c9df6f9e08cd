export * from './types.ts';
export { arrangements } from './arrange.ts';
export { loopArrangements } from './loops.ts';
export { neighbours, swapChain, swapDistance } from './neighbours.ts';
export { MAX_PATH, practicePath } from './practice-path.ts';
export { rankArrangements, scoreOrder } from './rank.ts';
export { MAX_RANKED_STATES, MAX_STATES, TooLarge } from './limits.ts';
