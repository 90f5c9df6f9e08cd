import type { Hand, SlotItem } from '../sticking/types.ts';
import { otherHand } from '../sticking/limbs.ts';
import { slotsOf } from '../time/meter.ts';
import { checkLaid } from './check-laid.ts';
import { layPhrase } from './lay.ts';
import type { Phrase } from './types.ts';

const stroke = (limb: Hand): SlotItem => ({ kind: 'slot', parts: [[{ limb }]] });

/**
 * The plain bar to hold a phrase against: single strokes in the meter and grid of its bar 1, hand to hand.
 * @example
 * checkPhrase(phrase).slots.length // → 12
 */
export function checkPhrase(phrase: Phrase, lead: Hand = 'R'): Phrase {
  checkLaid(phrase);
  const { meter, grid } = phrase.bars.find((bar) => bar.number === 1)!;
  const hands = Array.from({ length: slotsOf(meter, grid) }, (_, i) => stroke(i % 2 ? otherHand(lead) : lead));
  const laid = layPhrase({ cells: [{ id: 'check', sticking: { hands } }], meter, grid });
  if (!laid.ok) throw new RangeError(laid.fault.message);
  return laid.phrase;
}
