import { EXERCISE, GOOD } from '../plant.ts';
import { changed, cell, exercise, type Planted } from './planted.ts';

/** In the fields of files. */
export const FIELDS: Planted[] = [
  {
    name: 'a field that is missing',
    changes: exercise('title: Slow\n', ''),
    at: `${EXERCISE}:1:1`,
    says: /"title" is missing; it takes a short title/,
  },
  {
    name: 'a field that is not known',
    changes: exercise('title:', 'tittle: x\ntitle:'),
    at: `${EXERCISE}:1:1`,
    says: /an exercise has no "tittle"/,
    hint: /"title"/,
  },
  {
    name: 'a tempo the wrong way round',
    changes: exercise('from: 40, to: 80', 'from: 90, to: 80'),
    at: `${EXERCISE}:7:16`,
    says: /"tempo.from" is 90; it takes a slower tempo/,
  },
  {
    name: 'a tempo out of reach',
    changes: exercise('from: 40', 'from: 10'),
    at: `${EXERCISE}:7:16`,
    says: /from 30 to 300/,
  },
  {
    name: 'a lead that is not known',
    changes: exercise('[right, left,', '[right, lefty,'),
    at: `${EXERCISE}:6:16`,
    says: /"leads\[2\]" is "lefty"/,
    hint: /"left"/,
  },
  {
    name: 'an exercise that does not add up',
    changes: exercise('grid: 3', 'grid: 4'),
    at: `${EXERCISE}:3:8`,
    says: /12 of 16 sixteenths/,
  },
  {
    name: 'a cell with a bar line',
    changes: cell('name: x\nsticking: "R | L"\n'),
    at: 'content/cells/extra.yaml:2:11',
    says: /plain row of slots|bar's end|bar line/,
  },
  {
    name: 'a cell that does not parse',
    changes: cell('name: x\nsticking: rR\n'),
    at: 'content/cells/extra.yaml:2:11',
    says: /\^/,
  },
  {
    name: 'a sticking without quotes',
    changes: cell('name: x\nsticking: >lR LL R\n'),
    at: 'content/cells/extra.yaml:2:12',
    says: /not YAML/,
    hint: /quotes: sticking: ">lR LL R"/,
  },
  {
    name: 'a rudiment whose hands say something else',
    changes: changed('content/rudiments/flam-drag.yaml', 'hands: lR L L R', 'hands: lR L R R'),
    at: 'content/rudiments/flam-drag.yaml:4:8',
    says: /"hands" says lR L R R.*plays lR L L R/,
  },
  {
    name: 'a rudiment that does not fill its bars',
    changes: changed('content/rudiments/flam-drag.yaml', 'repeat: 2', 'repeat: 1'),
    at: 'content/rudiments/flam-drag.yaml:8:9',
    says: /6 of 12 triplets/,
    hint: /repeat and rest/,
  },
  {
    name: 'a rudiment that does not parse',
    changes: changed('content/rudiments/flam-drag.yaml', '>lR LL R >rL', '>lR LL R >lL'),
    at: 'content/rudiments/flam-drag.yaml:5:11',
    says: /\^/,
  },
  {
    name: 'one number for two rudiments',
    changes: { 'content/rudiments/other.yaml': GOOD['content/rudiments/flam-drag.yaml'] },
    at: 'content/rudiments/other.yaml:1:9',
    says: /"30" is the number of content\/rudiments\/flam-drag.yaml already/,
  },
];
