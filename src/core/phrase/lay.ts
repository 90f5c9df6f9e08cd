import { isObject, must, oneOf, shown, text } from '../check.ts';
import type { Fault, Result } from '../fault.ts';
import { checkSticking } from '../sticking/check-sticking.ts';
import { expand, slotsOnly, type FlatItem } from '../sticking/expand.ts';
import { type HoldItem, LIMITS, type SlotItem } from '../sticking/types.ts';
import { countName, countNames, sayCount } from '../time/counts.ts';
import { isGrid, MAX_GRID, readMeter, slotsOf, slotTicks } from '../time/meter.ts';
import { slotNames } from '../time/slot-names.ts';
import type { Grid, MeterText, Ticks } from '../time/units.ts';
import { leadCells, type LedCell } from './lead.ts';
import { LEADS, type Phrase, type PhraseRequest } from './types.ts';

/** A fault on its way out of the walk; it never leaves `layPhrase`. */
class Refusal extends Error {
  readonly fault: Fault;
  constructor(at: number, found: string, expected: string, message: string) {
    super(message);
    this.fault = { at, found, expected, message };
  }
}

interface Ruler {
  meter: MeterText;
  grid: Grid;
  slots: number;
  slotTicks: Ticks;
}

interface Walk {
  ruler?: Ruler;
  phrase: Phrase;
  tick: Ticks;
  /** Slots of the bar being laid; a full bar is closed at once. */
  filled: number;
}

const FILLS = ['exact', 'rests'];
const NO_RULER = 'a meter and a grid, or a head such as [4/4:4]';

/**
 * Lays cells one after another over whole bars, or says what does not add up. The fault's `at` is a slot of the phrase.
 * Throws RangeError for a lead or a fill that does not exist, and for what are no cells.
 * @example
 * layPhrase({ cells: [{ id: 'flam-drag', sticking }], meter: '3/4', grid: 1 }).ok // → true
 * layPhrase({ cells: [{ id: 'flam-drag', sticking }], meter: '2/4', grid: 2 }).fault.message // → 'stops on 2; the & of 2 is empty: 3 of 4 eighths'
 */
export function layPhrase(request: PhraseRequest): Result<'phrase', Phrase> {
  checkCells(request);
  const { cells, lead = 'written', fill = 'exact', pickup = 0 } = request;
  oneOf('lead', lead, LEADS);
  oneOf('fill', fill, FILLS);
  try {
    const walk: Walk = { phrase: { bars: [], slots: [], cells: [], pickup }, tick: 0, filled: 0 };
    walk.ruler = givenRuler(request);
    leadCells(cells, lead).forEach((cell) => layCell(walk, cell, request));
    finish(walk, fill);
    return { ok: true, phrase: walk.phrase };
  } catch (thrown) {
    if (thrown instanceof Refusal) return { ok: false, fault: thrown.fault };
    throw thrown;
  }
}

function checkCells(request: PhraseRequest): void {
  must(
    isObject(request) && Array.isArray(request.cells),
    'what is asked for',
    request,
    'an object with a list of cells',
  );
  for (const cell of request.cells) {
    must(isObject(cell), 'cell', cell, 'an id and a sticking');
    text('cell id', cell.id);
    checkSticking(cell.sticking);
  }
}

function givenRuler({ meter, grid }: PhraseRequest): Ruler | undefined {
  if (meter !== undefined) checkMeter(meter);
  if (grid !== undefined && !isGrid(grid))
    throw new Refusal(
      0,
      shown(grid),
      `1 to ${MAX_GRID}`,
      `grid is ${shown(grid)}; 1 to ${MAX_GRID} slots a beat can stand there`,
    );
  return meter !== undefined && grid !== undefined ? rulerOf(meter, grid) : undefined;
}

function checkMeter(meter: MeterText): void {
  const read = readMeter(meter);
  if (!read.ok) throw new Refusal(0, read.fault.found, read.fault.expected, read.fault.message);
}

const rulerOf = (meter: MeterText, grid: Grid): Ruler => ({
  meter,
  grid,
  slots: slotsOf(meter, grid),
  slotTicks: slotTicks(meter, grid),
});

function layCell(walk: Walk, cell: LedCell, request: PhraseRequest): void {
  const feet = cell.sticking.feet && slotsOnly(cell.sticking.feet);
  const from = walk.phrase.slots.length;
  let slot = 0;
  for (const item of expand(cell.sticking.hands)) {
    if (item.kind === 'head') layHead(walk, item, request);
    else if (item.kind === 'bar') checkBarLine(walk);
    else laySlot(walk, item, feet?.[slot++]);
  }
  placeCell(walk, cell, from);
}

function placeCell(walk: Walk, cell: LedCell, from: number): void {
  const { slots, cells, bars } = walk.phrase;
  const first = slots[from];
  if (!first) return;
  const bar = bars.find((b) => b.number === first.bar)!;
  cells.push({
    id: cell.id,
    from,
    slots: slots.length - from,
    tick: first.tick,
    bar: first.bar,
    count: countName(bar.meter, bar.grid, first.slot),
    mirrored: cell.mirrored,
  });
}

/** Slots of a bar that is open; 0 at a bar line. */
const here = (walk: Walk): number => walk.phrase.slots.length;

function layHead(walk: Walk, head: { meter: MeterText; grid: Grid }, { meter, grid }: PhraseRequest): void {
  const first = here(walk) === 0;
  if (first && ((meter !== undefined && meter !== head.meter) || (grid !== undefined && grid !== head.grid)))
    throw new Refusal(
      0,
      `[${head.meter}:${head.grid}]`,
      `[${meter ?? head.meter}:${grid ?? head.grid}]`,
      `the text begins with [${head.meter}:${head.grid}], but ${meter ?? head.meter} with ${perBeat(grid ?? head.grid)} was asked for`,
    );
  if (walk.filled > 0) refuseInside(walk, 'a head');
  walk.ruler = rulerOf(head.meter, head.grid);
}

const perBeat = (grid: number): string => `${grid} ${grid === 1 ? 'slot' : 'slots'} a beat`;

function checkBarLine(walk: Walk): void {
  if (walk.filled > 0) refuseInside(walk, 'a bar line');
}

function refuseInside(walk: Walk, what: string): never {
  const { slots, many } = { ...walk.ruler!, ...names(walk) };
  throw new Refusal(
    here(walk),
    what,
    `${slots - walk.filled} more ${many}`,
    `${barPrefix(walk)}${what} stands at a bar's end; here ${walk.filled === 1 ? 'is' : 'are'} ${walk.filled} of ${slots} ${many}`,
  );
}

const names = ({ ruler }: Walk): { one: string; many: string } => slotNames(ruler!.meter, ruler!.grid);

/** Names the bar where there is more than one. */
function barPrefix(walk: Walk): string {
  const number = walk.phrase.bars[walk.phrase.bars.length - 1]?.number ?? 1;
  return number > 1 ? `bar ${number}: ` : '';
}

function laySlot(walk: Walk, hands: SlotItem | HoldItem, feet: SlotItem | HoldItem | undefined): void {
  const ruler = walk.ruler;
  if (!ruler) throw new Refusal(here(walk), 'no meter', NO_RULER, `how long is a bar? ${NO_RULER} can stand here`);
  if (here(walk) >= LIMITS.slots)
    throw new Refusal(
      here(walk),
      `slot ${LIMITS.slots + 1}`,
      `at most ${LIMITS.slots} slots`,
      `a phrase has at most ${LIMITS.slots} slots`,
    );
  if (walk.filled === 0) openBar(walk, ruler);
  const bar = walk.phrase.bars[walk.phrase.bars.length - 1];
  [hands, feet].forEach((item) => checkSplit(walk, item));
  walk.phrase.slots.push({
    bar: bar.number,
    slot: bar.firstSlot + walk.filled,
    tick: walk.tick,
    hands,
    ...(feet ? { feet } : {}),
    cell: walk.phrase.cells.length,
  });
  walk.tick += ruler.slotTicks;
  walk.filled += 1;
  if (walk.filled === bar.slots) walk.filled = 0;
}

function openBar(walk: Walk, ruler: Ruler): void {
  const { bars, pickup } = walk.phrase;
  const isPickup = bars.length === 0 && pickup !== 0;
  if (isPickup) checkPickup(pickup, ruler);
  const number = isPickup ? 0 : (bars[bars.length - 1]?.number ?? 0) + 1;
  if (number > LIMITS.bars)
    throw new Refusal(
      here(walk),
      `bar ${number}`,
      `at most ${LIMITS.bars} bars`,
      `a phrase has at most ${LIMITS.bars} bars`,
    );
  const slots = isPickup ? pickup : ruler.slots;
  if (isPickup) walk.tick = -pickup * ruler.slotTicks;
  bars.push({ ...ruler, number, tick: walk.tick, slots, firstSlot: ruler.slots - slots });
}

function checkPickup(pickup: number, ruler: Ruler): void {
  if (Number.isInteger(pickup) && pickup > 0 && pickup <= ruler.slots) return;
  const most = `0 to ${ruler.slots}`;
  throw new Refusal(0, shown(pickup), most, `pickup is ${shown(pickup)}; ${most} slots can stand before bar 1`);
}

/** A slot shared by more strokes than whole ticks allow is refused, never rounded. */
function checkSplit(walk: Walk, item: FlatItem | undefined): void {
  if (item?.kind !== 'slot' || walk.ruler!.slotTicks % item.parts.length === 0) return;
  const { one } = names(walk);
  throw new Refusal(
    here(walk),
    `${item.parts.length} strokes in one ${one}`,
    'fewer strokes in the slot, or a coarser grid',
    `a ${one} of ${walk.ruler!.slotTicks} ticks cannot be split evenly into ${item.parts.length}; write fewer strokes in the slot or a coarser grid`,
  );
}

function finish(walk: Walk, fill: 'exact' | 'rests'): void {
  const { bars } = walk.phrase;
  if (bars.length === 0)
    throw new Refusal(0, 'nothing', 'at least one cell', 'nothing is laid here; a phrase holds at least one slot');
  if (fill === 'rests') padRests(walk);
  else if (walk.filled > 0) refuseUnfinished(walk);
  if (walk.phrase.bars[walk.phrase.bars.length - 1].number === 0)
    throw new Refusal(here(walk), 'the end', 'a bar after the pickup', 'the pickup leads to a bar, and none follows');
}

function padRests(walk: Walk): void {
  const { slots } = walk.phrase;
  while (walk.filled > 0) {
    laySlot(walk, { kind: 'slot', parts: [[]] }, undefined);
    slots[slots.length - 1].cell = -1;
  }
}

/** `stops on 4 &; the a of 4 is empty: 15 of 16 sixteenths` */
function refuseUnfinished(walk: Walk): never {
  const bar = walk.phrase.bars[walk.phrase.bars.length - 1];
  const all = countNames(bar.meter, bar.grid);
  const next = bar.firstSlot + walk.filled;
  const left = bar.slots - walk.filled;
  const { many } = names(walk);
  const empty =
    left === 1 ? `${sayCount(all[next])} is empty` : `from ${sayCount(all[next])} on, ${left} ${many} are empty`;
  throw new Refusal(
    here(walk),
    `${walk.filled} of ${bar.slots} ${many}`,
    `${left} more ${left === 1 ? names(walk).one : many}`,
    `${barPrefix(walk)}stops on ${all[next - 1]}; ${empty}: ${walk.filled} of ${bar.slots} ${many}`,
  );
}
