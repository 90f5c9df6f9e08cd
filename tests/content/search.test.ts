import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openSearch } from '../../src/search/index.ts';
import { tellingWords } from '../../src/search/ranking.ts';
import type { Pagefind, PagefindAnswer, PagefindPage } from '../../src/search/pagefind.ts';
import { termRecords } from '../../src/search/term-records.ts';
import { writeIndex } from '../../src/search/write-index.ts';

const page = (title: string): PagefindPage => ({
  url: `/x/${title}/`,
  excerpt: '',
  meta: { title },
  filters: { kind: ['lesson'] },
});
const answer = (...titles: string[]): PagefindAnswer => ({
  results: titles.map((title, index) => ({ id: title, score: titles.length - index, data: async () => page(title) })),
});

/** An index that answers each question as told, and remembers what it was asked. */
function index(search: Pagefind['search']): { asked: unknown[][]; load: () => Promise<Pagefind>; addresses: string[] } {
  const asked: unknown[][] = [];
  const addresses: string[] = [];
  const module: Pagefind = {
    options: async () => undefined,
    filters: async () => ({ kind: { lesson: 2 } }),
    search: (...question) => {
      asked.push(question);
      return search(...question);
    },
  };
  return { asked, addresses, load: async (address = '') => (addresses.push(address), module) };
}

test('pages are found, with their number and their kind', async () => {
  const { load, asked } = index(async () => answer('one', 'two', 'three'));
  const found = await openSearch('/', { load }).search(' flam ', { filters: { kind: 'lesson' }, limit: 2 });
  expect(found).toEqual({
    state: 'found',
    total: 3,
    taken: {},
    results: ['one', 'two'].map((title) => ({ url: `/x/${title}/`, title, excerpt: '', kind: 'lesson' })),
  });
  expect(asked).toEqual([['flam', { filters: { kind: 'lesson' } }]]);
});

test('the index is asked for below the base path, once, and not before it is needed', async () => {
  const { load, addresses } = index(async () => answer());
  const search = openSearch('/drums', { load });
  expect(addresses).toEqual([]);
  await search.search('flam');
  await search.search('drag');
  expect(addresses).toEqual(['/drums/pagefind/pagefind.js']);
});

test('nothing asked, nothing found', async () => {
  const { load, asked } = index(async () => answer());
  const search = openSearch('/', { load });
  expect(await search.search('  ')).toEqual({ state: 'empty' });
  expect(asked).toEqual([]);
  expect(await search.search('xyz')).toEqual({ state: 'none', taken: {} });
});

test('filters alone are a question too', async () => {
  const { load, asked } = index(async () => answer('one'));
  expect((await openSearch('/', { load }).search('', { filters: { part: '6' } })).state).toBe('found');
  expect(asked).toEqual([[null, { filters: { part: '6' } }]]);
});

test('an index that is not there is said to be missing, and tried again', async () => {
  const { load } = index(async () => answer('one'));
  let there = false;
  const search = openSearch('/', { load: async () => (there ? load() : Promise.reject(new Error('404'))) });
  expect(await search.search('flam')).toEqual({ state: 'missing' });
  expect(await search.filters()).toBeUndefined();
  there = true;
  expect((await search.search('flam')).state).toBe('found');
  expect(await search.filters()).toEqual({ kind: { lesson: 2 } });
});

test('an index that did not load is asked for at another address: a browser remembers the first', async () => {
  const addresses: string[] = [];
  const search = openSearch('/', { load: async (address) => (addresses.push(address), Promise.reject(new Error())) });
  await search.search('flam');
  await search.search('flam');
  expect(addresses).toEqual(['/pagefind/pagefind.js', '/pagefind/pagefind.js?2']);
});

test('what a page is called comes before what it says', async () => {
  const { load } = index(async () => answer('One drag', 'Drags', 'The drag', 'dragging'));
  const found = await openSearch('/', { load }).search('drag');
  expect(found.state === 'found' && found.results.map(({ title }) => title)).toEqual([
    'Drags',
    'The drag',
    'One drag',
    'dragging',
  ]);
});

test('little words are not looked for, unless there are no others', () => {
  expect(tellingWords('what is a rudiment?')).toEqual(['rudiment?']);
  expect(tellingWords('How to count triplets')).toEqual(['count', 'triplets']);
  expect(tellingWords('what is it')).toEqual(['what', 'is', 'it']);
  expect(tellingWords('')).toEqual([]);
});

test('where no page has all words, those that have all but one are found, each once', async () => {
  const pages: Record<string, string[]> = { 'left hand': ['one', 'two'], 'hand slow': ['two', 'three'] };
  const { load, asked } = index(async (words) => answer(...(pages[words ?? ''] ?? [])));
  const found = await openSearch('/', { load }).search('left hand slow');
  expect(asked.map(([words]) => words)).toEqual(['left hand slow', 'hand slow', 'left slow', 'left hand']);
  expect(found).toMatchObject({ state: 'found', total: 3, taken: { most: true } });
});

test('an index that breaks is said to have failed', async () => {
  const { load } = index(() => Promise.reject(new Error('a part of the index is missing')));
  expect(await openSearch('/', { load }).search('flam')).toEqual({ state: 'failed' });
});

test('an answer that a later question has overtaken is stale', async () => {
  const late: ((answer: PagefindAnswer) => void)[] = [];
  const { load } = index(() => new Promise((resolve) => late.push(resolve)));
  const search = openSearch('/', { load });
  const first = search.search('fl');
  const second = search.search('flam');
  await expect.poll(() => late.length).toBe(2);
  late[1](answer('second'));
  late[0](answer('first'));
  expect(await first).toEqual({ state: 'stale' });
  expect(await second).toMatchObject({ state: 'found', results: [{ title: 'second' }] });
});

test('a question that was emptied meanwhile is stale too', async () => {
  const { load } = index(async () => answer('one'));
  const search = openSearch('/', { load });
  const first = search.search('fl');
  expect(await search.search('')).toEqual({ state: 'empty' });
  expect(await first).toEqual({ state: 'stale' });
});

const html = (body: string) =>
  `<!doctype html><html lang="en"><head><title>t</title></head><body>${body}</body></html>`;

test('the terms of the glossary are pages of their own, with their names as titles', () => {
  const glossary = `<html lang="en-GB"><main><section class="entry" aria-labelledby="flam"><h2 id="flam">flam</h2>
    <p class="also">Also flim</p><p>Two strokes.</p><p class="see">See also drag</p></section>
    <section class="entry" aria-labelledby="drag"><h2 id="drag">drag</h2><p>Three.</p></section></main></html>`;
  const records = termRecords(glossary);
  expect(records.map(({ url }) => url)).toEqual(['/glossary/#flam', '/glossary/#drag']);
  expect(records[0].content).toContain('lang="en-GB"');
  expect(records[0].content).toContain('<h1 data-pagefind-meta="title">flam</h1>');
  expect(records[0].content).toContain('kind:term');
  expect(records[0].content).not.toContain('Three.');
  expect(termRecords('<main>no terms</main>')).toEqual([]);
});

test('pages that ask to be found are indexed, others are not', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'barwright-search-'));
  try {
    for (const name of ['one', 'two']) mkdirSync(join(folder, name));
    writeFileSync(
      join(folder, 'one/index.html'),
      html('<main data-pagefind-body data-pagefind-filter="kind:lesson"><h1>Flam</h1></main>'),
    );
    writeFileSync(join(folder, 'two/index.html'), html('<main><h1>Not this one</h1></main>'));
    expect(await writeIndex(folder)).toBe(1);
    expect(readdirSync(join(folder, 'pagefind'))).toContain('pagefind.js');
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
