export * from './types.ts';
export { SURFACES, type Surface } from './surfaces.ts';
export { parseSticking } from './parse.ts';
export { printItems, printSlot, printSticking } from './print.ts';
export { DEFAULT_SURFACE, mirror, otherHand, type KitMap } from './mirror.ts';
export { cellsOf } from './cells.ts';
export { expand, isSlot, slotCount, slotsOnly, type FlatItem } from './expand.ts';
export { faultText } from './fault-text.ts';
export { LIMITS } from './check-lines.ts';
