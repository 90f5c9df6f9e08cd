import { above0 } from '../check.ts';
import { DEFAULT_FLAM_MS } from '../timeline/schedule.ts';
import type { Bpm, Milliseconds } from '../time/units.ts';
import type { Limb } from '../sticking/types.ts';
import type { Timeline } from '../timeline/types.ts';
import { bindingTempo } from './binds.ts';
import { gapsOf, type Gap, type GapKind, type GapOptions } from './gaps.ts';
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
  bindsAt: { limb: Limb; kind: GapKind; bpm: Bpm; gap: Gap }[];
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

const LIMBS: readonly Limb[] = ['R', 'L', 'K', 'H'];

/**
 * For each limb its gaps in slots and, at a tempo, in milliseconds; longest run, tightest gap of each kind and where; and
 * the tempo at which given limits bind. Throws RangeError for a tempo or a limit of 0 or less.
 * @example
 * hands(timeline, 90).limbs.L.longestRun.length // → 2
 */
export function hands(timeline: Timeline, bpm: Bpm, options: HandsOptions = {}): HandsReport {
  const { flamMs = DEFAULT_FLAM_MS, loop = false } = options;
  const limits = { ...DEFAULT_LIMITS, ...options.limits };
  for (const [kind, limit] of Object.entries(limits)) above0(`limit of ${kind}`, limit);
  const used = LIMBS.filter((limb) => timeline.strokes.some((s) => s.limb === limb));
  const reports = used.map((limb) => [limb, report(timeline, limb, { bpm, flamMs, loop })] as const);
  const tempoOf = bindingTempo(timeline, { flamMs, loop });
  const bindsAt = reports.flatMap(([limb, { gaps }]) => binding(limb, gaps, limits, tempoOf));
  const sorted = [...bindsAt].sort((a, b) => a.bpm - b.bpm);
  return {
    limbs: Object.fromEntries(reports),
    motions: motions(timeline),
    bindsAt,
    ...(sorted.length ? { limit: sorted[0] } : {}),
  };
}

function report(timeline: Timeline, limb: Limb, options: Required<GapOptions>): LimbReport {
  const own = timeline.strokes.filter((s) => s.limb === limb);
  const gaps = gapsOf(timeline, limb, options);
  const graces = own.filter((s) => s.kind === 'grace').length;
  const tightest: Partial<Record<GapKind, Gap>> = {};
  for (const gap of gaps) if (gap.ticks > 0 && gap.ms < (tightest[gap.kind]?.ms ?? Infinity)) tightest[gap.kind] = gap;
  const runs = limb === 'R' || limb === 'L' ? longestRuns(timeline, limb, options.loop) : {};
  return { strokes: own.length - graces, graces, gaps, tightest, ...runs };
}

/** For each kind of gap a limb has, the tempo above which the first of them is shorter than the limit. */
function binding(
  limb: Limb,
  gaps: Gap[],
  limits: Limits,
  tempoOf: (gap: Gap, limit: Milliseconds) => Bpm,
): HandsReport['bindsAt'] {
  const kinds = [...new Set(gaps.map((g) => g.kind))];
  return kinds.flatMap((kind) => {
    const all = gaps
      .filter((g) => g.kind === kind)
      .map((gap) => ({ limb, kind, gap, bpm: tempoOf(gap, limits[kind]) }));
    const first = all.reduce((a, b) => (b.bpm < a.bpm ? b : a));
    return first.bpm < Infinity ? [first] : [];
  });
}
