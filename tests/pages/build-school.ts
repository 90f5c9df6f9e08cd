/**
 * Builds a small site as a school might: settings, an order and hidden lessons of its own, pictures and films, below a base
 * path. `node tests/pages/build-school.ts`
 */
import { rmSync } from 'node:fs';
import sharp from 'sharp';
import { BAR, EXERCISE, GOOD, lesson, LESSON, planted, QUESTION, type Tree } from '../content/plant.ts';
import { SCHOOL } from '../helpers/built-site.ts';
import { buildContent } from '../helpers/small-site.ts';

const SETTINGS = `
name: Our drums
school: Our school
counting: 1 ta te ta
barWord: measure
colors: { warm: '#20608a' }
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

const COURSE = `
parts:
  - { number: 1, title: One, idea: A bar is a length. }
  - { number: 2, title: Two, idea: The second part. }
lessons: [far, first, last]
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

const WORDS = [
  '<Picture file="./hands.jpg" text="Two hands, the left one low." caption="Ready." />',
  '<Video file="./hands.mp4" text="Four of them, from the side." poster="hands.jpg" captions="hands.vtt" />',
  '<Video file="./hands.mp4" text="The same once more." shape="4:3" />',
];

const LISTEN = '[{ title: The march on our shelf, at: 1:24, says: The left hand. }, { title: A door that shuts }]';

const picture = sharp({ create: { width: 2400, height: 1600, channels: 3, background: '#a8431a' } });
const MEDIA = 'content/lessons/01-x/04-seen';

const TREE: Tree = {
  ...GOOD,
  'content/site.yaml': SETTINGS,
  'content/course.yaml': COURSE,
  [LESSON]: null,
  // Pages of ours lead to this heading.
  'content/pages/hearing.md': '---\ntitle: Hearing\nidea: Two things wear out.\n---\n\n## Wrists\n\nRest.\n',
  'content/glossary/offbeat.yaml': 'term: offbeat\nsays: It falls on the & of a beat.\n',
  ...written(1, 1, 'first', 'First bar', SHOWN),
  ...written(1, 2, 'last', 'Last', `${TEXT}\n\nThe second stroke is on the *e*.`),
  'content/pages/fees.md': '---\ntitle: What a bar costs\nidea: Nothing.\n---\n\nNothing at all.\n',
  ...written(1, 3, 'gone', 'Gone', `${TEXT}\n\n<Exercise id="alone" />`),
  ...written(1, 1, 'between', 'Between'),
  ...written(2, 1, 'far', 'Far'),
  ...written(20, 1, 'together', 'Together'),
  'content/exercises/alone.yaml': (GOOD[EXERCISE] as string)
    .replace('grid: 3', 'grid: 4')
    .replace('To hear every stroke.', 'To hear the & of 2.')
    .replace(/meter: .*/, 'meter: 3/4'),
  'content/exercises/secret.yaml': (GOOD[EXERCISE] as string)
    .replace('grid: 3', 'grid: 6')
    .replace(/meter: .*/, 'meter: 2/4'),
  [`${MEDIA}/index.mdx`]: lesson([BAR, ...WORDS, '## Hand & foot', QUESTION].join('\n\n'), {
    id: 'seen',
    order: '4',
    title: 'Seen',
    listen: LISTEN,
  }),
  [`${MEDIA}/hands.jpg`]: new Uint8Array(await picture.jpeg().toBuffer()),
  [`${MEDIA}/hands.mp4`]: 'no film, and nobody looks into it',
  [`${MEDIA}/hands.vtt`]: 'WEBVTT\n',
};

rmSync(SCHOOL.root, { recursive: true, force: true });
await planted(TREE, (root) => buildContent(root, SCHOOL));
