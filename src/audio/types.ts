import type { Bpm, Milliseconds, Ticks, Timeline } from '../core/index.ts';

/** The plain bar that takes turns with the pattern: so many bars of it, then so many of the pattern. */
export interface Check {
  timeline: Timeline;
  bars: 1 | 2 | 4;
}

/** What the metronome gives: nothing, the beats, or every slot of the grid with the beats above it. */
export type ClickMode = 'off' | 'beats' | 'slots';

/** Both hands and the feet, or one hand alone. The metronome is always heard. */
export type Heard = 'all' | 'R' | 'L';

/** Everything a player needs to know about what it is to play. */
export interface PlayRequest {
  timeline: Timeline;
  check?: Check;
  /** Quarter notes a minute. */
  bpm: Bpm;
  /** Long to short, 1 (even) to 4, for grids of 2 and 4. */
  swing: number;
  /** Gap between a grace note and the next note of its figure. */
  flamMs: Milliseconds;
  loop: boolean;
  /** One bar of clicks before the first pass. */
  countIn: boolean;
  click: ClickMode;
  heard: Heard;
  /** One of core's COUNT_SYSTEMS; the default where it is left out or unknown. */
  countSystem?: string;
}

/** What a moment belongs to. */
export type Phase = 'count-in' | 'check' | 'pattern';

/** What is heard at a moment. */
export interface Position {
  /** A pickup is `pattern`, also where it sounds over the count-in or the check. */
  phase: Phase;
  /** From 1: how often check and pattern have come round. The count-in belongs to the first. */
  pass: number;
  /** From 1, in the timeline of its phase; 0 for the count-in and for a pickup. */
  bar: number;
  /** TimedSlot in the timeline of its phase, between two whole ticks; below 0 in the count-in and in a pickup. */
  tick: Ticks;
  /** What is counted here: the syllable of the slot, in the count-in the number of the beat. */
  count: string;
  /** Ids of the strokes that light up now, of the timeline of its phase. */
  lit: string[];
}

/**
 * `opening`: the sound is being got ready. `interrupted`: the browser took the sound away and gives it back.
 * `silent`: no sound comes out; the reason says why.
 */
export type PlayerState = 'stopped' | 'opening' | 'playing' | 'interrupted' | 'silent';

/**
 * Why a player is not playing. `no-output`: the browser gives no audio context. `loading`: code did not arrive. `sounds`:
 * the drums were not rendered. `suspended`: the browser holds the sound back. `no-device`: the clock of the sound stands
 * still. `closed`: the browser closed the context. `hidden`: the page was left. `failed`: something else broke.
 */
export type PlayerReason =
  'no-output' | 'loading' | 'sounds' | 'suspended' | 'no-device' | 'closed' | 'hidden' | 'failed';

/** A change of state. */
export interface PlayerEvent {
  state: PlayerState;
  reason?: PlayerReason | undefined;
}

/** Plays what it is asked to; of all players of a page only one sounds at a time. */
export interface Player {
  readonly state: PlayerState;
  /**
   * Plays from the beginning. Call it inside the press itself, even where the request is still to come: only there may a
   * phone open its sound. What makes no progress for 5 s is given up with a reason, and can be tried again.
   */
  play(request: PlayRequest | Promise<PlayRequest>): void;
  /** Goes on from the same place as the new request has it. Does nothing while stopped. */
  change(request: PlayRequest): void;
  /** Silent at once, without a click. */
  stop(): void;
  /** What is heard now, the delay of the loudspeaker taken into account; undefined where nothing is. */
  position(): Position | undefined;
  /** Calls the listener at every change of state; gives back what ends that. */
  on(listener: (event: PlayerEvent) => void): () => void;
  /** Stops and lets go of everything. The player cannot be used again. */
  dispose(): void;
}
