import { lastWhere } from '../search.ts';
import { countNames, type CountSystem } from '../time/counts.ts';
import { gcd } from '../time/resolution.ts';
import type { Phrase, PhraseBar } from '../phrase/types.ts';
import type { Surface } from '../sticking/limbs.ts';
import type { Ticks } from '../time/units.ts';
import type { Stroke } from './types.ts';

const CYMBALS: readonly Surface[] = ['hat', 'open', 'half', 'splash', 'ride', 'bell', 'crash', 'choke', 'china'];

/**
 * Grace notes as measured notes. Before the beat they take the second half of the slot before, or of the gap to the hand
 * stroke before where that is shorter; on the beat they take the first half of the primary's share and the primary moves.
 * Several share that half evenly. A kick that stood under the primary stands under a cymbal grace note, unless a kick is
 * struck there already.
 */
export function writeOut(
  strokes: readonly Stroke[],
  phrase: Phrase,
  how: 'before' | 'on',
  counts?: CountSystem,
): Stroke[] {
  const handTicks = strokes.filter((s) => s.kind !== 'grace' && s.kind !== 'foot').map((s) => s.tick);
  const kicks = new Map(strokes.flatMap((s, i) => (s.limb === 'K' && s.line === 'hands' ? [[s.tick, i]] : [])));
  const struck = new Set(strokes.filter((s) => s.limb === 'K').map((s) => s.tick));
  const addressAt = addresses(phrase, counts);
  const written = [...strokes];
  strokes.forEach((primary, at) => {
    if (primary.graces.length === 0) return;
    // Its grace notes stand right before a primary.
    const first = at - primary.graces.length;
    const graces = strokes.slice(first, at);
    const plan = how === 'before' ? before(primary, graces, handTicks, phrase) : on(primary, graces, phrase);
    plan.forEach((note, i) => (written[first + i] = measured(strokes[first + i], note, addressAt(note.tick))));
    const cymbal = graces.findIndex((g) => CYMBALS.includes(g.surface));
    const kick = cymbal < 0 ? undefined : kicks.get(primary.tick);
    const { tick } = plan[Math.max(0, cymbal)];
    if (kick === undefined || (tick !== primary.tick && struck.has(tick))) return;
    struck.add(tick);
    written[kick] = { ...strokes[kick], ...addressAt(tick), tick };
  });
  return trimLengths(written);
}

/** Where a note that is written out stands, and how long it is. */
type Note = Pick<Stroke, 'tick' | 'length'>;

const measured = (stroke: Stroke, note: Note, address: Address): Stroke => ({
  ...stroke,
  ...address,
  ...note,
  kind: stroke.buzz ? 'buzz' : 'single',
  opened: true,
});

/** The grace notes and their primary; `handTicks`: where hands strike, grace notes apart, in order. */
function before({ tick, length }: Stroke, graces: Stroke[], handTicks: readonly Ticks[], phrase: Phrase): Note[] {
  const last = lastWhere(handTicks.length, (i) => handTicks[i] < tick);
  const gap = last < 0 ? Infinity : tick - handTicks[last];
  const step = evenStep(Math.min(barAt(phrase, tick - 1).slotTicks, gap), graces.length);
  return [...graces.map((_, i) => ({ tick: tick - step * (graces.length - i), length: step })), { tick, length }];
}

function on({ tick, parts, length }: Stroke, graces: Stroke[], phrase: Phrase): Note[] {
  const step = evenStep(barAt(phrase, tick).slotTicks / parts, graces.length);
  const late = step * graces.length;
  return [
    ...graces.map((_, i) => ({ tick: tick + step * i, length: step })),
    { tick: tick + late, length: length - late },
  ];
}

/** Half of a span in so many equal steps of whole ticks; where half does not go, the next smaller share that does. */
function evenStep(span: Ticks, steps: number): Ticks {
  for (let share = 2; share <= 8; share += 1) if (span % (share * steps) === 0) return span / (share * steps);
  return Math.max(1, Math.floor(span / (2 * steps)));
}

function barAt({ bars }: Phrase, tick: Ticks): PhraseBar {
  const last = lastWhere(bars.length, (i) => bars[i].tick <= tick);
  return bars[Math.max(0, last)];
}

/** Where a tick falls. */
type Address = Pick<Stroke, 'bar' | 'slot' | 'count' | 'part' | 'parts'>;

/** Bar, slot, count and part of any tick; before bar 1 and its pickup it stands in bar 0. */
function addresses(phrase: Phrase, counts?: CountSystem): (tick: Ticks) => Address {
  const names = new Map(phrase.bars.map((bar) => [bar, countNames(bar.meter, bar.grid, counts)]));
  return (tick) => {
    const bar = barAt(phrase, tick);
    const whole = bar.firstSlot + bar.slots;
    const slotIn = Math.floor((tick - bar.tick) / bar.slotTicks);
    const early = slotIn < 0;
    const slot = early ? (((bar.firstSlot + slotIn) % whole) + whole) % whole : bar.firstSlot + slotIn;
    const rest = tick - bar.tick - slotIn * bar.slotTicks;
    const unit = gcd(bar.slotTicks, rest);
    const count = names.get(bar)![slot];
    return { bar: early ? 0 : bar.number, slot, count, part: rest / unit, parts: bar.slotTicks / unit };
  };
}

/** A note written before a stroke ends the one that would still ring. */
function trimLengths(strokes: Stroke[]): Stroke[] {
  const starts = strokes.filter((s) => s.opened).map((s) => s.tick);
  starts.sort((a, b) => a - b);
  return strokes.map((stroke) => {
    if (stroke.line === 'feet' || stroke.kind === 'grace') return stroke;
    const next = starts[lastWhere(starts.length, (i) => starts[i] <= stroke.tick) + 1] ?? Infinity;
    return next < stroke.tick + stroke.length ? { ...stroke, length: next - stroke.tick } : stroke;
  });
}
