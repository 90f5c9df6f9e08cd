import { isObject, must, text, whole } from '../check.ts';
import { checkItem } from '../sticking/check-sticking.ts';
import { slotsOf, slotTicks } from '../time/meter.ts';
import type { Phrase, PhraseBar, PhraseSlot, PlacedCell } from './types.ts';

/** Refuses what is no phrase: what reads its bars, slots and cells can rely on them. Throws RangeError. */
export function checkLaid(phrase: Phrase): void {
  const lists = isObject(phrase) && [phrase.bars, phrase.slots, phrase.cells].every(Array.isArray);
  must(lists, 'phrase', phrase, 'a phrase, as layPhrase gives it');
  phrase.bars.forEach(checkBar);
  const bars = new Map(phrase.bars.map((bar) => [bar.number, bar]));
  must(bars.has(1), 'bars', phrase.bars.length, 'a bar 1');
  for (const slot of phrase.slots) checkSlot(slot, bars);
  for (const cell of phrase.cells) checkCell(cell);
}

function checkBar(bar: PhraseBar): void {
  must(isObject(bar), 'bar', bar, 'a bar of a phrase');
  whole('number of a bar', bar.number, 0);
  checkTick(bar.tick);
  const slots = slotsOf(bar.meter, bar.grid);
  const ticks = slotTicks(bar.meter, bar.grid);
  must(bar.slotTicks === ticks, 'ticks of a slot', bar.slotTicks, `${ticks}, as its meter and grid have`);
  whole('slots of a bar', bar.slots, 1, slots);
  whole('first slot of a bar', bar.firstSlot, 0, slots - bar.slots);
}

function checkTick(tick: number): void {
  whole('tick', tick, -Infinity);
}

function checkSlot(slot: PhraseSlot, bars: ReadonlyMap<number, PhraseBar>): void {
  must(isObject(slot), 'slot', slot, 'a slot of a phrase');
  const bar = bars.get(slot.bar);
  must(bar !== undefined, 'bar of a slot', slot.bar, 'a bar of the phrase');
  whole('slot', slot.slot, 0, bar.firstSlot + bar.slots - 1);
  checkTick(slot.tick);
  whole('cell of a slot', slot.cell, -1);
  for (const item of [slot.hands, ...(slot.feet === undefined ? [] : [slot.feet])]) {
    checkItem(item);
    must(item.kind === 'slot' || item.kind === 'hold', 'kind of a slot', item.kind, 'slot or hold');
  }
}

function checkCell(cell: PlacedCell): void {
  must(isObject(cell), 'cell', cell, 'a cell of a phrase');
  text('cell id', cell.id);
  text('count of a cell', cell.count);
  whole('bar of a cell', cell.bar, 0);
  whole('first slot of a cell', cell.from, 0);
  whole('slots of a cell', cell.slots, 1);
  checkTick(cell.tick);
}
