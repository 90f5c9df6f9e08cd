import { strikePlate, type Plate, type PlateStroke } from './cymbal.ts';
import type { Signal, Take } from './signal.ts';

/** Two 14-inch cymbals on a stand: the same metal however far apart they are held. */
const HATS: Plate = { name: 'hats', low: 420, high: 13500, partials: 130, tilt: 0.6, sixty: 1.1, turning: 6500 };

const CLOSED: PlateStroke = {
  seconds: 0.22,
  touchMs: 0.1,
  stick: 0.35,
  metal: 0.32,
  damp: 0.1,
  floor: 700,
  washes: [
    { middle: 7200, q: 0.6, sixty: 0.1, rise: 0.0004, level: 0.42 },
    { middle: 3600, q: 0.8, sixty: 0.045, rise: 0.0004, level: 0.25 },
  ],
};

const TAP: PlateStroke = {
  ...CLOSED,
  touchMs: 0.17,
  stick: 0.36,
  damp: 0.075,
  washes: [
    { middle: 6600, q: 0.6, sixty: 0.07, rise: 0.0004, level: 0.28 },
    { middle: 3600, q: 0.8, sixty: 0.035, rise: 0.0004, level: 0.2 },
  ],
};

const HALF: PlateStroke = {
  seconds: 0.6,
  touchMs: 0.12,
  stick: 0.36,
  metal: 0.26,
  damp: 0.38,
  floor: 500,
  washes: [
    { middle: 6800, q: 0.5, sixty: 0.42, rise: 0.0015, level: 0.42 },
    { middle: 3200, q: 0.7, sixty: 0.2, rise: 0.001, level: 0.22 },
  ],
};

const OPEN: PlateStroke = {
  seconds: 1.15,
  touchMs: 0.12,
  stick: 0.36,
  metal: 0.28,
  damp: 0.95,
  floor: 450,
  washes: [
    { middle: 6600, q: 0.45, sixty: 0.7, rise: 0.003, level: 0.4 },
    { middle: 3000, q: 0.6, sixty: 0.6, rise: 0.002, level: 0.2 },
  ],
};

const PEDAL: PlateStroke = {
  seconds: 0.22,
  touchMs: 0.35,
  stick: 0.26,
  metal: 0.28,
  damp: 0.07,
  floor: 300,
  washes: [
    { middle: 4800, q: 0.6, sixty: 0.075, rise: 0.0012, level: 0.42 },
    { middle: 1100, q: 0.8, sixty: 0.045, rise: 0.0006, level: 0.3 },
  ],
};

const SPLASH: PlateStroke = {
  seconds: 0.95,
  touchMs: 0.22,
  stick: 0.36,
  metal: 0.28,
  damp: 0.8,
  floor: 450,
  washes: [
    { middle: 5600, q: 0.45, sixty: 0.6, rise: 0.003, level: 0.4 },
    { middle: 2400, q: 0.6, sixty: 0.3, rise: 0.002, level: 0.2 },
  ],
};

const struck =
  (stroke: PlateStroke) =>
  (take: Take): Signal =>
    strikePlate(HATS, stroke, take);

/** Held tight and struck on the edge. */
export const hatAccent = struck(CLOSED);
/** Held tight and touched with the tip. */
export const hatTap = struck(TAP);
/** A little apart: they sizzle against each other. */
export const hatHalf = struck(HALF);
/** Apart. */
export const hatOpen = struck(OPEN);
/** Closed by the foot. */
export const hatPedal = struck(PEDAL);
/** Clapped by the foot and let go. */
export const hatSplash = struck(SPLASH);
