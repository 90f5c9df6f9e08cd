import { checkOptions, oneOf } from '../check.ts';
import { checkLaid } from '../phrase/check-laid.ts';
import { countNames, type CountSystem } from '../time/counts.ts';
import { DEFAULT_SURFACE, isHand, LIMBS, SURFACES } from '../sticking/limbs.ts';
import { applyOrchestration, type OrchestrationRule, type Placed } from '../orchestration/rules.ts';
import { writeOut } from './write-out.ts';
import type { Chord, HoldItem, Limb, SlotItem, StrokeText } from '../sticking/types.ts';
import type { Phrase, PhraseSlot } from '../phrase/types.ts';
import type { Ticks } from '../time/units.ts';
import type { Stroke, StrokeKind, Timeline } from './types.ts';

/** How a phrase is played. */
export interface PerformOptions {
  /** Grace notes as such, or written out as measured notes before the beat or on it. */
  flams?: 'grace' | 'before' | 'on';
  /** Rules that move strokes round the kit; surfaces that are written beat them, and the last rule that fits wins. */
  orchestration?: readonly OrchestrationRule[];
  /** How the slots are counted. */
  counts?: CountSystem;
}

type Line = 'hands' | 'feet';

const FLAMS = ['grace', 'before', 'on'];

/**
 * A phrase as strokes with exact ticks, counts, kinds and stable ids, in order of time.
 * Throws RangeError for what is no phrase, and for a way of playing flams, a surface or a count that does not exist.
 * @example
 * perform(phrase).strokes[0] // → { id: '1.0.0g0', tick: 0, limb: 'L', kind: 'grace', count: '1' }
 */
export function perform(phrase: Phrase, options: PerformOptions = {}): Timeline {
  checkOptions('perform', options);
  const { flams = 'grace', orchestration = [], counts } = options;
  checkLaid(phrase);
  oneOf('flams', flams, FLAMS);
  const placed = placeStrokes(phrase, counts);
  const strokes = applyOrchestration(placed, orchestration);
  const opened = flams === 'grace' ? strokes : writeOut(strokes, phrase, flams, counts);
  const bars = phrase.bars.filter((bar) => bar.number > 0);
  const last = bars[bars.length - 1];
  return {
    strokes: opened.sort(inOrder),
    bars: bars.map(({ tick, meter, grid, slots }) => ({ tick, meter, grid, slots })),
    ticks: last.tick + last.slots * last.slotTicks,
    pickupTicks: phrase.bars[0].number === 0 ? -phrase.bars[0].tick : 0,
    cells: phrase.cells.map((cell, i) => ({
      id: cell.id,
      tick: cell.tick,
      ticks: (phrase.cells[i + 1]?.tick ?? endOf(phrase, cell.from + cell.slots)) - cell.tick,
      slots: cell.slots,
      bar: cell.bar,
      count: cell.count,
    })),
  };
}

/** The tick at which a slot of the phrase begins; at its end, where the last bar ends. */
function endOf(phrase: Phrase, slot: number): Ticks {
  const last = phrase.bars[phrase.bars.length - 1];
  return phrase.slots[slot]?.tick ?? last.tick + last.slots * last.slotTicks;
}

/** By tick; of one tick, grace notes first, in the order they sound, then by limb. */
function inOrder(a: Stroke, b: Stroke): number {
  const grace = (s: Stroke): number => (s.kind === 'grace' ? 0 : 1);
  return a.tick - b.tick || grace(a) - grace(b) || (grace(a) ? LIMBS.indexOf(a.limb) - LIMBS.indexOf(b.limb) : 0);
}

function placeStrokes(phrase: Phrase, counts?: CountSystem): Placed[] {
  const bars = new Map(phrase.bars.map((bar) => [bar.number, { bar, names: countNames(bar.meter, bar.grid, counts) }]));
  const ringing = { hands: ringTicks(phrase, 'hands'), feet: ringTicks(phrase, 'feet') };
  return phrase.slots.flatMap((slot, i) => {
    const { bar, names } = bars.get(slot.bar)!;
    const at = { slot, ticks: bar.slotTicks, count: names[slot.slot] };
    const hands = slotStrokes(at, slot.hands, 'hands', ringing.hands[i]);
    return slot.feet ? [...hands, ...slotStrokes(at, slot.feet, 'feet', ringing.feet[i])] : hands;
  });
}

/** For each slot, how long the holds after it let its last part ring on. */
function ringTicks(phrase: Phrase, line: Line): Ticks[] {
  const ticks = new Map(phrase.bars.map((bar) => [bar.number, bar.slotTicks]));
  const ring = phrase.slots.map(() => 0);
  for (let i = phrase.slots.length - 1; i > 0; i -= 1)
    if (phrase.slots[i][line]?.kind === 'hold') ring[i - 1] = ring[i] + ticks.get(phrase.slots[i].bar)!;
  return ring;
}

interface SlotSpan {
  slot: PhraseSlot;
  ticks: Ticks;
  count: string;
}

function slotStrokes(at: SlotSpan, item: SlotItem | HoldItem, line: Line, ring: Ticks): Placed[] {
  if (item.kind === 'hold') return [];
  const { parts } = item;
  const share = at.ticks / parts.length;
  return parts.flatMap((chord, part) => {
    const length = share + (part === parts.length - 1 ? ring : 0);
    return byPlace(chord).flatMap((text, nth) => {
      const rebound = isHand(text.limb) ? reboundOf(parts, part, text.limb) : undefined;
      const base = `${at.slot.bar}.${at.slot.slot}.${part}`;
      const id = base + suffix(text.limb, line, nth);
      const main: Stroke = {
        id,
        tick: at.slot.tick + part * share,
        bar: at.slot.bar,
        slot: at.slot.slot,
        count: at.count,
        limb: text.limb,
        kind: kindOf(text, rebound !== undefined),
        accent: text.accent !== undefined,
        ghost: text.ghost === true,
        cell: at.slot.cell,
        surface: text.surface ?? DEFAULT_SURFACE[text.limb],
        part,
        parts: parts.length,
        length,
        marcato: text.accent === '^',
        buzz: text.buzz === true,
        line,
        graces: (text.graces ?? []).map((_, g) => `${id}g${g}`),
        opened: false,
        rebound: rebound ?? 0,
      };
      return [...graceStrokes(text, main), { stroke: main, written: text.surface !== undefined }];
    });
  });
}

/** Two hands of one chord by the surface they strike, so that ids do not change with the lead. */
function byPlace(chord: Chord): Chord {
  if (chord.length < 2) return chord;
  const rank = (s: StrokeText): number =>
    isHand(s.limb) ? SURFACES.indexOf(s.surface ?? DEFAULT_SURFACE[s.limb]) : 99;
  return [...chord].sort((a, b) => rank(a) - rank(b));
}

function suffix(limb: Limb, line: Line, nth: number): string {
  if (isHand(limb)) return nth > 0 ? 'b' : '';
  return (line === 'feet' ? 'f' : '') + limb.toLowerCase();
}

/** How many strokes of this hand stand at once before this part in its slot; nothing where it has no neighbor. */
function reboundOf(parts: Chord[], part: number, limb: Limb): number | undefined {
  const plays = (p: number): boolean => parts[p]?.some((s) => s.limb === limb) ?? false;
  let before = 0;
  while (plays(part - before - 1)) before += 1;
  return before > 0 || plays(part + 1) ? before : undefined;
}

function kindOf(text: StrokeText, doubled: boolean): StrokeKind {
  if (!isHand(text.limb)) return 'foot';
  if (text.buzz) return 'buzz';
  return ([undefined, 'flam', 'drag', 'ruff'] as const)[text.graces?.length ?? 0] ?? (doubled ? 'diddle' : 'single');
}

function graceStrokes(text: StrokeText, main: Stroke): Placed[] {
  return (text.graces ?? []).map((grace, g) => ({
    written: grace.surface !== undefined,
    stroke: {
      ...main,
      id: main.graces[g],
      limb: grace.hand,
      kind: 'grace',
      accent: false,
      marcato: false,
      ghost: false,
      buzz: false,
      surface: grace.surface ?? DEFAULT_SURFACE[grace.hand],
      length: 0,
      graces: [],
      primary: main.id,
      rebound: 0,
    },
  }));
}
