/**
 * What a link can set for one bar, in the query of its address so that the fragment stays an anchor:
 * `?tempo=80&lead=left&flam=45#bar-outer`.
 */
import type { LeadName } from '../../../src/core/phrase/types.ts';

/** What is set; left out where it is as the bar begins by itself. */
export interface LinkSettings {
  /** Beats a minute, 30 to 300. */
  tempo?: number | undefined;
  lead?: LeadName | undefined;
  /** Gap between a grace note and its primary in milliseconds, 10 to 80. */
  flam?: number | undefined;
}

/** Names of the settings in an address. */
const QUERY_NAMES = ['tempo', 'lead', 'flam'] as const;

/** The name of a setting in an address. */
export type QueryName = (typeof QUERY_NAMES)[number];

/**
 * Writes settings as a query; nothing where there are none.
 *
 * @example printQuery({ tempo: 80, lead: 'left' }) // '?tempo=80&lead=left'
 */
export function printQuery(settings: LinkSettings): string {
  const written = QUERY_NAMES.flatMap((name) => (settings[name] === undefined ? [] : `${name}=${settings[name]}`));
  return written.length ? `?${written.join('&')}` : '';
}

/**
 * What of the present settings has to be written, because the bar would begin otherwise by itself.
 *
 * @example differing({ tempo: 80, lead: 'right' }, { tempo: 60, lead: 'right' }) // { tempo: 80 }
 */
export function differing(now: LinkSettings, own: LinkSettings): LinkSettings {
  const others = QUERY_NAMES.filter((name) => now[name] !== undefined && now[name] !== own[name]);
  return Object.fromEntries(others.map((name) => [name, now[name]]));
}

/**
 * The query without some of its settings; what else it holds stays.
 *
 * @example withoutSettings('?tempo=80&lead=left&v=2', ['tempo']) // '?lead=left&v=2'
 */
export function withoutSettings(search: string, names: readonly string[]): string {
  const left = new URLSearchParams(search);
  names.forEach((name) => left.delete(name));
  return left.size ? `?${left}` : '';
}
