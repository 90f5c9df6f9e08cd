/** A sum and what was asked of it as the end of an address: `#fit&cell=flam-drag&bars=1&meter=4/4&grid=4`. */
import type { Inputs } from './types.ts';

/** What an address names. */
export interface SumAddress {
  /** The sum, or nothing. */
  name: string;
  inputs: Inputs;
}

/** Signs that may stand in an address as they are, so that it can be read. */
const READABLE: Record<string, string> = { '%2F': '/', '%2C': ',', '%3A': ':', '%40': '@', '%20': '+' };

/** Half of a pair of UTF-16 units, which a program can type though it is no character, becomes U+FFFD: no address holds it. */
const encoded = (text: string): string =>
  encodeURIComponent(text.replace(/\p{Surrogate}/gu, '\uFFFD')).replace(
    /%(?:2F|2C|3A|40|20)/g,
    (code) => READABLE[code] ?? code,
  );

/** A sign that is no sign, after a hand has cut the address short, stays as it is. */
function decoded(text: string): string {
  const spaced = text.replaceAll('+', ' ');
  try {
    return decodeURIComponent(spaced);
  } catch {
    return spaced;
  }
}

/**
 * Writes a sum and what was asked of it; the fields keep their order.
 *
 * @example printSumAddress({ name: 'fit', inputs: { cell: '>lR LL R', meter: '4/4' } }) // '#fit&cell=%3ElR+LL+R&meter=4/4'
 */
export function printSumAddress({ name, inputs }: SumAddress): string {
  const fields = Object.entries(inputs).map(([field, value]) => `${encoded(field)}=${encoded(value)}`);
  return [`#${encoded(name)}`, ...fields].join('&');
}

/**
 * Reads what an address asks; never throws, whatever stands there.
 *
 * @example readSumAddress('#fit&cell=R+L+L') // { name: 'fit', inputs: { cell: 'R L L' } }
 */
export function readSumAddress(hash: string): SumAddress {
  const [name = '', ...fields] = hash.replace(/^#/, '').split('&');
  const pairs = fields.filter(Boolean).map((field) => {
    const cut = field.indexOf('=');
    return cut < 0 ? [decoded(field), ''] : [decoded(field.slice(0, cut)), decoded(field.slice(cut + 1))];
  });
  return { name: decoded(name), inputs: Object.fromEntries(pairs) };
}
