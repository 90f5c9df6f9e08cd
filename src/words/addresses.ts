/** The permanent addresses, and how to write them under whatever path the site stands. */

/** The site as built without an address of its own; it is nobody's, so no page calls itself by it. */
const NOWHERE = 'example.org';

/**
 * The address of a page of this site, with the base path and the closing slash.
 *
 * @example address('lessons', 'the-flam-drag') // '/lessons/the-flam-drag/'
 */
export function address(...steps: string[]): string {
  return [...baseSteps(), ...steps].reduce((path, step) => `${path}${step}/`, '/');
}

/**
 * The address of a word in the glossary.
 *
 * @example termAddress('flam') // '/glossary/#flam'
 */
export function termAddress(id: string): string {
  return `${address('glossary')}#${id}`;
}

/**
 * The address of a file of this site, which has no closing slash.
 *
 * @example fileAddress('favicon.svg') // '/favicon.svg'
 */
export function fileAddress(name: string): string {
  return `/${[...baseSteps(), name].join('/')}`;
}

/** The whole address of a page for other sites, or nothing where the site was built without knowing its own. */
export function wholeAddress(path: string, site: URL | undefined): string | undefined {
  return site && site.hostname !== NOWHERE ? new URL(path, site).href : undefined;
}

function baseSteps(): string[] {
  return (import.meta.env?.BASE_URL ?? '/').split('/').filter(Boolean);
}
