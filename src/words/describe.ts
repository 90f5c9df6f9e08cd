import {
  countNames,
  meterOf,
  saySlot,
  slotNames,
  type CountSystem,
  type Stroke,
  type Timeline,
  type TimelineBar,
} from '../core/index.ts';
import { cellWords } from './describe-cells.ts';
import { capital, numberWord } from './numbers.ts';
import { BAR_WORD, COUNTING } from './site.ts';
import { chordWords } from './stroke-words.ts';

/** What a description may be told. */
export interface DescribeOptions {
  /** A name for each cell, by its index, as over the brackets. */
  names?: readonly (string | null)[];
  /** In which syllables the counts are said; the school's where left out. */
  counts?: CountSystem;
}

/** A picture of music in words. */
export interface Description {
  /** One line: what it is. */
  label: string;
  /** Everything in it, beat by beat. */
  reading: string;
}

const joined = (parts: string[]): string => parts.join(', ');

/** Something said of one or of several in a row. */
interface Said {
  from: number;
  to: number;
  text: string;
}

/** Neighbours of which the same is said, said once. */
function compress(said: readonly Said[]): Said[] {
  return said.reduce<Said[]>((all, next) => {
    const last = all[all.length - 1];
    if (last && last.text === next.text && last.to + 1 === next.from) last.to = next.to;
    else all.push({ ...next });
    return all;
  }, []);
}

const range = ({ from, to }: Said, word: string): string =>
  from === to ? `${word} ${from}` : `${word}s ${from} ${to === from + 1 ? 'and' : 'to'} ${to}`;

/** `in triplets`, or each grid in turn where the bars differ. */
function gridWords(bars: readonly TimelineBar[]): string {
  const names = bars.map((bar) => slotNames(bar.meter, bar.grid).many);
  return `in ${[...new Set(names)].join(', then ')}`;
}

function meterWords(bars: readonly TimelineBar[]): string {
  const meters = [...new Set(bars.map((bar) => bar.meter))];
  const count = bars.length === 1 ? `one ${BAR_WORD}` : `${numberWord(bars.length)} ${BAR_WORD}s`;
  return `${count} of ${meters.join(' and ')}`;
}

/** The syllable of a count: the part after the beat. */
const syllable = (count: string): string => count.split(' ').slice(1).join(' ');

/** One slot: its syllable, but for the beat's own, and what is struck there. */
function slotWords(strokes: Stroke[], all: Map<string, Stroke>): string {
  const words = chordWords(strokes, all);
  const name = syllable(strokes[0].count);
  return name ? `on ${name.includes(' ') ? 'the ' : ''}${name} ${words}` : words;
}

const isMain = (stroke: Stroke): boolean => stroke.kind !== 'grace' || stroke.opened;

function beatWords(strokes: Stroke[], all: Map<string, Stroke>): string {
  const slots = [...Map.groupBy(strokes, (stroke) => stroke.slot).values()];
  return slots.length ? slots.map((slot) => slotWords(slot, all)).join('; ') : 'rest';
}

/** The beats of a bar, those alike said together. */
function barReading(bar: TimelineBar, tick: number, strokes: Stroke[], all: Map<string, Stroke>): string {
  const { beats, beatTicks } = meterOf(bar.meter);
  const said = Array.from({ length: beats }, (_, i): Said => {
    const from = tick + i * beatTicks;
    const own = strokes.filter((stroke) => stroke.tick >= from && stroke.tick < from + beatTicks);
    return { from: i + 1, to: i + 1, text: beatWords(own, all) };
  });
  if (said.every(({ text }) => text === 'rest')) return 'silence.';
  return compress(said)
    .map((beat) => `${range(beat, 'beat')}: ${beat.text}.`)
    .map(capital)
    .join(' ');
}

function pickupReading(timeline: Timeline, strokes: Stroke[], all: Map<string, Stroke>, counts: CountSystem): string {
  const { meter, grid } = timeline.bars[0];
  const own = strokes.filter((stroke) => stroke.tick < 0);
  if (own.length === 0) return '';
  const slots = [...Map.groupBy(own, (stroke) => stroke.slot)];
  const said = slots.map(([slot, group]) => `${saySlot(meter, grid, slot, counts)} ${chordWords(group, all)}`);
  return `Before ${timeline.bars.length > 1 ? `the first ${BAR_WORD}` : 'it'}, on ${said.join('; on ')}. `;
}

/** A stroke with its count in other syllables; where eighths are counted, a number within a beat is a syllable. */
function recounted(stroke: Stroke, bars: readonly TimelineBar[], counts: CountSystem): Stroke {
  const { meter, grid } = bars[stroke.bar - 1] ?? bars[0];
  const name = countNames(meter, grid, counts)[stroke.slot];
  const within = stroke.slot % grid > 0 && !name.includes(' ');
  return { ...stroke, count: within ? `${Math.floor(stroke.slot / grid) + 1} ${name}` : name };
}

function reading(timeline: Timeline, counts: CountSystem): string {
  const all = new Map(timeline.strokes.map((stroke) => [stroke.id, stroke]));
  const main = timeline.strokes.filter(isMain);
  const strokes = main.map((stroke) => recounted(stroke, timeline.bars, counts));
  const said = timeline.bars.map((bar, i): Said => {
    return { from: i + 1, to: i + 1, text: barReading(bar, bar.tick, strokes, all) };
  });
  const bars =
    said.length === 1
      ? said.map(({ text }) => capital(text))
      : compress(said).map((bar) => `${capital(range(bar, BAR_WORD))}: ${bar.text}`);
  return pickupReading(timeline, strokes, all, counts) + bars.join(' ');
}

/**
 * A timeline in words: a label for its picture and the full reading, for a screen reader and for anyone who wants it.
 * @example
 * describe(timeline).label // → 'One bar of 4/4 in triplets: four flam drags, right hand leads'
 */
export function describe(timeline: Timeline, options: DescribeOptions = {}): Description {
  const what = cellWords(timeline, options.names ?? []);
  const where = `${meterWords(timeline.bars)} ${gridWords(timeline.bars)}`;
  const pickup = timeline.pickupTicks > 0 ? ' with a pickup' : '';
  const label = capital(`${where}${pickup}${what.length ? `: ${joined(what)}` : ''}`);
  return { label, reading: reading(timeline, options.counts ?? COUNTING) };
}
