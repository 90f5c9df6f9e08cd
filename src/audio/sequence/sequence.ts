import {
  schedule,
  secondsAt,
  type ScheduleOptions,
  type Seconds,
  type Stroke,
  type Ticks,
  type Timeline,
} from '../../core/index.ts';
import type { Phase, PlayRequest } from '../types.ts';
import { asTimeline, placeBars, placeStrokes, type PlacedStroke } from './placed-strokes.ts';
import { clicksOf, type ClickRank } from './metronome.ts';
import { countInSlots, timedSlots, slotsIn, type TimedSlot } from './slots.ts';
import { endOf, countInBar, sectionsOf, type Section } from './sections.ts';

/** How long a stroke stays lit at most. */
const LIT_SECONDS: Seconds = 0.12;

/** What sounds: a stroke as its own timeline has it, or a click of the metronome. */
export type Note = { stroke: Stroke } | { click: ClickRank };

/** One note at its time. */
export interface NoteEvent {
  /** From the beginning of its pass; before it for a grace note of the first stroke. */
  seconds: Seconds;
  /** When the stroke it belongs to sounds: a grace note goes where its primary goes. */
  anchor: Seconds;
  note: Note;
  /** Which stroke of which phase lights up, and for how long. */
  lit?: { id: string; phase: Phase; seconds: Seconds };
}

/** One time round, in seconds from its own beginning. */
export interface PassTimes {
  /** In order of time. */
  events: NoteEvent[];
  /** In order; the first one is where the pass begins to be heard. */
  slots: TimedSlot[];
  /** When it ends and the next one begins. */
  end: Seconds;
  /** The tick at its end. */
  ticks: Ticks;
  /** How far ahead of its primary the first grace note of a figure sounds at most. */
  graceLead: Seconds;
}

/** A request as times: one pass that opens, with count-in and pickup, and one for every return. */
export interface Sequence {
  request: PlayRequest;
  first: PassTimes;
  again: PassTimes;
}

/** What one pass is made of, in ticks. */
interface PassLayout {
  /** The last one may begin where the pass ends: the next pass, for what sounds ahead of it. */
  sections: Section[];
  placed: PlacedStroke[];
  timeline: Timeline;
  /** Where the sections begin; before it stands the bar of the count-in. */
  from: Ticks;
}

type At = (tick: Ticks) => Seconds;

/** With one section more where another pass follows, of which only what sounds ahead of its beginning is taken. */
function withNext(request: PlayRequest, sections: Section[]): Section[] {
  return request.loop ? [...sections, sectionsOf(request, endOf(sections), false)[0]] : sections;
}

function layOutPass(request: PlayRequest, opens: boolean): PassLayout {
  const countIn = countInBar(sectionsOf(request, 0, opens)[0]);
  const from = opens ? countIn.ticks : 0;
  const own = sectionsOf(request, from, opens);
  const sections = withNext(request, own);
  const placed = placeStrokes(sections, 0, endOf(own));
  const bars = [...(opens ? [countIn.bar] : []), ...placeBars(own)];
  return { sections, placed, timeline: asTimeline(placed, bars, endOf(own)), from };
}

function litSeconds({ stroke, source }: PlacedStroke, at: At): Seconds {
  if (source.length === 0) return LIT_SECONDS;
  return Math.min(LIT_SECONDS, at(stroke.tick + source.length) - at(stroke.tick));
}

function strokeEvents(request: PlayRequest, layout: PassLayout, times: Map<string, Seconds>, at: At): NoteEvent[] {
  const heard = layout.placed.filter(({ source }) => request.heard === 'all' || source.limb === request.heard);
  return heard.map((item) => ({
    seconds: times.get(item.stroke.id) ?? at(item.stroke.tick),
    anchor: at(item.stroke.opened ? item.stroke.tick : item.anchor),
    note: { stroke: item.source },
    lit: { id: item.source.id, phase: layout.sections[item.section].phase, seconds: litSeconds(item, at) },
  }));
}

/** The count-in clicks whatever the metronome does; every other bar as the metronome is set. */
function clickEvents(
  { click, countIn }: PlayRequest,
  { timeline, from }: PassLayout,
  start: Ticks,
  at: At,
): NoteEvent[] {
  const atFirst = countIn && click === 'off' ? 'beats' : click;
  const clicks = timeline.bars.flatMap((bar) => clicksOf(bar, bar.tick < from ? atFirst : click));
  const audible = clicks.filter(({ tick }) => tick >= start);
  return audible.map(({ tick, rank }) => ({ seconds: at(tick), anchor: at(tick), note: { click: rank } }));
}

/** Where the pass begins to be heard: with the count-in, else with the pickup, else with its first section. */
function startOf({ countIn }: PlayRequest, { from, sections: [first] }: PassLayout): Ticks {
  if (countIn) return 0;
  return from - (first.pickup ? first.timeline.pickupTicks : 0);
}

function slotsOfPass(request: PlayRequest, layout: PassLayout, start: Ticks, at: At): TimedSlot[] {
  const { sections, placed, timeline, from } = layout;
  const lead = from > 0 ? countInSlots(timeline.bars[0], request.countSystem) : [];
  const slots = slotsIn(sections, lead, request.countSystem);
  return timedSlots(
    slots.filter(({ tick }) => tick >= start && tick < timeline.ticks),
    placed,
    at,
  );
}

function passOf(request: PlayRequest, opens: boolean): PassTimes {
  const layout = layOutPass(request, opens);
  const { bpm, swing, flamMs } = request;
  const options: ScheduleOptions = { bpm, swing, flamMs, loop: request.loop && !opens };
  const at = secondsAt(layout.timeline, options);
  const times = new Map(schedule(layout.timeline, options).map(({ id, seconds }) => [id, seconds]));
  const start = opens ? startOf(request, layout) : 0;
  const events = [...strokeEvents(request, layout, times, at), ...clickEvents(request, layout, start, at)];
  return {
    events: events.sort((a, b) => a.seconds - b.seconds),
    slots: slotsOfPass(request, layout, start, at),
    end: at(layout.timeline.ticks),
    ticks: layout.timeline.ticks,
    graceLead: events.reduce((most, { seconds, anchor }) => Math.max(most, anchor - seconds), 0),
  };
}

/** Works out when everything sounds. Throws RangeError where core refuses tempo, swing or flam width. */
export function sequenceOf(request: PlayRequest): Sequence {
  return { request, first: passOf(request, true), again: passOf(request, false) };
}
