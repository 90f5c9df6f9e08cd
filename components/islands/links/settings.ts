/**
 * What a link can set for one bar, in the query of its address so that the fragment stays an anchor:
 * `?tempo=80&lead=left&flam=45#bar-outer`.
 */
import type { RefusedSetting } from '../../../src/words/links.ts';

/** The lead as addresses and pages call it. */
export type LeadName = 'right' | 'left' | 'alternating';

/** What is set; left out where it is as the bar begins by itself. */
export interface LinkSettings {
  /** Beats a minute, 30 to 300. */
  tempo?: number | undefined;
  lead?: LeadName | undefined;
  /** Gap between a grace note and its primary in milliseconds, 10 to 80. */
  flam?: number | undefined;
}

/** What the bar can do. */
export interface Offered {
  leads: readonly LeadName[];
  /** Whether it has grace notes. */
  graces: boolean;
}

/** What a link may ask for, and where the player’s own sliders end. */
export const LIMITS = { tempo: { from: 30, to: 300 }, flam: { from: 10, to: 80 } } as const;

/** Names of the settings in an address. */
const SETTING_NAMES = ['tempo', 'lead', 'flam'] as const;

/** What an address asks for, and what of it cannot be had. */
export interface SettingsRead {
  settings: LinkSettings;
  refused: RefusedSetting[];
}

/**
 * Reads the settings of an address; never throws, whatever stands there.
 *
 * @example readSettings('?tempo=80&lead=up', { leads: ['right', 'left'], graces: true }).settings // { tempo: 80 }
 */
export function readSettings(search: string, { leads, graces }: Offered): SettingsRead {
  const given = new URLSearchParams(search);
  const refused: RefusedSetting[] = [];
  const take = <T>(
    name: RefusedSetting['name'],
    read: (text: string) => T | undefined,
    instead: RefusedSetting['instead'],
  ) => {
    const value = given.get(name);
    if (!value) return undefined;
    const taken = read(value);
    if (taken === undefined) refused.push({ name, value, instead });
    return taken;
  };
  const tempo = take('tempo', (text) => wholeWithin(text, LIMITS.tempo), LIMITS.tempo);
  const lead = take('lead', (text) => leads.find((one) => one === text), leads);
  const flam = take('flam', (text) => (graces ? wholeWithin(text, LIMITS.flam) : undefined), graces ? LIMITS.flam : []);
  return { settings: present({ tempo, lead, flam }), refused };
}

function present(all: { [Name in keyof LinkSettings]: LinkSettings[Name] | undefined }): LinkSettings {
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined));
}

function wholeWithin(text: string, { from, to }: { from: number; to: number }): number | undefined {
  const value = /^\d{1,3}$/.test(text) ? Number(text) : NaN;
  return value >= from && value <= to ? value : undefined;
}

/**
 * Writes settings as a query; nothing where there are none.
 *
 * @example printSettings({ tempo: 80, lead: 'left' }) // '?tempo=80&lead=left'
 */
export function printSettings(settings: LinkSettings): string {
  const written = SETTING_NAMES.flatMap((name) => (settings[name] === undefined ? [] : `${name}=${settings[name]}`));
  return written.length ? `?${written.join('&')}` : '';
}

/**
 * What of the present settings has to be written, because the bar would begin otherwise by itself.
 *
 * @example differing({ tempo: 80, lead: 'right' }, { tempo: 60, lead: 'right' }) // { tempo: 80 }
 */
export function differing(now: LinkSettings, own: LinkSettings): LinkSettings {
  const others = SETTING_NAMES.filter((name) => now[name] !== undefined && now[name] !== own[name]);
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
