import type { Bar } from '../../src/catalogue/index.ts';
import type { Surface } from '../../src/core/index.ts';
import { LEADS, type LeadName } from '../../src/curriculum/index.ts';

/** Where it makes no odds to the arms which hand strikes. */
const SNARE: readonly Surface[] = ['snare', 'rimshot', 'cross', 'rim', 'click'];

/**
 * The leads a bar offers, its own first: on the kit no other, for another lead exchanges hands and leaves surfaces, which
 * crosses the arms; the alternating one only where there is more than one cell to alternate.
 */
export function leadsOf({ timeline, phrase }: Pick<Bar, 'timeline' | 'phrase'>, lead: LeadName): LeadName[] {
  const hands = timeline.strokes.filter(({ limb }) => limb === 'R' || limb === 'L');
  if (!hands.every(({ surface }) => SNARE.includes(surface))) return [lead];
  const offered = LEADS.filter((one) => one !== 'alternating' || phrase.cells.length > 1);
  return [lead, ...offered.filter((one) => one !== lead)];
}
