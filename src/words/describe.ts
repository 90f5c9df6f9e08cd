/** Notation in words: for those who do not see it, and for those who read more easily than notes. */
import {
  countNames,
  type CountSystem,
  type Hand,
  type Limb,
  meterOf,
  saySlot,
  type Stroke,
  type StrokeKind,
  type Surface,
  type Timeline,
  type TimelineBar,
} from '../core/index.ts';
import { slotNames } from '../core/time/slot-names.ts';
import { capital } from './grammar.ts';
import { spell } from './numbers.ts';
import { BAR_WORD, COUNTING } from './site.ts';

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

/** Neighbors of which the same is said, said once. */
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
  const count = bars.length === 1 ? `one ${BAR_WORD}` : `${spell(bars.length, 'counted')} ${BAR_WORD}s`;
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
 * describe(timeline).label // → 'One bar of 4/4 in triplets: right hand leads'
 */
export function describe(timeline: Timeline, options: DescribeOptions = {}): Description {
  const what = cellWords(timeline, options.names ?? []);
  const where = `${meterWords(timeline.bars)} ${gridWords(timeline.bars)}`;
  const pickup = timeline.pickupTicks > 0 ? ' with a pickup' : '';
  const label = capital(`${where}${pickup}${what.length ? `: ${joined(what)}` : ''}`);
  return { label, reading: reading(timeline, options.counts ?? COUNTING) };
}

/** So many of a named cell: `four flam drags`, `two R L L`, `a kick`. */
function counted(name: string, count: number): string {
  if (count === 1) return /^[a-z]/.test(name) ? `${/^[aeiou]/.test(name) ? 'an' : 'a'} ${name}` : name;
  const plural = /[a-z]$/.test(name) && !/s$/.test(name) ? `${name}s` : name;
  return `${spell(count, 'counted')} ${plural}`;
}

/** Named cells, counted: in their order where that is short, else by kind. */
function namedCells(names: readonly string[]): string[] {
  const runs = names.reduce<[string, number][]>((all, name) => {
    const last = all[all.length - 1];
    if (last?.[0] === name) last[1] += 1;
    else all.push([name, 1]);
    return all;
  }, []);
  if (runs.length <= 5) return runs.map(([name, count]) => counted(name, count));
  const kinds = [...Map.groupBy(names, (name) => name)].map(([name, all]) => counted(name, all.length));
  return kinds.length <= 5 ? kinds : [];
}

const isHand = (stroke: Stroke): boolean => stroke.primary === undefined && stroke.kind !== 'foot';

/** The hand that leads each cell that has more than one hand stroke; where there is none, each cell. */
function leadsOf(timeline: Timeline): Hand[] {
  const hands = timeline.strokes.filter(isHand);
  const cells = [...Map.groupBy(hands, (stroke) => stroke.cell).values()];
  const long = cells.filter((cell) => cell.length > 1);
  return (long.length ? long : cells).map(([first]) => first.limb as Hand);
}

function leadWords(timeline: Timeline): string[] {
  const leads = leadsOf(timeline);
  if (leads.length === 0) return [];
  if (leads.every((hand) => hand === leads[0])) return [`${leads[0] === 'R' ? 'right' : 'left'} hand leads`];
  return leads.every((hand, i) => i === 0 || hand !== leads[i - 1]) ? ['the lead alternates'] : [];
}

/** Plain strokes of every kind in a piece whose cells have no names. */
function kindWords(timeline: Timeline): string[] {
  const hands = timeline.strokes.filter(isHand);
  const turns = hands.every((stroke, i) => i === 0 || stroke.limb !== hands[i - 1].limb);
  const plain = timeline.strokes.every((stroke) => stroke.kind === 'single');
  return plain && turns && hands.length > 1 ? ['single strokes hand to hand'] : [];
}

/** What a piece is made of and which hand leads, as far as it can be said in a few words. */
export function cellWords(timeline: Timeline, names: readonly (string | null)[]): string[] {
  const named = timeline.cells.map((_, i) => names[i] ?? '');
  const all = named.length > 0 && named.every((name) => name !== '');
  return [...(all ? namedCells(named) : kindWords(timeline)), ...leadWords(timeline)];
}

const LIMBS: Record<Limb, string> = { R: 'right', L: 'left', K: 'kick', H: 'hi-hat foot' };

const KINDS: Partial<Record<StrokeKind, string>> = {
  flam: ' flam',
  drag: ' drag',
  ruff: ' four-stroke ruff',
  buzz: ' buzz',
};

/** Where a stroke is, said only where it is not where that limb strikes anyway. */
const SURFACES: Partial<Record<Surface, string>> = {
  rimshot: ' rimshot',
  cross: ' cross-stick',
  rim: ' on the rim',
  click: ' stick click',
  tom1: ' on the high tom',
  tom2: ' on the middle tom',
  floor: ' on the floor tom',
  hat: ' on the hi-hat',
  open: ' on the open hi-hat',
  half: ' on the half-open hi-hat',
  splash: ' on the splash',
  ride: ' on the ride',
  bell: ' on the ride bell',
  crash: ' on the crash',
  choke: ' on the crash, choked',
  china: ' on the china',
  cowbell: ' on the cowbell',
};

const surfaceWords = (stroke: Stroke): string => SURFACES[stroke.surface] ?? '';

/** Grace notes that stand elsewhere than their primary are said with their place. */
function graceWords(stroke: Stroke, all: Map<string, Stroke>): string {
  const graces = stroke.opened ? [] : stroke.graces.map((id) => all.get(id)!);
  const moved = graces.filter((grace) => grace.surface !== stroke.surface);
  if (moved.length === 0) return '';
  return ` with its grace note${surfaceWords(moved[0]) || ' on the snare'}`;
}

function strokeWords(stroke: Stroke, all: Map<string, Stroke>): string {
  const force = stroke.marcato ? 'strongly accented ' : stroke.accent ? 'accented ' : stroke.ghost ? 'ghosted ' : '';
  const kind = stroke.opened ? '' : (KINDS[stroke.kind] ?? '');
  return force + LIMBS[stroke.limb] + kind + surfaceWords(stroke) + graceWords(stroke, all);
}

const REPEATS = ['', '', ' double', ' three times', ' four times'];

/**
 * The strokes of one slot: together, one after another, or one hand's double.
 * @example
 * chordWords([timeline.strokes[1]], new Map(timeline.strokes.map((s) => [s.id, s]))) // → 'accented right flam'
 */
export function chordWords(strokes: Stroke[], all: Map<string, Stroke>): string {
  const chords = [...Map.groupBy(strokes, (stroke) => stroke.tick).values()].map((chord) =>
    chord.map((stroke) => strokeWords(stroke, all)).join(' and '),
  );
  const plain = (words: string): string => words.replace(/^(strongly )?accented /, '');
  const alike = chords.length > 1 && chords.slice(1).every((words) => words === plain(chords[0]));
  if (!alike) return chords.join(' then ');
  const foot = strokes[0].kind === 'foot' && chords.length === 2;
  return chords[0] + (foot ? ' twice' : REPEATS[chords.length]);
}
