import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { siteSchema, type SiteData } from '../curriculum/index.ts';

/**
 * What the school has set, in `content/site.yaml` below `root`, for those who need it before Astro loads it. A file that is
 * faulty sets nothing: the content checker tells of it.
 */
export function readSchool(root: URL): SiteData {
  try {
    return siteSchema.parse(parse(readFileSync(new URL('content/site.yaml', root), 'utf8')));
  } catch {
    return siteSchema.parse({});
  }
}
