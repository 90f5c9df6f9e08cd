import { describe, expect, test } from 'vitest';
import { answerIn, answerOf, answersTaken, answerText, choiceIn, missesOf } from '../../src/curriculum/index.ts';
import { beatsApart, plainAnswer, strangersIn, textIn } from '../../src/curriculum/index.ts';
import { offered } from '../../components/lesson/questions.ts';
import { describe as inWords } from '../../src/words/describe.ts';
import { questionBar } from '../helpers/questions.ts';
import { atSchool } from '../helpers/at-school.ts';

const SEVENS = questionBar('{>lR LL R}5 L');
const { bars } = SEVENS.timeline;
const SIX_EIGHT_BAR = questionBar('R L L R L L', '6/8', 3);
const SIX_EIGHT = SIX_EIGHT_BAR.timeline;

describe('a school that counts 1 ta te ta', () => {
  const system = '1 ta te ta';
  const question = { ask: 'On which count does the second cell start?', from: 'cell-start', of: 2 } as const;
  const found = answerOf(question, SEVENS);
  if (!found.ok) throw new Error(found.message);
  const right = answerIn(found.answer, bars, system);

  test('is answered in its syllables, and tells the two ta of a beat apart', () => {
    expect(answerText(right)).toBe('the second ta of 1');
    expect(answersTaken(right)).toContain(plainAnswer('The second ta of 1.'));
    expect(answersTaken(right)).not.toContain(plainAnswer('the first ta of 1'));
  });

  test('is offered them, each once and the right one among them', () => {
    const choices = offered(question, found.answer, SEVENS, system);
    expect(choices).toContain('the second ta of 1');
    expect(new Set(choices).size).toBe(4);
    expect(choices.join()).toMatch(/^(beat \d|the (first ta|te|second ta) of \d|,)+$/);
  });

  test('is told what was thought in them', () => {
    expect(missesOf(question, SEVENS, right, system)).toHaveProperty([plainAnswer('the te of 2')], 'cell-after');
  });

  test('reads counts that are named in full in them, others as they are written', () => {
    expect(textIn('The e of 2, the & of 4 and its a; the nine of 2.', bars, system)).toBe(
      'The first ta of 2, the te of 4 and its a; the nine of 2.',
    );
    expect(textIn('<p>the &amp;\nof 2</p>', bars, system)).toBe('<p>the te of 2</p>');
    expect(textIn('the & of 2', [], system)).toBe('the & of 2');
  });

  test.each([
    ['and the next one is its e.', true],
    ['On the a, and a flam before.', true],
    ['Say 2, e, &amp; and a.', true],
    ['A drum &quot;a e-mail&quot; has a skin.', false],
    ['Three cells have gone by, nine slots.', false],
  ])('is told where a text names a syllable by itself: %s', (text, is) =>
    expect(strangersIn(text, beatsApart(bars, system)).length > 0).toBe(is),
  );

  test('hears a bar described in them', () => {
    const said = inWords(SEVENS.timeline, { counts: system }).reading;
    expect(said).toMatch(/^Beat 1: accented right flam; on the first ta left double; on te right; on the second ta /);
  });
});

test('where eighths are counted, a number within a beat is no beat', () => {
  expect(choiceIn('beat 2', SIX_EIGHT.bars, '1 2 3 4 5 6')).toBe('the 4');
  expect(textIn('the trip of 2', SIX_EIGHT.bars, '1 2 3 4 5 6')).toBe('the 5');
  expect(inWords(SIX_EIGHT, { counts: '1 2 3 4 5 6' }).reading).toBe(
    'Beat 1: right; on 2 left; on 3 left. Beat 2: right; on 5 left; on 6 left.',
  );
});

test('a number to choose from is a count only where a count is asked for', () => {
  const question = { ask: '?', from: 'slots', choices: '2 | 12' } as const;
  expect(offered(question, { kind: 'number', value: 12 }, SIX_EIGHT_BAR, '1 2 3 4 5 6')).toEqual(['2', '12']);
});

test('a school that counts as the text does reads it as it is written', () => {
  expect(textIn('the and of 2, the & of 3', bars, '1 e & a')).toBe('the and of 2, the & of 3');
  expect(choiceIn('4a', bars, '1 e & a')).toBe('4a');
});

describe('the place that bar math begins with', () => {
  test.each([
    ['1 ta te ta', '4 second ta'],
    ['1 ka di mi', '4 mi'],
    ['1 2 3 4 5 6', '4 a'],
  ] as const)('is written in %s', async (counting, count) => {
    const { answerCount, COUNT } = await atSchool({ counting }, () => import('../../src/bar-math/count.ts'));
    expect(answerCount(COUNT).place).toEqual({ count, slot: '16', tick: '75600' });
    // A link from a school that counts 1 e & a, and the text of the lessons.
    expect(answerCount({ ...COUNT, at: '4 a' }).place).toMatchObject({ slot: '16' });
  });
});
