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
import { asTimeline, placeBars, placeStrokes, type PlacedStroke } from './merge.ts';
import { clicksOf, type ClickRank } from './metronome.ts';
import { countInSlots, placesOf, slotsIn, type Place } from './places.ts';
import { endOf, leadBar, sectionsOf, type Section } from './sections.ts';

/** How long a stroke stays lit at most. */
const LIT_SECONDS: Seconds = 0.12;

/** What sounds: a stroke as its own timeline has it, or a click of the metronome. */
export type Sounding = { stroke: Stroke } | { click: ClickRank };

/** One sound at its time. */
export interface Hit {
  /** From the beginning of its pass; before it for a grace note of the first stroke. */
  seconds: Seconds;
  /** When the stroke it belongs to sounds: a grace note goes where its primary goes. */
  home: Seconds;
  sound: Sounding;
  /** Which stroke of which phase lights up, and for how long. */
  lit?: { id: string; phase: Phase; seconds: Seconds };
}

/** One time round, in seconds from its own beginning. */
export interface Pass {
  /** In order of time. */
  hits: Hit[];
  /** In order; the first one is where the pass begins to be heard. */
  places: Place[];
  /** When it ends and the next one begins. */
  end: Seconds;
  /** The tick at its end. */
  ticks: Ticks;
  /** How far ahead of its primary the first grace note of a figure sounds at most. */
  ahead: Seconds;
}

/** A request as times: one pass that opens, with count-in and pickup, and one for every return. */
export interface Plan {
  request: PlayRequest;
  first: Pass;
  again: Pass;
}

/** What one pass is made of, in ticks. */
interface Score {
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

function scoreOf(request: PlayRequest, opens: boolean): Score {
  const lead = leadBar(sectionsOf(request, 0, opens)[0]);
  const from = opens ? lead.ticks : 0;
  const own = sectionsOf(request, from, opens);
  const sections = withNext(request, own);
  const placed = placeStrokes(sections, 0, endOf(own));
  const bars = [...(opens ? [lead.bar] : []), ...placeBars(own)];
  return { sections, placed, timeline: asTimeline(placed, bars, endOf(own)), from };
}

function litSeconds({ stroke, own }: PlacedStroke, at: At): Seconds {
  if (own.length === 0) return LIT_SECONDS;
  return Math.min(LIT_SECONDS, at(stroke.tick + own.length) - at(stroke.tick));
}

function strokeHits(request: PlayRequest, score: Score, times: Map<string, Seconds>, at: At): Hit[] {
  const heard = score.placed.filter(({ own }) => request.heard === 'all' || own.limb === request.heard);
  return heard.map((item) => ({
    seconds: times.get(item.stroke.id) ?? at(item.stroke.tick),
    home: at(item.stroke.opened ? item.stroke.tick : item.home),
    sound: { stroke: item.own },
    lit: { id: item.own.id, phase: score.sections[item.section].phase, seconds: litSeconds(item, at) },
  }));
}

/** The count-in clicks whatever the metronome does; every other bar as the metronome is set. */
function clickHits({ click, countIn }: PlayRequest, { timeline, from }: Score, start: Ticks, at: At): Hit[] {
  const inLead = countIn && click === 'off' ? 'beats' : click;
  const clicks = timeline.bars.flatMap((bar) => clicksOf(bar, bar.tick < from ? inLead : click));
  const audible = clicks.filter(({ tick }) => tick >= start);
  return audible.map(({ tick, rank }) => ({ seconds: at(tick), home: at(tick), sound: { click: rank } }));
}

/** Where the pass begins to be heard: with the count-in, else with the pickup, else with its first section. */
function startOf({ countIn }: PlayRequest, { from, sections: [first] }: Score): Ticks {
  if (countIn) return 0;
  return from - (first.pickup ? first.timeline.pickupTicks : 0);
}

function placesIn(request: PlayRequest, score: Score, start: Ticks, at: At): Place[] {
  const { sections, placed, timeline, from } = score;
  const lead = from > 0 ? countInSlots(timeline.bars[0], request.countSystem) : [];
  const slots = slotsIn(sections, lead, request.countSystem);
  return placesOf(
    slots.filter(({ tick }) => tick >= start && tick < timeline.ticks),
    placed,
    at,
  );
}

function passOf(request: PlayRequest, opens: boolean): Pass {
  const score = scoreOf(request, opens);
  const { bpm, swing, flamMs } = request;
  const options: ScheduleOptions = { bpm, swing, flamMs, loop: request.loop && !opens };
  const at = secondsAt(score.timeline, options);
  const times = new Map(schedule(score.timeline, options).map(({ id, seconds }) => [id, seconds]));
  const start = opens ? startOf(request, score) : 0;
  const hits = [...strokeHits(request, score, times, at), ...clickHits(request, score, start, at)];
  return {
    hits: hits.sort((a, b) => a.seconds - b.seconds),
    places: placesIn(request, score, start, at),
    end: at(score.timeline.ticks),
    ticks: score.timeline.ticks,
    ahead: Math.max(0, ...hits.map(({ seconds, home }) => home - seconds)),
  };
}

/** Works out when everything sounds. Throws RangeError where core refuses tempo, swing or flam width. */
export function planOf(request: PlayRequest): Plan {
  return { request, first: passOf(request, true), again: passOf(request, false) };
}
