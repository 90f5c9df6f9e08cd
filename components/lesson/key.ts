/** Ids for bars that have none: made of what they hold, so that they stay the same when a lesson is rearranged. */

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
