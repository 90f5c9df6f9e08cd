import {
  LEAD_OF,
  mirror,
  parseSticking,
  perform,
  printSticking,
  readPhrase,
  slotCount,
  type CellText,
  type Lead,
  type LeadName,
  type Phrase,
  type PhraseFault,
  type Timeline,
} from '../core/index.ts';
import type { ExerciseData } from './exercise.ts';
import type { StaffName } from './fields.ts';
import type { RudimentData } from './rudiment.ts';
import { cellIds } from './fields.ts';
import type { BarAttributes } from './vocabulary.ts';

/** What a bar is made of, wherever it is written: in a lesson, an exercise, a rudiment, the glossary. */
export interface BarSpec {
  /** The sticking text … */
  sticking?: string;
  /** … or ids of cells. */
  cells?: readonly string[];
  meter?: string;
  grid?: number;
  pickup?: number;
  lead?: LeadName;
  staff?: StaffName;
  /** Over the bracket of each cell of the sticking. */
  name?: string;
  /** Over the brackets, one for each of `cells`, instead of their own. */
  names?: readonly string[];
}

/** What core needs to lay a bar, as plain JSON: an island changes `lead` and lays it again. */
export interface BarRequest {
  cells: CellText[];
  meter?: string;
  grid?: number;
  pickup?: number;
  lead: Lead;
}

/** A cell's name and text by its id, undefined where there is none. */
export type CellLookup = (id: string) => { name: string; sticking: string } | undefined;

/** A bar laid out, or the fault of its text. */
export type LaidBar =
  { ok: true; phrase: Phrase; timeline: Timeline; names: (string | null)[] } | { ok: false; fault: PhraseFault };

/** The id under which the cells of a bar without cells of its own stand. */
const UNNAMED = 'bar';

/** What core needs to lay a bar. Throws RangeError for a cell that is not there. */
export function barRequest(spec: BarSpec, cellOf: CellLookup): BarRequest {
  const { meter, grid, pickup, lead = 'right' } = spec;
  const cells = spec.cells?.map((id) => ({ id, text: textOf(id, cellOf) })) ?? [
    { id: UNNAMED, text: spec.sticking ?? '' },
  ];
  return { cells, meter, grid, pickup, lead: LEAD_OF[lead] };
}

function textOf(id: string, cellOf: CellLookup): string {
  const cell = cellOf(id);
  if (!cell) throw new RangeError(`there is no cell "${id}"`);
  return cell.sticking;
}

/** Lays a bar and names its cells; a name is null where no bracket is drawn. Throws RangeError for an unknown cell. */
export function layBar(spec: BarSpec, cellOf: CellLookup): LaidBar {
  const read = readPhrase(barRequest(spec, cellOf));
  if (!read.ok) return read;
  const { phrase } = read;
  const name = (id: string, index: number) =>
    spec.names?.[index] ?? (spec.cells ? cellOf(id)?.name : spec.name) ?? null;
  return { ok: true, phrase, timeline: perform(phrase), names: phrase.cells.map(({ id }, index) => name(id, index)) };
}

/** How many slots a cell's text takes; undefined where it does not parse. */
export function slotsOfCell(text: string): number | undefined {
  const read = parseSticking(text);
  return read.ok ? slotCount(read.sticking.hands) : undefined;
}

/** The bar of a `<Bar>`. */
export function barOfAttributes(bar: BarAttributes): BarSpec {
  return { ...bar, cells: bar.cells === undefined ? undefined : cellIds(bar.cells) };
}

/** The bar of an exercise, led as its first lead says. */
export function barOfExercise(exercise: ExerciseData): BarSpec {
  const { sticking, cells, meter, grid, pickup, staff, names, leads } = exercise;
  return { sticking, cells, meter, grid, pickup, staff, names, lead: leads[0] };
}

/** A rudiment as it is drawn: each statement a cell; where the hands alternate every second one is mirrored. */
export function barOfRudiment(slug: string, rudiment: RudimentData): { spec: BarSpec; cellOf: CellLookup } {
  const { name, meter, grid, repeat } = rudiment;
  const other = `${slug}-by-the-other-hand`;
  const turn = (index: number) => (rudiment.alternates && index % 2 === 1 ? other : slug);
  const text = rudiment.sticking + ' -'.repeat(rudiment.rest);
  const texts: Record<string, string> = { [slug]: text, [other]: mirrored(text) };
  const cellOf: CellLookup = (id) => (id in texts ? { name, sticking: texts[id] } : undefined);
  return { spec: { cells: Array.from({ length: repeat }, (_, index) => turn(index)), meter, grid }, cellOf };
}

/** The same text begun by the other hand; a text that does not parse stays as it is, for its fault to be told. */
function mirrored(text: string): string {
  const read = parseSticking(text);
  return read.ok ? printSticking(mirror(read.sticking)) : text;
}
