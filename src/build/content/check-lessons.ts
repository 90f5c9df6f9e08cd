import {
  answerOf,
  answersTaken,
  barOfAttributes,
  barOfExercise,
  choicesOf,
  LESSON_LINES,
  plainAnswer,
  slotsOfCell,
  type BarAttributes,
  type QuestionAttributes,
} from '../../curriculum/index.ts';
import { cellLookup, checkBar, layQuietly, type BarSite, type Laid } from './check-bars.ts';
import { checkIds, checkTwice } from './check-entries.ts';
import type { LessonFile, WordUse } from './text-files.ts';
import { faultAt, type LessonEntry, type Library } from './library.ts';
import { knownHint } from './nearest.ts';

/** The bars of a lesson so far, for the questions after them. */
interface Seen {
  last?: Laid | 'faulty';
  byId: Map<string, Laid | 'faulty'>;
}

/** Lessons: every word says something that is there, every bar adds up, every question has its answer. */
export function checkLessons(library: Library): void {
  library.lessons.forEach((entry) => checkLesson(library, entry));
  checkTwice(library, library.lessons, ['id'], ({ id }) => id);
}

function checkLesson(library: Library, entry: LessonEntry): void {
  const { data, lesson } = entry;
  if (data) {
    checkIds(library, entry, 'rudiments', data.rudiments, 'rudiment', library.rudiments);
    checkIds(library, entry, 'terms', data.terms, 'term', library.glossary);
  }
  if (!lesson) return;
  checkLength(library, entry, lesson);
  const seen: Seen = { byId: new Map() };
  lesson.words.forEach((use) => checkWord(library, lesson, use, seen));
  if (lesson.readable) checkNeeds(library, entry, lesson);
}

function checkLength(library: Library, { file }: LessonEntry, { text }: LessonFile): void {
  const lines = text.trimEnd().split('\n').length;
  if (lines > LESSON_LINES)
    library.faults.push({
      file,
      line: LESSON_LINES + 1,
      column: 1,
      message: `the lesson has ${lines} lines; ${LESSON_LINES} is the most`,
      hint: 'one idea a lesson: make two of it',
    });
}

/** What a lesson must have, one of these words each. */
const NEEDED = [
  [['Bar'], 'a lesson shows at least one bar', '<Bar sticking="R L R L R L R L" meter="4/4" grid={2} />'],
  [['Question', 'Puzzle'], 'a lesson asks one question', '<Question ask="…" from="hand-at" at="2">why</Question>'],
] as const;

function checkNeeds(library: Library, entry: LessonEntry, { words }: LessonFile): void {
  for (const [names, message, hint] of NEEDED)
    if (!words.some(({ word }) => names.some((name) => name === word.name)))
      faultAt(library, entry, [], message, `write ${hint}`);
}

function checkWord(library: Library, lesson: LessonFile, use: WordUse, seen: Seen): void {
  if (use.word.name === 'Bar') return checkBarWord(library, lesson, use, seen);
  if (!use.attributes) return;
  if (use.word.name === 'Question') return checkQuestion(library, lesson, use, seen);
  const named = NAMED[use.word.name];
  if (!named) return;
  const known = library[named.shelf];
  const id = String(use.attributes.id);
  if (!known.has(id))
    note(library, lesson, use, 'id', `there is no ${named.what} "${id}"`, knownHint(id, known.keys()));
}

const NAMED: Record<string, { shelf: 'exercises' | 'glossary' | 'rudiments'; what: string }> = {
  Exercise: { shelf: 'exercises', what: 'exercise' },
  Term: { shelf: 'glossary', what: 'term' },
  Rudiment: { shelf: 'rudiments', what: 'rudiment' },
};

function note(
  library: Library,
  { file }: LessonFile,
  use: WordUse,
  attribute: string,
  message: string,
  hint?: string,
): void {
  library.faults.push({ file, ...use.positionOf(attribute), message, hint });
}

function checkBarWord(library: Library, lesson: LessonFile, use: WordUse, seen: Seen): void {
  const bar = use.attributes as BarAttributes | undefined;
  const laid = (bar && checkBar(library, barOfAttributes(bar), barSite(lesson, use))) ?? 'faulty';
  seen.last = laid;
  if (!bar?.id) return;
  if (seen.byId.has(bar.id)) note(library, lesson, use, 'id', `another bar of this lesson is "${bar.id}" already`);
  seen.byId.set(bar.id, laid);
}

function barSite({ file }: LessonFile, use: WordUse): BarSite {
  return {
    file,
    place: use.place,
    positionOf: (field) => use.positionOf(field),
    stickingStart: use.textStart('sticking'),
  };
}

function checkQuestion(library: Library, lesson: LessonFile, use: WordUse, seen: Seen): void {
  const question = use.attributes as QuestionAttributes;
  const bar = question.from === undefined ? undefined : questionBar(library, lesson, use, question, seen);
  if (bar === 'faulty') return;
  const cellOf = cellLookup(library);
  const found = answerOf(question, bar && { ...bar, cellSlots: (id) => slotsOfCell(cellOf(id)?.sticking ?? '') });
  if (!found.ok)
    return note(
      library,
      lesson,
      use,
      found.attribute,
      found.message,
      found.attribute === 'cell' ? knownHint(question.cell ?? '', library.cells.keys()) : undefined,
    );
  const choices = choicesOf(question.choices ?? '');
  if (question.choices && !choices.some((choice) => answersTaken(found.answer).includes(plainAnswer(choice))))
    note(library, lesson, use, 'choices', `the answer, "${answersTaken(found.answer)[0]}", is not among the choices`);
}

/** The bar a question is about; `faulty` where that has been told already. */
function questionBar(
  library: Library,
  lesson: LessonFile,
  use: WordUse,
  { bar }: QuestionAttributes,
  seen: Seen,
): Laid | 'faulty' | undefined {
  if (bar === undefined) return seen.last;
  const inLesson = seen.byId.get(bar);
  if (inLesson) return inLesson;
  const exercise = library.exercises.get(bar);
  if (exercise) return (exercise.data && layQuietly(library, barOfExercise(exercise.data))) ?? 'faulty';
  note(
    library,
    lesson,
    use,
    'bar',
    `no bar before this question and no exercise is "${bar}"`,
    knownHint(bar, [...seen.byId.keys(), ...library.exercises.keys()]),
  );
  return 'faulty';
}
