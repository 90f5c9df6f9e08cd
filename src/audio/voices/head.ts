import { MODES, ratioOf, strikeShare } from './membrane.ts';
import { ringFalling, type Partial } from './partials.ts';
import { nearly, rng } from './rng.ts';
import type { Hertz, Signal, Take } from './signal.ts';
import { touchShare } from './stick.ts';

/** A drum with a head on either side. */
export interface Drum {
  /** Names it: its small unevenness comes from the name and is the same in every stroke. */
  name: string;
  /** Where its lowest mode rests. */
  pitch: Hertz;
  /** Seconds until the lowest mode has fallen by 60 dB. */
  sixty: number;
  /** How much sooner the higher modes die: their time is the lowest's over their ratio to this power. */
  damping: number;
  /** The upper of the two modes into which the air inside parts the lowest one: ratio and level. */
  twin: { ratio: number; level: number };
  /** Pitch rise of the hardest stroke, as a share, and the seconds in which it falls. */
  bend: number;
  bendSeconds: number;
}

/** How the head is struck. */
export interface Blow {
  /** From 0 to 1, the hardest. */
  strength: number;
  /** 0 is the middle of the head, 1 its edge. */
  place: number;
  /** Length of the touch in milliseconds. */
  touchMs: number;
}

/** Strokes this hand plays fall a little further from the middle and touch a little longer where the hand is the left. */
export function byHand({ strength, place, touchMs }: Blow, { left, random }: Take): Blow {
  return {
    strength: strength * nearly(random, 0.05),
    place: (left ? place + 0.05 : place) * nearly(random, 0.09),
    touchMs: (left ? 1.1 : 1) * touchMs * nearly(random, 0.06),
  };
}

/** Adds a struck head from sample `at` on. A harder blow starts higher, for it stretches the head. */
export function strikeHead(into: Signal, drum: Drum, blow: Blow, { rate }: Take, at = 0): Signal {
  const fall = { rise: drum.bend * blow.strength, seconds: drum.bendSeconds };
  return ringFalling(into, rate, partialsOf(drum, blow), fall, at);
}

/** A head's modes as a blow wakes them. Lugs are never even: modes with diameters come in pairs a little apart. */
function partialsOf(drum: Drum, blow: Blow): Partial[] {
  const uneven = rng(`${drum.name} lugs`);
  const partials = MODES.flatMap((mode) => {
    const ratio = ratioOf(mode);
    const frequency = drum.pitch * ratio * (mode.diameters > 0 ? nearly(uneven, 0.006) : 1);
    // Each nodal circle turns the middle of the head, which the air feels most, the other way.
    const sign = mode.circles % 2 === 1 ? 1 : -1;
    const woken = sign * blow.strength * strikeShare(mode, blow.place) * touchShare(frequency, blow.touchMs);
    const sixty = drum.sixty / ratio ** drum.damping;
    if (mode.diameters === 0) return [{ frequency, level: woken, sixty }];
    const apart = 1 + 0.004 + 0.006 * uneven();
    return [
      { frequency, level: 0.6 * woken, sixty },
      { frequency: frequency * apart, level: 0.5 * woken, sixty: 0.9 * sixty },
    ];
  });
  return [...partials, twinOf(drum, partials[0])];
}

function twinOf({ twin }: Drum, lowest: Partial): Partial {
  return {
    frequency: twin.ratio * lowest.frequency,
    level: twin.level * lowest.level,
    sixty: lowest.sixty / twin.ratio,
  };
}
