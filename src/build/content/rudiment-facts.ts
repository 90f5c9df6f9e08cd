import { type Stroke, TICKS_PER_QUARTER, type Timeline } from '../../core/index.ts';
import type { RudimentData } from '../../curriculum/index.ts';
import type { Laid } from './check-bars.ts';

/** A field of a rudiment that says something else than its sticking plays. */
export interface FactFault {
  field: 'hands' | 'accents' | 'beats' | 'rhythm';
  message: string;
}

/** Compares what a rudiment's fields say with what its sticking plays. */
export function rudimentFaults(rudiment: RudimentData, laid: Laid): FactFault[] {
  const once = statement(laid.timeline);
  return [
    differs('hands', rudiment.hands, playedHands(once)),
    differs('accents', rudiment.accents.join(' '), playedAccents(once)),
    differs('beats', rudiment.beats, playedBeats(rudiment, laid)),
    differs('rhythm', rudiment.rhythm, playedRhythm(rudiment, laid)),
  ].filter((fault) => fault !== undefined);
}

function differs(field: FactFault['field'], says: unknown, plays: unknown): FactFault | undefined {
  return says === plays
    ? undefined
    : { field, message: `"${field}" says ${says || 'nothing'}; the sticking plays ${plays || 'nothing'}` };
}

/** The strokes of the first statement. */
const statement = ({ strokes }: Timeline) => strokes.filter(({ cell }) => cell === 0);

const isGrace = (stroke: Stroke) => stroke.kind === 'grace';

/** The plain sticking that is played: `lR L L R`. */
export function playedHands(strokes: readonly Stroke[]): string {
  return strokes
    .map((stroke) => (isGrace(stroke) ? stroke.limb.toLowerCase() : `${stroke.limb} `))
    .join('')
    .trim();
}

const mains = (strokes: readonly Stroke[]) => strokes.filter((stroke) => !isGrace(stroke));

function playedAccents(strokes: readonly Stroke[]): string {
  return mains(strokes)
    .flatMap(({ accent }, index) => (accent ? [index + 1] : []))
    .join(' ');
}

/** How long a slot of the drawing is, as ticks. */
const slotTicks = ({ phrase }: Laid) => phrase.bars[0].slotTicks;

/** Where a statement ends: the rests that only the drawing adds are left out. */
const statementEnd = (rudiment: RudimentData, laid: Laid) =>
  (laid.phrase.cells[0].slots - rudiment.rest) * slotTicks(laid);

const playedBeats = (rudiment: RudimentData, laid: Laid) => statementEnd(rudiment, laid) / TICKS_PER_QUARTER;

/** The length of each main stroke up to the next one, as a note value: `16 16 8`, with t in triplets. */
export function playedRhythm(rudiment: RudimentData, laid: Laid): string {
  const ticks = mains(statement(laid.timeline)).map(({ tick }) => tick);
  const ends = [...ticks.slice(1), statementEnd(rudiment, laid)];
  return ends.map((end, index) => noteValue(end - ticks[index])).join(' ');
}

/** A length as a note value: a sixteenth is `16`, a sixteenth of a triplet `16t`. */
function noteValue(ticks: number): string {
  const part = (TICKS_PER_QUARTER * 4) / ticks;
  if (Number.isInteger(part) && Math.log2(part) % 1 === 0) return String(part);
  const triplet = (part * 2) / 3;
  return Number.isInteger(triplet) ? `${triplet}t` : `${part}`;
}
