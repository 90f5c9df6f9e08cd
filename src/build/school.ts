import { existsSync, readdirSync, readFileSync } from 'node:fs';
import type { AstroIntegration } from 'astro';
import { parse } from 'yaml';
import { pageSchema, siteSchema, type SiteData } from '../curriculum/index.ts';

/** The file in which a school sets what it sets. */
const FILE = 'content/site.yaml';
/** Pages of text, ours and those that a school adds. */
const PAGES = 'content/pages/';

/**
 * What the school has set, in `content/site.yaml` below `root`, for those who need it before Astro loads it. A file that is
 * faulty sets nothing: the content checker tells of it.
 */
export function readSchool(root: URL): SiteData {
  try {
    return siteSchema.parse(parse(readFileSync(new URL(FILE, root), 'utf8')));
  } catch {
    return siteSchema.parse({});
  }
}

/** The pages of text below `root` by their titles; one that is faulty is left out: the content checker tells of it. */
export function readPages(root: URL): { id: string; title: string }[] {
  const folder = new URL(PAGES, root);
  if (!existsSync(folder)) return [];
  const files = readdirSync(folder).filter((name) => name.endsWith('.md'));
  return files
    .flatMap((name) => {
      const [, fields = ''] = /^---\r?\n([\s\S]*?)\r?\n---/.exec(readFileSync(new URL(name, folder), 'utf8')) ?? [];
      const page = pageSchema.safeParse(parse(fields, { logLevel: 'silent' }));
      return page.success ? [{ id: name.slice(0, -'.md'.length), title: page.data.title }] : [];
    })
    .sort((a, b) => a.title.localeCompare(b.title, 'en'));
}

/**
 * An integration that makes what the school has set constants of the build, for `src/words/site.ts`. The dev server starts
 * anew when the file changes.
 */
export function schoolConstants(): AstroIntegration {
  return {
    name: 'school-constants',
    hooks: {
      'astro:config:setup': ({ config, updateConfig, addWatchFile }) => {
        addWatchFile(new URL(FILE, config.root));
        const constants = {
          ...constantsOf(readSchool(config.root)),
          __TEXT_PAGES__: JSON.stringify(readPages(config.root)),
        };
        updateConfig({ vite: { define: constants } });
      },
    },
  };
}

/** The constants by the names they have in the code, each as an expression. */
function constantsOf({ barWord, counting, name, school, language, contact, colors }: SiteData): Record<string, string> {
  const constants = {
    __BAR_WORD__: barWord,
    __COUNTING__: counting,
    __SITE_NAME__: name,
    __SCHOOL__: school,
    __LANGUAGE__: language,
    __CONTACT__: contact,
    __OWN_COLORS__: colors !== undefined,
  };
  return Object.fromEntries(Object.entries(constants).map(([key, value]) => [key, JSON.stringify(value)]));
}
