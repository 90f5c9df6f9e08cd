import { byHand, strikeHead, type Blow, type Drum } from './head.ts';
import { mix, silence, type Signal, type Take } from './signal.ts';
import { tip } from './stick.ts';
import { wires } from './wires.ts';

/**
 * A 14-inch drum, both heads tight. From memory of Rossing's measurements: the air inside parts the lowest mode into two
 * at about 180 and 330 Hz; the next ones stand near 280 and 400 Hz, close to the ideal ratios.
 */
export const SNARE: Drum = {
  name: 'snare',
  pitch: 186,
  sixty: 0.21,
  damping: 0.9,
  twin: { ratio: 1.79, level: 0.6 },
  bend: 0.07,
  bendSeconds: 0.018,
};

/** One stroke on the snare drum. */
export interface SnareStroke extends Blow {
  /** The tip's own sound, beside the head's. */
  stick: number;
}

/** Strokes by height: an accent from above the shoulder, a tap from a hand's width, a ghost from an inch. */
export const ACCENT: SnareStroke = { strength: 1, place: 0.24, touchMs: 0.3, stick: 0.9 };
export const TAP: SnareStroke = { strength: 0.42, place: 0.28, touchMs: 0.42, stick: 0.5 };
export const GHOST: SnareStroke = { strength: 0.13, place: 0.38, touchMs: 0.6, stick: 0.19 };
/** A grace note falls from as low as a ghost, with more of the tip. */
export const GRACE: SnareStroke = { strength: 0.14, place: 0.32, touchMs: 0.5, stick: 0.27 };

/** Renders a stroke with head, wires and stick; `seconds` is how much of it is kept before the end is trimmed. */
export function snare(stroke: SnareStroke, take: Take, seconds = 0.5): Signal {
  const head = strikeHead(silence(seconds, take.rate), SNARE, byHand(stroke, take), take);
  return withWires(head, stroke.strength, take, landing(stroke, take));
}

/** The attack of a wooden tip on the coated head. */
export function landing({ touchMs, stick }: SnareStroke, take: Take): Signal {
  const attack = tip({ touchMs: 0.5 * touchMs, noise: 3200, sixty: 0.014, roughness: 0.35 }, take);
  return mix(new Float32Array(attack.length), attack, stick);
}

/** Head, wires and attack together. Softer strokes have duller wires. */
export function withWires(head: Signal, strength: number, take: Take, attack: Signal, level = 1.05): Signal {
  const rattle = wires(head, { level, top: 5200 + 3800 * strength }, take);
  mix(head, rattle);
  return mix(head, attack);
}
