/**
 * What the school has set, as constants of the build: `src/build/school.ts` reads content/site.yaml and puts them in the place
 * of the names that begin with two underscores. Where nothing is built, in tests and in plain Node, the defaults hold.
 */
import type { CountSystem } from '../core/index.ts';

/**
 * An address of this site, `/course/` or `/favicon.svg`, with the base path in front.
 *
 * @example onSite('/course/') // '/course/'
 */
export function onSite(address: string): string {
  return (import.meta.env?.BASE_URL ?? '/').replace(/\/$/, '') + address;
}

/** The whole address of a page for other sites, or nothing where the site was built without knowing its own. */
export function wholeAddress(path: string, site: URL | undefined): string | undefined {
  return site && new URL(path, site).href;
}

/** The trade has two words for it; a school picks one. */
export type BarWord = 'bar' | 'measure';

/** What the school calls a bar. */
export const BAR_WORD: BarWord = typeof __BAR_WORD__ === 'undefined' ? 'bar' : __BAR_WORD__;

/** The syllables in which the school counts. */
export const COUNTING: CountSystem = typeof __COUNTING__ === 'undefined' ? '1 e & a' : __COUNTING__;

/** The name of the site, in every page's title. */
export const SITE_NAME: string = typeof __SITE_NAME__ === 'undefined' ? 'Drum course' : __SITE_NAME__;

/** The name of the school. */
export const SCHOOL: string = typeof __SCHOOL__ === 'undefined' ? 'Music school' : __SCHOOL__;

/** The language of the course text, as HTML names it. */
export const LANGUAGE: string = typeof __LANGUAGE__ === 'undefined' ? 'en' : __LANGUAGE__;

/** The language of everything in this folder: plurals, lists and numbers go by it, also where a school's lessons are in another. */
export const WORDS_LANGUAGE = 'en';

/** Whom to ask, in a sentence. */
export const CONTACT: string =
  typeof __CONTACT__ === 'undefined' ? 'Questions about a lesson? Ask your teacher.' : __CONTACT__;

/** Whether the school has colors of its own. */
export const OWN_COLORS: boolean = typeof __OWN_COLORS__ === 'undefined' ? false : __OWN_COLORS__;

/** The pages of text, ours and the school's, in the order in which the foot of every page names them. */
export const TEXT_PAGES: readonly { id: string; title: string }[] =
  typeof __TEXT_PAGES__ === 'undefined' ? [] : __TEXT_PAGES__;
