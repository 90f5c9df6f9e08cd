import fc from 'fast-check';
import { expect, test } from 'vitest';
import { countNames, TICKS_PER_QUARTER } from '../../src/core/index.ts';
import {
  answerOf,
  answersTaken,
  missesOf,
  QUESTIONS,
  QUESTION_KINDS,
  STROKE_COUNTS,
  type Answer,
  type QuestionAttributes,
} from '../../src/curriculum/index.ts';
import { runs } from '../helpers/arbitrary.ts';
import { questionBar } from '../helpers/questions.ts';

const slot = fc.constantFrom(
  'R',
  'L',
  '>R',
  '>L',
  'lR',
  '>rL',
  'LL',
  'RR',
  '-',
  'K',
  'KK',
  '(L)',
  'R+K',
  'L@floor',
  'L>R',
);

/** A bar of sixteenths of such slots, one of them struck. */
const barOf = (from: fc.Arbitrary<string>) =>
  fc
    .array(from, { minLength: 16, maxLength: 16 })
    .filter((slots) => slots.some((one) => one !== '-'))
    .map((slots) => questionBar(slots.join(' ')));

const bar = barOf(slot);

const COUNTS = countNames('4/4', 4);

const answered = (question: Partial<QuestionAttributes>, about: ReturnType<typeof questionBar>): Answer | undefined => {
  const found = answerOf({ ask: '?', ...question }, about);
  return found.ok ? found.answer : undefined;
};

const valueOf = (answer: Answer | undefined): number => (answer?.kind === 'number' ? answer.value : NaN);

test('walking from accent to accent by gaps goes round the bar in sixteen slots', () => {
  fc.assert(
    fc.property(barOf(fc.constantFrom('R', 'L', '>R', '>lR', 'K')), (about) => {
      const at = about.timeline.strokes.filter(({ accent }) => accent).map(({ count }) => count);
      fc.pre(at.length > 0);
      const gaps = at.map((count) => valueOf(answered({ from: 'gap', at: count, of: 'accents' }, about)));
      expect(gaps.reduce((sum, one) => sum + one, 0)).toBe(16);
    }),
    runs(200),
  );
});

test('the slots that are struck and those that stay empty are all of them', () => {
  fc.assert(
    fc.property(bar, (about) => {
      const struck = [...new Set(about.timeline.strokes.map(({ count }) => count))];
      const empty = struck.map((at) => valueOf(answered({ from: 'rests-after', at }, about)));
      expect(struck.length + empty.reduce((sum, one) => sum + one, 0)).toBe(16);
    }),
    runs(200),
  );
});

test('a slot later is the next name, and sixteen later the same one a bar on', () => {
  fc.assert(
    fc.property(bar, fc.nat(15), fc.integer({ min: 1, max: 64 }), (about, from, of) => {
      const answer = answered({ from: 'count-after', at: COUNTS[from], of }, about);
      expect(answer).toEqual({ kind: 'count', count: COUNTS[(from + of) % 16], bar: 1 + Math.floor((from + of) / 16) });
    }),
    runs(200),
  );
});

test('every hand stroke is of one motion: the four counts are all strokes of the hands', () => {
  fc.assert(
    fc.property(bar, (about) => {
      const count = (of: string) => valueOf(answered({ from: 'strokes', of }, about));
      expect(count('full') + count('down') + count('tap') + count('up')).toBe(count('hands'));
      expect(count('right') + count('left') + count('feet')).toBe(count('all'));
      // What begins high and what ends high come in equal numbers, since each end is the next one's beginning.
      expect(count('down')).toBe(count('up'));
    }),
    runs(200),
  );
});

test('a row that goes round is never shorter', () => {
  fc.assert(
    fc.property(bar, fc.constantFrom('right', 'left'), (about, of) => {
      const once = valueOf(answered({ from: 'longest-run', of }, about));
      expect(valueOf(answered({ from: 'longest-run', of, loop: true }, about))).toBeGreaterThanOrEqual(once);
    }),
    runs(200),
  );
});

const attributes = fc.record({
  at: fc.constantFrom(...COUNTS),
  of: fc.oneof(fc.integer({ min: 1, max: 20 }), fc.constantFrom(...STROKE_COUNTS, 'floor', 'china', 'cells', 'thumbs')),
  cell: fc.constantFrom('flam-drag', 'five', 'flam-drag kick', 'nowhere'),
  in: fc.integer({ min: 1, max: 2 }),
  over: fc.integer({ min: 2, max: 4 }),
  loop: fc.boolean(),
});

test('whatever is asked, there is an answer or a reason, and no near miss is the answer', () => {
  fc.assert(
    fc.property(bar, fc.constantFrom(...QUESTION_KINDS), attributes, (about, from, all) => {
      const { needs, may }: { needs: readonly string[]; may: readonly string[] } = QUESTIONS[from];
      const given = Object.entries(all).filter(([name]) => needs.includes(name) || may.includes(name));
      const question = { ask: '?', from, ...Object.fromEntries(given) };
      const found = answerOf(question, about);
      if (!found.ok) {
        expect(found.message).not.toBe('');
        return;
      }
      const taken = answersTaken(found.answer);
      expect(taken.every((one) => one !== '' && !one.includes('undefined') && !one.includes('NaN'))).toBe(true);
      expect(Object.keys(missesOf(question, about, found.answer)).filter((one) => taken.includes(one))).toEqual([]);
    }),
    runs(1500),
  );
});

test('a bar at a tempo lasts as long as its ticks say', () => {
  fc.assert(
    fc.property(bar, fc.integer({ min: 30, max: 300 }), (about, of) => {
      const seconds = (about.timeline.ticks / TICKS_PER_QUARTER) * (60 / of);
      expect(valueOf(answered({ from: 'bar-seconds', of }, about))).toBeCloseTo(seconds, 9);
    }),
    runs(50),
  );
});
