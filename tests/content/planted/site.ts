import { EXERCISE, GOOD, lesson, type Tree } from '../plant.ts';
import { BAR, QUESTION } from '../plant.ts';
import { changed, type Planted } from './planted.ts';

const SITE = 'content/site.yaml';
/** The line of the good tree's settings after the last one. */
const NEXT = 7;

/** The settings with more at their end. */
const site = (more: string): Tree => ({ [SITE]: `${GOOD[SITE] as string}\n${more}\n` });
const at = (column: number, line = NEXT) => `${SITE}:${line}:${column}`;

/** A lesson that the plan does not name. */
const own = (id: string, part: string, order: string): Tree => ({
  [`content/lessons/${part.padStart(2, '0')}-x/${order.padStart(2, '0')}-${id}/index.mdx`]: lesson(
    `${BAR}\n\n${QUESTION}`,
    { id, part, order },
  ),
});

/** In what a school sets, and in the lessons it adds. */
export const SITES: Planted[] = [
  {
    name: 'a hidden lesson that is not there',
    changes: site('hide: { lessons: [first, frist] }'),
    at: at(26),
    says: /no lesson "frist"/,
    hint: /did you mean "first"/,
  },
  {
    name: 'a hidden exercise that is not there',
    changes: site('hide: { exercises: [slwo] }'),
    at: at(21),
    says: /no exercise "slwo"/,
    hint: /"slow"/,
  },
  {
    name: 'a hidden part that is not there',
    changes: site('hide: { parts: [1, 7] }'),
    at: at(20),
    says: /no part 7/,
    hint: /there are: 1; parts of your own are numbered from 20/,
  },
  {
    name: 'an exercise by a part of its name',
    changes: { ...site('hide: { exercises: [warm-slow] }') },
    at: at(21),
    says: /no exercise "warm-slow"/,
    hint: /did you mean "slow"/,
  },
  {
    name: 'a color without quotes',
    changes: site('colors:\n  warm: #a8431a'),
    at: at(9, NEXT + 1),
    says: /"colors.warm" is null/,
    hint: /put the color in quotes: warm: "#a8431a"/,
  },
  {
    name: 'a color without quotes, under the older name of the setting',
    changes: site('colours:\n  warm: #a8431a'),
    at: at(9, NEXT + 1),
    says: /"colours.warm" is null/,
    hint: /put the color in quotes: warm: "#a8431a"/,
  },
  {
    name: 'the colors under both names',
    changes: site('colors: { warm: "#a8431a" }\ncolours: { warm: "#a8431a" }'),
    at: at(10, NEXT + 1),
    says: /"colours" is .*; it takes nothing beside "colors"/,
  },
  {
    name: 'a language that does not exist',
    changes: changed('content/site.yaml', 'language: en', 'language: qqx-nowhere'),
    at: 'content/site.yaml:3:11',
    says: /a language that there is/,
  },
  {
    name: 'something else that is hidden',
    changes: site('hide: { lesons: [] }'),
    at: at(9),
    says: /"hide" has no "lesons"/,
    hint: /"lessons"/,
  },
  {
    name: 'hide with nothing behind it',
    changes: site('hide:'),
    at: at(6),
    says: /"hide" is null; it takes hide: \{ lessons, exercises, parts \}/,
  },
  {
    name: 'a part of its own with a number of ours',
    changes: site('parts: [{ number: 2, title: Ours, idea: Ours. }]'),
    at: at(19),
    says: /"parts\[1\].number" is 2; it takes .* from 20 to 99/,
  },
  {
    name: 'a part of its own twice',
    changes: site('parts: [{ number: 20, title: Ours, idea: Ours. }, { number: 20, title: Again, idea: Again. }]'),
    at: at(61),
    says: /part 20 is there already/,
  },
  {
    name: 'an order of parts that are not there',
    changes: site('order: { parts: [2] }'),
    at: at(18),
    says: /no part 2/,
  },
  {
    name: 'an order in a part that is not there',
    changes: site('order:\n  lessons:\n    21: [second]'),
    at: at(9, NEXT + 2),
    says: /no part 21/,
    hint: /parts: \[\{ number: 21,/,
  },
  {
    name: 'a lesson in an order that is not there',
    changes: site('order:\n  lessons:\n    1: [second, frist]'),
    at: at(17, NEXT + 2),
    says: /no lesson "frist"/,
    hint: /"first"/,
  },
  {
    name: 'a lesson put into two parts',
    changes: site('parts: [{ number: 20, title: Ours, idea: Ours. }]\norder: { lessons: { 1: [first], 20: [first] } }'),
    at: at(38, NEXT + 1),
    says: /"first" is put into part 1 already/,
  },
  {
    name: 'an order of lessons that is no list of parts',
    changes: site('order: { lessons: { first: [second] } }'),
    at: at(28),
    says: /lessons by the number of their part/,
  },
  {
    name: 'a name for a cell that is not there',
    changes: site('aliases: { flam-drga: galloping flam }'),
    at: at(23),
    says: /no cell "flam-drga"/,
    hint: /"flam-drag"/,
  },
  {
    name: 'a name for a cell that another has',
    changes: site('aliases: { flam-drag: single }'),
    at: at(23),
    says: /"single" is the name of the cell "single" already/,
  },
  {
    name: 'a lesson in a part that nobody has',
    changes: own('third', '3', '1'),
    at: 'content/lessons/03-x/01-third/index.mdx:3:7',
    says: /no part 3/,
    hint: /there are: 1; parts of your own are numbered from 20/,
  },
  {
    name: 'a lesson in a part of its own that is not set yet',
    changes: own('third', '20', '1'),
    at: 'content/lessons/20-x/01-third/index.mdx:3:7',
    says: /no part 20/,
    hint: /content\/site.yaml: parts: \[\{ number: 20,/,
  },
  {
    name: 'two lessons beside the plan at one place',
    changes: { ...own('fourth', '1', '3'), ...own('third', '1', '3') },
    at: 'content/lessons/01-x/03-third/index.mdx:4:8',
    says: /01-x\/03-fourth\/index.mdx is number 3 of part 1 already/,
  },
  {
    name: 'a bar under two ids',
    changes: {
      'content/exercises/slow-again.yaml': (GOOD[EXERCISE] as string)
        .replace('title: Slow', 'title: Again')
        .replace('cells: [flam-drag, flam-drag, flam-drag, flam-drag]', 'sticking: "{>lR LL R}4"'),
    },
    at: 'content/exercises/slow.yaml:3:8',
    says: /this is the bar of content\/exercises\/slow-again.yaml again/,
    hint: /keep one of the two/,
  },
];
