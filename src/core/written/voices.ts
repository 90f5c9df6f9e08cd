import type { Ticks } from '../time/units.ts';
import type { Stroke } from '../timeline/types.ts';
import { isFoot, TIMEKEEPERS } from './kit.ts';
import type { ScoreBar } from './fragments.ts';

/** Strokes that one voice plays at one tick. */
export interface Onset {
  tick: Ticks;
  strokes: Stroke[];
  /** Where its own part of a slot ends, and where it stops ringing where `_` lengthens it. */
  partEnd: Ticks;
  ringEnd: Ticks;
  /** How many parts share its slot. */
  parts: number;
  /** Slashes through the stem where a diddle is written as one note. */
  slashes: number;
}

/** Which way the stems of a voice point, and its strokes. */
export interface Voice {
  stem: 1 | -1;
  onsets: Onset[];
}

const isMeasured = (stroke: Stroke): boolean => stroke.kind !== 'grace' || stroke.opened;

/** Strokes of one tick as one onset. */
function gather(strokes: Stroke[], slotTicks: Ticks, slashed: boolean): Onset[] {
  const byTick = Map.groupBy(strokes, (stroke) => stroke.tick);
  const onsets = [...byTick].map(([tick, group]) => onsetOf(tick, group, slotTicks));
  onsets.sort((a, b) => a.tick - b.tick);
  return slashed ? joinDiddles(onsets, slotTicks) : onsets;
}

function onsetOf(tick: Ticks, strokes: Stroke[], slotTicks: Ticks): Onset {
  const parts = Math.max(...strokes.map((stroke) => stroke.parts));
  const ringEnd = tick + Math.max(...strokes.map((stroke) => stroke.length));
  return { tick, strokes, parts, slashes: 0, ringEnd, partEnd: tick + slotTicks / parts };
}

/** A slot filled by one hand's diddle becomes one note with a slash, or two where it is four strokes. */
function joinDiddles(onsets: Onset[], slotTicks: Ticks): Onset[] {
  const isRebound = (onset: Onset): boolean => onset.strokes.length === 1 && onset.strokes[0].kind === 'diddle';
  return onsets.flatMap((onset, i) => {
    if (!isRebound(onset) || (onset.parts !== 2 && onset.parts !== 4)) return [onset];
    const run = onsets.slice(i - onset.strokes[0].part, i - onset.strokes[0].part + onset.parts);
    const whole = run.length === onset.parts && run.every((o, n) => isRebound(o) && o.strokes[0].rebound === n);
    if (!whole) return [onset];
    if (onset.strokes[0].part > 0) return [];
    const strokes = run.flatMap((o) => o.strokes);
    const ringEnd = run[run.length - 1].ringEnd;
    return [{ ...onset, strokes, parts: 1, slashes: Math.log2(onset.parts), partEnd: onset.tick + slotTicks, ringEnd }];
  });
}

/** Whether a foot sounds together with a hand, or keeps a groove under it, or falls into a stroke that rings or is split otherwise. */
function needsTwoVoices(hands: Stroke[], feet: Stroke[]): boolean {
  const ticks = new Set(hands.map((stroke) => stroke.tick));
  const groove = hands.some((stroke) => TIMEKEEPERS.includes(stroke.surface));
  const clash = (hand: Stroke, foot: Stroke): boolean =>
    (hand.slot === foot.slot && hand.parts !== foot.parts) ||
    (foot.tick > hand.tick && foot.tick < hand.tick + hand.length);
  return feet.some((foot) => groove || ticks.has(foot.tick) || hands.some((hand) => clash(hand, foot)));
}

/**
 * The voices of a bar: one, stems up, where no foot sounds under a hand; else hands up and feet down.
 * A bar of feet alone is one voice.
 */
export function voicesOf(bar: ScoreBar, strokes: Stroke[], slashed: boolean): Voice[] {
  const inBar = strokes.filter((s) => isMeasured(s) && s.tick >= bar.tick && s.tick < bar.tick + bar.ticks);
  const voice = (stem: 1 | -1, of: Stroke[]): Voice => ({ stem, onsets: gather(of, bar.slotTicks, slashed) });
  const hands = inBar.filter((stroke) => !isFoot(stroke));
  const feet = inBar.filter(isFoot);
  return needsTwoVoices(hands, feet) ? [voice(1, hands), voice(-1, feet)] : [voice(1, inBar)];
}
