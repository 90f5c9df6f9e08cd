import { expect, test } from 'vitest';
import { printFaults } from '../../src/build/content/content-fault.ts';
import { BAR, EXERCISE, faultsOf, GOOD, lesson, LESSON, QUESTION, TEXT_LINE } from './plant.ts';
import { also, cell, exercise } from './planted/planted.ts';
import { BARS } from './planted/bars.ts';
import { BYTES } from './planted/bytes.ts';
import { FIELDS } from './planted/fields.ts';
import { FORM } from './planted/form.ts';
import { LINKS } from './planted/links.ts';
import { MEDIA } from './planted/media.ts';
import { NAMES } from './planted/names.ts';
import { PLACES } from './planted/places.ts';
import { QUESTIONS } from './planted/questions.ts';
import { SITES } from './planted/site.ts';

const PLANTED = [
  ...BARS,
  ...FORM,
  ...NAMES,
  ...LINKS,
  ...MEDIA,
  ...QUESTIONS,
  ...FIELDS,
  ...PLACES,
  ...BYTES,
  ...SITES,
];

const place = (at: string) => (/:\d+:\d+$/.test(at) ? at : `${at}:1:1`);

test.each(PLANTED)('$name is found, with its place', ({ changes, at, says, hint }) => {
  const faults = faultsOf(changes);
  const found = faults.filter(({ message }) => says.test(message));
  expect(
    found.map(({ file, line, column }) => `${file}:${line}:${column}`),
    printFaults(faults),
  ).toContain(place(at));
  if (hint) expect(found.map((fault) => fault.hint ?? '').join('\n')).toMatch(hint);
});

test('one slip is told once: a file that cannot be read has no other faults, and nothing that depends on it has any', () => {
  const broken = (from: string, to: string, path = LESSON) =>
    faultsOf({ [path]: (GOOD[path] as string).replace(from, to) });
  expect(broken('title: First', 'title: [First')).toHaveLength(1);
  expect(broken('Some text.', '<Caution about="wrists">')).toHaveLength(1);
  expect(broken('title: Slow', 'title: "Slow\nother: [a, b]\nmore: {a: b', EXERCISE)).toHaveLength(1);
  expect(broken('[flam-drag, flam-drag,', '[flam-drag, flam-drag,, ', EXERCISE)).toHaveLength(1);
  expect(faultsOf({ 'content/cells/flam-drag.yaml': 'name: "x\nsticking: R\n' })).toHaveLength(1);
  expect(faultsOf({ 'content/course.yaml': 'parts: [x\n' })).toHaveLength(1);
});

test('a good tree has no fault', () => {
  expect(faultsOf()).toEqual([]);
});

test('line ends of Windows and a byte order mark are no fault, and places stay right', () => {
  const windows = (GOOD[LESSON] as string).replaceAll('\n', '\r\n');
  expect(faultsOf({ [LESSON]: `\ufeff${windows}` })).toEqual([]);
  const [fault] = faultsOf({ [LESSON]: windows.replace('id="slow"', 'id="slwo"') });
  expect([fault.line, fault.column]).toEqual([TEXT_LINE + 4, 11]);
});

test('pictures, films and things to listen to are no fault where they are there', () => {
  const beside = (name: string) => LESSON.replace('index.mdx', name);
  const words =
    '<Picture file="./hands.jpg" text="A hand." />\n\n<Video file="hands.mp4" text="A hand." captions="hands.vtt" />';
  const said = lesson(`${words}\n\n${BAR}\n\n${QUESTION}`, {
    listen: '[{ title: Marches, at: 1:24, says: The left. }]',
  });
  const files = { [beside('hands.jpg')]: 'jpg', [beside('hands.mp4')]: 'mp4', [beside('hands.vtt')]: 'WEBVTT' };
  expect(faultsOf({ [LESSON]: said, ...files })).toEqual([]);
});

test('links to headings, exercises, bars and parts that are there are no fault', () => {
  const links = ['/lessons/first/#again-1', '#slow', '#bar-shown', '/course/#part-1', '/hearing/#ears--hands', '#page'];
  const bar = BAR.replace('<Bar ', '<Bar id="shown" ');
  const words = ['## Again', '## Again', bar, '<Exercise id="slow" />', ...links.map((link) => `[there](${link})`)];
  const page = '---\ntitle: Hearing\nidea: Two.\n---\n\n## Ears & hands\n';
  expect(faultsOf({ ...also(words.join('\n\n')), 'content/pages/hearing.md': page })).toEqual([]);
});

test('links to one puzzle and to a sum that is asked something are no fault', () => {
  const links = ['/puzzles/fill/#1-240', '/bar-math/#orders', '/bar-math/#fit&cell=R+L+L&bars=1'];
  expect(faultsOf(also(links.map((link) => `[there](${link})`).join('\n\n')))).toEqual([]);
});

test('a comment in a lesson is no fault', () => {
  expect(faultsOf(also('{/* for the teacher */}'))).toEqual([]);
});

test('a cell that is faulty is told once, not again for each bar that uses it', () => {
  const faults = faultsOf({ 'content/cells/flam-drag.yaml': 'name: flam drag\nsticking: Q\n' });
  expect(faults.map(({ file }) => file)).toEqual(['content/cells/flam-drag.yaml']);
});

test('all faults are listed together, by file and line, and counted in the last line', () => {
  const wrong = ['<Exercise id="nowhere" />', '', '<Bar sticking="R" meter="4/4" grid={1} />', '', '<Blink />'].join(
    '\n',
  );
  const faults = faultsOf({ ...also(wrong), ...cell(''), ...exercise('title: Slow\n', '') });
  expect(faults.map(({ file, line }) => `${file}:${line}`)).toEqual([
    'content/cells/extra.yaml:1',
    `${EXERCISE}:1`,
    `${LESSON}:${TEXT_LINE}`,
    `${LESSON}:${TEXT_LINE + 2}`,
    `${LESSON}:${TEXT_LINE + 4}`,
  ]);
  expect(printFaults(faults).split('\n').at(-1)).toBe('5 faults in 3 files of the content.');
});
