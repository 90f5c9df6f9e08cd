import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { build } from 'vite';

const SCRIPT = fileURLToPath(new URL('./early-script.ts', import.meta.url));

/** The script as it stands in a page: without types, in one line. */
async function inlineScript(): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: 'error',
    build: { write: false, rolldownOptions: { input: SCRIPT, output: { format: 'iife' } } },
  });
  const [{ output }] = [built].flat() as { output: { code: string }[] }[];
  return output[0].code.trim();
}

/** Puts a script into the head of every page that catches what someone does before the page's own scripts have run. */
export function early(): AstroIntegration {
  return {
    name: 'barwright-early',
    hooks: {
      'astro:config:setup': async ({ injectScript }) => injectScript('head-inline', await inlineScript()),
    },
  };
}
