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
    says: /1 quarter too many: the bar is full after 4, and here are 5/,
    hint: /the sticking in 4\/4 with grid 1: quarters, 4 a bar/,
  },
  {
    name: 'three bars and one eighth of 7/8',
    changes: also('<Bar sticking="{R}7 {L}7 {R}7 L" meter="7/8" grid={1} />'),
    at: here(6),
    says: /1 eighth too many: 3 bars are full after 21, and here are 22/,
  },
  {
    name: 'a third bar that is nearly full',
    changes: also('<Bar sticking="{R}8 R R R" meter="4/4" grid={1} />'),
    at: here(6),
    says: /bar 3: stops on 3; beat 4 is empty: 3 of 4 quarters/,
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
    changes: also('<Bar sticking="R L R L" metter="4/4" grid={1} />'),
    at: here(25),
    says: /<Bar> has no "metter"/,
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
