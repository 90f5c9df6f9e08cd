/** What a course is made of: the shape of every file, the words of a lesson, the order, the questions. */
export { cellSchema, type CellData } from './cell.ts';
export { contrast, darkWarm, PAPER } from './colors.ts';
export { courseSchema, type CourseData } from './course.ts';
export { exerciseSchema, type ExerciseData } from './exercise.ts';
export { TEMPO_LIMITS, type LeadName } from '../core/index.ts';
export { cellIds, ID_PATTERN, ID_SAYS, LEADS, type StaffName } from './fields.ts';
export { lessonSchema, LESSON_LINES, type LessonData, type ListenData } from './lesson.ts';
export { FILM_FILE, fileBeside, PICTURE_FILE, type PictureAttributes, type VideoAttributes } from './media.ts';
export { pageSchema, type PageData } from './page.ts';
export { FAMILIES, rudimentSchema, type RudimentData } from './rudiment.ts';
export { OWN_PARTS_FROM, siteSchema, type SiteData } from './site.ts';
export { termSchema, type TermData } from './term.ts';
export { handLoop, mainHands, otherHands, strokesOf } from './rudiment-hands.ts';
export { arrange, neighbors, withoutHidden, type PlacedLesson, type PlacedPart } from './order.ts';
export { ADDRESSES, FIXED_PAGES, partAddress } from './addresses.ts';
export {
  attributesOf,
  choicesOf,
  fieldsOf,
  VOCABULARY,
  wordOf,
  type AttributeRule,
  type BarAttributes,
  type CountsAttributes,
  type PuzzleAttributes,
  type QuestionAttributes,
  type Word,
  type WordName,
} from './vocabulary.ts';
export { answerIn, barOfCount, beatsApart, choiceIn, strangersIn, textIn } from './syllables.ts';
export { answersTaken, answerText, type Answer, type MissReason } from './questions/answers.ts';
export { answerOf, choicesFor, missesOf, QUESTION_KINDS, QUESTIONS, type QuestionKind } from './questions/kinds.ts';
export { STROKE_COUNTS, type QuestionBar } from './questions/place.ts';
export {
  barOfAttributes,
  barOfExercise,
  barOfRudiment,
  barRequest,
  layBar,
  slotsOfCell,
  type BarRequest,
  type BarSpec,
  type CellLookup,
  type LaidBar,
} from './bars.ts';
export { plainAnswer } from './plain-answer.ts';
export { exerciseFacts, INGREDIENTS, PLAYED_BY, type ExerciseFacts, type FactSource } from './exercise-facts.ts';
export { ladders } from './ladders.ts';
export { ALPHABET } from './alphabet.ts';
export { barBefore, sourceOf, specimens, type Specimen, type SpecimenWord } from './specimens.ts';
export { LADDER_STEP, ladderTempos, roundsAStep, RUDIMENT_TEMPO } from './ladder.ts';
export { madeOf, partsOf } from './rudiment-parts.ts';
export { soughtIn } from './rudiment-found.ts';
