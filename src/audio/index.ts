/** Timelines as sound. What this module loads is small; the rest comes with the first press on play. */
export { createPlayer } from './player.ts';
export type {
  Check,
  ClickMode,
  Heard,
  Phase,
  Player,
  PlayerEvent,
  PlayerReason,
  PlayerState,
  PlayRequest,
  Position,
} from './types.ts';
