import { existsSync, readFileSync } from 'node:fs';
import type { AstroIntegration } from 'astro';

/** How a page says that it wants to be listed nowhere. */
const UNLISTED = '<meta name="robots" content="noindex"';

/**
 * Keeps out of the map of the site what pages say themselves should not be listed: what the school hides, the search. An
 * integration, which learns where the site is built, and a filter of addresses for the map, asked when all is built.
 */
export function listedPages(): AstroIntegration & { filter: (page: string) => boolean } {
  let built: URL;
  let base = '/';
  return {
    name: 'listed-pages',
    hooks: {
      'astro:config:done': ({ config }) => {
        built = config.outDir;
        base = config.base;
      },
    },
    filter: (page) => isListed(new URL(page).pathname, base, built),
  };
}

/** Whether the page at a path of the built site wants to be listed; one that is not there does not. */
export function isListed(path: string, base: string, built: URL): boolean {
  const below = path.slice(base.replace(/\/$/, '').length + 1);
  const file = new URL(`${below}index.html`, built);
  return existsSync(file) && !readFileSync(file, 'utf8').includes(UNLISTED);
}
