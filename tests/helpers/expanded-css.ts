import { readFileSync } from 'node:fs';
import { preprocessCSS, resolveConfig, type CSSOptions } from 'vite';
import { countedRules } from '../../src/build/counted-rules.ts';

const ROOT = new URL('../../', import.meta.url);

/** A style sheet as a build reads it: with its counted rules written out. */
export async function writtenOut(sheet: string, path = '/sheet.css'): Promise<string> {
  const css = { postcss: { plugins: [countedRules()] } } as unknown as CSSOptions;
  const config = await resolveConfig({ configFile: false, logLevel: 'silent', css }, 'build');
  return (await preprocessCSS(sheet, path, config)).code;
}

/** The same for a style sheet of the project, by its path from the top. */
export function expandedCss(path: string): Promise<string> {
  const file = new URL(path, ROOT);
  return writtenOut(readFileSync(file, 'utf8'), file.pathname);
}
