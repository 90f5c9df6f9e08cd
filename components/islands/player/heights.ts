/** Stroke heights: for each hand the way of the stick's tip, drawn under the score, a piece of it under every beat. */
import { motions, type Motion, type Stroke, type Timeline } from '../../../src/core/index.ts';
import { placeIn, type Beat, type ScoreView } from './score.ts';

/** In units of the score: where the tip is when it is high, low, and on the drum. */
const LEVEL = { high: 2, low: 13, drum: 20 } as const;
/** From one hand's line to the other's. */
const BAND = 28;
/** How far before and after a stroke the tip leaves its height. */
const DIP = 4;

type Level = 'high' | 'low';

/** One dip of a stick: from which height, to which, and where within a beat's fragment. */
export interface Dip {
  x: number;
  from: Level;
  to: Level;
}

const WAYS: Record<Motion, [Level, Level]> = {
  full: ['high', 'high'],
  down: ['high', 'low'],
  tap: ['low', 'low'],
  up: ['low', 'high'],
};

/**
 * The way of a stick's tip from one edge of a fragment to the other, as path data.
 *
 * @example
 * tipPath([{ x: 10, from: 'high', to: 'low' }], 'high', 50); // 'M0 2H6L10 20L14 13H50'
 */
export function tipPath(dips: readonly Dip[], before: Level, width: number): string {
  const start = `M0 ${LEVEL[before]}`;
  const parts = dips.map(({ x, to }) => `H${round(x - DIP)}L${round(x)} ${LEVEL.drum}L${round(x + DIP)} ${LEVEL[to]}`);
  return `${start}${parts.join('')}H${round(width)}`;
}

const round = (value: number) => Math.round(value * 10) / 10;

/** Draws the heights of a timeline under a score; without a timeline, takes them away. */
export function drawHeights(score: ScoreView | undefined, timeline: Timeline | undefined): void {
  if (!score) return;
  score.element.querySelectorAll('.heights').forEach((drawn) => drawn.remove());
  score.beats.forEach((beat) => makeRoom(beat, 0));
  if (!timeline) return;
  const found = motions(timeline);
  const hands = (['R', 'L'] as const).filter((hand) => timeline.strokes.some(({ limb }) => limb === hand));
  score.beats.forEach((beat, index) => {
    const bottom = makeRoom(beat, hands.length * BAND);
    const letterAt = index === 0 ? '' : lineStarts(beat);
    hands.forEach((hand, band) => {
      const own = timeline.strokes.filter(({ limb }) => limb === hand);
      const letter = letterAt === undefined ? '' : `<text x="-10" y="${LEVEL.drum}"${letterAt}>${hand}</text>`;
      beat.element.append(line(handPath(beat, own, found), bottom + band * BAND + 6, viewOf(beat).width, letter));
    });
  });
}

/** In which layouts a fragment begins a line: the style sheet shows there what carries this attribute, as it does the clef. */
function lineStarts({ element }: Beat): string | undefined {
  const at = element.querySelector<SVGElement>('[data-at]')?.dataset.at;
  return at && ` data-at="${at}"`;
}

function handPath(beat: Beat, own: readonly Stroke[], found: ReadonlyMap<string, Motion>): string {
  const end = beat.tick + beat.ticks;
  const inside = own.filter(({ tick }) => tick >= beat.tick && tick < end);
  const dips = inside.map((stroke) => ({ x: placeOf(beat, stroke), ...wayOf(stroke, found) }));
  const next = own.find(({ tick }) => tick >= beat.tick) ?? own[0];
  return tipPath(dips, wayOf(next, found).from, viewOf(beat).width);
}

function wayOf(stroke: Stroke, found: ReadonlyMap<string, Motion>): { from: Level; to: Level } {
  const [from, to] = WAYS[found.get(stroke.id) ?? 'tap'];
  return { from, to };
}

/** Where a stroke's letter stands; grace notes of one tick stand one after another. */
function placeOf(beat: Beat, stroke: Stroke): number {
  const letter = beat.element.querySelector(`[data-letter="${CSS.escape(stroke.id)}"]`);
  return Number(letter?.getAttribute('x') ?? placeIn(beat, stroke.tick) * viewOf(beat).width);
}

const viewOf = (beat: Beat) => beat.element.viewBox.baseVal;

/** Makes a fragment taller by so much than it was drawn; gives the height it was drawn with. */
function makeRoom({ element }: Beat, room: number): number {
  const { x, y, width, height } = element.viewBox.baseVal;
  const drawn = Number((element.dataset.drawn ??= String(height)));
  element.setAttribute('viewBox', `${x} ${y} ${width} ${drawn + room}`);
  return y + drawn;
}

function line(path: string, y: number, width: number, letter: string): SVGGElement {
  const group = document.createElementNS('http://www.w3.org/2000/svg', 'g');
  group.setAttribute('class', 'heights');
  group.setAttribute('transform', `translate(0 ${y})`);
  group.innerHTML = `${letter}<path class="drum" d="M0 ${LEVEL.drum}H${width}"/><path d="${path}"/>`;
  return group;
}
