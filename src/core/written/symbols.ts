import type { Ticks } from '../time/units.ts';
import type { PlacedStroke } from './kit.ts';
import type { Onset } from './voices.ts';
import type { Scope } from './scopes.ts';
import { piecesOf, type Value } from './values.ts';

/** One written symbol of a voice. */
export interface Written {
  kind: 'note' | 'rest';
  tick: Ticks;
  ticks: Ticks;
  value: Value;
  /** Offset into its scope in written ticks. */
  offset: Ticks;
  onset?: Onset;
  /** The heads of a note with its strokes, from the lowest to the highest; a diddle written as one note has one head only. */
  heads?: PlacedStroke[];
  /** Whether it is the onset itself, not a note tied to it, and whether a tie leads on from it. */
  begins: boolean;
  tied: boolean;
  /** Where the note is that it is tied to from before. */
  from?: Ticks;
  scope: Scope;
  /** The part of a slot that is a triplet of its own, by its tick. */
  nest?: Ticks;
}

/** A stretch between two places of a beat: an onset up to where it ends, or a rest. */
interface Stretch {
  tick: Ticks;
  end: Ticks;
  onset?: Onset;
  begins: boolean;
  /** Whether it rings on after its last piece. */
  rings: boolean;
}

/** A part of a slot in three, or in six of which the sounding half is in three. */
interface Nest {
  tick: Ticks;
  end: Ticks;
}

function nestsOf(scope: Scope, onsets: readonly Onset[]): Nest[] {
  const nests = onsets
    .filter((onset) => onset.parts % 3 === 0)
    .map((onset) => {
      const ticks = (scope.slotTicks * 3) / onset.parts;
      const tick = scope.tick + Math.floor((onset.tick - scope.tick) / ticks) * ticks;
      return { tick, end: tick + ticks };
    });
  return nests.filter((nest, i) => nests.findIndex((other) => other.tick === nest.tick) === i);
}

const nestAt = (nests: readonly Nest[], tick: Ticks): Nest | undefined =>
  nests.find((nest) => tick >= nest.tick && tick < nest.end);

/** Where the note of an onset ends: at the next one, at the end of the beat, or where it was written to end. */
function endOf(onset: Onset, next: Ticks, begins: boolean, nests: readonly Nest[]): Ticks {
  const held = onset.ringEnd > onset.partEnd || !begins;
  if (held) return Math.min(next, onset.ringEnd);
  if (onset.parts > 1) return Math.min(next, onset.partEnd);
  return Math.min(next, ...nests.filter((nest) => nest.tick > onset.tick).map((nest) => nest.tick));
}

/** The stretches of a scope, without gaps. `held` is a stroke that still rings from before. */
function stretchesOf(scope: Scope, onsets: readonly Onset[], nests: readonly Nest[], held?: Onset): Stretch[] {
  const end = scope.tick + scope.ticks;
  const all = held && onsets[0]?.tick !== scope.tick ? [{ ...held, tick: scope.tick }, ...onsets] : [...onsets];
  const stretches: Stretch[] = [];
  let at = scope.tick;
  const rest = (to: Ticks): void => {
    for (const stop of [...nests.flatMap((n) => [n.tick, n.end]), to].sort((a, b) => a - b))
      if (stop > at && stop <= to) {
        stretches.push({ tick: at, end: stop, begins: true, rings: false });
        at = stop;
      }
  };
  all.forEach((onset, i) => {
    rest(onset.tick);
    const begins = onset.strokes[0].tick === onset.tick;
    const stop = endOf(onset, all[i + 1]?.tick ?? end, begins, nests);
    stretches.push({ tick: at, end: stop, onset, begins, rings: stop === end && onset.ringEnd > stop });
    at = stop;
  });
  rest(end);
  return stretches;
}

/** A stretch cut where a nested triplet ends inside it: what rings on is tied, what is silent rests. */
function cutAtNest(stretch: Stretch, nests: readonly Nest[]): Stretch[] {
  const nest = nestAt(nests, stretch.tick);
  if (!nest || stretch.end <= nest.end) return [stretch];
  const { end } = nest;
  const after = { ...stretch, tick: end, begins: false };
  return [{ ...stretch, end, rings: stretch.onset !== undefined }, ...cutAtNest(after, nests)];
}

/** A stretch as written symbols, each as long as one value can be. */
function symbolsOf(stretch: Stretch, scope: Scope, nests: readonly Nest[]): Written[] {
  const nest = nestAt(nests, stretch.tick);
  const origin = nest?.tick ?? scope.tick;
  const scale = nest ? scope.scale * 1.5 : scope.scale;
  const note = stretch.onset !== undefined;
  const alignment = scope.scale !== 1 || nest ? 'free' : note ? 'note' : 'rest';
  const written = (ticks: Ticks): Ticks => Math.round(ticks * scale);
  const pieces = piecesOf(written(stretch.tick - origin), written(stretch.end - stretch.tick), alignment);
  const heldOver = note && stretch.onset!.ringEnd >= stretch.end;
  return pieces.map((piece, i) => ({
    kind: note && (i === 0 || heldOver) ? 'note' : 'rest',
    tick: origin + Math.round(piece.offset / scale),
    ticks: Math.round(piece.ticks / scale),
    value: piece.value,
    offset: (origin - scope.tick) * scope.scale + piece.offset / (nest ? 1.5 : 1),
    onset: stretch.onset,
    begins: stretch.begins && i === 0,
    tied: note && (i < pieces.length - 1 ? heldOver : stretch.rings),
    scope,
    nest: nest?.tick,
  }));
}

/** The symbols of one scope, in order, filling it. */
export function writeScope(scope: Scope, onsets: readonly Onset[], held?: Onset): Written[] {
  const here = onsets.filter((onset) => onset.tick >= scope.tick && onset.tick < scope.tick + scope.ticks);
  const nests = nestsOf(scope, here);
  return stretchesOf(scope, here, nests, held)
    .flatMap((stretch) => cutAtNest(stretch, nests))
    .flatMap((stretch) => symbolsOf(stretch, scope, nests));
}
