import { meterOf, slotTicks, type Ticks, type TimelineBar } from '../../core/index.ts';
import type { ClickMode } from '../types.ts';

/** How a click sounds: on beat 1, on a beat, or between beats. */
export type ClickRank = 'bar' | 'beat' | 'slot';

/** One click of the metronome. */
export interface Click {
  tick: Ticks;
  rank: ClickRank;
}

/** Whether a beat begins a group of its meter: in 2+2+3/8 the eighths 0, 2 and 4; elsewhere every beat. */
function beginsGroup(meter: string, beat: number): boolean {
  const { compound, groups } = meterOf(meter);
  if (compound || groups.length === 1) return true;
  let start = 0;
  return groups.some((group) => {
    const begins = start === beat;
    start += group;
    return begins;
  });
}

function rankOf(bar: TimelineBar, slot: number): ClickRank {
  if (slot === 0) return 'bar';
  return slot % bar.grid === 0 && beginsGroup(bar.meter, slot / bar.grid) ? 'beat' : 'slot';
}

/** The clicks of a bar: on every beat, with `slots` on every slot. */
export function clicksOf(bar: TimelineBar, mode: ClickMode): Click[] {
  if (mode === 'off') return [];
  const step = slotTicks(bar.meter, bar.grid);
  const slots = Array.from({ length: meterOf(bar.meter).beats * bar.grid }, (_, slot) => slot);
  const wanted = mode === 'slots' ? slots : slots.filter((slot) => slot % bar.grid === 0);
  return wanted.map((slot) => ({ tick: bar.tick + slot * step, rank: rankOf(bar, slot) }));
}
