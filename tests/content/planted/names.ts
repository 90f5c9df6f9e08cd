import { EXERCISE, LESSON } from '../plant.ts';
import { changed, also, exercise, here, type Planted } from './planted.ts';

/** In what is named. */
export const NAMES: Planted[] = [
  {
    name: 'an exercise that is not there',
    changes: also('<Exercise id="slwo" />'),
    at: here(11),
    says: /no exercise "slwo"/,
    hint: /"slow"/,
  },
  {
    name: 'a term that is not there',
    changes: also('A <Term id="cel">cell</Term>.'),
    at: here(9),
    says: /no term "cel"/,
    hint: /"cell"/,
  },
  {
    name: 'a rudiment that is not there',
    changes: also('<Rudiment id="flam-drags" />'),
    at: here(11),
    says: /no rudiment "flam-drags"/,
  },
  {
    name: 'a caution about something else',
    changes: also('<Caution about="feet">Rest.</Caution>'),
    at: here(10),
    says: /"about" is "feet"; it takes one of: hearing, wrists/,
  },
  {
    name: 'a term in the front matter',
    changes: changed(LESSON, '[cell]', '[cell, groove]'),
    at: `${LESSON}:12:15`,
    says: /no term "groove"/,
  },
  {
    name: 'a cell of an exercise',
    changes: exercise('[flam-drag, flam-drag,', '[flam-drag, flamdrag,'),
    at: `${EXERCISE}:3:20`,
    says: /no cell "flamdrag"/,
    hint: /"flam-drag"/,
  },
  {
    name: 'a term to see',
    changes: { 'content/glossary/flam.yaml': 'term: flam\nsays: One note.\nsee: [drag]\n' },
    at: 'content/glossary/flam.yaml:3:7',
    says: /no term "drag"/,
  },
];
