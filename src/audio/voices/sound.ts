import type { Stroke, Surface, Timeline } from '../../core/index.ts';
import { hasHands, variantsOf, type VoiceName } from './names.ts';
import { rng } from './rng.ts';
import { fromDecibels } from './signal.ts';

/** What is played for a stroke. */
export interface Sound {
  voice: VoiceName;
  /** Which take of the voice. */
  variant: number;
  /** A ratio of amplitudes, about 1. */
  gain: number;
  /** From −1, left, to 1, right, as the drummer sits. */
  pan: number;
}

/** Surfaces that have a take of their own for strokes without an accent. */
const SOFT: Partial<Record<Surface, VoiceName>> = {
  tom1: 'tom1-tap',
  tom2: 'tom2-tap',
  floor: 'floor-tap',
  hat: 'hat-tap',
};

/** Where the surfaces stand round the drummer; what is left out is in the middle. */
const PLACES: Partial<Record<Surface, number>> = {
  tom1: -0.16,
  tom2: 0.12,
  floor: 0.3,
  hat: -0.26,
  open: -0.26,
  half: -0.26,
  pedal: -0.26,
  splash: -0.26,
  ride: 0.26,
  bell: 0.26,
  crash: -0.3,
  choke: -0.3,
  china: 0.34,
  cowbell: 0.08,
};

/** A hand is heard this much to its own side. */
const HAND_PAN = 0.06;

/** Decibels. */
const SECOND_OF_DIDDLE = -1.2;
const MARCATO = 1.5;
const SPREAD = 0.5;
/** What softer strokes lose where the voice has no take of their own. */
const UNACCENTED = -3;
const GHOST = -6;
/** A grace note is softer than whatever it leads to, a ghost note too. */
const GRACE = -8;
/** An accented buzz against a plain one. */
const ACCENTED_BUZZ = 5;

/** The sound of a stroke: `voiceOf` of an accented snare stroke is `accent`, of its grace note `grace`. */
export function voiceOf(stroke: Stroke): VoiceName {
  if (stroke.surface === 'snare') return snareVoice(stroke);
  return (isSoft(stroke) && SOFT[stroke.surface]) || stroke.surface;
}

function snareVoice({ kind, buzz, ghost, accent }: Stroke): VoiceName {
  if (kind === 'grace') return 'grace';
  if (buzz) return 'buzz';
  if (ghost) return 'ghost';
  return accent ? 'accent' : 'tap';
}

/** A grace note stays soft even where it leads to an accent. */
function isSoft({ accent, kind }: Stroke): boolean {
  return !accent || kind === 'grace';
}

/**
 * Take, level and place of a stroke in the given round of a loop (from 0). Chance comes from the stroke's id and the
 * round alone, and never touches time. Strokes of one hand that follow each other within five slots differ in their take.
 */
export function soundOf(stroke: Stroke, pass: number): Sound {
  const voice = voiceOf(stroke);
  const random = rng(`${stroke.id} ${pass}`);
  const spread = SPREAD * (2 * random() - 1);
  return {
    voice,
    variant: variantFor(voice, stroke, pass),
    gain: fromDecibels(levelOf(stroke) + spread),
    pan: panOf(stroke),
  };
}

/** Decibels against the voice's own loudness. */
function levelOf(stroke: Stroke): number {
  const second = stroke.rebound > 0 ? SECOND_OF_DIDDLE : 0;
  const strong = stroke.marcato ? MARCATO : 0;
  return second + strong + (stroke.surface === 'snare' ? snareLevel(stroke) : otherLevel(stroke));
}

/** Of the snare's voices only the buzz has takes of one strength alone. */
function snareLevel(stroke: Stroke): number {
  if (voiceOf(stroke) !== 'buzz') return 0;
  if (stroke.accent) return ACCENTED_BUZZ;
  return stroke.ghost ? GHOST : 0;
}

function otherLevel(stroke: Stroke): number {
  const soft = isSoft(stroke) && !SOFT[stroke.surface] ? UNACCENTED : 0;
  const grace = stroke.kind === 'grace' ? GRACE : 0;
  return soft + grace + (stroke.ghost ? GHOST : 0);
}

function panOf({ surface, limb }: Stroke): number {
  const side = limb === 'R' ? HAND_PAN : limb === 'L' ? -HAND_PAN : 0;
  return (PLACES[surface] ?? 0) + side;
}

/** Walks through the takes of the hand that plays: a step a slot, a part and a grace note, two steps a round. */
function variantFor(voice: VoiceName, stroke: Stroke, pass: number): number {
  const step = stroke.bar + stroke.slot + stroke.part + graceIndex(stroke) + 2 * pass;
  const takes = variantsOf(voice);
  if (!hasHands(voice)) return step % takes;
  return 2 * (step % (takes / 2)) + (stroke.limb === 'L' ? 1 : 0);
}

/** 1 for the second of two grace notes, by its id: `1.4.0g1`. */
function graceIndex({ kind, id }: Stroke): number {
  return kind === 'grace' ? Number(/g(\d+)$/.exec(id)?.[1] ?? 0) : 0;
}

/** The voices a timeline needs, each once, in the order in which they first sound. */
export function voicesOf(timeline: Timeline): VoiceName[] {
  return [...new Set(timeline.strokes.map(voiceOf))];
}
