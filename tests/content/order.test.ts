import { describe, expect, test } from 'vitest';
import { arrange, siteSchema, withoutHidden, type PlacedLesson, type PlacedPart } from '../../src/curriculum/index.ts';

const lesson = (id: string) => ({ id, title: id, idea: id });
const part = (number: number) => ({ number, title: `part ${number}`, idea: '' });
const COURSE = { parts: [part(1), part(2)], lessons: ['a', 'b', 'c', 'd', 'e'] };

const written = (id: string, number: number, order: number): PlacedLesson => ({ ...lesson(id), part: number, order });
const OURS = [written('a', 1, 1), written('b', 1, 2), written('c', 1, 3), written('d', 2, 1), written('e', 2, 2)];

/** A course as it comes out: each part's number and its lessons. */
const shape = (parts: readonly PlacedPart[]) =>
  parts.map(({ number, lessons }) => `${number}: ${lessons.map(({ id }) => id).join(' ')}`);

/** The course under some settings, whole and as it is shown. */
function under(settings: object, own: PlacedLesson[] = []) {
  const site = siteSchema.parse(settings);
  const all = arrange(COURSE, site, [...own, ...OURS]);
  return { all: shape(all), shown: shape(withoutHidden(all, site)), parts: withoutHidden(all, site) };
}

const OWN_PART = { parts: [{ number: 20, title: 'Ours', idea: 'Ours.' }] };

describe('a lesson of the school’s own', () => {
  test('stands behind ours where its number is higher', () => {
    expect(under({}, [written('x', 1, 4), written('y', 1, 9)]).shown).toEqual(['1: a b c x y', '2: d e']);
  });

  test('stands after ours of the same number, so that one more of ours moves nothing', () => {
    expect(under({}, [written('x', 1, 1), written('y', 1, 3)]).shown).toEqual(['1: a x b c y', '2: d e']);
  });

  test('stands by its number whatever the order of the files', () => {
    expect(under({}, [written('y', 2, 7), written('x', 2, 5)]).shown).toEqual(['1: a b c', '2: d e x y']);
  });

  test('stands in a part of the school’s own', () => {
    expect(under(OWN_PART, [written('x', 20, 1)]).shown).toEqual(['1: a b c', '2: d e', '20: x']);
  });

  test('is left out where its part is nowhere: the checker tells of it', () => {
    expect(under({}, [written('x', 7, 1)]).shown).toEqual(['1: a b c', '2: d e']);
  });
});

describe('an order of the school’s own', () => {
  test('of parts: those that are named first, the others after them, each with its number', () => {
    expect(under({ ...OWN_PART, order: { parts: [20, 2] } }, [written('x', 20, 1)]).shown).toEqual([
      '20: x',
      '2: d e',
      '1: a b c',
    ]);
  });

  test('of lessons in a part: those that are named first', () => {
    expect(under({ order: { lessons: { 1: ['c', 'a'] } } }).shown).toEqual(['1: c a b', '2: d e']);
  });

  test('moves a lesson into another part, and counts places anew', () => {
    const { shown, parts } = under({ order: { lessons: { 2: ['b'] } } });
    expect(shown).toEqual(['1: a c', '2: b d e']);
    expect(parts.flatMap(({ lessons }) => lessons.map((one) => [one.id, one.part, one.order]))).toEqual([
      ['a', 1, 1],
      ['c', 1, 2],
      ['b', 2, 1],
      ['d', 2, 2],
      ['e', 2, 3],
    ]);
  });

  test('takes no notice of what is not there', () => {
    expect(under({ order: { parts: [9], lessons: { 1: ['zzz'], 9: ['yyy'] } } }).shown).toEqual(['1: a b c', '2: d e']);
  });
});

describe('what is hidden', () => {
  test('is gone where the course is shown, and still there in the whole', () => {
    const { shown, all } = under({ hide: { lessons: ['b'], parts: [2] } });
    expect(shown).toEqual(['1: a c']);
    expect(all).toEqual(['1: a b c', '2: d e']);
  });

  test('takes its part with it where no lesson is left', () => {
    expect(under({ hide: { lessons: ['d', 'e'] } }).shown).toEqual(['1: a b c']);
    expect(under(OWN_PART).shown).toEqual(['1: a b c', '2: d e']);
  });

  test('a lesson moved out of a hidden part is shown', () => {
    expect(under({ hide: { parts: [2] }, order: { lessons: { 1: ['a', 'e'] } } }).shown).toEqual(['1: a e b c']);
  });

  test('places are counted among those that are shown', () => {
    const { parts } = under({ hide: { lessons: ['a'] } });
    expect(parts[0].lessons.map(({ id, order }) => `${order} ${id}`)).toEqual(['1 b', '2 c']);
  });
});
