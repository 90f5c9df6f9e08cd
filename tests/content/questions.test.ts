import { describe, expect, test } from 'vitest';
import { answerOf, answersTaken, plainAnswer, type QuestionAttributes } from '../../src/curriculum/index.ts';
import { answerTo, questionBar } from '../helpers/questions.ts';

const SEVEN_ONE = '{>lR LL R}5 L';

describe('five flam drags and a single on sixteenths', () => {
  const about = questionBar(SEVEN_ONE);

  // Common practice: the starts of five cells of three on a ruler of sixteen.
  test('its cells start three sixteenths apart, the single on the a of 4', () => {
    const starts = [1, 2, 3, 4, 5, 6].map((of) => answerTo('cell-start', { of }, about));
    expect(starts).toEqual(['beat 1', 'the a of 1', 'the & of 2', 'the e of 3', 'beat 4', 'the a of 4']);
  });

  test('one slot of sixteen is left', () => {
    expect(answerTo('slots', {}, about)).toBe('16');
    expect(answerTo('cell-slots', { cell: 'flam-drag' }, about)).toBe('3');
    expect(answerTo('cells-fit', { cell: 'flam-drag' }, about)).toBe('5');
    expect(answerTo('slots-left', { cell: 'flam-drag' }, about)).toBe('1');
  });

  test('it comes home after three bars and sixteen cells', () => {
    expect(answerTo('bars-home', { cell: 'flam-drag' }, about)).toBe('3');
    expect(answerTo('cells-home', { cell: 'flam-drag' }, about)).toBe('16');
    expect(answerTo('bars-home', { cell: 'five' }, about)).toBe('5');
  });

  test('the strokes are counted by hand, grace notes among them', () => {
    // Each cell: the right hand twice, the left a grace note and a diddle.
    const counts = { right: 10, left: 16, hands: 26, feet: 0, all: 26, accents: 5, flams: 5, diddles: 5, graces: 5 };
    for (const [of, count] of Object.entries(counts)) expect(answerTo('strokes', { of }, about)).toBe(String(count));
  });

  test('the hand of a count is found', () => {
    expect(answerTo('hand-at', { at: '1' }, about)).toBe('right');
    expect(answerTo('hand-at', { at: '1 e' }, about)).toBe('left');
    expect(answerTo('hand-at', { at: '4 a' }, about)).toBe('left');
  });

  test('what the bar does not have is told', () => {
    expect(answerTo('hand-at', { at: '5' }, about)).toMatch(/"5" is no count of this bar/);
    expect(answerTo('hand-at', { at: '1', in: 2 }, about)).toMatch(/no bar 2/);
    expect(answerTo('cell-start', { of: 7 }, about)).toMatch(/of=\{1\} to of=\{6\}/);
    expect(answerTo('strokes', { of: 'thumbs' }, about)).toMatch(/a surface or one of: right, left/);
    expect(answerTo('slots-left', { cell: 'nine' }, about)).toMatch(/no cell "nine"/);
    expect(answerTo('slots', { of: 'right' }, about)).toMatch(/of says nothing beside/);
  });
});

describe('rows of one hand', () => {
  test('grace notes are counted: R L L before a flam is three lefts', () => {
    expect(answerTo('longest-run', {}, questionBar('R L L >lR', '4/4', 1))).toBe('3');
    expect(answerTo('longest-run', { of: 'right' }, questionBar('R L L >lR', '4/4', 1))).toBe('1');
  });

  test('feet and rests do not break a row, both hands lengthen both', () => {
    expect(answerTo('longest-run', { of: 'left' }, questionBar('L K - L', '4/4', 1))).toBe('2');
    expect(answerTo('longest-run', {}, questionBar('L R+L R R', '4/4', 1))).toBe('3');
  });

  test('a bar of feet has none', () => expect(answerTo('longest-run', {}, questionBar('K K K K', '4/4', 1))).toBe('0'));
});

test('both hands, and none', () => {
  const about = questionBar('R+L - R L', '4/4', 1);
  expect(answerTo('hand-at', { at: '1' }, about)).toBe('both');
  expect(answerTo('hand-at', { at: '2' }, about)).toBe('neither');
});

describe('an answer is taken however it is said', () => {
  const taken = (from: QuestionAttributes['from'], more: Partial<QuestionAttributes>, typed: string) => {
    const found = answerOf({ ask: '?', from, ...more }, questionBar(SEVEN_ONE));
    return found.ok && answersTaken(found.answer).includes(plainAnswer(typed));
  };

  test.each(['the a of 1', '1 a', '1a', ' The A of 1. '])('a count: %s', (typed) => {
    expect(taken('cell-start', { of: 2 }, typed)).toBe(true);
  });
  test.each(['the & of 2', '2 and', 'and of 2'])('an & in words: %s', (typed) => {
    expect(taken('cell-start', { of: 3 }, typed)).toBe(true);
  });
  test.each(['left', 'L', 'the left hand'])('a hand: %s', (typed) => {
    expect(taken('hand-at', { at: '1 e' }, typed)).toBe(true);
  });
  test.each(['5', 'five'])('a number: %s', (typed) => expect(taken('strokes', { of: 'flams' }, typed)).toBe(true));
  test.each(['4', 'fifteen', ''])('not another one: %s', (typed) =>
    expect(taken('strokes', { of: 'flams' }, typed)).toBe(false),
  );
});
