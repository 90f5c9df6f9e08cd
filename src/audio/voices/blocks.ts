import { ring, type Partial } from './partials.ts';
import { nearly } from './rng.ts';
import { mix, silence, type Hertz, type Signal, type Take } from './signal.ts';
import { tip } from './stick.ts';

/** A bell of folded steel with a hand's tape in its mouth (ours): two strong tones, a few weak ones. */
const BELL: readonly Partial[] = [
  { frequency: 571, level: 0.7, sixty: 0.3 },
  { frequency: 853, level: 0.8, sixty: 0.24 },
  { frequency: 1418, level: 0.2, sixty: 0.14 },
  { frequency: 2150, level: 0.22, sixty: 0.11 },
  { frequency: 3230, level: 0.12, sixty: 0.07 },
];

/** A stick's shaft on the cowbell. */
export function cowbell(take: Take): Signal {
  const shade = take.left ? 0.9 : 1;
  const tones = BELL.map(({ frequency, level, sixty }, i) => ({
    frequency,
    level: level * (i > 1 ? shade : 1) * nearly(take.random, 0.12),
    sixty,
  }));
  const out = ring(silence(0.36, take.rate), take.rate, tones);
  return mix(out, tip({ touchMs: 0.24, noise: 2600, sixty: 0.012, roughness: 0.3 }, take), 0.5);
}

/**
 * The metronome: a small hollow block of wood, whose tones lie between the drums' below and the wires' above. The ratios
 * are those of a free bar, 1 to 2.757 (ideal, from memory), the lower one lifted by the hollow.
 */
export function block(pitch: Hertz, sixty: number): (take: Take) => Signal {
  return (take) => {
    const out = ring(silence(1.3 * sixty, take.rate), take.rate, [
      { frequency: pitch, level: 1, sixty },
      { frequency: 1.52 * pitch, level: 0.22, sixty: 0.6 * sixty },
      { frequency: 2.757 * pitch, level: 0.2, sixty: 0.4 * sixty },
    ]);
    return mix(out, tip({ touchMs: 0.3, noise: 1800, sixty: 0.006, roughness: 0.1 }, take), 0.35);
  };
}
