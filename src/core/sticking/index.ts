export * from './types.ts';
export { parseSticking } from './parse.ts';
export { printItems, printSlot, printSticking } from './print.ts';
export { DEFAULT_SURFACE, isHand, LIMBS, otherHand, SURFACES, type Surface } from './limbs.ts';
export { mirror, type KitMap } from './mirror.ts';
export { cellsOf } from './cells.ts';
export { expand, isSlot, slotCount, slotsOnly, type FlatItem } from './expand.ts';
export { faultText } from '../fault.ts';
export { findSticking, type Match, type MatchOptions } from './find.ts';
