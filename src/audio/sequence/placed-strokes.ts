import type { Stroke, Ticks, Timeline, TimelineBar } from '../../core/index.ts';
import type { Section } from './sections.ts';

/** A stroke at its place in a pass. */
export interface PlacedStroke {
  /** Under an id that is the only one of its kind in the pass. */
  stroke: Stroke;
  /** The stroke as its own timeline has it. */
  source: Stroke;
  section: number;
  /** Tick in the pass of the stroke it belongs to: a grace note, written out or not, belongs to its primary. */
  anchor: Ticks;
}

const rename = (section: number, id: string): string => `${section}/${id}`;

function place(source: Stroke, section: Section, index: number, anchor: Ticks): PlacedStroke {
  const stroke: Stroke = {
    ...source,
    id: rename(index, source.id),
    tick: source.tick + section.at,
    graces: source.graces.map((id) => rename(index, id)),
  };
  if (source.primary !== undefined) stroke.primary = rename(index, source.primary);
  return { stroke, source, section: index, anchor: anchor + section.at };
}

/** Where no pickup is written, what is early is a written-out grace note of the first beat, or the kick under it. */
function anchorsOf({ strokes, pickupTicks }: Timeline): (stroke: Stroke) => Ticks {
  const ticks = new Map(strokes.map(({ id, tick }) => [id, tick]));
  const earliest = pickupTicks > 0 ? -Infinity : 0;
  return ({ id, primary, tick }) => Math.max(earliest, ticks.get(primary ?? id) ?? tick);
}

function strokesOf(section: Section, index: number): PlacedStroke[] {
  const anchorOf = anchorsOf(section.timeline);
  const placed = section.timeline.strokes.map((source) => place(source, section, index, anchorOf(source)));
  return section.pickup ? placed : placed.filter(({ anchor }) => anchor >= section.at);
}

/** Where a section begins to sound, its pickup included. */
const soundsFrom = (section: Section): Ticks =>
  section.pickup ? section.at - section.timeline.pickupTicks : section.at;

/** A pickup takes the place of what the section before has there. */
function makeRoom(sections: readonly Section[], placed: PlacedStroke[]): PlacedStroke[] {
  return placed.filter(({ section, anchor }) => {
    const next = sections[section + 1];
    return !next || anchor < soundsFrom(next);
  });
}

const isUnmeasured = ({ kind, opened }: Stroke): boolean => kind === 'grace' && !opened;

/** One limb strikes once at a time: where two sections meet, the later one has it. Unmeasured graces stand apart. */
function oneAtATime(placed: PlacedStroke[]): PlacedStroke[] {
  const keyOf = ({ stroke }: PlacedStroke): string =>
    isUnmeasured(stroke) ? stroke.id : `${stroke.limb} ${stroke.tick}`;
  const last = new Map(placed.map((item) => [keyOf(item), item]));
  return placed.filter((item) => last.get(keyOf(item)) === item);
}

/** A grace note without a primary cannot be scheduled, nor does a primary wait for one that is not there. */
function wholeFigures(placed: PlacedStroke[]): PlacedStroke[] {
  const ids = new Set(placed.map(({ stroke }) => stroke.id));
  const kept = placed.filter(({ stroke }) => !isUnmeasured(stroke) || ids.has(stroke.primary ?? ''));
  return kept.map((item) => ({
    ...item,
    stroke: { ...item.stroke, graces: item.stroke.graces.filter((id) => ids.has(id)) },
  }));
}

/**
 * The strokes of all sections that sound from `from` up to `to`, in order. A section that begins at `to` is there for
 * what sounds ahead of its beginning: a pickup, a grace note that was written out.
 */
export function placeStrokes(sections: readonly Section[], from: Ticks, to: Ticks): PlacedStroke[] {
  const placed = makeRoom(sections, sections.flatMap(strokesOf));
  const within = placed.filter(({ stroke }) => stroke.tick >= from && stroke.tick < to);
  return wholeFigures(oneAtATime(within)).sort((a, b) => a.stroke.tick - b.stroke.tick);
}

/** The bars of all sections at their places in the pass. */
export function placeBars(sections: readonly Section[]): TimelineBar[] {
  return sections.flatMap(({ timeline, at }) => timeline.bars.map((bar) => ({ ...bar, tick: bar.tick + at })));
}

/** Several sections as one timeline, so that core's `schedule` sees every neighbor a stroke has. */
export function asTimeline(placed: readonly PlacedStroke[], bars: TimelineBar[], ticks: Ticks): Timeline {
  return { strokes: placed.map(({ stroke }) => stroke), bars, ticks, pickupTicks: 0, cells: [] };
}
