export { containsTick, scoreBars, type Fragment, type ScoreBar } from './fragments.ts';
export {
  heightOf,
  isFoot,
  staffFor,
  staffPlace,
  type Head,
  type PlacedStroke,
  type Staff,
  type StaffPlace,
} from './kit.ts';
export type { BeamGroup, TupletMark } from './marks.ts';
export type { Written } from './symbols.ts';
export { beamsOf, piecesOf, valueOf, type Value } from './values.ts';
export type { Onset } from './voices.ts';
export {
  writeBars,
  writtenNotes,
  type VoicePart,
  type WriteOptions,
  type WrittenBar,
  type WrittenFragment,
  type WrittenNotesOptions,
} from './write.ts';
