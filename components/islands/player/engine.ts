/** What turns a player's texts into strokes, and shows them: loaded with the first press, not with the first touch. */
import { checkPhrase, perform, readPhrase } from '../../../src/core/index.ts';
import type { Lead, Phrase, Timeline } from '../../../src/core/index.ts';
import type { SiteSettings } from '../../../src/storage/index.ts';
import type { PlayerProps } from './props.ts';

export { quartersPerMinute } from '../../../src/core/time/meter.ts';
export { lettersOf } from '../../../src/engraving/letters.ts';
export { draw, reread } from './drawings.ts';
export { joinFigure } from './figure.ts';
export { everyFrame, showPosition, ticksOf } from './playhead.ts';
export { drawHeights } from './heights.ts';

/** The phrase in one lead; a text that the site's build let through always has one. */
function phraseOf(props: PlayerProps, lead: Lead): Phrase {
  const { id, cells, meter, grid, pickup } = props;
  const read = readPhrase({ cells, meter, grid, pickup, lead });
  if (!read.ok) throw new RangeError(`player "${id}": ${read.fault.message}`);
  return read.phrase;
}

/** The strokes of a player's bar. */
export function timelineOf(props: PlayerProps, lead: Lead, flams: SiteSettings['flams']): Timeline {
  return perform(phraseOf(props, lead), { flams });
}

/** The plain bar to hold it against, led by the same hand. */
export function checkOf(props: PlayerProps, lead: Lead): Timeline {
  return perform(checkPhrase(phraseOf(props, 'written'), lead === 'left' ? 'L' : 'R'));
}
