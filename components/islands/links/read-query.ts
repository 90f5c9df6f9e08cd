import { fit, LIMITS, oneOf, whole } from '../../../src/storage/index.ts';
import type { RefusedSetting } from '../../../src/words/links.ts';
import type { LeadName } from '../../../src/core/phrase/types.ts';
import type { LinkSettings } from './query.ts';

/** What the bar can do. */
export interface Offered {
  leads: readonly LeadName[];
  /** Whether it has grace notes. */
  graces: boolean;
}

/** What an address asks for, and what of it cannot be had. */
export interface QueryRead {
  settings: LinkSettings;
  refused: RefusedSetting[];
}

/**
 * Reads the settings of an address; never throws, whatever stands there.
 *
 * @example readQuery('?tempo=80&lead=up', { leads: ['right', 'left'], graces: true }).settings // { tempo: 80 }
 */
export function readQuery(search: string, { leads, graces }: Offered): QueryRead {
  const given = new URLSearchParams(search);
  const refused: RefusedSetting[] = [];
  const read = <T>(name: RefusedSetting['name'], fitted: T | undefined, instead: RefusedSetting['instead']) => {
    const value = given.get(name);
    if (value && fitted === undefined) refused.push({ name, value, instead });
    return value ? fitted : undefined;
  };
  const number = (name: string): unknown => (/^\d{1,3}$/.test(given.get(name) ?? '') ? Number(given.get(name)) : '');
  const tempo = read('tempo', fit(number('tempo'), whole(LIMITS.tempo)), LIMITS.tempo);
  const lead = read('lead', fit(given.get('lead'), oneOf(...leads)), leads);
  const flam = graces
    ? read('flam', fit(number('flam'), whole(LIMITS.flamMs)), LIMITS.flamMs)
    : read('flam', undefined, []);
  return { settings: { ...(tempo && { tempo }), ...(lead && { lead }), ...(flam && { flam }) }, refused };
}
