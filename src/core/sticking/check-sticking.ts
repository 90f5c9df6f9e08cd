import { isObject, must, oneOf, optionalSwitch, whole } from '../check.ts';
import { checkGrid, meterOf } from '../time/meter.ts';
import { HANDS, LIMBS, SURFACES } from './limbs.ts';
import type { Chord, Item, Sticking, StrokeText } from './types.ts';

const KINDS = ['slot', 'hold', 'bar', 'head', 'group'];

/** Refuses what is no sticking: what reads its items can rely on their shape. Throws RangeError. */
export function checkSticking(sticking: Sticking, name = 'sticking'): void {
  must(isObject(sticking) && Array.isArray(sticking.hands), name, sticking, 'a sticking, as parseSticking gives it');
  checkItems(sticking.hands);
  if (sticking.feet !== undefined) checkItems(sticking.feet);
}

/** Refuses what is no list of items. */
export function checkItems(items: readonly Item[]): void {
  must(Array.isArray(items), 'items', items, 'a list of the items of a sticking');
  for (const item of items) checkItem(item);
}

/** Refuses what is no item of a sticking. */
export function checkItem(item: Item): void {
  must(isObject(item), 'item', item, 'an item of a sticking');
  oneOf('kind of item', item.kind, KINDS);
  if (item.kind === 'slot') checkParts(item.parts);
  else if (item.kind === 'head') checkHead(item);
  else if (item.kind === 'group') {
    whole('count of a group', item.count, 1);
    checkItems(item.items);
  }
}

function checkHead({ meter, grid }: { meter: string; grid: number }): void {
  meterOf(meter);
  checkGrid(grid);
}

function checkParts(parts: readonly Chord[]): void {
  must(
    Array.isArray(parts) && parts.length > 0 && parts.every(Array.isArray),
    'parts',
    parts,
    'chords that share a slot',
  );
  for (const chord of parts) for (const stroke of chord) checkStroke(stroke);
}

function checkStroke(stroke: StrokeText): void {
  must(isObject(stroke), 'stroke', stroke, 'a stroke with its limb');
  oneOf('limb', stroke.limb, LIMBS);
  if (stroke.surface !== undefined) oneOf('surface', stroke.surface, SURFACES);
  if (stroke.accent !== undefined) oneOf('accent', stroke.accent, ['>', '^']);
  optionalSwitch('ghost', stroke.ghost);
  optionalSwitch('buzz', stroke.buzz);
  if (stroke.graces === undefined) return;
  must(Array.isArray(stroke.graces), 'grace notes', stroke.graces, 'a list of grace notes');
  for (const grace of stroke.graces) {
    must(isObject(grace), 'grace note', grace, 'a grace note with its hand');
    oneOf('hand of a grace note', grace.hand, HANDS);
    if (grace.surface !== undefined) oneOf('surface', grace.surface, SURFACES);
  }
}
