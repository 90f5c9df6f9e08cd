import { readFileSync } from 'node:fs';
import { preprocessCSS, resolveConfig } from 'vite';
import { countedRules } from '../../src/build/counted-rules.ts';

const ROOT = new URL('../../', import.meta.url);

/** A style sheet of the project, by its path from the top, as a build reads it: with its counted rules written out. */
export async function expandedCss(path: string): Promise<string> {
  const css = { postcss: { plugins: [countedRules()] } };
  const config = await resolveConfig({ configFile: false, logLevel: 'silent', css }, 'build');
  const file = new URL(path, ROOT);
  return (await preprocessCSS(readFileSync(file, 'utf8'), file.pathname, config)).code;
}
