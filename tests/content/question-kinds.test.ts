import { describe, expect, test } from 'vitest';
import {
  answerOf,
  answersTaken,
  missesOf,
  QUESTION_KINDS,
  QUESTIONS,
  type QuestionAttributes,
} from '../../src/curriculum/index.ts';
import { answerTo, questionBar } from '../helpers/questions.ts';

const FLAM_DRAGS = questionBar('{>lR LL R}5 L');

describe('how a stick moves', () => {
  const fourStrokes = questionBar('>R >R >R R R R R >R', '4/4', 2);

  // By the definition of the four strokes: the height a stroke begins at and the height of the next by that hand.
  test.each([
    ['1', 'full stroke'],
    ['2', 'down stroke'],
    ['2 &', 'tap'],
    ['4', 'up stroke'],
    ['4 &', 'full stroke'],
  ])('on %s it is a %s', (at, says) => expect(answerTo('motion-at', { at }, fourStrokes)).toBe(says));

  test('where both hands play, one is named', () => {
    const both = questionBar('>R+L R+L', '2/4', 1);
    expect(answerTo('motion-at', { at: '1', of: 'right' }, both)).toBe('down stroke');
    expect(answerTo('motion-at', { at: '2', of: 'right' }, both)).toBe('up stroke');
    expect(answerTo('motion-at', { at: '2', of: 'left' }, both)).toBe('tap');
  });

  test('a foot does not move a stick', () =>
    expect(answerTo('motion-at', { at: '1' }, questionBar('K', '1/4', 1))).toMatch(/no hand plays on "1"/));
});

describe('what stands on a count', () => {
  const mixed = questionBar('>lR LL (R) K - Rz L llR@floor', '4/4', 2);

  test.each([
    ['1', 'flam'],
    ['1 &', 'diddle'],
    ['2', 'ghost note'],
    ['2 &', 'foot'],
    ['3', 'nothing'],
    ['3 &', 'buzz'],
    ['4', 'single'],
    ['4 &', 'drag'],
  ])('%s: %s', (at, says) => expect(answerTo('kind-at', { at }, mixed)).toBe(says));

  test('the surface of a stroke, and of the grace note before it', () => {
    const moved = questionBar('>l@crash:R+K R@floor', '2/4', 1);
    expect(answerTo('surface-at', { at: '1' }, moved)).toBe('snare');
    expect(answerTo('surface-at', { at: '1', of: 'graces' }, moved)).toBe('crash');
    expect(answerTo('surface-at', { at: '1', of: 'kicks' }, moved)).toBe('kick');
    expect(answerTo('surface-at', { at: '2' }, moved)).toBe('floor tom');
    expect(answerTo('surface-at', { at: '2', of: 'graces' }, moved)).toMatch(/nothing of that/);
  });

  test('the hand of the grace note is the other one', () => {
    expect(answerTo('grace-at', { at: '1' }, FLAM_DRAGS)).toBe('left');
    expect(answerTo('grace-at', { at: '1 e' }, FLAM_DRAGS)).toMatch(/no grace note/);
  });

  test('the hand that plays with the count, not a part of the slot later', () =>
    expect(answerTo('hand-at', { at: '1' }, questionBar('L>R', '1/4', 1))).toBe('left'));

  // Common practice: under five flam drags the foot meets a flam, a diddle, a single and a flam.
  test('the foot meets the first, second, third and first slot of the cell', () => {
    const places = ['1', '2', '3', '4'].map((at) => answerTo('place-at', { at }, FLAM_DRAGS));
    expect(places).toEqual(['the first', 'the second', 'the third', 'the first']);
  });
});

describe('distances', () => {
  test('from accent to accent, from cell to cell', () => {
    expect(answerTo('gap', { at: '1', of: 'accents' }, FLAM_DRAGS)).toBe('3');
    expect(answerTo('gap', { at: '4', of: 'accents' }, FLAM_DRAGS)).toBe('4');
    expect(answerTo('gap', { at: '4', of: 'cells' }, FLAM_DRAGS)).toBe('3');
  });

  test('from the second stroke of a diddle it is half a slot less', () =>
    expect(answerTo('gap', { at: '1 e', of: 'left' }, questionBar('{R LL R L}4'))).toBe('1.5'));

  test('over the bar line to a surface', () => {
    const late = questionBar('- - - - - - - R@crash | - - L@snare - - - - -', '4/4', 2);
    expect(answerTo('gap', { at: '4 &', of: 'snare' }, late)).toBe('3');
    expect(answerTo('rests-after', { at: '4 &' }, late)).toBe('2');
  });

  test('silence', () => {
    const hole = questionBar('R L R L R L - - - - - L R L R L');
    expect(answerTo('rests-after', { at: '2 e' }, hole)).toBe('5');
    expect(answerTo('rests-after', { at: '1' }, hole)).toBe('0');
    expect(answerTo('rests-after', { at: '4', of: 'right' }, hole)).toBe('1');
  });

  test('the next of a kind, round the end', () => {
    expect(answerTo('next', { of: 'diddles' }, FLAM_DRAGS)).toBe('the e of 1');
    expect(answerTo('next', { of: 'flams', at: '4' }, FLAM_DRAGS)).toBe('beat 1, bar 2');
    expect(answerTo('next', { of: 'up', at: '1' }, questionBar('{>R L R L}4'))).toBe('the & of 1');
    expect(answerTo('next', { of: 'china' }, FLAM_DRAGS)).toMatch(/no such stroke/);
  });
});

describe('counting', () => {
  test('the name of a slot by its number', () => {
    expect(answerTo('slot-name', { of: 14 }, FLAM_DRAGS)).toBe('the e of 4');
    expect(answerTo('slot-name', { of: 17 }, FLAM_DRAGS)).toMatch(/of=\{1\} to of=\{16\}/);
  });

  test('where you are some slots later', () => {
    expect(answerTo('count-after', { at: '1 &', of: 7 }, FLAM_DRAGS)).toBe('the e of 3');
    expect(answerTo('count-after', { at: '4 a', of: 1 }, FLAM_DRAGS)).toBe('beat 1, bar 2');
    expect(answerTo('count-after', { at: '1', of: 33 }, FLAM_DRAGS)).toBe('the e of 1, bar 3');
  });

  test('slots over several bars, and what is left of them', () => {
    expect(answerTo('slots', { over: 2 }, FLAM_DRAGS)).toBe('32');
    expect(answerTo('slots-left', { cell: 'flam-drag flam-drag kick', over: 2 }, FLAM_DRAGS)).toBe('4');
    expect(answerTo('cells-fit', { cell: 'five', over: 2 }, FLAM_DRAGS)).toBe('6');
    expect(answerTo('slots-left', { cell: 'flam-drag nine' }, FLAM_DRAGS)).toMatch(/no cell "nine"/);
  });

  test('a bar lasts as long whatever it is cut into', () => {
    const rulers = questionBar('R L R L R L R L | [4/4:6] {R L}12', '4/4', 2);
    expect([1, 2].map((bar) => answerTo('bar-seconds', { of: 60, in: bar }, rulers))).toEqual(['4', '4']);
    // A dotted quarter at 60 lasts a second, and 6/8 has two.
    expect(answerTo('bar-seconds', { of: 60 }, questionBar('R L R L R L', '6/8', 3))).toBe('2');
  });

  // G. Toussaint, The Euclidean Algorithm Generates Traditional Musical Rhythms, 2005: E(3,8) is 3 3 2, E(5,16) 3 3 3 3 4.
  test('an even spread has as many longer gaps as slots are left over', () => {
    expect(answerTo('longer-gaps', { of: 3 }, questionBar('R L R L R L R L', '4/4', 2))).toBe('2');
    expect(answerTo('longer-gaps', { of: 5 }, FLAM_DRAGS)).toBe('1');
  });
});

describe('strokes by surface, by bar and by what begins a slot', () => {
  const two = questionBar('R L R L | {lR@floor LL R@floor L}1', '4/4', 1);
  test.each([
    [{ of: 'floor' }, '2'],
    [{ of: 'all', in: 1 }, '4'],
    [{ of: 'all', in: 2 }, '6'],
    [{ of: 'starts', in: 2 }, '4'],
  ])('%j: %s', (more, count) => expect(answerTo('strokes', more, two)).toBe(count));
});

describe('orders', () => {
  const six = questionBar([
    ['kick', 'K'],
    ...Array.from({ length: 3 }, (): [string, string] => ['flam-drag', '>lR LL R']),
    ...Array.from({ length: 2 }, (): [string, string] => ['rll', 'R L L']),
  ]);

  // 6!/(3! 2! 1!) = 60, and 5!/(3! 2!) = 10 behind the kick.
  test('six cells of three kinds have sixty, ten of them with the kick first', () => {
    expect(answerTo('orders', {}, six)).toBe('60');
    expect(answerTo('orders', { cell: 'kick' }, six)).toBe('10');
  });

  test('one kind of cell has no orders to ask about', () =>
    expect(answerTo('orders', {}, FLAM_DRAGS)).toMatch(/one kind of cell/));
});

test('a row that goes on over the seam', () => {
  const about = questionBar('>lR LL R R L L', '6/4', 1);
  expect(answerTo('longest-run', { of: 'left' }, about)).toBe('2');
  expect(answerTo('longest-run', { of: 'left', loop: true }, about)).toBe('3');
});

describe('a wrong answer that shows what was thought', () => {
  const miss = (given: string, from: QuestionAttributes['from'], more: Partial<QuestionAttributes>) => {
    const question = { ask: '?', from, ...more };
    const found = answerOf(question, FLAM_DRAGS);
    return found.ok ? missesOf(question, FLAM_DRAGS, found.answer)[given] : found.message;
  };

  test.each([
    ['11', 'strokes', { of: 'left' }, 'graces-left-out'], // 16 less five grace notes
    ['eleven', 'strokes', { of: 'left' }, 'graces-left-out'],
    ['6', 'strokes', { of: 'left' }, 'both-left-out'],
    ['16', 'strokes', { of: 'left' }, undefined],
    ['left', 'hand-at', { at: '1' }, 'grace-note-hand'],
    ['right', 'grace-at', { at: '1' }, 'primary-hand'],
    ['a of 1', 'cell-start', { of: 3 }, 'cell-before'],
    ['e of 3', 'cell-start', { of: 3 }, 'cell-after'],
    ['4', 'gap', { at: '1', of: 'accents' }, 'start-counted'],
    ['5', 'slots-left', { cell: 'flam-drag' }, 'cells-for-slots'],
    ['16', 'bars-home', { cell: 'flam-drag' }, 'cells-for-bars'],
    ['full', 'motion-at', { at: '1' }, 'start-right'],
    ['tap', 'motion-at', { at: '1' }, 'end-right'],
    ['up', 'motion-at', { at: '1' }, undefined],
  ] as const)('%s for %s %j: %s', (given, from, more, why) => expect(miss(given, from, more)).toBe(why));

  test('where only a foot plays, a hand is told so', () => {
    const question = { ask: '?', from: 'hand-at', at: '1' } as const;
    const about = questionBar('K R', '2/4', 1);
    const found = answerOf(question, about);
    expect(found.ok && missesOf(question, about, found.answer)).toMatchObject({ right: 'foot-not-hand' });
  });
});

test('a silent cell is no neighbor to be taken for another, and a pickup is in no bar', () => {
  const question = { ask: '?', from: 'cell-start', of: 2 } as const;
  const about = questionBar('- - {R L}1', '4/4', 1);
  const found = answerOf(question, about);
  expect(found.ok && missesOf(question, about, found.answer)).toEqual({});
  expect(answersTaken({ kind: 'count', count: '4 e', bar: 0 })[0]).toBe('e of 4');
});

test.each(QUESTION_KINDS)('%s takes each attribute in one way only', (kind) => {
  const { needs, may }: { needs: readonly string[]; may: readonly string[] } = QUESTIONS[kind];
  expect(needs.filter((name) => may.includes(name))).toEqual([]);
});
