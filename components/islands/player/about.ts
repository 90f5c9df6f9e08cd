// Not through core's one door: behind it stands the parser, which a touch must not load.
import { meterOf, type Meter } from '../../../src/core/time/meter.ts';
import { slotNames } from '../../../src/core/time/slot-names.ts';
import type { PlayerProps } from './props.ts';

/** What the controls need to know of a bar. It is read off the text, so that a touch does not load the parser yet. */
export interface About {
  /** Of bar 1. */
  meter: Meter;
  grid: number;
  /** What its slots are called. */
  slots: string;
  /** Whether there is a grace note to be wide or written out. */
  graces: boolean;
}

const HEAD = /^[\s{]*\[([^:\]]+):(\d)\]/;
const SURFACE = /@\w+/g;
const GRACE = /[rl]/;

/**
 * What the controls need to know; the text is one that the site's build let through.
 *
 * @example
 * about({ cells: [{ id: 'a', text: '[6/8:3] lR L R L R L' }], … }).graces; // true
 */
export function about({ cells, meter, grid }: Pick<PlayerProps, 'cells' | 'meter' | 'grid'>): About {
  const [, headMeter, headGrid] = HEAD.exec(cells[0]?.text ?? '') ?? [];
  const first = meterOf(meter ?? headMeter ?? '');
  const slots = grid ?? Number(headGrid);
  return {
    meter: first,
    grid: slots,
    slots: slotNames(first.text, slots).many,
    graces: cells.some(({ text }) => GRACE.test(text.replace(SURFACE, ''))),
  };
}
