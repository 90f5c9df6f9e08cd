import { fade, shape } from './decay.ts';
import { bandpass, highpass } from './filters.ts';
import { ring, type Partial } from './partials.ts';
import { nearly, rng } from './rng.ts';
import { mix, scale, silence, whiteNoise, type Hertz, type Signal, type Take } from './signal.ts';
import { tip, touchShare } from './stick.ts';

/** A cymbal: many partials in no harmonic order, too many above to be told apart. */
export interface Plate {
  /** Names it: its partials come from the name and are the same in every stroke. */
  name: string;
  low: Hertz;
  high: Hertz;
  partials: number;
  /** Lift of the higher partials, as a power of frequency. */
  tilt: number;
  /** Seconds until the low partials have fallen by 60 dB. */
  sixty: number;
  /** Where the time has come down to half (to a power that makes highs die sooner than lows). */
  turning: Hertz;
}

/** A band of noise: the part of the sound where partials are too dense, with a time of its own. */
export interface Wash {
  middle: Hertz;
  q: number;
  sixty: number;
  /** Seconds in which it builds up: a hard-struck plate passes its energy upwards only by and by (from memory). */
  rise: number;
  level: number;
}

/** How it is struck. */
export interface PlateStroke {
  seconds: number;
  touchMs: number;
  stick: number;
  /** Level of the partials against the washes. */
  metal: number;
  washes: readonly Wash[];
  /** Shortens all times: 1 rings freely. */
  damp?: number;
  /** Nothing below here. */
  floor: Hertz;
}

/** Seconds in which a frequency of this plate falls by 60 dB. */
function sixtyAt({ sixty, turning }: Plate, frequency: Hertz): number {
  return sixty / (1 + (frequency / turning) ** 1.2);
}

/** The partials of a plate: spread evenly over the octaves, then shaken. */
function partialsOf(plate: Plate, stroke: PlateStroke, { left, random }: Take): Partial[] {
  const own = rng(`${plate.name} metal`);
  const span = plate.high / plate.low;
  return Array.from({ length: plate.partials }, (_, i) => {
    const frequency = plate.low * span ** ((i + own()) / plate.partials);
    const lift = (0.3 + 0.7 * own()) * (frequency / plate.low) ** plate.tilt;
    // Every place of the edge has other partials under it; the left stick lands a little flatter.
    const touched = touchShare(frequency, stroke.touchMs * (left ? 1.12 : 1)) * nearly(random, 0.3);
    const sixty = sixtyAt(plate, frequency) * (stroke.damp ?? 1);
    return { frequency, level: (random() < 0.5 ? -1 : 1) * lift * touched, sixty: sixty * nearly(random, 0.1) };
  });
}

function wash({ middle, q, sixty, rise, level }: Wash, length: number, take: Take): Signal {
  const noise = bandpass(whiteNoise(length, take), take.rate, middle * nearly(take.random, 0.03), q);
  const weight = level * nearly(take.random, 0.06);
  return scale(shape(noise, take.rate, sixty, rise), weight);
}

/** A plate struck once. */
export function strikePlate(plate: Plate, stroke: PlateStroke, take: Take): Signal {
  const out = silence(stroke.seconds, take.rate);
  const partials = partialsOf(plate, stroke, take);
  const share = stroke.metal / Math.sqrt(plate.partials);
  mix(out, ring(silence(stroke.seconds, take.rate), take.rate, partials), share);
  for (const band of stroke.washes) {
    const reach = Math.min(out.length, Math.ceil(1.3 * band.sixty * take.rate));
    mix(out, wash(band, reach, take));
  }
  highpass(out, take.rate, stroke.floor);
  fade(out, take.rate, 0.6 * stroke.seconds, stroke.seconds);
  return mix(out, tip({ touchMs: stroke.touchMs, noise: 4200, sixty: 0.012, roughness: 0.35 }, take), stroke.stick);
}
