import { faultText, type Stroke, type Timeline } from '../core/index.ts';
import { barOfExercise, barRequest, layBar, type CellLookup } from './bars.ts';
import type { ExerciseData } from './exercise.ts';

/** What an exercise can have in it; the order in which it is told. */
export const INGREDIENTS = ['flams', 'drags', 'diddles', 'rolls', 'accents', 'ghosts', 'kicks'] as const;

/** Something an exercise can have in it. */
export type Ingredient = (typeof INGREDIENTS)[number];

/** Who plays: hands and no foot, one hand by itself, or feet as well. */
export const PLAYED_BY = ['hands', 'right', 'left', 'feet'] as const;

/** Who plays an exercise. */
export type PlayedBy = (typeof PLAYED_BY)[number];

/** What is known of an exercise from its bars alone; every list holds each value once. */
export interface ExerciseFacts {
  /** Slots a beat, of every bar. */
  grids: number[];
  /** Meters as written, of every bar. */
  meters: string[];
  /** Length of its bars in slots, the pickup left out. */
  slots: number;
  /** Lengths in slots of the cells it is laid of, where there are at least two. */
  cells: number[];
  /** One hand by itself counts under any lead that the exercise offers. */
  playedBy: PlayedBy[];
  /** Whether every stroke falls on the snare drum, so that one pad is enough. */
  pad: boolean;
  ingredients: Ingredient[];
}

/** What `exerciseFacts` reads of an exercise. */
export type FactSource = Pick<ExerciseData, 'sticking' | 'cells' | 'meter' | 'grid' | 'pickup' | 'leads'>;

const IS: Record<Ingredient, (stroke: Stroke) => boolean> = {
  flams: ({ kind }) => kind === 'flam',
  drags: ({ kind }) => kind === 'drag' || kind === 'ruff',
  diddles: ({ kind }) => kind === 'diddle',
  rolls: ({ buzz }) => buzz,
  accents: ({ accent }) => accent,
  ghosts: ({ ghost }) => ghost,
  kicks: ({ limb }) => limb === 'K',
};

/**
 * What an exercise's own bars say about it. Throws RangeError where they cannot be laid.
 *
 * @example
 * exerciseFacts({ sticking: '{>lR LL R}4', meter: '4/4', grid: 3, leads: ['right'] }, () => undefined).cells // [3]
 */
export function exerciseFacts(exercise: FactSource, cellOf: CellLookup): ExerciseFacts {
  const [written, ...others] = exercise.leads.map((lead) => timelineOf({ ...exercise, leads: [lead] }, cellOf));
  const { bars, cells, strokes } = written;
  return {
    grids: each(bars.map(({ grid }) => grid)).sort((a, b) => a - b),
    meters: each(bars.map(({ meter }) => meter)),
    slots: bars.reduce((sum, bar) => sum + bar.slots, 0),
    cells: cells.length > 1 ? each(cells.map(({ slots }) => slots)).sort((a, b) => a - b) : [],
    playedBy: PLAYED_BY.filter((by) => [written, ...others].some((timeline) => isPlayedBy(by, timeline))),
    pad: strokes.every(({ surface }) => surface === 'snare'),
    ingredients: INGREDIENTS.filter((name) => strokes.some(IS[name])),
  };
}

function timelineOf(exercise: FactSource, cellOf: CellLookup): Timeline {
  const spec = barOfExercise(exercise as ExerciseData);
  const laid = layBar(spec, cellOf);
  if (laid.ok) return laid.timeline;
  throw new RangeError(faultText(barRequest(spec, cellOf).cells[laid.fault.cell ?? 0].text, laid.fault));
}

function isPlayedBy(by: PlayedBy, { strokes }: Timeline): boolean {
  const limbs = new Set(strokes.map(({ limb }) => limb));
  const feet = limbs.has('K') || limbs.has('H');
  if (by === 'feet') return feet;
  if (feet || limbs.size === 0) return false;
  return by === 'hands' || (limbs.size === 1 && limbs.has(by === 'right' ? 'R' : 'L'));
}

const each = <T>(values: readonly T[]): T[] => [...new Set(values)];
