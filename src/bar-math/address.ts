/** A sum and what was asked of it as the end of an address: `#fit&cell=flam-drag&bars=1&meter=4/4&grid=4`. */
import type { Inputs } from './types.ts';

/** What an address names. */
export interface Asked {
  /** The sum, or nothing. */
  name: string;
  inputs: Inputs;
}

/** Signs that may stand in an address as they are, so that it can be read. */
const PLAIN: Record<string, string> = { '%2F': '/', '%2C': ',', '%3A': ':', '%40': '@', '%20': '+' };

const written = (text: string): string =>
  encodeURIComponent(text).replace(/%(?:2F|2C|3A|40|20)/g, (code) => PLAIN[code] ?? code);

/** A sign that is no sign, after a hand has cut the address short, stays as it is. */
function read(text: string): string {
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
 * @example writeAsked({ name: 'fit', inputs: { cell: '>lR LL R', meter: '4/4' } }) // '#fit&cell=%3ElR+LL+R&meter=4/4'
 */
export function writeAsked({ name, inputs }: Asked): string {
  const fields = Object.entries(inputs).map(([field, value]) => `${field}=${written(value)}`);
  return [`#${name}`, ...fields].join('&');
}

/**
 * Reads what an address asks; never throws, whatever stands there.
 *
 * @example readAsked('#fit&cell=R+L+L') // { name: 'fit', inputs: { cell: 'R L L' } }
 */
export function readAsked(hash: string): Asked {
  const [name = '', ...fields] = hash.replace(/^#/, '').split('&');
  const pairs = fields.filter(Boolean).map((field) => {
    const cut = field.indexOf('=');
    return cut < 0 ? [read(field), ''] : [read(field.slice(0, cut)), read(field.slice(cut + 1))];
  });
  return { name: read(name), inputs: Object.fromEntries(pairs) };
}
