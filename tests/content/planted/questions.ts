import { BAR, QUESTION, TEXT_LINE } from '../plant.ts';
import { here, text, type Planted } from './planted.ts';

/** In questions. */
export const QUESTIONS: Planted[] = [
  {
    name: 'a question before any bar',
    changes: text(`${QUESTION}\n\n${BAR}`),
    at: here(46),
    says: /no bar to compute it from/,
  },
  {
    name: 'an answer given and computed',
    changes: text(`${BAR}\n\n<Question ask="Which?" from="slots" answer="16">why</Question>`),
    at: here(1, TEXT_LINE + 2),
    says: /either from.*or answer/,
  },
  {
    name: 'a question that does not say what of',
    changes: text(`${BAR}\n\n<Question ask="Which?" from="strokes">why</Question>`),
    at: here(24, TEXT_LINE + 2),
    says: /needs of=/,
  },
  {
    name: 'a cell that the phrase does not have',
    changes: text(`${BAR}\n\n<Question ask="Where?" from="cell-start" of={2}>why</Question>`),
    at: here(42, TEXT_LINE + 2),
    says: /of=\{1\} to of=\{1\}/,
  },
  {
    name: 'choices without the answer',
    changes: text(`${BAR}\n\n<Question ask="How many?" from="slots" choices="8 | 12">why</Question>`),
    at: here(40, TEXT_LINE + 2),
    says: /"16", is not among the choices/,
  },
  {
    name: 'a bar by a name that nothing has',
    changes: text(`${BAR}\n\n<Question ask="How many?" from="slots" bar="slwo">why</Question>`),
    at: here(40, TEXT_LINE + 2),
    says: /is "slwo"/,
    hint: /"slow"/,
  },
];
