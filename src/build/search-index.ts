import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { writeIndex } from '../search/write-index.ts';

/** An integration that indexes the built pages for search by words. */
export function searchIndex(): AstroIntegration {
  return {
    name: 'search-index',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        const pages = await writeIndex(fileURLToPath(dir));
        logger.info(`${pages} pages can be searched`);
      },
    },
  };
}
