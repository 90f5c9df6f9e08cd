import { createHash } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

const POLICY = /(<meta http-equiv="content-security-policy" content=")([^"]*)"/i;
const IN_PAGE = /<(script|style)\b[^>]*>([\s\S]*?)<\/\1>/gi;
const HASH = /\s*'sha(256|384|512)-([^']+)'/g;

/**
 * An integration that leaves in the content policy of each built page the hashes of what stands in that page. Astro lists
 * those of the whole site on every page, and has no setting for it.
 */
export function pagePolicy(): AstroIntegration {
  return {
    name: 'page-policy',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        const root = fileURLToPath(dir);
        for (const name of await readdir(root, { recursive: true })) {
          if (!name.endsWith('.html')) continue;
          const html = await readFile(join(root, name), 'utf8');
          await writeFile(join(root, name), withOwnHashes(html));
        }
      },
    },
  };
}

/** A page whose policy lists no hash but those of its own scripts and styles. It never gets one that Astro did not list. */
export function withOwnHashes(html: string): string {
  const texts = [...html.matchAll(IN_PAGE)].map(([, , text]) => text).filter(Boolean);
  const isUsed = (bits: string, hash: string) =>
    texts.some((text) => createHash(`sha${bits}`).update(text).digest('base64') === hash);
  return html.replace(POLICY, (_all, before: string, policy: string) => {
    const own = policy.replace(HASH, (entry, bits: string, hash: string) => (isUsed(bits, hash) ? entry : ''));
    return `${before}${own}"`;
  });
}
