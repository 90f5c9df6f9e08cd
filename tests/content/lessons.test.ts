import { describe, expect, test } from 'vitest';
import { listFiles } from '../../src/build/content/files.ts';
import { readLibrary } from '../../src/build/content/library.ts';
import { parseSticking, slotCount, slotsOf } from '../../src/core/index.ts';
import {
  answerOf,
  answersTaken,
  barOfAttributes,
  barOfExercise,
  choicesOf,
  LESSON_LINES,
  layBar,
  missesOf,
  plainAnswer,
  type BarAttributes,
  type QuestionAttributes,
} from '../../src/curriculum/index.ts';

const library = readLibrary(listFiles(new URL('../../', import.meta.url).pathname));
const cellOf = (id: string) => library.cells.get(id)?.data;
const lessons = library.lessons.flatMap(({ data, lesson }) => (data && lesson ? [{ ...data, file: lesson }] : []));
const exercises = [...library.exercises.values()].flatMap(({ id, data }) => (data ? [{ ...data, id }] : []));

/** What comes with Barwright: lessons that the course lists, and exercises of such a lesson. What a school adds goes by its own rules. */
const listed = new Set(library.course?.data?.lessons);
const ourLessons = lessons.filter(({ id }) => listed.has(id));
const ourExercises = exercises.filter(({ tags }) => listed.has(tags[0]));

type Lesson = (typeof lessons)[number];

/** The attributes of a word wherever a lesson uses it. */
const uses = <T>({ file }: Lesson, name: string): T[] =>
  file.words.filter(({ word }) => word.name === name).map(({ attributes }) => attributes as T);

describe.each(ourLessons)('$id', (lesson) => {
  test('shows a bar that adds up, and asks about it', () => {
    const bars = uses<BarAttributes>(lesson, 'Bar');
    expect(bars.length).toBeGreaterThan(0);
    expect(bars.every((bar) => layBar(barOfAttributes(bar), cellOf).ok)).toBe(true);
    expect(uses(lesson, 'Question').length).toBeGreaterThan(0);
  });

  test('has a ladder to climb', () => {
    const named = uses<{ id: string }>(lesson, 'Exercise').map(({ id }) => id);
    expect(named.length).toBeGreaterThanOrEqual(2);
    expect(new Set(named).size).toBe(named.length);
    expect(exercises.filter(({ tags }) => tags[0] === lesson.id).length).toBeGreaterThanOrEqual(3);
  });

  test('keeps to one page and one idea', () => {
    expect(lesson.file.text.trimEnd().split('\n').length).toBeLessThanOrEqual(LESSON_LINES);
    expect(lesson.idea.split(/\s+/).length).toBeLessThanOrEqual(28);
  });
});

/** The questions of a lesson with the bar each is about. */
function questionsOf(lesson: Lesson) {
  const bars: BarAttributes[] = [];
  return lesson.file.words.flatMap(({ word, attributes }) => {
    if (word.name === 'Bar') bars.push(attributes as BarAttributes);
    if (word.name !== 'Question') return [];
    const question = attributes as QuestionAttributes;
    return [{ lesson: lesson.id, part: lesson.part, question, bar: barAbout(question, bars, lesson) }];
  });
}

function barAbout({ from, bar }: QuestionAttributes, before: BarAttributes[], lesson: Lesson) {
  if (from === undefined) return undefined;
  const own = uses<BarAttributes>(lesson, 'Bar').find(({ id }) => id === bar);
  const about = bar === undefined ? before.at(-1) : own;
  const exercise = library.exercises.get(bar ?? '')?.data;
  const laid = layBar(about ? barOfAttributes(about) : barOfExercise(exercise!), cellOf);
  if (!laid.ok) throw new Error(laid.fault.message);
  const cellSlots = (id: string) => slotsIn(cellOf(id)?.sticking ?? '');
  return { ...laid, cellSlots };
}

/** How many slots a text has. */
function slotsIn(text: string): number {
  const read = parseSticking(text);
  if (!read.ok) throw new Error(`${text}: ${read.fault.message}`);
  return slotCount(read.sticking.hands);
}

const questions = lessons.flatMap(questionsOf);
const ourQuestions = ourLessons.flatMap(questionsOf);

describe('questions', () => {
  test('nine of ten take their answer from a bar', () => {
    const computed = ourQuestions.filter(({ question }) => question.from !== undefined);
    expect(computed.length / ourQuestions.length).toBeGreaterThanOrEqual(0.9);
  });

  test('no two lessons of a part ask in the same way', () => {
    const asked = ourQuestions
      .filter(({ question }) => question.from !== undefined)
      .map(({ part, question: { from, of } }) => `part ${part}: ${from} ${typeof of === 'string' ? of : ''}`);
    expect(asked.filter((one, index) => asked.indexOf(one) !== index)).toEqual([]);
  });

  test('one of the choices is right, the others are wrong, and near misses are never right', () => {
    for (const { lesson, question, bar } of questions) {
      const found = answerOf(question, bar);
      if (!found.ok) throw new Error(`${lesson}: ${found.message}`);
      const taken = answersTaken(found.answer);
      const choices = choicesOf(question.choices ?? taken[0]).map(plainAnswer);
      expect(
        choices.filter((choice) => taken.includes(choice)),
        lesson,
      ).toHaveLength(1);
      const misses = bar ? Object.keys(missesOf(question, bar, found.answer)) : [];
      expect(
        misses.filter((miss) => taken.includes(miss)),
        lesson,
      ).toEqual([]);
    }
  });

  test('where nothing is computed, the author helps after a wrong answer', () => {
    const silent = ourQuestions.filter(({ question }) => question.from === undefined && question.hint === undefined);
    expect(silent.map(({ lesson }) => lesson)).toEqual([]);
  });
});

describe('exercises', () => {
  test('there are at least 160 in lessons of ours', () => {
    expect(ourExercises.length).toBeGreaterThanOrEqual(160);
  });

  test.each(exercises)('$id fills its bars', (exercise) => {
    const laid = layBar(barOfExercise(exercise), cellOf);
    if (!laid.ok) throw new Error(laid.fault.message);
    const { bars } = laid.timeline;
    const texts = exercise.cells?.map((id) => cellOf(id)!.sticking) ?? [exercise.sticking!];
    const written = texts.reduce((sum, text) => sum + slotsIn(text), 0);
    const room = bars.reduce((sum, { meter, grid }) => sum + slotsOf(meter, grid), exercise.pickup ?? 0);
    expect(written).toBe(room);
  });

  test('"enough" is something that happens: it begins with when', () => {
    expect(ourExercises.filter(({ enough }) => !enough.startsWith('when ')).map(({ id }) => id)).toEqual([]);
  });
});
