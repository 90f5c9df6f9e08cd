import { strikePlate, type Plate, type PlateStroke } from './cymbal.ts';
import { fade } from './decay.ts';
import { ring, type Partial } from './partials.ts';
import { nearly } from './rng.ts';
import type { Signal, Take } from './signal.ts';

/*
 * Real cymbals ring for many seconds; these are shorter, as cymbals with a strip of tape are, so that half an hour of
 * practice stays clear.
 */
const RIDE: Plate = { name: 'ride', low: 260, high: 12500, partials: 120, tilt: 0.3, sixty: 2.4, turning: 4200 };
const CRASH: Plate = { name: 'crash', low: 230, high: 13000, partials: 140, tilt: 0.35, sixty: 2.3, turning: 5200 };
const CHINA: Plate = { name: 'china', low: 190, high: 12500, partials: 130, tilt: 0.25, sixty: 1.3, turning: 4500 };

const BOW: PlateStroke = {
  seconds: 1.7,
  touchMs: 0.09,
  stick: 0.9,
  metal: 0.5,
  floor: 240,
  washes: [
    { middle: 5600, q: 0.6, sixty: 0.9, rise: 0.004, level: 0.17 },
    { middle: 3400, q: 0.8, sixty: 0.12, rise: 0.0004, level: 0.25 },
  ],
};

const ON_BELL: PlateStroke = {
  ...BOW,
  touchMs: 0.16,
  stick: 0.5,
  metal: 0.2,
  washes: [{ middle: 4200, q: 0.7, sixty: 0.35, rise: 0.001, level: 0.09 }],
};

/** The cup of the ride: fewer, clearer tones than its bow (ours). */
const CUP: readonly Partial[] = [
  { frequency: 604, level: 0.3, sixty: 1.3 },
  { frequency: 1127, level: 0.34, sixty: 1.15 },
  { frequency: 1873, level: 0.3, sixty: 0.95 },
  { frequency: 2766, level: 0.2, sixty: 0.75 },
  { frequency: 3954, level: 0.12, sixty: 0.5 },
];

const HIT: PlateStroke = {
  seconds: 2.2,
  touchMs: 0.16,
  stick: 0.6,
  metal: 0.36,
  floor: 210,
  washes: [
    { middle: 1500, q: 0.6, sixty: 0.7, rise: 0.0006, level: 0.3 },
    { middle: 4200, q: 0.5, sixty: 1.5, rise: 0.006, level: 0.4 },
    { middle: 8200, q: 0.6, sixty: 0.95, rise: 0.014, level: 0.3 },
  ],
};

const ON_CHINA: PlateStroke = {
  seconds: 1.4,
  touchMs: 0.18,
  stick: 0.5,
  metal: 0.42,
  floor: 180,
  washes: [
    { middle: 900, q: 0.6, sixty: 0.9, rise: 0.0006, level: 0.34 },
    { middle: 2900, q: 0.5, sixty: 0.75, rise: 0.003, level: 0.42 },
    { middle: 7000, q: 0.6, sixty: 0.5, rise: 0.006, level: 0.22 },
  ],
};

/** The ride on its bow, with the tip. */
export function ride(take: Take): Signal {
  return strikePlate(RIDE, BOW, take);
}

/** The ride on its bell, with the shaft. */
export function rideBell(take: Take): Signal {
  const cup = CUP.map((partial) => ({ ...partial, level: partial.level * nearly(take.random, 0.15) }));
  return ring(strikePlate(RIDE, ON_BELL, take), take.rate, cup);
}

/** A crash that rings. */
export function crash(take: Take): Signal {
  return strikePlate(CRASH, HIT, take);
}

/** A crash caught by the other hand a tenth of a second later. */
export function choke(take: Take): Signal {
  return fade(strikePlate(CRASH, { ...HIT, seconds: 0.28 }, take), take.rate, 0.1, 0.24);
}

/** The upturned cymbal: lower, rougher and shorter than a crash. */
export function china(take: Take): Signal {
  return strikePlate(CHINA, ON_CHINA, take);
}
