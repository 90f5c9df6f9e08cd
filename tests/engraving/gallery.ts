/**
 * Writes every case on one page, to be looked at: node tests/engraving/gallery.ts, then open .cache/gallery/index.html.
 * With a word after it, only the cases whose name has that word.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { engrave, glyphSprite } from '../../src/engraving/index.ts';
import { describe } from '../../src/words/describe.ts';
import { expandedCss } from '../helpers/expanded-css.ts';
import { CASES, rudimentCases, type Case } from './cases.ts';

const root = new URL('../../', import.meta.url);
const style = (name: string): string => readFileSync(new URL(`src/styles/${name}`, root), 'utf8');
const only = process.argv[2] ?? '';
const used = new Set<string>();

function figure([name, { timeline, options }]: [string, Case]): string {
  const { html, glyphs } = engrave(timeline, options);
  glyphs.forEach((glyph) => used.add(glyph));
  const { label, reading } = describe(timeline, { names: options.names });
  return `<h2>${name}</h2><figure>${html}<figcaption><b>${label}.</b> ${reading}</figcaption></figure>`;
}

const named = Object.entries(CASES).map(([name, make]): [string, Case] => [name, make()]);
const figures = [...named, ...rudimentCases()].filter(([name]) => name.includes(only)).map(figure);

const page = `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>Gallery</title><style>${style('tokens.css')}${style('score.css')}${await expandedCss('src/styles/score-lists.css')}
body{margin:0 auto;max-width:900px;padding:12px;background:var(--paper);color:var(--ink);font-family:var(--label)}
figure{margin:0 0 8px;padding:8px 12px;background:var(--sheet);border:1px solid var(--line)}
h2{font-size:12px;margin:8px 0 2px;color:var(--soft)}figcaption{font-size:12px;color:var(--soft)}
</style>${glyphSprite(used)}${figures.join('\n')}</html>`;

mkdirSync(new URL('.cache/gallery/', root), { recursive: true });
writeFileSync(new URL('.cache/gallery/index.html', root), page);
