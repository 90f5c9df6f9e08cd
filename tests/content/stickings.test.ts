import fc from 'fast-check';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { mirror, parseSticking, printItems, printSticking, slotsOnly, type Sticking } from '../../src/core/index.ts';
import {
  loadStickings,
  openSearch,
  packStickings,
  readQuery,
  searchStickings,
  unpackStickings,
  type StickingEntry,
} from '../../src/search/index.ts';
import { runs, sticking } from '../helpers/arbitrary.ts';
import { stickingOf } from '../helpers/phrases.ts';

const bar = (...texts: string[]) => ({ cells: texts.map((text) => ({ text })) });
const cell = { text: 'R L L', name: 'R L L' };
const kick = { text: 'K', name: 'kick' };

const entries: StickingEntry[] = [
  { kind: 'rudiment', url: '/rudiments/flam-drag/', title: 'Flam Drag', bars: [bar('>lR LL R >rL RR L')] },
  { kind: 'cell', url: '/exercises/rll/', title: 'R L L', bars: [bar('R L L')] },
  { kind: 'lesson', url: '/lessons/turned/', title: 'Turned', part: 2, bars: [bar('L L R L L R'), bar('K')] },
  {
    kind: 'exercise',
    url: '/exercises/long/',
    title: 'Long',
    part: 7,
    rudiments: ['flam-drag', 'flam'],
    bars: [{ cells: [kick, cell, cell, cell, cell, cell], meter: '4/4', grid: 4 }],
  },
  { kind: 'exercise', url: '/exercises/left/', title: 'Left', bars: [{ ...bar('{L R R}4'), meter: '4/4', grid: 3 }] },
];
const found = (text: string, options = {}) => searchStickings(entries, stickingOf(text), options);
const titles = (text: string, options = {}): string[] => found(text, options).map(({ title }) => title);
const place = (text: string, title: string, options = {}) =>
  found(text, options).find((one) => one.title === title)?.place;

describe('the index of stickings', () => {
  it('finds what contains a sticking: the sticking itself first, the other hand last', () => {
    expect(titles('R L L')).toEqual(['R L L', 'Turned', 'Long', 'Left']);
    expect(titles('lR LL R')).toEqual(['Flam Drag']);
    expect(titles('R R R')).toEqual([]);
  });

  it('finds it turned round where that is asked for', () => {
    expect(titles('L R L')).toEqual(['Turned', 'Long', 'Left']);
    expect(titles('L R L', { turned: true })).toEqual(['Turned', 'Long', 'R L L', 'Left']);
    expect(place('L R L', 'R L L', { turned: true })).toMatchObject({ turned: true });
    expect(titles('L L K', { turned: true })).toContain('Long');
    expect(place('L L K', 'Long', { turned: true })).toMatchObject({ count: 'the & of 4', turned: true });
  });

  it('is narrowed by kind, part, subdivision and rudiment', () => {
    const only = (filters: object) => titles('R L L', { filters });
    expect(only({ kind: 'exercise' })).toEqual(['Long', 'Left']);
    expect(only({ part: '7' })).toEqual(['Long']);
    expect(only({ grid: '3' })).toEqual(['Left']);
    expect(only({ rudiment: 'flam' })).toEqual(['Long']);
    expect(only({ rudiment: 'fl' })).toEqual([]);
  });

  it('takes a subdivision that the text itself says', () => {
    const changing = [{ ...entries[0], bars: [{ ...bar('{R L L}4 | [4/4:4] {R L L R}4'), meter: '4/4', grid: 3 }] }];
    for (const grid of ['3', '4'])
      expect(searchStickings(changing, stickingOf('R L L'), { filters: { grid } })).toHaveLength(1);
    expect(searchStickings(changing, stickingOf('R L L'), { filters: { grid: '2' } })).toEqual([]);
    expect(searchStickings(changing, stickingOf('R L L'))[0].place).not.toHaveProperty('count');
  });

  it('says where: the count, the cell, the figure, and by which hand', () => {
    expect(place('R L L', 'Long')).toEqual({
      whole: false,
      text: 'K {R L L}5',
      figure: 1,
      figures: 1,
      cell: 'R L L',
      count: 'the e of 1',
      mirrored: false,
      turned: false,
    });
    expect(place('K R', 'Long')).not.toHaveProperty('cell');
    expect(place('K R', 'Long')).toMatchObject({ count: 'beat 1' });
    expect(place('R L L', 'Left')).toMatchObject({ whole: true, count: 'beat 1', mirrored: true });
    expect(place('lR LL R', 'Flam Drag')).toMatchObject({ whole: true });
    expect(place('L L R L L R', 'Turned')).toMatchObject({ figure: 1, figures: 2, whole: true });
  });

  it('counts bars from 1 and a pickup before them', () => {
    const two = { cells: [{ text: 'R L {R R R R}4 {L L L L}4 ' }], meter: '4/4', grid: 4, pickup: 2 };
    const at = (text: string) => searchStickings([{ ...entries[0], bars: [two] }], stickingOf(text))[0].place;
    expect(at('R L R')).toMatchObject({ bar: 0, count: 'the & of 4' });
    expect(at('R R R R L L')).toMatchObject({ bar: 1, count: 'beat 4' });
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

/** A sticking as it is stored: its text, among others. */
const stored = (text: string): StickingEntry[] => [...entries, { ...entries[0], title: 'It', bars: [bar(text)] }];
const finds = (text: string, sought: Sticking, turned = false): boolean =>
  searchStickings(stored(text), sought, { turned }).some(({ title }) => title === 'It');

/** What a slice reads as where its text is a sticking; a slice that begins with a tie is none. */
const readSlice = (slots: ReturnType<typeof slotsOnly>): Sticking | undefined => {
  const read = parseSticking(printItems(slots));
  return read.ok ? read.sticking : undefined;
};

describe('whatever is stored', () => {
  const cases = sticking.filter(({ hands }) => slotsOnly(hands).length > 1);

  it('is found by any slice of two slots or more, and by the slice for the other hand', () => {
    fc.assert(
      fc.property(cases, fc.nat(), fc.nat(), (whole, a, b) => {
        const slots = slotsOnly(whole.hands);
        const from = a % (slots.length - 1);
        const to = from + 2 + (b % (slots.length - from - 1));
        const slice = readSlice(slots.slice(from, to));
        fc.pre(slice !== undefined);
        expect(finds(printSticking(whole), slice)).toBe(true);
        expect(finds(printSticking(whole), mirror(slice))).toBe(true);
      }),
      runs(200),
    );
  });

  it('is found by any rotation of itself, and by any slice across its end, where that is asked for', () => {
    fc.assert(
      fc.property(cases, fc.nat(), fc.nat(), (whole, a, b) => {
        const slots = slotsOnly(whole.hands);
        const by = a % slots.length;
        const rotated = [...slots.slice(by), ...slots.slice(0, by)];
        const turned = readSlice(rotated);
        const part = readSlice(rotated.slice(0, 2 + (b % (slots.length - 1))));
        fc.pre(turned !== undefined && part !== undefined);
        expect(finds(printSticking(whole), turned, true)).toBe(true);
        expect(finds(printSticking(whole), part, true)).toBe(true);
      }),
      runs(200),
    );
  });
});

describe('the index of five hundred exercises', () => {
  /** Bars that differ as those of a course do: made of cells or written out, in several meters, each with its own title. */
  const many = (): StickingEntry[] => {
    const random = (n: number, of: number) => (Math.imul(n + 1, 2654435761) >>> 8) % of;
    const words =
      'flam drag paradiddle accent roll kick triplet sixteenth alone slow again round early late over'.split(' ');
    const cells = Array.from({ length: 60 }, (_, n) => ({
      name: `${words[n % 15]} ${words[random(n, 15)]}`,
      text: Array.from(
        { length: 2 + (n % 7) },
        (_, slot) => ['R', 'L', '>R', 'LL', 'lR', 'K'][random(n * 7 + slot, 6)],
      ).join(' '),
    }));
    return Array.from({ length: 500 }, (_, n) => {
      const name = [n, n * 3, n * 5, n * 7].map((seed) => words[random(seed, 15)]).join('-');
      const own = Array.from(
        { length: 16 },
        (_, slot) => ['R', 'L', '>R', '(L)', 'RR', 'lR'][random(n * 31 + slot, 6)],
      ).join(' ');
      const made = Array.from({ length: 5 }, (_, part) => cells[random(n * 11 + part, 60)]);
      return {
        kind: 'exercise',
        url: `/exercises/${name}-${n}/`,
        title: `${name.replaceAll('-', ' ')} ${n}`,
        part: 1 + (n % 10),
        rudiments: n % 3 ? ['flam-drag'] : ['single-paradiddle', 'flam'],
        bars: [{ cells: n % 2 ? made : [{ text: own }], meter: n % 5 ? '4/4' : '6/8', grid: 3 + (n % 2) }],
      } satisfies StickingEntry;
    });
  };

  it('travels in less than 30 kB', () => {
    const packed = gzipSync(JSON.stringify(packStickings(many()))).length;
    expect(new Set(many().map(({ bars }) => JSON.stringify(bars))).size).toBeGreaterThan(450);
    expect(packed).toBeGreaterThan(5_000);
    expect(packed).toBeLessThan(30_000);
  });
});

describe('what was typed', () => {
  const read = (text: string) => {
    const asked = readQuery(text);
    return asked.as === 'words' ? asked : { written: asked.written?.text, single: asked.single?.text };
  };

  it.each([
    ['R L L', { written: 'R L L' }],
    ['  lR LL R ', { written: 'lR LL R' }],
    ['>lR LL R', { written: '>lR LL R' }],
    ['llR', { written: 'llR' }],
    ['{R L L}5 K', { written: '{R L L}5 K' }],
    ['RLRR LRLL', { written: 'RLRR LRLL', single: 'R L R R L R L L' }],
    ['rll', { single: 'R L L' }],
    ['r l l', { single: 'R L L' }],
    ['RlrL', { written: 'RlrL' }],
  ])('%s is a sticking', (text, reading) => expect(read(text)).toEqual(reading));

  it.each(['roll', 'R', 'L', 'K', 'flam drag', '', '7/8', 'left hand', 'K in front', 'RnB'])('"%s" is words', (text) =>
    expect(read(text)).toEqual({ as: 'words' }),
  );

  it.each(['rR L L', 'R L X L', '{R L L}', 'R@nowhere L', 'R L L)', '|R L'])(
    '"%s" is words, though it looks like a sticking, and it is said why',
    (text) => {
      const asked = readQuery(text);
      expect(asked.as).toBe('words');
      expect(asked.as === 'words' && asked.because).toMatch(/\w{3}/);
    },
  );

  it('never throws, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.stringMatching(/^[RLKHrl>(){}\d |@-]{0,20}$/), (any, near) => {
        readQuery(any);
        readQuery(near);
      }),
      runs(300),
    );
  });
});

describe('a search', () => {
  it('offers small letters among capitals as strokes where they cannot be grace notes', () =>
    expect(readQuery('rR L L')).toMatchObject({ as: 'words', single: { text: 'R R L L' } }));

  const noWords = () => Promise.reject(new Error('words were asked for'));
  const search = openSearch('/school/', { load: noWords, loadBars: () => Promise.resolve(entries) });

  it('for a sticking finds bars, under the base path, by either hand', async () => {
    expect(await search.search('lR LL R')).toMatchObject({
      state: 'found',
      total: 1,
      taken: { sticking: 'lR LL R' },
      results: [{ url: '/school/rudiments/flam-drag/', place: { text: '>lR LL R >rL RR L' } }],
    });
    const left = await search.search('R L L', { filters: { kind: 'exercise' } });
    expect(left.state === 'found' && left.results.map(({ title }) => title)).toEqual(['Long', 'Left']);
    expect(await search.search('H H H')).toEqual({ state: 'none', taken: { sticking: 'H H H' } });
  });

  it('takes letters close together as they stand where something has that, and offers a stroke to each slot', async () => {
    const close = [{ ...entries[0], title: 'Close', bars: [bar('RLR L')] }, entries[1]];
    const { search } = openSearch('/', { load: noWords, loadBars: () => Promise.resolve(close) });
    expect(await search('RLR L')).toMatchObject({ total: 1, taken: { sticking: 'RLR L', other: 'R L R L' } });
    expect(await search('RLL')).toMatchObject({ results: [{ title: 'R L L' }], taken: { sticking: 'R L L' } });
    expect(await search('rll')).toMatchObject({ results: [{ title: 'R L L' }], taken: { sticking: 'R L L' } });
  });

  it('says when the index of stickings is not there, and asks for it again', async () => {
    let there = false;
    const loadBars = () => Promise.resolve(there ? entries : undefined);
    const { search } = openSearch('/', { load: noWords, loadBars });
    expect(await search('R L L')).toEqual({ state: 'missing' });
    there = true;
    expect(await search('R L L')).toMatchObject({ state: 'found' });
  });
});
