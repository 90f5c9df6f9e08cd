import { TEXT_LINE } from '../plant.ts';
import { also, here, type Planted } from './planted.ts';

/** In the bars of a lesson. */
export const BARS: Planted[] = [
  {
    name: 'a bar that is short',
    changes: also('<Bar sticking="R L R L R L R L R L R L R L R" meter="4/4" grid={4} />'),
    at: here(6),
    says: /stops on 4 &; the a of 4 is empty: 15 of 16 sixteenths/,
  },
  {
    name: 'a bar that is long',
    changes: also('<Bar sticking="R L R L R" meter="4/4" grid={1} />'),
    at: here(6),
    says: /bar 2: stops on 1/,
  },
  {
    name: 'a sticking with a letter that is no stroke, with a caret under it',
    changes: also('<Bar sticking="R L Q L" meter="4/4" grid={1} />'),
    at: here(6 + 'sticking="'.length + 4),
    says: /"Q".*\n {2}R L Q L\n {6}\^/,
  },
  {
    name: 'a cell of a bar that is not there',
    changes: also('<Bar cells="flam-drag flam-drga" meter="4/4" grid={3} />'),
    at: here(6),
    says: /no cell "flam-drga"/,
    hint: /did you mean "flam-drag"/,
  },
  {
    name: 'both a sticking and cells',
    changes: also('<Bar sticking="R" cells="single" meter="4/4" grid={1} />'),
    at: here(),
    says: /<Bar> takes either sticking or cells/,
  },
  {
    name: 'neither meter nor head',
    changes: also('<Bar sticking="R L R L" />'),
    at: here(6),
    says: /how long is a bar/,
  },
  {
    name: 'a meter that there is not',
    changes: also('<Bar sticking="R" meter="4/5" grid={1} />'),
    at: here(6),
    says: /4\/5|lower|5/,
  },
  {
    name: 'a grid in quotes',
    changes: also('<Bar sticking="R L R L" meter="4/4" grid="1" />'),
    at: here(37),
    says: /"grid" is "1"; it takes slots a beat/,
    hint: /grid=\{1\}/,
  },
  {
    name: 'an attribute that is not known',
    changes: also('<Bar sticking="R L R L" metre="4/4" grid={1} />'),
    at: here(25),
    says: /<Bar> has no "metre"/,
    hint: /"meter"/,
  },
  {
    name: 'one id for two bars',
    changes: also(
      '<Bar id="a" sticking="R L R L" meter="4/4" grid={1} />\n\n<Bar id="a" sticking="R L R L" meter="4/4" grid={1} />',
    ),
    at: here(6, TEXT_LINE + 2),
    says: /"a" already/,
  },
];
