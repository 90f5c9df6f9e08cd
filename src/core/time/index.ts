export * from './units.ts';
export {
  isGrid,
  MAX_GRID,
  MAX_UPPER,
  meterOf,
  quartersPerMinute,
  readMeter,
  slotsOf,
  slotTicks,
  type Meter,
} from './meter.ts';
export { slotNames, type SlotNames } from './slot-names.ts';
export { countName, countNames, countSyllables, COUNT_SYSTEMS, sayCount, saySlot, type CountSystem } from './counts.ts';
export { gcd, resolution, type Resolution } from './resolution.ts';
