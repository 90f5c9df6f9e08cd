import { cellsOf, faultText, layPhrase, parseSticking, perform, readMeter, type Timeline } from '../core/index.ts';
import { slotWords } from '../words/numbers.ts';
import { fillsSay } from '../words/write.ts';
import { IN_WORKER, MOST_PLAYED, strokeCounter, strokesIn } from './limits.ts';
import { barsDrawn } from './ruler.ts';

/** What becomes of a text: a bar or more, with the line to put into a lesson, or what is wrong with it and where. */
export type TriedBar =
  | {
      ok: true;
      says: string;
      source: string;
      bars: number;
      /** What can be played; left out where it is too long. */
      timeline?: Timeline;
      /** The first bars, as many as are drawn. */
      drawn: Timeline;
    }
  | { ok: false; says: string; place?: string };

/**
 * Reads a sticking as the checker does. Throws TooLarge where it has more strokes than the limits.
 *
 * @example tryBar('{>lR LL R}5', '4/4', 4).says // 'stops on 4 &; the a of 4 is empty: 15 of 16 sixteenths'
 */
export function tryBar(text: string, meter: string, grid: number, limits = IN_WORKER): TriedBar {
  const read = readMeter(meter);
  if (!read.ok) return { ok: false, says: read.fault.message };
  const parsed = parseSticking(text);
  if (!parsed.ok) {
    const [says, ...place] = faultText(text, parsed.fault).split('\n');
    return { ok: false, says, place: place.join('\n') };
  }
  strokeCounter(limits)(strokesIn(parsed.sticking));
  const cells = cellsOf(parsed.sticking).map((sticking) => ({ id: 'bar', sticking }));
  const phrase = layPhrase({ cells, meter, grid });
  // What is wrong with a phrase is counted in slots: it has no place in the text.
  if (!phrase.ok) return { ok: false, says: phrase.fault.message };
  return filled(perform(phrase.phrase), text, meter, grid);
}

function filled(timeline: Timeline, text: string, meter: string, grid: number): TriedBar {
  const slots = timeline.bars.reduce((sum, bar) => sum + bar.slots, 0);
  return {
    ok: true,
    bars: timeline.bars.length,
    says: fillsSay(timeline.bars.length, slots, slotWords(meter, grid).many),
    source: `<Bar sticking="${text.trim()}" meter="${meter}" grid={${grid}} />`,
    ...(timeline.strokes.length <= MOST_PLAYED.strokes ? { timeline } : {}),
    drawn: firstBars(timeline),
  };
}

/** The first bars of a timeline, as many as are drawn. */
function firstBars(timeline: Timeline): Timeline {
  const most = Math.max(...timeline.bars.map(({ slots }) => slots));
  const bars = barsDrawn(timeline.bars.length, most);
  const end = timeline.bars[bars]?.tick ?? timeline.ticks;
  return {
    ...timeline,
    bars: timeline.bars.slice(0, bars),
    ticks: end,
    strokes: timeline.strokes.filter(({ tick }) => tick < end),
    cells: timeline.cells.filter(({ tick }) => tick < end),
  };
}
