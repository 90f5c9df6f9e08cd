import { countSyllables, containsTick, type CountSystem, type ScoreBar, type Ticks } from '../../core/index.ts';

/** One mark of the ruler. */
export interface CountLabel {
  tick: Ticks;
  text: string;
  /** A beat, or where the meter groups its beats the start of a group. */
  strong: boolean;
}

/** The counts under a bar, one a slot, for those of its slots that are drawn. */
function countsOf(bar: ScoreBar, system?: CountSystem): CountLabel[] {
  const grouped = bar.meter.groups.length > 1 && !bar.meter.compound;
  const starts = new Set(bar.fragments.map((fragment) => fragment.tick));
  return countSyllables(bar.meter.text, bar.grid, system)
    .map((text, slot) => {
      const tick = bar.tick + slot * bar.slotTicks;
      return { tick, text, strong: grouped ? starts.has(tick) : slot % bar.grid === 0 };
    })
    .filter(({ tick }) => bar.fragments.some((fragment) => containsTick(fragment, tick)));
}

/** The counts of a piece. */
export const countLabels = (bars: readonly ScoreBar[], system?: CountSystem): CountLabel[] =>
  bars.flatMap((bar) => countsOf(bar, system));
