import { GOOD, LESSON } from '../plant.ts';
import { changed, type Planted } from './planted.ts';

/** In where files stand. */
export const PLACES: Planted[] = [
  {
    name: 'a lesson in another folder than its id',
    changes: { [LESSON]: null, 'content/lessons/01-one/01-frist/index.mdx': GOOD[LESSON] },
    at: 'content/lessons/01-one/01-frist/index.mdx:2:5',
    says: /id is "first", but the folder is "01-frist"/,
  },
  {
    name: 'a lesson in a part without one',
    changes: {
      [LESSON]: null,
      'content/lessons/02-two/01-first/index.mdx': (GOOD[LESSON] as string).replace('part: 1', 'part: 2'),
    },
    at: 'content/lessons/02-two/01-first/index.mdx:3:7',
    says: /there is no part 2/,
  },
  {
    name: 'a lesson twice in the list of the course',
    changes: changed('content/course.yaml', '[first]', '[first, first]'),
    at: 'content/course.yaml:5:18',
    says: /in the list twice/,
  },
  {
    name: 'a file of another kind',
    changes: { 'content/cells/kick.yml': 'name: kick\nsticking: K\n' },
    at: 'content/cells/kick.yml',
    says: /does not belong here/,
    hint: /end in .yaml/,
  },
  {
    name: 'a name that cannot be an address',
    changes: { 'content/cells/Flam Drag.yaml': 'name: x\nsticking: R\n' },
    at: 'content/cells/Flam Drag.yaml',
    says: /cannot be an address/,
  },
  { name: 'a site without its file', changes: { 'content/site.yaml': null }, at: 'content/site.yaml', says: /missing/ },
  {
    name: 'cautions that lead nowhere',
    changes: { 'content/pages/hearing.md': null },
    at: 'content/pages/hearing.md',
    says: /every caution leads to it/,
  },
];
