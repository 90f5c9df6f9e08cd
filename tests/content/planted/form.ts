import { BAR, LESSON } from '../plant.ts';
import { also, here, text, type Planted } from './planted.ts';

/** In the form of a lesson. */
export const FORM: Planted[] = [
  { name: 'an import', changes: also('import x from "y"'), at: here(), says: /imports and exports nothing/ },
  { name: 'an export', changes: also('export const x = 1'), at: here(), says: /imports and exports nothing/ },
  { name: 'an expression', changes: also('{1 + 1}'), at: here(), says: /is code/, hint: /backticks/ },
  { name: 'an expression in a sentence', changes: also('Two is {1 + 1}.'), at: here(8), says: /is code/ },
  {
    name: 'a spread',
    changes: also('<Exercise {...all} id="slow" />'),
    at: here(11),
    says: /among the attributes of <Exercise>/,
  },
  {
    name: 'a computed attribute',
    changes: also('<Exercise id={"sl" + "ow"} />'),
    at: here(11),
    says: /"id" is not a plain value/,
  },
  {
    name: 'a word that is not known',
    changes: also('<Excercise id="slow" />'),
    at: here(),
    says: /<Excercise> is not a word/,
    hint: /"Exercise"/,
  },
  { name: 'HTML', changes: also('<div>text</div>'), at: here(), says: /<div> is not a word/ },
  {
    name: 'a tag that is not closed',
    changes: also('<Caution about="wrists">'),
    at: here(),
    says: /cannot be read/,
    hint: /every tag is closed/,
  },
  {
    name: 'curly quotes around an attribute',
    changes: also('<Exercise id=“slow” />'),
    at: here(14),
    says: /cannot be read/,
    hint: /curly quotes/,
  },
  {
    name: 'a sticking in plain text',
    changes: also('Play {>lR LL R}4 now.'),
    at: here(7),
    says: /cannot be read/,
    hint: /backticks/,
  },
  {
    name: 'a word with text in it that takes none',
    changes: also('<Exercise id="slow">now</Exercise>'),
    at: here(),
    says: /<Exercise> holds nothing/,
  },
  {
    name: 'a word without its text',
    changes: also('<Caution about="wrists"></Caution>'),
    at: here(),
    says: /<Caution> is empty/,
  },
  {
    name: 'a bar inside a sentence',
    changes: also(`Look: ${BAR} there.`),
    at: here(7),
    says: /<Bar> stands inside a sentence/,
  },
  { name: 'a title in the text', changes: also('# First'), at: here(), says: /title of the page/, hint: /##/ },
  {
    name: 'an attribute twice',
    changes: also('<Exercise id="slow" id="slow" />'),
    at: here(21),
    says: /"id" is written twice/,
  },
  {
    name: 'a lesson without a bar',
    changes: text('<Question ask="How many?" answer={2}>Count.</Question>'),
    at: `${LESSON}:2:1`,
    says: /at least one bar/,
  },
  { name: 'a lesson without a question', changes: text(BAR), at: `${LESSON}:2:1`, says: /asks one question/ },
  {
    name: 'a lesson that is too long',
    changes: also(`${'line\n\n'.repeat(60)}`),
    at: here(1, 121),
    says: /the lesson has 13\d lines; 120/,
  },
];
