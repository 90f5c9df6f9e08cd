import { isDeepStrictEqual } from 'node:util';
import { printQuery } from '../../../components/islands/links/query.ts';
import { readQuery } from '../../../components/islands/links/read-query.ts';
import { heightIn } from '../../../components/islands/links/snippet.ts';
import { printSumAddress, readSumAddress } from '../../../src/bar-math/address.ts';
import { MAX_SEED, printPuzzleAddress, readPuzzleAddress, type LeadName } from '../../../src/core/index.ts';
import { printFilters, readFilters } from '../../../src/curriculum/exercise-filter.ts';
import { printSheet, readSheet } from '../../../src/formats/sheet.ts';
import { printSearchAddress, readSearchAddress } from '../../../src/search/address.ts';
import { refusedSays } from '../../../src/words/links.ts';
import { attackOf, between, pick } from './attack.ts';
import { damaged } from './sticking-text.ts';

type Random = () => number;

const NAMES = 'tempo lead flam x title counts paper q kind part grid rudiment rotation meter with cell __proto__'.split(
  ' ',
);
const VALUES = [
  ...['80', '30', '300', '301', '29', '080', '1e2', ' 80', '80.5', '-80', '9'.repeat(400), '', 'NaN', '\u0663\u0660'],
  ...['left', 'right', 'alternating', 'up', 'constructor', '__proto__', 'off', 'letter', 'any', 'lesson', 'song'],
  ...['a,b', 'a,a,q', ',', 'R L L', '>lR LL R', '4/4', '2+2+3/8', '1-4182', '1-0', '2-7', '\ud800', '\0', '😀', '%'],
];
const FIELDS = [
  { name: 'grid', values: ['3', '4'] },
  { name: 'meter', values: ['4/4', '2+2+3/8'] },
  { name: 'with', values: ['flams', 'kicks'], several: true },
];
const NARROW = [
  { filter: 'kind', ways: [{ value: 'lesson' }, { value: 'cell' }] },
  { filter: 'grid', ways: [{ value: '3' }] },
] as const;
const KNOWN = ['a', 'b'];

const encoded = (random: Random, value: string): string => {
  const params = new URLSearchParams({ v: value }).toString().slice(2);
  return random() < 0.1 ? value : params;
};

function address(random: Random): string {
  const pairs = Array.from({ length: between(random, 0, 5) }, () => {
    const value = encoded(random, pick(random, VALUES));
    return random() < 0.05 ? pick(random, NAMES) : `${pick(random, NAMES)}=${value}`;
  });
  const whole = `?${pairs.join('&')}`;
  return random() < 0.2 ? damaged(random, whole) : whole;
}

const valuesIn = (search: string, name: string): string[] => new URLSearchParams(search).getAll(name).filter(Boolean);

function settingsFault(random: Random, search: string): string | undefined {
  const leads: LeadName[] = random() < 0.5 ? ['right', 'left', 'alternating'] : ['right'];
  const { settings, refused } = readQuery(search, { leads, graces: random() < 0.7 });
  const { tempo = 30, lead = 'right', flam = 10 } = settings;
  const whole = (value: number, low: number, high: number) => Number.isInteger(value) && value >= low && value <= high;
  if (!whole(tempo, 30, 300) || !whole(flam, 10, 80) || !leads.includes(lead)) return 'sets what cannot be set';
  for (const name of ['tempo', 'lead', 'flam'] as const) {
    const [first] = new URLSearchParams(search).getAll(name);
    const said = settings[name] !== undefined || refused.some((one) => one.name === name);
    if (Boolean(first) !== said) return `says nothing of ${name}`;
  }
  if (refused.some((one) => !refusedSays(one).endsWith('.'))) return 'refuses without a sentence';
  const again = readQuery(printQuery(settings), { leads, graces: true });
  return isDeepStrictEqual(again, { settings, refused: [] }) ? undefined : 'reads its own settings otherwise';
}

function listsFault(search: string): string | undefined {
  const { choices, unknown } = readFilters(search, FIELDS);
  const asked = new Set([
    ...valuesIn(search, 'with').flatMap((value) => value.split(',')),
    ...['grid', 'meter', 'tempo'].flatMap((name) => new URLSearchParams(search).getAll(name)[0] ?? []),
  ]);
  asked.delete('');
  if (asked.size && !choices.length && !unknown.length && [...asked].some((value) => value.trim()))
    return 'filters nothing and says nothing';
  const again = readFilters(printFilters(choices, '', FIELDS), FIELDS);
  if (!isDeepStrictEqual(again, { choices, unknown: [] })) return 'reads its own filters otherwise';

  const sheet = readSheet(search, (id) => KNOWN.includes(id));
  const ids = new Set(valuesIn(search, 'x').flatMap((value) => value.split(',').map((id) => id.trim())));
  ids.delete('');
  if (ids.size !== sheet.sheet.ids.length + sheet.unknown.length + sheet.beyond) return 'loses exercises of a sheet';
  const printed = readSheet(printSheet(sheet.sheet), () => true).sheet;
  if (!isDeepStrictEqual(printed, { ...sheet.sheet, title: sheet.sheet.title.trim() }))
    return 'reads its own sheet otherwise';

  const { search: query, unknown: without } = readSearchAddress(search, NARROW);
  const filters = ['kind', 'part', 'grid', 'rudiment'].filter((name) => new URLSearchParams(search).get(name));
  if (filters.length !== Object.keys(query.filters).length + without.length) return 'loses filters of the search';
  const found = readSearchAddress(printSearchAddress(query), NARROW).search;
  return isDeepStrictEqual(found, { ...query, words: query.words.trim() }) ? undefined : 'searches otherwise';
}

function fragmentFault(random: Random, search: string): string | undefined {
  // Half of a pair of UTF-16 units, which no browser hands over, is exchanged the first time.
  const asked = readSumAddress(printSumAddress(readSumAddress(`#fit&${search.slice(1)}`)));
  if (!isDeepStrictEqual(readSumAddress(printSumAddress(asked)), asked)) return 'asks its own sum otherwise';
  const text = random() < 0.5 ? pick(random, VALUES) : damaged(random, `1-${between(random, 1, MAX_SEED)}`);
  const read = readPuzzleAddress(text);
  if (!read.ok) return read.fault.message ? undefined : `refuses the puzzle ${text} without a reason`;
  return Number.isInteger(read.seed) && readPuzzleAddress(printPuzzleAddress(read.seed)).ok
    ? undefined
    : `opens the puzzle ${text}`;
}

function messageFault(random: Random): string | undefined {
  const odd = () => pick<unknown>(random, ['height', 'ask', 431, -1, NaN, Infinity, null, undefined, {}, [], '431']);
  const message = random() < 0.2 ? odd() : { barwright: odd(), id: odd(), height: odd() };
  const height = heightIn(message);
  return height === undefined || (Number.isFinite(height) && height > 0) ? undefined : `has the height ${height}`;
}

/** Addresses and messages from anywhere: nothing throws, nothing asked for is dropped without a word. */
export const links = attackOf('links', { short: 1000, long: 10_000 }, (random, about) => {
  const search = address(random);
  about(search);
  return settingsFault(random, search) ?? listsFault(search) ?? fragmentFault(random, search) ?? messageFault(random);
});
