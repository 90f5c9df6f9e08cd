import { ring, type Partial } from './partials.ts';
import { nearly } from './rng.ts';
import { mix, silence, type Signal, type Take } from './signal.ts';
import { ACCENT, GHOST, snare } from './snare.ts';
import { tip } from './stick.ts';

/** A hoop of pressed steel, held down by its lugs: short, inharmonic (ours, by the spectrum). */
const HOOP: readonly Partial[] = [
  { frequency: 462, level: 0.5, sixty: 0.16 },
  { frequency: 815, level: 0.5, sixty: 0.13 },
  { frequency: 1295, level: 0.45, sixty: 0.1 },
  { frequency: 1760, level: 0.4, sixty: 0.08 },
  { frequency: 2480, level: 0.3, sixty: 0.06 },
  { frequency: 3310, level: 0.16, sixty: 0.045 },
];

/** A stick laid across the head and knocked on the hoop: the shell answers below, the shaft's wood above. */
const ACROSS: readonly Partial[] = [
  { frequency: 392, level: 0.4, sixty: 0.075 },
  { frequency: 1080, level: 0.9, sixty: 0.06 },
  { frequency: 1690, level: 0.7, sixty: 0.05 },
  { frequency: 2450, level: 0.35, sixty: 0.035 },
  { frequency: 3650, level: 0.15, sixty: 0.022 },
];

/** Two sticks against each other: only short, dry wood. */
const SHAFTS: readonly Partial[] = [
  { frequency: 1430, level: 0.7, sixty: 0.035 },
  { frequency: 2240, level: 0.8, sixty: 0.03 },
  { frequency: 3190, level: 0.4, sixty: 0.022 },
  { frequency: 4700, level: 0.18, sixty: 0.015 },
];

/** The same thing struck a hair elsewhere: levels differ, and the left stick is a shade lower. */
function struck(partials: readonly Partial[], { left, random }: Take): Partial[] {
  return partials.map(({ frequency, level, sixty }) => ({
    frequency: frequency * (left ? 0.988 : 1) * nearly(random, 0.003),
    level: level * nearly(random, 0.15),
    sixty: sixty * nearly(random, 0.06),
  }));
}

function knock(partials: readonly Partial[], seconds: number, stick: number, touchMs: number, take: Take): Signal {
  const out = ring(silence(seconds, take.rate), take.rate, struck(partials, take));
  return mix(out, tip({ touchMs, noise: 2900, sixty: 0.01, roughness: 0.35 }, take), stick);
}

/** Head and hoop at once: the hardest sound of the drum. */
export function rimshot(take: Take): Signal {
  return mix(snare({ ...ACCENT, place: 0.4, stick: 0.4 }, take), knock(HOOP, 0.3, 0.3, 0.2, take), 0.6);
}

/** The hoop alone; head and wires only tremble with it. */
export function rim(take: Take): Signal {
  return mix(knock(HOOP, 0.3, 0.6, 0.16, take), snare({ ...GHOST, stick: 0 }, take, 0.3), 1.2);
}

/** The cross-stick. */
export function crossStick(take: Take): Signal {
  return knock(ACROSS, 0.16, 0.6, 0.26, take);
}

/** Stick against stick. */
export function stickClick(take: Take): Signal {
  return knock(SHAFTS, 0.1, 0.5, 0.18, take);
}
