import { above0, checkOptions, isObject, must, oneOf } from '../check.ts';
import { isHand, LIMBS } from '../sticking/limbs.ts';
import { DEFAULT_FLAM_MS } from '../timeline/schedule.ts';
import type { Bpm, Milliseconds } from '../time/units.ts';
import type { Limb } from '../sticking/types.ts';
import type { Timeline } from '../timeline/types.ts';
import { limitingTempo } from './limiting-tempo.ts';
import { limbGaps, timed, type Gap, type GapKind, type Timed } from './gaps.ts';
import { motions, type Motion } from './motion.ts';
import { longestRuns, type LongestRuns } from './runs.ts';

/** The shortest gap a limb can manage, by kind. */
export type Limits = Record<GapKind, Milliseconds>;

/**
 * Limits where the player has measured none. Single strokes of one hand: 5 to 7 a second is usual (Fujii et al. 2009,
 * Neurosci. Lett. 459), 6.5 taken. Rebound, grace note and feet: ours, no figure was found.
 */
export const DEFAULT_LIMITS: Limits = { single: 154, rebound: 55, grace: 90, foot: 160, doubleFoot: 90 };

/** What one limb is asked to do. */
export interface LimbReport extends LongestRuns {
  strokes: number;
  graces: number;
  gaps: Gap[];
  /** The tightest gap of each kind there is; grace notes of one figure are apart by its width, whatever the tempo. */
  tightest: Partial<Record<GapKind, Gap>>;
}

/** What a phrase asks of hands and feet. */
export interface HandsReport {
  limbs: Partial<Record<Limb, LimbReport>>;
  motions: Map<string, Motion>;
  /** The tempo, in quarters a minute, above which a limit is passed, by limb and kind. */
  limitingTempos: { limb: Limb; kind: GapKind; bpm: Bpm; gap: Gap }[];
  /** The lowest of them: where it first becomes too fast. */
  limit?: { limb: Limb; kind: GapKind; bpm: Bpm; gap: Gap };
}

/** Limits, the flam width that is asked for, and whether the phrase goes round. */
export interface HandsOptions {
  limits?: Partial<Limits>;
  flamMs?: Milliseconds;
  /** Whether gaps and runs go on over the seam of a repeated phrase; by default it is played once. */
  loop?: boolean;
}

/**
 * For each limb its gaps in slots and, at a tempo, in milliseconds; longest run, tightest gap of each kind and where; and
 * the tempo at which given limits bind. Throws RangeError for a tempo or a limit of 0 or less.
 * @example
 * hands(timeline, 90).limbs.L.longestRun.length // → 2
 */
export function hands(timeline: Timeline, bpm: Bpm, options: HandsOptions = {}): HandsReport {
  checkOptions('hands', options);
  const { flamMs = DEFAULT_FLAM_MS, loop = false } = options;
  const limits = limitsOf(options.limits);
  const played = timed(timeline, { bpm, flamMs, loop });
  const used = LIMBS.filter((limb) => timeline.strokes.some((s) => s.limb === limb));
  const reports = used.map((limb) => [limb, report(played, limb)] as const);
  const tempoOf = limitingTempo(timeline, { flamMs, loop });
  const limitingTempos = reports.flatMap(([limb, { gaps }]) => limitedBy(limb, gaps, limits, tempoOf));
  const limit = lowest(limitingTempos, timeline);
  return {
    limbs: Object.fromEntries(reports),
    motions: motions(timeline),
    limitingTempos,
    ...(limit ? { limit } : {}),
  };
}

function limitsOf(given: Partial<Limits> = {}): Limits {
  must(isObject(given), 'limits', given, 'an object of milliseconds by kind of gap');
  for (const kind of Object.keys(given)) oneOf('limit', kind, Object.keys(DEFAULT_LIMITS));
  const limits = { ...DEFAULT_LIMITS, ...given };
  for (const [kind, limit] of Object.entries(limits)) above0(`limit of ${kind}`, limit);
  return limits;
}

/** The lowest tempo; of equal ones that of the gap that begins first, so that a mirrored phrase is limited by the other hand. */
function lowest(limitingTempos: HandsReport['limitingTempos'], { strokes }: Timeline): HandsReport['limit'] {
  const places = new Map(strokes.map((s, i) => [s.id, i]));
  const [first] = [...limitingTempos].sort(
    (a, b) => a.bpm - b.bpm || places.get(a.gap.from)! - places.get(b.gap.from)!,
  );
  return first;
}

function report(played: Timed, limb: Limb): LimbReport {
  const own = played.timeline.strokes.filter((s) => s.limb === limb);
  const gaps = limbGaps(played, limb);
  const graces = own.filter((s) => s.kind === 'grace').length;
  const tightest: Partial<Record<GapKind, Gap>> = {};
  for (const gap of gaps) if (gap.ticks > 0 && gap.ms < (tightest[gap.kind]?.ms ?? Infinity)) tightest[gap.kind] = gap;
  const runs = isHand(limb) ? longestRuns(played.timeline, limb, played.loop) : {};
  return { strokes: own.length - graces, graces, gaps, tightest, ...runs };
}

/** For each kind of gap a limb has, the tempo above which the first of them is shorter than the limit. */
function limitedBy(
  limb: Limb,
  gaps: Gap[],
  limits: Limits,
  tempoOf: (gap: Gap, limit: Milliseconds) => Bpm,
): HandsReport['limitingTempos'] {
  const kinds = [...new Set(gaps.map((g) => g.kind))];
  return kinds.flatMap((kind) => {
    const all = gaps
      .filter((g) => g.kind === kind)
      .map((gap) => ({ limb, kind, gap, bpm: tempoOf(gap, limits[kind]) }));
    const first = all.reduce((a, b) => (b.bpm < a.bpm ? b : a));
    return first.bpm < Infinity ? [first] : [];
  });
}
