import { faultText, perform, readMeter, readPhrase, type Timeline } from '../core/index.ts';
import { slotWords } from '../words/numbers.ts';
import { fillsSay } from '../words/write.ts';

/** What becomes of a text: a bar or more, with the line to put into a lesson, or what is wrong with it and where. */
export type Tried =
  { ok: true; timeline: Timeline; says: string; source: string } | { ok: false; says: string; place?: string };

/**
 * Reads a sticking as the checker does.
 *
 * @example tried('{>lR LL R}5', '4/4', 4).says // 'stops on 4 &; the a of 4 is empty: 15 of 16 sixteenths'
 */
export function tried(text: string, meter: string, grid: number): Tried {
  const read = readMeter(meter);
  if (!read.ok) return { ok: false, says: read.fault.message };
  const phrase = readPhrase({ cells: [{ id: 'bar', text }], meter, grid });
  if (phrase.ok) return filled(perform(phrase.phrase), text, meter, grid);
  const [says, ...place] = faultText(text, phrase.fault).split('\n');
  // Only a fault of the text itself has a place in it; else it is counted in slots.
  return phrase.fault.cell === undefined ? { ok: false, says } : { ok: false, says, place: place.join('\n') };
}

function filled(timeline: Timeline, text: string, meter: string, grid: number): Tried {
  const slots = timeline.bars.reduce((sum, bar) => sum + bar.slots, 0);
  const says = fillsSay(timeline.bars.length, slots, slotWords(meter, grid).many);
  return { ok: true, timeline, says, source: `<Bar sticking="${text.trim()}" meter="${meter}" grid={${grid}} />` };
}
