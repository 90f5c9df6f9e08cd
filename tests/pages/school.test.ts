import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { filesOf, PLAIN, SCHOOL } from '../helpers/built-site.ts';
import { readSite } from '../helpers/links.ts';
import { SCHOOL_ADDRESS } from '../helpers/small-site.ts';

/** Addresses as they are without a base path, so that what is said here reads like the lessons do. */
const withoutBase = (html: string) => html.replaceAll(`"${SCHOOL.base}`, '"/');
const pages = new Map([...readSite(SCHOOL).html].map(([address, html]) => [`/${address}`, withoutBase(html)]));
const sitemap = readFileSync(join(SCHOOL.root, 'sitemap-0.xml'), 'utf8');
const stickings = readFileSync(join(SCHOOL.root, 'stickings.json'), 'utf8');

const page = (address: string) => pages.get(address) ?? '';
const links = (html: string) => [...html.matchAll(/<a [^>]*href="(\/lessons\/[^"#]+)"/g)].map(([, href]) => href);
/** What a page says: its words without its markup, code and scripts. */
const words = (html: string) =>
  html
    .replace(/<(script|style|svg|code)\b[\s\S]*?<\/\1>/g, ' ')
    .replace(/<[^>]+>/g, ' ')
    .replace(/\s+/g, ' ');

/** Hidden by name, by part, by name; the last is an exercise that only the first has. */
const HIDDEN = ['/lessons/gone/', '/lessons/far/', '/exercises/secret/', '/exercises/alone/'];

test('the contents follow the order the school has set', () => {
  expect([...new Set(links(page('/course/').split('<main')[1]))]).toEqual(
    ['last', 'together', 'first', 'between', 'seen'].map((id) => `/lessons/${id}/`),
  );
  expect([...page('/course/').matchAll(/id="part-(\d+)"/g)].map(([, number]) => number)).toEqual(['20', '1']);
});

test('the authors stay named on every page, and the way to the license stays, whatever the name of the site', () => {
  for (const [address, html] of pages) {
    if (/^\/embed\//.test(address)) continue;
    expect(html.match(/<footer[\s\S]*<\/footer>/)?.[0], address).toMatch(/Barwright authors[\s\S]*href="\/license\/"/);
  }
  expect(words(page('/license/'))).toMatch(/MIT License[\s\S]*Creative Commons[\s\S]*SIL OPEN FONT LICENSE/);
});

test('the map of the site has the address that the build was told; told none, it makes no map', () => {
  expect(sitemap).toContain(`<loc>${SCHOOL_ADDRESS}/school/lessons/first/</loc>`);
  expect(filesOf(PLAIN).filter((name) => name.startsWith('sitemap'))).toEqual([]);
});

test('a page of text that the school adds is linked from every page', () => {
  for (const address of ['/', '/lessons/first/', '/license/'])
    expect(page(address)).toMatch(/<footer[\s\S]*href="\/fees\/"[^>]*>What a measure costs<[\s\S]*<\/footer>/);
  expect(words(page('/fees/'))).toContain('Nothing at all.');
});

test('the icon and the page have the color of the school, on dark a lighter one where it sets none', () => {
  const file = (name: string) => readFileSync(join(SCHOOL.root, name), 'utf8');
  const dark = 'oklch(from #20608a max(l, 0.76) c h)';
  expect(file('favicon.svg')).toMatch(/stroke: #20608a }[\s\S]*stroke: oklch\(from #20608a/);
  expect(file('colors.css')).toBe(`:root{--school-warm:#20608a;--school-warm-dark:${dark}}`);
  for (const name of ['favicon.png', 'touch-icon.png']) {
    const drawn = readFileSync(join(SCHOOL.root, name));
    expect(drawn.equals(readFileSync(join(PLAIN.root, name))), name).toBe(false);
  }
});

test('previous and next follow that order', () => {
  const next = (id: string) => /rel="next" href="([^"]*)"/.exec(page(`/lessons/${id}/`))?.[1];
  expect(['last', 'together', 'first', 'between', 'seen'].map(next)).toEqual([
    '/lessons/together/',
    '/lessons/first/',
    '/lessons/between/',
    '/lessons/seen/',
    undefined,
  ]);
  expect(words(page('/lessons/between/'))).toContain('Lesson 2 of 3');
});

test.each(HIDDEN)('%s stays at its address and is listed nowhere', (address) => {
  expect(page(address)).toContain('<meta name="robots" content="noindex">');
  expect(page(address)).not.toContain('data-pagefind-body');
  expect(words(page(address))).toMatch(/Not (part of the course|among the exercises) here/);
  expect(sitemap).not.toContain(address);
  expect(stickings).toContain('/exercises/slow/');
  expect(stickings).not.toContain(address);
  for (const list of [
    '/',
    '/course/',
    '/exercises/',
    '/glossary/',
    '/rudiments/',
    '/rudiments/flam-drag/',
    '/sheet/',
  ]) {
    expect(page(list), list).toContain('<main');
    expect(page(list), list).not.toContain(address);
  }
});

test('a link in a lesson to a hidden one leads there; a hidden exercise is left out of the lesson', () => {
  expect(links(page('/lessons/first/'))).toContain('/lessons/gone/');
  expect(page('/lessons/first/')).toContain('id="slow"');
  expect(page('/lessons/first/')).not.toContain('id="secret"');
});

test('a hidden exercise is named on its own pages alone, and known to the sheets that have been sent', () => {
  const naming = [...pages].filter(([, html]) => html.includes('secret')).map(([address]) => address);
  expect(naming.sort()).toEqual(['/embed/secret/', '/exercises/secret/', '/sheet/']);
});

test('a cell goes by the school’s name over its bracket and in words, and search finds both names', () => {
  const html = page('/exercises/slow/');
  expect(html).toContain('One measure of 4/4 in triplets: four galloping flams, right hand leads');
  expect(html).toContain('data-also="galloping flam, flam drag"');
  expect(words(html)).toContain('galloping flam, elsewhere flam drag (&gt;lR LL R)');
  expect(page('/lessons/first/')).toContain('data-also="galloping flam, flam drag"');
});

test('the school’s syllables stand under the notes', () => {
  expect(page('/lessons/first/')).toMatch(/data-count="[^"]*"[^>]*>te</);
});

test('a text that counts in other syllables says so, one that counts nothing says nothing', () => {
  const note = (address: string) => /This text counts ([^.]*)\./.exec(words(page(address)))?.[1];
  expect(note('/lessons/last/')).toBe('1 e &amp; a where the notes have 1 ta te ta');
  expect(note('/lessons/first/')).toBeUndefined();
  expect(note('/exercises/alone/')).toBe('1 e &amp; a where the notes have 1 ta te ta');
  expect(note('/exercises/slow/')).toBeUndefined();
  expect(note('/glossary/')).toContain('1 &amp; where the notes have 1 te');
});

test('no page says bar where the school says measure, and addresses stay', () => {
  // The page for authors shows how things are typed.
  const others = [...pages].filter(([address]) => address !== '/write/');
  const said = others.flatMap(([address, html]) =>
    [...words(html).matchAll(/.{0,30}\b[Bb]ars?\b(?! lines?\b|[-/]).{0,20}/g)].map(([found]) => `${address} ${found}`),
  );
  // What is left is the glossary's other word for it, and addresses.
  expect(said.filter((one) => !/Also bar|https?:|\/[\w-]*bar/.test(one))).toEqual([]);
  expect(page('/lessons/first/')).toMatch(/<h2 id="the-bar-again"[^>]*>[\s\S]{0,80}The measure again/);
});
