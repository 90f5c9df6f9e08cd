import { countNames, type CountSystem } from '../time/counts.ts';
import { gcd } from '../time/resolution.ts';
import type { Phrase, PhraseBar } from '../phrase/types.ts';
import type { Surface } from '../sticking/surfaces.ts';
import type { Ticks } from '../time/units.ts';
import type { Stroke } from './types.ts';

const CYMBALS: readonly Surface[] = ['hat', 'open', 'half', 'splash', 'ride', 'bell', 'crash', 'choke', 'china'];

/**
 * Grace notes as measured notes. Before the beat they take the second half of the slot before, or of the gap to the hand
 * stroke before where that is shorter; on the beat they take the first half of the primary's share and the primary moves.
 * Several share that half evenly. A kick that stood under the primary stands under a cymbal grace note.
 */
export function writeOut(strokes: Stroke[], phrase: Phrase, how: 'before' | 'on', counts?: CountSystem): Stroke[] {
  const byId = new Map(strokes.map((s) => [s.id, s]));
  const moved = new Map<string, Stroke>();
  for (const primary of strokes.filter((s) => s.graces.length > 0)) {
    const graces = primary.graces.map((id) => byId.get(id)!);
    const plan = how === 'before' ? before(primary, graces, strokes, phrase) : on(primary, graces, phrase);
    for (const stroke of plan) moved.set(stroke.id, readdress(stroke, phrase, counts));
    const cymbal = graces.findIndex((g) => CYMBALS.includes(g.surface));
    for (const kick of cymbal < 0 ? [] : kicksWith(primary, strokes))
      moved.set(kick.id, readdress({ ...kick, tick: plan[cymbal].tick }, phrase, counts));
  }
  return trimLengths(strokes.map((s) => moved.get(s.id) ?? s));
}

const measured = (stroke: Stroke, tick: Ticks, length: Ticks): Stroke => ({
  ...stroke,
  tick,
  length,
  kind: stroke.buzz ? 'buzz' : 'single',
  opened: true,
});

function before(primary: Stroke, graces: Stroke[], strokes: Stroke[], phrase: Phrase): Stroke[] {
  const hands = strokes.filter((s) => s.kind !== 'grace' && s.kind !== 'foot' && s.tick < primary.tick);
  const gap = hands.length ? primary.tick - Math.max(...hands.map((s) => s.tick)) : Infinity;
  const slot = barAt(phrase, primary.tick - 1).slotTicks;
  const step = evenStep(Math.min(slot, gap), graces.length);
  return [
    ...graces.map((g, i) => measured(g, primary.tick - step * (graces.length - i), step)),
    measured(primary, primary.tick, primary.length),
  ];
}

function on(primary: Stroke, graces: Stroke[], phrase: Phrase): Stroke[] {
  const share = barAt(phrase, primary.tick).slotTicks / primary.parts;
  const step = evenStep(share, graces.length);
  const late = step * graces.length;
  return [
    ...graces.map((g, i) => measured(g, primary.tick + step * i, step)),
    measured(primary, primary.tick + late, primary.length - late),
  ];
}

/** Half of a span in so many equal steps of whole ticks; where half does not go, the next smaller share that does. */
function evenStep(span: Ticks, steps: number): Ticks {
  for (let share = 2; share <= 8; share += 1) if (span % (share * steps) === 0) return span / (share * steps);
  return Math.max(1, Math.floor(span / (2 * steps)));
}

function kicksWith(primary: Stroke, strokes: Stroke[]): Stroke[] {
  return strokes.filter((s) => s.limb === 'K' && s.line === primary.line && s.tick === primary.tick);
}

function barAt(phrase: Phrase, tick: Ticks): PhraseBar {
  return phrase.bars.findLast((bar) => bar.tick <= tick) ?? phrase.bars[0];
}

/** Bar, slot, count and part of a stroke that has moved; before bar 1 and its pickup it stands in bar 0. */
function readdress(stroke: Stroke, phrase: Phrase, counts?: CountSystem): Stroke {
  const bar = barAt(phrase, stroke.tick);
  const early = stroke.tick < bar.tick;
  const whole = bar.firstSlot + bar.slots;
  const offset = stroke.tick - bar.tick;
  const slotIn = Math.floor(offset / bar.slotTicks);
  const slot = early ? (((bar.firstSlot + slotIn) % whole) + whole) % whole : bar.firstSlot + slotIn;
  const rest = offset - slotIn * bar.slotTicks;
  const unit = gcd(bar.slotTicks, rest);
  return {
    ...stroke,
    bar: early ? 0 : bar.number,
    slot,
    count: countNames(bar.meter, bar.grid, counts)[slot],
    part: rest / unit,
    parts: bar.slotTicks / unit,
  };
}

/** A note written before a stroke ends the one that would still ring. */
function trimLengths(strokes: Stroke[]): Stroke[] {
  const starts = strokes.filter((s) => s.opened).map((s) => s.tick);
  return strokes.map((stroke) => {
    if (stroke.line === 'feet' || stroke.kind === 'grace') return stroke;
    const cut = starts.filter((tick) => tick > stroke.tick && tick < stroke.tick + stroke.length);
    return cut.length ? { ...stroke, length: Math.min(...cut) - stroke.tick } : stroke;
  });
}
