import { above0, oneOf } from '../check.ts';
import { checkGrid, meterOf } from '../time/meter.ts';
import type { Grid, MeterText, Milliseconds } from '../time/units.ts';

/**
 * How the hands share the slots: hand to hand; by turns of two strokes, a slot each; by turns, two strokes in each slot;
 * one hand alone.
 */
export type HandWay = 'singles' | 'doubles' | 'diddles' | 'one-hand';

interface Way {
  /** Slots from one turn of the wrist to the next of the same hand. */
  turn: number;
  strokes: number;
  /** Slots from the first stroke of a double to the rebound. */
  rebound?: number;
}

const WAYS: Record<HandWay, Way> = {
  singles: { turn: 2, strokes: 1 },
  doubles: { turn: 4, strokes: 2, rebound: 1 },
  diddles: { turn: 2, strokes: 2, rebound: 1 / 2 },
  'one-hand': { turn: 1, strokes: 1 },
};

function wayOf(way: HandWay): Way {
  oneOf('way', way, Object.keys(WAYS));
  return WAYS[way];
}

/** What a tempo asks of one hand. */
export interface HandSpeed {
  /** Strokes a second, rebounds counted. */
  strokes: number;
  /** Turns of the wrist a second: a double is one turn. */
  turns: number;
  /** The time from one turn to the next. */
  turnMs: Milliseconds;
  /** The time from the first stroke of a double to its rebound. */
  reboundMs?: Milliseconds;
}

/**
 * How long one slot lasts at a tempo in beats a minute. A beat is a quarter note, in 6/8, 9/8 and 12/8 a dotted quarter;
 * where the meter counts eighths or halves, the tempo is still of quarters. Throws RangeError for a tempo that is none.
 * @example
 * slotMs('4/4', 4, 120) // → 125
 */
export function slotMs(meter: MeterText, grid: Grid, tempo: number): Milliseconds {
  above0('tempo', tempo);
  return 60_000 / (tempo * slotsPerTempoBeat(meter, grid));
}

/** Slots to a beat of the tempo. */
function slotsPerTempoBeat(meter: MeterText, grid: Grid): number {
  checkGrid(grid);
  const { compound, lower } = meterOf(meter);
  return compound ? grid : (grid * lower) / 4;
}

/**
 * How long a thirty-second note lasts at a tempo in beats a minute.
 * @example
 * thirtySecondMs('4/4', 120) // → 62.5
 */
export function thirtySecondMs(meter: MeterText, tempo: number): Milliseconds {
  above0('tempo', tempo);
  return 60_000 / (tempo * (meterOf(meter).compound ? 12 : 8));
}

/**
 * What slots of a length ask of one hand.
 * @example
 * handSpeed('singles', 125) // → { strokes: 4, turns: 4, turnMs: 250 }
 * handSpeed('diddles', 125) // → { strokes: 8, turns: 4, reboundMs: 62.5 }
 */
export function handSpeed(way: HandWay, slot: Milliseconds): HandSpeed {
  above0('slot', slot);
  const { turn, strokes, rebound } = wayOf(way);
  const turnMs = turn * slot;
  return {
    strokes: (1000 * strokes) / turnMs,
    turns: 1000 / turnMs,
    turnMs,
    ...(rebound ? { reboundMs: rebound * slot } : {}),
  };
}

/**
 * The tempo at which one hand turns so many times a second.
 * @example
 * tempoAtTurns('4/4', 4, 'singles', 6) // → 180
 */
export function tempoAtTurns(meter: MeterText, grid: Grid, way: HandWay, turns: number): number {
  above0('turns', turns);
  return (60 * turns * wayOf(way).turn) / slotsPerTempoBeat(meter, grid);
}

/**
 * The tempo at which the two strokes of a double are so far apart; nothing where there are no doubles.
 * @example
 * tempoAtRebound('4/4', 4, 'diddles', 62.5) // → 120
 */
export function tempoAtRebound(meter: MeterText, grid: Grid, way: HandWay, ms: Milliseconds): number | undefined {
  above0('ms', ms);
  const { rebound } = wayOf(way);
  return rebound && (60_000 * rebound) / (ms * slotsPerTempoBeat(meter, grid));
}

/**
 * The tempo at which slots of another grid are as long as those of this one.
 * @example
 * sameSpeed(120, 4, 3) // → 160
 */
export function sameSpeed(tempo: number, grid: Grid, other: Grid): number {
  above0('tempo', tempo);
  checkGrid(grid);
  checkGrid(other);
  return (tempo * grid) / other;
}
