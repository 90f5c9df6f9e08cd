import { describe, expect, it } from 'vitest';
import { openSearch } from '../../src/search/search.ts';
import {
  askedSticking,
  loadStickings,
  packStickings,
  searchStickings,
  unpackStickings,
  type StickingEntry,
} from '../../src/search/stickings.ts';
import { stickingOf } from '../helpers/phrases.ts';

const entries: StickingEntry[] = [
  { kind: 'exercise', url: '/exercises/long/', title: 'Long', texts: ['K R L L R L L K'] },
  { kind: 'exercise', url: '/exercises/left/', title: 'Left', texts: ['{L R R}4'] },
  { kind: 'cell', url: '/exercises/rll/', title: 'R L L', texts: ['R L L'] },
  { kind: 'lesson', url: '/lessons/turned/', title: 'Turned', texts: ['L L R', 'K'] },
  { kind: 'rudiment', url: '/rudiments/flam-drag/', title: 'Flam Drag', texts: ['>lR LL R >rL RR L'] },
];
const titles = (text: string, options = {}): string[] =>
  searchStickings(entries, stickingOf(text), options).map(({ title }) => title);

describe('the index of stickings', () => {
  it('finds what contains a sticking, the sticking itself first', () => {
    expect(titles('R L L')).toEqual(['R L L', 'Long']);
    expect(titles('lR LL R')).toEqual(['Flam Drag']);
    expect(titles('R R R')).toEqual([]);
  });

  it('finds it turned round or by the other hand where that is asked for, and says so', () => {
    expect(titles('R L L', { rotated: true })).toEqual(['R L L', 'Long', 'Turned']);
    expect(titles('R L L', { mirrored: true })).toEqual(['R L L', 'Long', 'Left']);
    const [left] = searchStickings(entries, stickingOf('R L L'), { mirrored: true }).slice(2);
    expect(left).toMatchObject({ mirrored: true, rotated: false, text: '{L R R}4' });
  });

  it('comes back from its packed form', () => expect(unpackStickings(packStickings(entries))).toEqual(entries));

  it('is loaded from below the base path, and missing where it is not there', async () => {
    const asked: string[] = [];
    const serve = (answer: Response) => ((url: string) => (asked.push(url), Promise.resolve(answer))) as typeof fetch;
    expect(await loadStickings('/school/', serve(Response.json(packStickings(entries))))).toEqual(entries);
    expect(asked).toEqual(['/school/stickings.json']);
    expect(await loadStickings('/', serve(new Response('', { status: 404 })))).toBeUndefined();
    expect(await loadStickings('/', serve(new Response('not json')))).toBeUndefined();
  });
});

describe('a search', () => {
  const noWords = () => Promise.reject(new Error('words were asked for'));
  const search = openSearch('/school/', noWords, () => Promise.resolve(entries));

  it('tells a sticking from words', () => {
    expect(['R L L', '>lR LL R', 'K R'].every((text) => askedSticking(text) !== undefined)).toBe(true);
    expect(['roll', 'R', 'RLL', 'flam drag', ''].some((text) => askedSticking(text) !== undefined)).toBe(false);
  });

  it('for a sticking finds bars, under the base path, by either hand', async () => {
    const answer = await search.search('lR LL R');
    expect(answer).toMatchObject({ state: 'found', total: 1 });
    expect(answer.state === 'found' && answer.results[0]).toMatchObject({
      url: '/school/rudiments/flam-drag/',
      excerpt: '&gt;lR LL R &gt;rL RR L',
    });
    const left = await search.search('R L L', { kind: 'exercise' });
    expect(left.state === 'found' && left.results.map(({ excerpt }) => excerpt)).toEqual([
      'K R L L R L L K',
      '{L R R}4 (the other hand leads)',
    ]);
    expect(await search.search('H H H')).toEqual({ state: 'none' });
  });

  it('goes by words where there is no index of stickings', async () => {
    const without = openSearch('/', noWords, () => Promise.resolve(undefined));
    expect(await without.search('R L L')).toEqual({ state: 'missing' });
  });
});
