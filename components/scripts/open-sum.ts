import { readSumAddress } from '../../src/bar-math/address.ts';

/**
 * Brings the sum that the address asks for into view and wakes it, so that it takes what else stands there; an address
 * that names none of them gets a sentence.
 */
export function openSum(page: Document, { hash }: Pick<Location, 'hash'>): void {
  const note = page.querySelector<HTMLElement>('[data-sums]');
  const { name, inputs } = readSumAddress(hash);
  const section = name ? page.querySelector(`section.bar-sum[id="${CSS.escape(name)}"]`) : undefined;
  const known = !name || section || page.getElementById(name);
  if (note) note.textContent = known ? '' : (note.dataset.unknown ?? '').replace('{name}', name);
  if (!section || Object.keys(inputs).length === 0) return;
  section.scrollIntoView();
  section.querySelector('astro-island')?.dispatchEvent(new Event('pointerover'));
}
