import type { Timeline } from '../core/index.ts';
import type { RulerDrawing } from './ruler.ts';

/** What is typed and chosen in a sum, field by field, as text: what the address keeps. */
export type Inputs = Record<string, string>;

/** Why what stands in a field cannot stand there. */
export interface FieldFault {
  says: string;
  /** The text and a caret under the place, where it is a sticking. */
  caret?: string;
}

/** A cell of the course that can be picked. */
export interface NamedCell {
  id: string;
  name: string;
  text: string;
}

/** What a sum is given by the page: plain JSON. */
export interface SumProps {
  named: readonly NamedCell[];
}

/** The answer of a sum. */
export interface Answer {
  /** One sentence to repeat; empty where a field cannot be read. */
  says: string;
  /** What else there is to know, a sentence each. */
  more?: readonly string[];
  /** Fields that cannot be read, by name. */
  faults: Record<string, FieldFault>;
  ruler?: RulerDrawing & { label: string };
  /** What is played, under which meter, and how long a slot of the ruler is. */
  play?: { timeline: Timeline; meter: string; slotTicks: number };
}

/** What stands in place of an answer that is still worked out. */
export const NO_ANSWER: Answer = { says: '', faults: {} };
