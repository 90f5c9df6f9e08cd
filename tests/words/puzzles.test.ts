import { describe, expect, it } from 'vitest';
import { gradePuzzle, PUZZLE_KINDS, solutionOf, type Answer, type Puzzle } from '../../src/core/index.ts';
import { answerSays, cardSays, PUZZLE_WORDS } from '../../src/words/puzzle/index.ts';
import type { PuzzleWords } from '../../src/words/puzzle/say.ts';
import { everyPuzzle } from '../core/puzzle/seeds.ts';

const nameOf = (cell: string) => cell.replaceAll('-', ' ');
const WORDS: Record<string, PuzzleWords<Puzzle, Answer, { wrong: string }, { hint: string }>> = PUZZLE_WORDS;
const UP_TO = process.env.LONG ? 6000 : 250;

/** Every text of a puzzle that stands on its card as something to play. */
function textsOf(puzzle: Puzzle): string {
  if ('shelf' in puzzle) return [...puzzle.shelf, ...puzzle.before, ...puzzle.after].map(({ text }) => text).join(' ');
  return puzzle.kind === 'fix' ? puzzle.strokes.join(' ') : '';
}

/** What is said of a puzzle: its card, its answer, and what is wrong with a few others. */
function saidOf(puzzle: Puzzle): string[] {
  const { task, rules } = cardSays(puzzle, nameOf);
  const answers =
    'shelf' in puzzle ? [[], [...puzzle.solution].reverse(), [...puzzle.solution, puzzle.shelf[0].id]] : [1, 2];
  const wrongs = answers.flatMap((answer) => gradePuzzle(puzzle, answer).wrongs);
  return [
    task,
    ...rules,
    WORDS[puzzle.kind].right?.(puzzle) ?? 'Right.',
    ...wrongs.map((wrong) => WORDS[puzzle.kind].wrong(puzzle, wrong, nameOf)),
    `${answerSays(puzzle, solutionOf(puzzle), nameOf)}.`,
  ];
}

describe.each(PUZZLE_KINDS)('what is said of %s', (kind) => {
  it('says of every rule about strokes whether grace notes, diddles, kicks and rests count', () => {
    const unsaid = [...everyPuzzle(kind, UP_TO)].flatMap((puzzle) => {
      const text = textsOf(puzzle);
      return cardSays(puzzle, nameOf).rules.flatMap((rule) => {
        const row = /in a row/.test(rule);
        const last = /last stroke/.test(rule);
        const wanted = [
          row && /[rl]/.test(text) && 'a grace note does not count',
          row && /[RL]{2}/.test(text) && 'a diddle counts as two strokes',
          row && /[KH]/.test(text) && 'a kick',
          row && /-/.test(text) && 'a rest',
          last && /[KH]/.test(text) && 'a kick is a stroke too',
          last && /[RLKH]{2}/.test(text) && 'are both on its count',
          /each led by/.test(rule) && /[rl][RL]/.test(text) && 'not its grace note',
        ];
        const missing = wanted.filter((part) => part && !rule.toLowerCase().includes(part));
        return missing.length ? [`${kind} ${puzzle.seed}: "${rule}" does not say: ${missing.join(', ')}`] : [];
      });
    });
    expect(unsaid).toEqual([]);
  });

  it('reads as a sentence', () => {
    const odd = [...everyPuzzle(kind, UP_TO)].flatMap((puzzle) =>
      saidOf(puzzle).filter((text) => {
        const numbers = text.match(/\bnumber \d|undefined|NaN|null|\[object|\b(\d*[^1]|)1th\b| {2}|\.\.|,,| ,|\{|\}/);
        const mixed =
          /\b(one|two|three|four|five|six|seven|eight|nine|ten|\w+teen|eleven|twelve) of \d+\b(?! answers)/i.test(text);
        return numbers || mixed || !/^[“A-Z0-9a-z].*[.?!]$/.test(text);
      }),
    );
    expect(odd).toEqual([]);
  });
});

it('names the place of a cell in a row by its ordinal, however long the row is', () => {
  const tasks = [...everyPuzzle('start', UP_TO)].map((puzzle) => cardSays(puzzle, nameOf).task);
  expect(tasks.filter((task) => !/the (\w+(st|nd|rd|th)|\d+th) cell/.test(task))).toEqual([]);
  expect(tasks.some((task) => /the 1[3-9]th cell/.test(task))).toBe(true);
});
