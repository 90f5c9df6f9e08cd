import { readPhrase } from '../phrase/read.ts';
import { perform } from '../timeline/perform.ts';
import type { Timeline } from '../timeline/types.ts';
import { meterOf, slotsOf } from '../time/meter.ts';
import type { Grid, MeterText } from '../time/units.ts';

/**
 * A bar of plain time to hear a phrase after: hi-hat on the beats and, where the grid allows, between them; bass drum on beat
 * 1 and half way; snare on the beats between. Common practice, no groove of anyone's.
 * @example
 * barOfTime('2/4', 2) // → 'R@hat+K R@hat R@hat+L R@hat'
 */
export function barOfTime(meter: MeterText, grid: Grid): string {
  const { beats, compound } = meterOf(meter);
  const half = compound && grid % 3 === 0 ? grid / 3 : grid % 2 === 0 ? grid / 2 : grid;
  const slots = Array.from({ length: slotsOf(meter, grid) }, (_, slot) => {
    if (slot % half) return '-';
    return slot % grid ? 'R@hat' : `R@hat${underBeat(slot / grid, beats)}`;
  });
  return slots.join(' ');
}

function underBeat(beat: number, beats: number): string {
  const middle = beats >= 4 && beats % 2 === 0 ? beats / 2 : 0;
  return beat === 0 || beat === middle ? '+K' : beat % 2 ? '+L' : '';
}

/** A bar of plain time as strokes with times. Throws RangeError for a meter or a grid that makes no bar. */
export function performTimeBar(meter: MeterText, grid: Grid): Timeline {
  const text = barOfTime(meter, grid);
  const read = readPhrase({ cells: [{ id: 'time', text }], meter, grid });
  if (!read.ok) throw new RangeError(`meter is "${meter}" and grid ${grid}; ${read.fault.message}`);
  return perform(read.phrase);
}
