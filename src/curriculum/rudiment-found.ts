import { findSticking, parseSticking, type Sticking } from '../core/index.ts';
import { handLoop } from './rudiment-hands.ts';

/** Accents are the player's to move, and what follows the last stroke is the bar's. */
const bare = (text: string): string => text.replaceAll('>', '').replace(/( -)+$/, '');

/**
 * A test whether a sticking stands in a text as a rudiment's file writes it, led by either hand, accents left aside.
 * Nothing where that would tell nothing: singles stand in nearly every bar.
 *
 * @example soughtIn({ hands: 'R R L L R', sticking: 'RR LL >R -' })?.('RR LL R - LL RR L -') // true
 */
export function soughtIn(rudiment: { hands: string; sticking: string }): ((text: string) => boolean) | undefined {
  const sought = parseSticking(bare(rudiment.sticking));
  const singles = handLoop(rudiment) === 'LR' && !/[rlz]|[RL]{2}/.test(rudiment.sticking);
  if (singles || !sought.ok) return undefined;
  return (text) => {
    const within = parsed(text);
    return within !== undefined && findSticking(sought.sticking, within, { mirrored: true }) !== undefined;
  };
}

/** Forty rudiments look through the same texts. */
const known = new Map<string, Sticking | undefined>();

function parsed(text: string): Sticking | undefined {
  if (!known.has(text)) {
    const read = parseSticking(text);
    known.set(text, read.ok ? read.sticking : undefined);
  }
  return known.get(text);
}
