/** What a bar of a lesson has beside its notes: an id where its author gave none, and the leads it offers. */
import type { Bar } from '../../src/catalogue/index.ts';
import type { Surface } from '../../src/core/index.ts';
import { LEADS, type LeadName } from '../../src/curriculum/index.ts';

/**
 * A few letters made of what a bar holds. FNV-1a, 32 bits: short, and spread well enough for the bars of a page.
 *
 * @example hash({ meter: '4/4' }) === hash({ meter: '4/4' }) // true
 */
export function hash(request: object): string {
  const text = JSON.stringify(request);
  let value = 0x811c9dc5;
  for (let index = 0; index < text.length; index += 1) value = Math.imul(value ^ text.charCodeAt(index), 0x01000193);
  return (value >>> 0).toString(36);
}

/**
 * The id under which a bar's tempo and lead are remembered.
 *
 * @example barKey('the-flam-drag', { meter: '4/4' }) // 'the-flam-drag-' and a few letters
 */
export function barKey(page: string, request: object): string {
  return `${page}-${hash(request)}`;
}

/** The same id with a number behind it where the page has it already: no two elements share one. */
export function onceOnPage(taken: Map<string, number>, id: string): string {
  const before = taken.get(id) ?? 0;
  taken.set(id, before + 1);
  return before === 0 ? id : `${id}-${before + 1}`;
}

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
