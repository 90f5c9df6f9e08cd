import type { Phrase, Timeline } from '../core/index.ts';
import { faultText } from '../core/index.ts';
import { meterOf } from '../core/time/meter.ts';
import { slotNames } from '../core/time/slot-names.ts';
import {
  answerOf,
  barOfAttributes,
  barOfExercise,
  barOfRudiment,
  barRequest,
  layBar,
  slotsOfCell,
  type Answer,
  type BarAttributes,
  type BarRequest,
  type BarSpec,
  type CellLookup,
  type QuestionAttributes,
  type QuestionBar,
  type StaffName,
} from '../curriculum/index.ts';
import { getCells, getExercise, getRudiment, getTerm, schoolNames } from './collections.ts';

/** A bar laid out for the page. */
export interface Bar {
  request: BarRequest;
  phrase: Phrase;
  timeline: Timeline;
  /** By cell of the phrase; null where no bracket is drawn. */
  names: (string | null)[];
  staff: StaffName;
}

/** Lays a bar. Throws with `where` in the message for what the content checker should have stopped. */
export async function barOf(spec: BarSpec, where: string): Promise<Bar> {
  const bar = lay(spec, await getCells(), where);
  const schoolName = await schoolNames();
  return { ...bar, names: bar.names.map((name) => name && schoolName(name)) };
}

function lay(spec: BarSpec, cellOf: CellLookup, where: string): Bar {
  const request = barRequest(spec, cellOf);
  const laid = layBar(spec, cellOf);
  if (!laid.ok) throw new Error(`${where}: ${faultText(request.cells[laid.fault.cell ?? 0].text, laid.fault)}`);
  return { request, phrase: laid.phrase, timeline: laid.timeline, names: laid.names, staff: spec.staff ?? 'auto' };
}

/** What a player needs of a bar to lay it again under another lead, and to know its controls before it does: plain JSON. */
export function playerBar({ request: { cells, pickup }, timeline: { bars, strokes } }: Bar) {
  const [{ meter, grid }] = bars;
  const graces = strokes.some(({ kind }) => kind === 'grace');
  const { compound } = meterOf(meter);
  return { cells, pickup, meter, grid, compound, slots: slotNames(meter, grid).many, graces };
}

/** The bar of a `<Bar>` in the file `where`. */
export const wordBar = (bar: BarAttributes, where: string): Promise<Bar> => barOf(barOfAttributes(bar), where);

/** The bar of an exercise. */
export async function exerciseBar(id: string): Promise<Bar> {
  return barOf(barOfExercise((await getExercise(id)).data), `content/exercises/${id}.yaml`);
}

/** The bars of a rudiment, each statement a cell. */
export async function rudimentBar(slug: string): Promise<Bar> {
  const { spec, cellOf } = barOfRudiment(slug, (await getRudiment(slug)).data);
  return lay({ staff: 'pad', ...spec }, cellOf, `content/rudiments/${slug}.yaml`);
}

/** The bar of a term, where it has one. */
export async function termBar(id: string): Promise<Bar | undefined> {
  const { bar } = (await getTerm(id)).data;
  return bar && barOf(bar, `content/glossary/${id}.yaml`);
}

/** What a `<Question>` is about: its own attributes, and the bar that the build has written beside them. */
export interface AskedQuestion extends QuestionAttributes {
  /** JSON of a `QuestionSource`. */
  source?: string;
}

/** The bar of a question: an exercise by its id, or the attributes of a `<Bar>` of the lesson. */
export type QuestionSource = { exercise: string } | { bar: BarAttributes };

/** The bar a question asks about; none where its answer is given. */
export async function questionBar({ source }: AskedQuestion, where: string): Promise<Bar | undefined> {
  if (source === undefined) return undefined;
  const read = JSON.parse(source) as QuestionSource;
  return 'exercise' in read ? exerciseBar(read.exercise) : wordBar(read.bar, where);
}

/** A question's answer, and the bar it was computed from. */
interface Answered {
  answer: Answer;
  bar?: Bar & QuestionBar;
}

/** The answer to a question in the file `where`. */
export async function questionAnswer(question: AskedQuestion, where: string): Promise<Answered> {
  const [bar, cellOf] = await Promise.all([questionBar(question, where), getCells()]);
  const cellSlots = (id: string) => slotsOfCell(cellOf(id)?.sticking ?? '');
  const asked = bar && { ...bar, cellSlots };
  const found = answerOf(question, asked);
  if (!found.ok) throw new Error(`${where}: the question "${question.ask}": ${found.message}`);
  return { answer: found.answer, bar: asked };
}
