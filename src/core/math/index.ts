export { cellStarts, fit, placeOf, type Fit, type BarSlot } from './fit.ts';
export { gapsBetween, spread, turned, turnsOf } from './spread.ts';
export { against, againstText, barOfBeats, evenBars, type Against, type EvenBar } from './against.ts';
export {
  handSpeed,
  sameSpeed,
  slotMs,
  tempoAtRebound,
  tempoAtTurns,
  thirtySecondMs,
  type HandSpeed,
  type HandWay,
} from './speed.ts';
export { slotOfCount, slotOfTick, slotsOfCounts, type TickPlace } from './count-place.ts';
