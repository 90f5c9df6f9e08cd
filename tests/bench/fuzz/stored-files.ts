import { isDeepStrictEqual } from 'node:util';
import {
  changesBetween,
  merged,
  openLessons,
  openOwnData,
  openPlayers,
  openPuzzles,
  readFile,
  undone,
  writeFile,
  type Stored,
} from '../../../src/storage/index.ts';
import { readAll } from '../../../src/storage/kept.ts';
import { FakeArea } from '../../storage/areas.ts';
import { attackOf, between, pick } from './attack.ts';
import { damaged } from './sticking-text.ts';

type Random = () => number;

const NAMES = ['__proto__', 'constructor', 'toString', '__defineGetter__', 'hasOwnProperty', 'prototype', '', 'é'];
const IDS = ['flam-drag-slow', 'a', 'where-is-one', 'the-flam-drag-1f3', 'constructor'];
const VALUES: unknown[] = [
  ...[null, true, false, '', 'fast', 'left', 'written', 'grace', 'on', 'beats', 'all', 'R', '2026-11-25'],
  ...[0, 1, 2, 4, 1.5, -1, 30, 72, 300, 301, 1e308, 5e-324, 999_999_999, 1e9],
  ...[[], {}, [1], [[]], { tempo: 72 }, '{"version":1}'],
];
const KEY = 'barwright:/';

const chance = (random: Random, of: number): boolean => random() < of;
const some = <T>(random: Random, make: () => T): T[] => Array.from({ length: between(random, 0, 3) }, make);

/** An object by its text: so that `__proto__` is a field of its own, as it is in a file. */
const object = (fields: readonly (readonly [string, unknown])[]): unknown =>
  JSON.parse(`{${fields.map(([name, value]) => `${JSON.stringify(name)}:${JSON.stringify(value)}`).join(',')}}`);

/** A good value, and now and then something else. */
const odd = (random: Random, good: unknown): unknown => (chance(random, 0.12) ? pick(random, VALUES) : good);
const named = (random: Random, good: string): string => (chance(random, 0.08) ? pick(random, NAMES) : good);

const memory = (random: Random): unknown =>
  object([
    [named(random, 'tempo'), odd(random, between(random, 30, 300))],
    [named(random, 'lead'), odd(random, pick(random, ['written', 'left', 'alternating']))],
  ]);

const site = (random: Random): unknown =>
  object([
    [named(random, 'swing'), odd(random, 1 + random())],
    [named(random, 'click'), odd(random, 'slots')],
    [named(random, 'check'), odd(random, pick(random, [0, 1, 2, 4]))],
    [named(random, 'flamMs'), odd(random, between(random, 10, 80))],
  ]);

const puzzle = (random: Random): unknown =>
  object([
    [named(random, 'kind'), odd(random, 'fill')],
    ['seed', odd(random, between(random, 1, 9))],
    ['day', odd(random, `2026-11-2${between(random, 0, 9)}`)],
    ['right', odd(random, true)],
    ['misses', odd(random, 0)],
    ['hints', odd(random, 1)],
  ]);

/** Fields as a site keeps them, or nearly so. */
const fields = (random: Random): [string, unknown][] => [
  ['version', chance(random, 0.1) ? pick(random, [0, 2, -1, 1.5, '1', null]) : 1],
  [
    'exercises',
    odd(random, object(some(random, () => [named(random, pick(random, IDS)), odd(random, memory(random))] as const))),
  ],
  ['site', odd(random, site(random))],
  [
    'done',
    odd(
      random,
      some(random, () => odd(random, pick(random, IDS))),
    ),
  ],
  ...(chance(random, 0.5) ? [['last', odd(random, pick(random, IDS))] as [string, unknown]] : []),
  ...(chance(random, 0.6)
    ? [
        [
          'puzzles',
          odd(
            random,
            some(random, () => odd(random, puzzle(random))),
          ),
        ] as [string, unknown],
      ]
    : []),
  ...(chance(random, 0.1) ? [[pick(random, NAMES), pick(random, VALUES)] as [string, unknown]] : []),
];

function text(random: Random): string {
  const kind = chance(random, 0.95) ? [['kind', 'barwright player data'] as [string, unknown]] : [];
  const unread = chance(random, 0.2) ? [['unread', odd(random, ['torn {'])] as [string, unknown]] : [];
  const whole = JSON.stringify(object([...kind, ...fields(random), ...unread]));
  // A number too large for this language can be written in a file all the same.
  const large = whole.replaceAll('1e+308', '1e999');
  return chance(random, 0.15) ? damaged(random, large) : large;
}

/** Every single value of a JSON value, with the way to it. */
function leaves(value: unknown, at: string[] = []): string[] {
  if (typeof value !== 'object' || value === null) return [JSON.stringify([...at, value])];
  return Object.entries(value).flatMap(([name, inner]) => leaves(inner, Array.isArray(value) ? at : [...at, name]));
}

/** What is wrong with how a file was read. */
function fileFault(random: Random, file: string): string | undefined {
  const reading = readFile(file);
  if (!reading.ok) return undefined;
  const { stored, leftOut, unread } = reading;
  if (readAll({ ...stored }).leftOut.length) return 'took what it would not take again';
  const again = readFile(writeFile({ stored, unread }));
  if (!again.ok || !isDeepStrictEqual(again.stored, stored)) return 'is another one once it is saved and opened';
  const { kind: _, unread: __, ...asked } = JSON.parse(file) as Record<string, unknown>;
  const taken = new Set(leaves(stored));
  const lost = leaves(asked).filter((leaf) => !taken.has(leaf));
  if (lost.length && !leftOut.length) return `left out ${lost[0]} without a word`;
  return undoFault(random, stored);
}

function undoFault(random: Random, file: Stored): string | undefined {
  const own = readAll(object(fields(random)) as Record<string, unknown>).stored;
  const after = merged(own, file);
  const back = undone(after, changesBetween(own, after));
  const all = (one: Stored) => leaves(one).sort();
  if (back.left.length || !isDeepStrictEqual(all(back.stored), all(own))) return 'cannot be undone';
  return undefined;
}

/** What is wrong with how a browser goes on from a text that stands in it. */
function storeFault(random: Random, kept: string): string | undefined {
  const area = new FakeArea({ [KEY]: kept });
  const options = { area, base: '/', events: undefined };
  const [players, lessons, puzzles] = [openPlayers(options), openLessons(options), openPuzzles(options)];
  const changes = [
    () => players.setSite({ loop: false }),
    () => players.setExercise('a', { tempo: 61 }),
    () => players.resetExercise('a'),
    () => lessons.setDone('new-one', true),
    () => lessons.setLast('new-one'),
    () => puzzles.notePuzzle({ kind: 'fix', seed: 77, day: '2026-11-26', right: true, misses: 0, hints: 0 }),
  ];
  const before = openOwnData(options).read();
  pick(random, changes)();
  const after = openOwnData(options).read();
  if (!players.persistent) return 'is not kept any more';
  // Whatever could not be read stands there word for word, or where it stood.
  if (before.unread.includes(kept) && !after.unread.includes(kept)) {
    const now = leaves(JSON.parse(area.kept.get(KEY)!) as unknown);
    const gone = leaves(JSON.parse(kept) as unknown).filter((leaf) => !now.includes(leaf));
    const good = new Set(leaves(before.stored));
    const lost = gone.find((leaf) => !good.has(leaf));
    if (lost) return `lost ${lost}`;
  }
  return undefined;
}

/** Files and stored texts, good, odd and torn: nothing throws, nothing is lost, nothing is left out without a word. */
export const storedFiles = attackOf('stored files', { short: 1000, long: 100_000 }, (random, about) => {
  const file = text(random);
  about(file);
  const wrong = fileFault(random, file) ?? storeFault(random, file.replace('"kind":"barwright player data",', ''));
  return wrong ?? (Object.keys(Object.prototype).length ? 'changed every object' : undefined);
});
