/** Sentences about one puzzle: what its card asks for, what is wrong with an answer, what a hint says. */
import {
  saySlot,
  slotNames,
  type FixRule,
  type LayHint,
  type LayPuzzle,
  type Puzzle,
  type PuzzleCell,
  type ResolvesPuzzle,
  type SlotIndex,
  type StartPuzzle,
  type WhichPuzzle,
  type Wrong,
} from '../core/index.ts';
import { inSentence, sayBar } from './labels.ts';
import { numberWord, quoted, slotWords } from './numbers.ts';
import { BAR_WORD, COUNTING } from './site.ts';

/** What sentences need besides the puzzle: names of cells. */
export interface Saying {
  /** A cell's name by its id. */
  nameOf: (cell: string) => string;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const named = (name: string): string => `the ${quoted(name)}`;
/** Ordinals beyond those that have words of their own here, 13th to 31st and so on. */
const ordinalFigures = new Intl.PluralRules('en', { type: 'ordinal' });
const ORDINAL_ENDS: Partial<Record<Intl.LDMLPluralRule, string>> = { one: 'st', two: 'nd', few: 'rd', other: 'th' };
const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth', 'eleventh', 'twelfth']; // prettier-ignore
const ordinal = (n: number): string => ORDINALS[n - 1] ?? `${n}${ORDINAL_ENDS[ordinalFigures.select(n)]}`;
const HANDS = { R: 'right', L: 'left' };

/** Slots as the trade names them: "one sixteenth", "three sixteenths". */
function slotsSay({ meter, grid }: Puzzle, count: number): string {
  const { one, many } = slotWords(meter, grid);
  return `${numberWord(count)} ${count === 1 ? one : many}`;
}

/**
 * A slot as one says it, with its bar where there are several.
 *
 * @example placeSays(makePuzzle('fill', 7), 15) // 'the a of 4'
 */
export function placeSays(puzzle: Puzzle, slot: SlotIndex): string {
  const { meter, grid, barSlots, slots } = puzzle;
  const count = saySlot(meter, grid, slot % barSlots, COUNTING);
  return slots > barSlots && puzzle.kind !== 'resolves'
    ? `${count} in ${BAR_WORD} ${Math.floor(slot / barSlots) + 1}`
    : count;
}

/** What a card asks for: a sentence that says what to do, then the rules, a sentence each. */
export interface CardWords {
  task: string;
  rules: string[];
}

/** The card of a puzzle. */
export function cardSays(puzzle: Puzzle, saying: Saying): CardWords {
  const card = cardOf(puzzle, saying);
  return { task: sayBar(card.task), rules: card.rules.map((rule) => sayBar(rule)) };
}

function cardOf(puzzle: Puzzle, saying: Saying): CardWords {
  switch (puzzle.kind) {
    case 'start':
      return { task: startTask(puzzle, saying), rules: [] };
    case 'fix':
      return { task: 'One stroke breaks the rule. Find it.', rules: [ruleSays(puzzle.asked, saying)] };
    case 'resolves':
      return { task: resolvesTask(puzzle, saying), rules: [] };
    case 'which':
      return { task: whichTask(puzzle, saying), rules: [] };
    default:
      return { task: layTask(puzzle), rules: layRules(puzzle, saying) };
  }
}

/** " in triplets", where a slot is called a partial and the word would be missing. */
function tupletsSay({ meter, grid }: Puzzle): string {
  const { many } = slotNames(meter, grid);
  return slotWords(meter, grid).many === many ? '' : ` in ${many}`;
}

function layTask(puzzle: LayPuzzle): string {
  const { meter, slots, barSlots, gap, kind } = puzzle;
  const bars = slots / barSlots;
  const whole = `${bars === 1 ? 'A bar' : `${capital(numberWord(bars))} bars`} of ${meter}${tupletsSay(puzzle)}`;
  if (kind === 'missing') return `${whole} with a hole of ${slotsSay(puzzle, gap)}. Fill it from the shelf.`;
  if (kind === 'ear') return `${whole}, ${slotsSay(puzzle, slots)}. Hear it, and lay what you hear.`;
  return `${whole}: ${slotsSay(puzzle, slots)}. Fill ${bars === 1 ? 'it' : 'them'} from the shelf.`;
}

function layRules(puzzle: LayPuzzle, saying: Saying): string[] {
  const { rules, uses } = puzzle;
  const places = (slots: readonly SlotIndex[]): string => inSentence(slots.map((slot) => placeSays(puzzle, slot)));
  return [
    ...(rules.first ? [`The first cell is ${named(saying.nameOf(rules.first))}.`] : []),
    ...(rules.last ? [`The last cell is ${named(saying.nameOf(rules.last))}.`] : []),
    ...(rules.lastStrokeOn === undefined
      ? []
      : [`The last stroke is on ${placeSays(puzzle, rules.lastStrokeOn)}.${lastStrokeNote(puzzle)}`]),
    ...(rules.maxRun === undefined ? [] : [`${runRule(rules.maxRun)}${runNote(puzzle)}`]),
    ...(rules.accentOn ? [`There is an accent on ${places(rules.accentOn)}.`] : []),
    ...(rules.noAccentOn ? [`There is no accent on ${places(rules.noAccentOn)}.`] : []),
    ...(rules.withinBars ? ['No cell lies over a bar line.'] : []),
    ...uses.flatMap(({ cell, min }) => (min ? [`Use ${named(saying.nameOf(cell))} exactly ${times(min)}.`] : [])),
  ];
}

const times = (count: number): string => (count === 1 ? 'once' : count === 2 ? 'twice' : `${numberWord(count)} times`);
const runRule = (most: number): string =>
  most === 1 ? 'The hands take turns: none plays twice in a row.' : `No hand plays ${numberWord(most + 1)} in a row.`;

/** What of a puzzle's cells a rule about strokes has to say whether it counts. */
function strokesIn({ shelf, before, after }: LayPuzzle) {
  const slots = [...shelf, ...before, ...after].flatMap(({ text }) => text.split(' '));
  return {
    graces: slots.some((slot) => /[rl]/.test(slot)),
    feet: slots.some((slot) => /[KH]/.test(slot)),
    rests: slots.includes('-'),
    diddles: slots.some((slot) => /[RL]{2}/.test(slot)),
    shared: slots.some((slot) => /[RLKH]{2}/.test(slot)),
  };
}

/** What counts in a row of one hand, as far as the cells let one ask. */
function runNote(puzzle: LayPuzzle): string {
  const { graces, feet, rests, diddles } = strokesIn(puzzle);
  const between = [...(feet ? ['a kick'] : []), ...(rests ? ['a rest'] : [])];
  return noteOf([
    ...(graces ? ['a grace note does not count'] : []),
    ...(diddles ? ['a diddle counts as two strokes'] : []),
    ...(between.length ? [`${inSentence(between, 'or')} in between does not end the row`] : []),
  ]);
}

/** What counts as the last stroke, as far as the cells let one ask. */
function lastStrokeNote(puzzle: LayPuzzle): string {
  const { feet, shared } = strokesIn(puzzle);
  const { one } = slotWords(puzzle.meter, puzzle.grid);
  return noteOf([
    ...(feet ? ['a kick is a stroke too'] : []),
    ...(shared ? [`two strokes that share ${/^[aeiou]/.test(one) ? 'an' : 'a'} ${one} are both on its count`] : []),
  ]);
}

/** Clauses as one sentence, each after a comma. */
const noteOf = (clauses: readonly string[]): string =>
  clauses.length
    ? ` ${capital(clauses.map((clause, i) => (i && i === clauses.length - 1 ? `and ${clause}` : clause)).join(', '))}.`
    : '';

/**
 * How often the shelf has a cell; nothing where it may be used at will.
 *
 * @example limitSays(makePuzzle('fill', 6), 'kick') // 'at most twice'
 */
export function limitSays({ uses }: LayPuzzle, cell: string): string {
  const limit = uses.find((use) => use.cell === cell);
  if (limit?.max === undefined) return '';
  return limit.min === limit.max ? times(limit.max) : `at most ${times(limit.max)}`;
}

function startTask(puzzle: StartPuzzle, { nameOf }: Saying): string {
  const { ask, cells, pickup } = puzzle;
  const early = pickup ? ` The first cell starts ${slotsSay(puzzle, pickup)} before beat 1.` : '';
  return `In ${puzzle.meter}, counted in ${slotNames(puzzle.meter, puzzle.grid).many}: on which count does the ${ordinal(ask + 1)} cell, ${named(nameOf(cells[ask].id))}, start?${early}`;
}

function resolvesTask(puzzle: ResolvesPuzzle, { nameOf }: Saying): string {
  const { cell, meter } = puzzle;
  return `${capital(named(nameOf(cell.id)))}, ${slotsSay(puzzle, cell.slots)} long, goes round and round in ${meter}${tupletsSay(puzzle)}. After how many bars does it start on beat 1 again?`;
}

function whichTask({ about, ask, heard: [{ text }] }: WhichPuzzle, { nameOf }: Saying): string {
  if (about === 'width') return `One plays its flams closed, the other open. Which has the ${ask} ones?`;
  if (about === 'lead')
    return `One is led by the right hand, the other by the left. Which is led by the ${ask}?${/[rl]/.test(text) ? GRACE_LEADS : ''}`;
  return `Which of the two is made of ${named(nameOf(ask))}?`;
}

/** Said where cells with grace notes are led by a hand. */
const GRACE_LEADS = ' The main stroke says which hand leads, not its grace note.';

function ruleSays(asked: FixRule, { nameOf }: Saying): string {
  switch (asked.rule) {
    case 'hand-to-hand':
      return 'The hands take turns, stroke by stroke.';
    case 'no-more-than':
      return runRule(asked.most);
    case 'accents':
      return `Every ${ordinal(asked.every)} stroke has an accent, from beat 1 on, and no other has one.`;
    case 'cell':
      return `It is ${named(nameOf(asked.cell.id))} over and over (${asked.cell.text})${asked.lead === 'alternating' ? ', each led by the hand that did not lead the one before.' : ', each led by the same hand.'}${/[rl]/.test(asked.cell.text) ? GRACE_LEADS : ''}`;
  }
}

/** Said where an answer is asked for before there is one. */
export const NOTHING_CHOSEN = 'Choose an answer first.';

/** What is wrong with an answer, and where. */
export function puzzleWrongSays(puzzle: Puzzle, wrong: Wrong, saying: Saying): string {
  return sayBar(capital(wrongOf(puzzle, wrong, saying)));
}

function wrongOf(puzzle: Puzzle, wrong: Wrong, saying: Saying): string {
  const place = (slot: SlotIndex): string => placeSays(puzzle, slot);
  switch (wrong.wrong) {
    case 'not-on-shelf':
      return `${named(saying.nameOf(wrong.cell))} is not on the shelf.`;
    case 'short':
      return `${slotsSay(puzzle, wrong.left)} short: ${place(wrong.slot)} is the first that is empty.`;
    case 'long':
      return `${slotsSay(puzzle, wrong.over)} too many.`;
    case 'too-often':
      return `${named(saying.nameOf(wrong.cell))}: used ${times(wrong.used)}, and ${times(wrong.most)} is the most.`;
    case 'too-seldom':
      return `${named(saying.nameOf(wrong.cell))}: used ${wrong.used ? times(wrong.used) : 'not at all'}, and the card asks for ${times(wrong.least)}.`;
    case 'first':
      return `the first cell is ${named(saying.nameOf(wrong.found))}, not ${named(saying.nameOf(wrong.wanted))}.`;
    case 'last':
      return `the last cell is ${named(saying.nameOf(wrong.found))}, not ${named(saying.nameOf(wrong.wanted))}.`;
    case 'no-accent':
      return `there is no accent on ${place(wrong.slot)}.`;
    case 'accent':
      return `there is an accent on ${place(wrong.slot)}.`;
    case 'last-stroke':
      return `the last stroke is on ${place(wrong.found)}, not on ${place(wrong.wanted)}.`;
    case 'run':
      return `${Array.from({ length: wrong.length }, () => wrong.hand).join(' ')} from ${place(wrong.slot)}: the ${HANDS[wrong.hand]} hand plays ${numberWord(wrong.length)} in a row.`;
    case 'over-bar-line':
      return `${named(saying.nameOf(wrong.cell))} on ${place(wrong.slot)} lies over the bar line.`;
    case 'sound':
      return `it sounds different from ${place(wrong.slot)} on.`;
    case 'start':
      return startWrong(puzzle as StartPuzzle, wrong.by);
    case 'not-it':
      return `that stroke is not it: with ${place(wrong.slot)} changed, the rule would still be broken.`;
    case 'no-home':
      return homeWrong(puzzle as ResolvesPuzzle, wrong, saying);
    case 'home-sooner':
      return `it starts on beat 1 then, but it has done so before.`;
    case 'other':
      return otherSays(puzzle as WhichPuzzle);
  }
}

function startWrong({ cells, ask, pickup }: StartPuzzle, by: number): string {
  const before = cells.slice(0, ask).map(({ slots }) => slots);
  const sum = `The cells before it take ${before.join(' + ')}`;
  const early = pickup ? `, and the first ${pickup === 1 ? 'one comes' : `${pickup} come`} before beat 1` : '';
  return `${by < 0 ? 'too early' : 'too late'}. ${sum}${early}.`;
}

function homeWrong(
  puzzle: ResolvesPuzzle,
  { bars, cells, over }: { bars: number; cells: number; over: number },
  { nameOf }: Saying,
): string {
  const all = bars * puzzle.barSlots;
  return `after ${bars === 1 ? 'one bar' : `${numberWord(bars)} bars`} there are ${slotsSay(puzzle, all)}: ${named(nameOf(puzzle.cell.id))} fits in ${times(cells)} and ${numberWord(over)} ${over === 1 ? 'is' : 'are'} over, so beat 1 falls inside a cell.`;
}

function otherSays({ about }: WhichPuzzle): string {
  if (about === 'width') return 'that is the other one. A closed flam is nearly one stroke; an open one is two.';
  if (about === 'lead') return 'that is the other one. Listen for the side the first stroke of each cell comes from.';
  return 'that is the other one. Count the strokes of one beat, and listen for what falls between them.';
}

/** What a hint says. */
export function hintSays(puzzle: LayPuzzle, hint: LayHint, saying: Saying): string {
  return sayBar(capital(hintOf(puzzle, hint, saying)));
}

function hintOf(puzzle: LayPuzzle, hint: LayHint, saying: Saying): string {
  switch (hint.hint) {
    case 'count':
      return `count first: ${filledSays(hint)} starts on ${placeSays(puzzle, hint.next)}.`;
    case 'left':
      return `${slotsSay(puzzle, hint.left)} ${hint.left === 1 ? 'is' : 'are'} left. ${fittingSays(puzzle, hint.fitting, saying)}`;
    case 'cell':
      return `lay ${named(saying.nameOf(hint.cell))} next.`;
    case 'back':
      return `no answer begins like this. Take ${hint.cells === 1 ? 'the last cell' : `the last ${numberWord(hint.cells)} cells`} back.`;
    case 'done':
      return 'there is nothing left to do: it is right.';
  }
}

const filledSays = ({ filled, of }: { filled: number; of: number }): string =>
  filled
    ? `${partOf(filled, of)} ${filled === 1 ? 'is' : 'are'} filled, and the next cell`
    : `nothing is laid yet, ${numberWord(of)} are to be filled, and your first cell`;

/** Some of all: both numbers as words or both in figures. */
export const partOf = (some: number, of: number): string =>
  numberWord(of) === String(of) ? `${some} of ${of}` : `${numberWord(some)} of ${numberWord(of)}`;

/** Which cells are short enough, where not all of them are. */
function fittingSays({ shelf }: LayPuzzle, fitting: readonly string[], { nameOf }: Saying): string {
  if (fitting.length === shelf.length) return 'Every cell on the shelf is short enough.';
  return `Short enough: ${inSentence(
    fitting.map((cell) => quoted(nameOf(cell))),
    'or',
  )}.`;
}

/** Another answer that would have been right. */
export const anotherSays = (cells: readonly string[], { nameOf }: Saying): string =>
  `Another: ${cells.map((cell) => quoted(nameOf(cell))).join(', ')}.`;

/** What is said of a right answer: whether there were others. */
export function puzzleRightSays(puzzle: Puzzle): string {
  const { answers } = puzzle.difficulty;
  if (!('shelf' in puzzle) || puzzle.kind === 'ear') return 'Right.';
  return answers === 1n
    ? 'Right, and there is no other answer.'
    : `Right. It is one of ${answers < 17n ? numberWord(Number(answers)) : answers.toLocaleString('en')} answers.`;
}

/** An answer in words: the cells by name, or the count, the bars, the one of two. */
export function answerSays(puzzle: Puzzle, answer: readonly string[] | number, saying: Saying): string {
  if (typeof answer !== 'number') return answer.map((cell) => quoted(saying.nameOf(cell))).join(', ');
  if (puzzle.kind === 'resolves') return answer === 1 ? sayBar('one bar') : sayBar(`${numberWord(answer)} bars`);
  if (puzzle.kind === 'which') return answer === 1 ? 'the first' : 'the second';
  return puzzle.kind === 'start' ? saySlot(puzzle.meter, puzzle.grid, answer, COUNTING) : placeSays(puzzle, answer);
}

/**
 * A cell by its name, its sticking and its length.
 *
 * @example cellSays(makePuzzle('fill', 6), { id: 'kick', text: 'K', slots: 1 }, 'kick') // 'kick, K, one sixteenth'
 */
export const cellSays = (puzzle: Puzzle, { text, slots }: PuzzleCell, name: string): string =>
  `${name}, ${text}, ${slotsSay(puzzle, slots)}`;

export { slotsSay };
