/** How an address of the course is written under whatever path the site stands. */

/**
 * An address of this site, `/course/` or `/favicon.svg`, with the base path in front.
 *
 * @example onSite('/course/') // '/course/', or '/drums/course/' where the site stands under /drums
 */
export function onSite(address: string): string {
  return (import.meta.env?.BASE_URL ?? '/').replace(/\/$/, '') + address;
}

/** The whole address of a page for other sites, or nothing where the site was built without knowing its own. */
export function wholeAddress(path: string, site: URL | undefined): string | undefined {
  return site && new URL(path, site).href;
}
