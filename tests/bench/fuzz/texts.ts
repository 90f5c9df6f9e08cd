import { isDeepStrictEqual } from 'node:util';
import {
  cellsOf,
  hands,
  layPhrase,
  mirror,
  parseSticking,
  perform,
  printSticking,
  schedule,
  slotCount,
  type Fault,
  type Sticking,
  type Timeline,
} from '../../../src/core/index.ts';
import { attackOf, between, pick } from './attack.ts';
import { damaged, nearlySticking, scraps } from './sticking-text.ts';

/** Sticking text, right, nearly right and wrong, taken all the way from the parser to seconds. */
export const texts = attackOf('sticking texts', { short: 4_000, long: 1_000_000 }, (random, about) => {
  const kind = random();
  const text =
    kind < 0.15 ? scraps(random) : kind < 0.4 ? damaged(random, nearlySticking(random)) : nearlySticking(random);
  about(text);
  const read = parseSticking(text);
  if (!read.ok) return badFault(text, read.fault);
  return badSticking(read.sticking) ?? badPlaying(read.sticking, random);
});

/** A fault points into the text and says something in each of its fields. */
function badFault(text: string, { at, found, expected, message }: Fault): string | undefined {
  const inside = Number.isInteger(at) && at >= 0 && at <= Math.max(0, text.length - 1);
  if (!inside) return `a fault at ${at} in ${text.length} characters`;
  return found && expected && message ? undefined : 'a fault that says nothing';
}

function readBack(what: string, sticking: Sticking): string | undefined {
  const read = parseSticking(printSticking(sticking));
  if (!read.ok) return `${what}, printed, is refused: ${read.fault.message}`;
  return isDeepStrictEqual(read.sticking, sticking) ? undefined : `${what} changes when it is printed and read`;
}

/** Printing, mirroring and cutting into cells lose nothing. */
function badSticking(sticking: Sticking): string | undefined {
  const cells = cellsOf(sticking);
  const wrong =
    readBack('it', sticking) ??
    readBack('its mirror', mirror(sticking)) ??
    cells.map((cell) => readBack('a cell of it', cell)).find(Boolean);
  if (wrong) return wrong;
  if (!isDeepStrictEqual(mirror(mirror(sticking)), sticking)) return 'mirrored twice it is another';
  const slots = cells.reduce((sum, cell) => sum + slotCount(cell.hands), 0);
  return slots === slotCount(sticking.hands) ? undefined : 'its cells have other slots';
}

const METERS = ['4/4', '3/4', '6/8', '2+2+3/8', '5/16'];

function badPlaying(sticking: Sticking, random: () => number): string | undefined {
  const cells = cellsOf(sticking).map((one, i) => ({ id: `c${i % 3}`, sticking: one }));
  const headed = sticking.hands[0].kind === 'head';
  const ruler = headed ? {} : { meter: pick(random, METERS), grid: between(random, 1, 8) };
  const lead = pick(random, ['written', 'left', 'alternating'] as const);
  const laid = layPhrase({ cells, ...ruler, lead, fill: 'rests', pickup: pick(random, [0, 0, 0, 1]) });
  if (!laid.ok) return laid.fault.message ? undefined : 'a phrase refused without a word';
  const flams = pick(random, ['grace', 'before', 'on'] as const);
  const timeline = perform(laid.phrase, { flams });
  return badTimeline(timeline) ?? badSchedule(timeline, random);
}

/** Strokes stand in order of whole ticks, and no limb strikes twice at one of them. */
function badTimeline({ strokes }: Timeline): string | undefined {
  const struck = new Set<string>();
  const ids = new Set<string>();
  let before = -Infinity;
  for (const { id, tick, limb, kind } of strokes) {
    if (!Number.isInteger(tick) || tick < before) return `${id} stands at tick ${tick}, after ${before}`;
    if (ids.has(id)) return `two strokes have the id ${id}`;
    if (kind !== 'grace' && struck.has(`${limb}${tick}`)) return `${limb} strikes twice at tick ${tick}`;
    if (kind !== 'grace') struck.add(`${limb}${tick}`);
    ids.add(id);
    before = tick;
  }
  return undefined;
}

/** Every stroke has its moment, each after the one before, grace notes before their primaries. */
function badSchedule(timeline: Timeline, random: () => number): string | undefined {
  const options = { bpm: between(random, 30, 300), swing: pick(random, [1, 1.5, 2, 3]), loop: random() < 0.5 };
  const times = schedule(timeline, options);
  const seconds = new Map(times.map((one) => [one.id, one.seconds]));
  if (seconds.size !== timeline.strokes.length) return 'a stroke has no moment of its own';
  if (times.some((one, i) => !Number.isFinite(one.seconds) || (i > 0 && one.seconds < times[i - 1].seconds)))
    return 'moments are out of order';
  const late = timeline.strokes.find((s) => s.kind === 'grace' && seconds.get(s.id)! > seconds.get(s.primary!)!);
  if (late) return `${late.id} sounds after its primary`;
  const { limitingTempos } = hands(timeline, options.bpm, { loop: options.loop });
  return limitingTempos.every(({ bpm }) => bpm > 0 && bpm < Infinity) ? undefined : 'a limit at no tempo';
}
