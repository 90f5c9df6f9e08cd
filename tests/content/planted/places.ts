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
    name: 'a lesson in another place than the plan has',
    changes: {
      [LESSON]: null,
      'content/lessons/01-one/02-first/index.mdx': (GOOD[LESSON] as string).replace('order: 1', 'order: 2'),
    },
    at: 'content/lessons/01-one/02-first/index.mdx:4:8',
    says: /lesson 1 of part 1, not 2 of 1/,
  },
  {
    name: 'a lesson by another title than the plan has',
    changes: changed(LESSON, 'title: First', 'title: Last'),
    at: `${LESSON}:5:8`,
    says: /calls it "First"/,
  },
  {
    name: 'a lesson twice in the plan',
    changes: changed('content/course.yaml', 'id: second', 'id: first'),
    at: 'content/course.yaml:7:15',
    says: /twice/,
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
