import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { BAR, EXERCISE, GOOD, lesson, LESSON, planted, QUESTION, type Tree } from '../content/plant.ts';
import { buildContent } from '../helpers/small-site.ts';

const SETTINGS = `
name: Our drums
school: Our school
counting: 1 ta te ta
barWord: measure
hide:
  lessons: [gone]
  exercises: [secret]
  parts: [2]
parts:
  - { number: 20, title: Our ensemble, idea: A bar played together. }
order:
  parts: [20]
  lessons:
    20: [last]
aliases:
  flam-drag: galloping flam
`;

const PLAN = `
parts:
  - number: 1
    title: One
    idea: A bar is a length.
    lessons:
      - { id: first, title: First bar, idea: One idea. }
      - { id: last, title: Last, idea: Another idea. }
  - number: 2
    title: Two
    idea: The second part.
    lessons:
      - { id: far, title: Far, idea: Another idea. }
`;

const TEXT = `## The bar again\n\nSee [that bar](/lessons/gone/) and [this](#the-bar-again).\n\n${BAR}\n\n${QUESTION}`;

const written = (part: number, order: number, id: string, title: string, text = TEXT): Tree => ({
  [`content/lessons/${String(part).padStart(2, '0')}-x/0${order}-${id}/index.mdx`]: lesson(text, {
    id,
    part: `${part}`,
    order: `${order}`,
    title,
  }),
});

const SHOWN = `${TEXT}\n\n<Exercise id="slow" />\n\n<Exercise id="secret" />`;

const TREE: Tree = {
  ...GOOD,
  'content/site.yaml': SETTINGS,
  'content/course.yaml': PLAN,
  [LESSON]: null,
  ...written(1, 1, 'first', 'First bar', SHOWN),
  ...written(1, 2, 'last', 'Last'),
  ...written(1, 3, 'gone', 'Gone'),
  ...written(1, 1, 'between', 'Between'),
  ...written(2, 1, 'far', 'Far'),
  ...written(20, 1, 'together', 'Together'),
  'content/exercises/secret.yaml': (GOOD[EXERCISE] as string)
    .replace('grid: 3', 'grid: 6')
    .replace(/meter: .*/, 'meter: 2/4'),
};

const pages = new Map<string, string>();
let sitemap = '';
let stickings = '';

/** Everything that is to be asked of the site, read once. */
function read(dist: string): void {
  for (const entry of readdirSync(dist, { recursive: true, encoding: 'utf8' }))
    if (entry.endsWith('index.html'))
      pages.set(`/${entry.slice(0, -'index.html'.length)}`, readFileSync(join(dist, entry), 'utf8'));
  sitemap = readFileSync(join(dist, 'sitemap-0.xml'), 'utf8');
  stickings = readFileSync(join(dist, 'stickings.json'), 'utf8');
}

beforeAll(
  () =>
    planted(TREE, async (root) => {
      await buildContent(root);
      read(join(root, 'dist'));
    }),
  600_000,
);

const page = (address: string) => pages.get(address) ?? '';
const links = (html: string) => [...html.matchAll(/<a [^>]*href="(\/lessons\/[^"#]+)"/g)].map(([, href]) => href);
/** What a page says: its words without its markup, code and scripts. */
const words = (html: string) =>
  html
    .replace(/<(script|style|svg|code)\b[\s\S]*?<\/\1>/g, ' ')
    .replace(/<[^>]+>/g, ' ')
    .replace(/\s+/g, ' ');

const HIDDEN = ['/lessons/gone/', '/lessons/far/', '/exercises/secret/'];

test('contents stand as the school has put them', () => {
  expect([...new Set(links(page('/course/').split('<main')[1]))]).toEqual(
    ['last', 'together', 'first', 'between'].map((id) => `/lessons/${id}/`),
  );
  expect([...page('/course/').matchAll(/id="part-(\d+)"/g)].map(([, number]) => number)).toEqual(['20', '1']);
});

test('navigation goes the same way', () => {
  const next = (id: string) => /rel="next" href="([^"]*)"/.exec(page(`/lessons/${id}/`))?.[1];
  expect(['last', 'together', 'first', 'between'].map(next)).toEqual([
    '/lessons/together/',
    '/lessons/first/',
    '/lessons/between/',
    undefined,
  ]);
  expect(words(page('/lessons/between/'))).toContain('Lesson 2 of 2');
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
