export * from './types.ts';
export { arrangements } from './arrange.ts';
export { MAX_STATES } from './limits.ts';
