import type { CellProfile } from './profile.ts';
import type { ArrangeRequest } from './types.ts';

/** Whether a cell may begin at a slot: the rules that need to know no more than that. */
export type Fits = (cell: number, slot: number) => boolean;

/** Whether a rule cares where a cell stands. */
export function hasPlaces({ rules = {} }: ArrangeRequest): boolean {
  const { first, last, accentOn, noAccentOn, lastStrokeOn, withinBars } = rules;
  return (
    first !== undefined ||
    last !== undefined ||
    (accentOn?.length ?? 0) > 0 ||
    (noAccentOn?.length ?? 0) > 0 ||
    lastStrokeOn !== undefined ||
    withinBars === true
  );
}

/** The rules of place as a table, so that each question costs one look. */
export function placesOf(request: ArrangeRequest, profiles: readonly (CellProfile | undefined)[]): Fits {
  if (!hasPlaces(request)) return () => true;
  const width = request.slots + 1;
  const table = new Uint8Array(request.cells.length * width);
  request.cells.forEach((_, c) => {
    const row = table.subarray(c * width, (c + 1) * width);
    strikeOut(row, request, c);
    if (profiles[c]) strikeOutStrokes(row, request, request.cells[c].slots, profiles[c]);
  });
  return (cell, slot) => table[cell * width + slot] === 1;
}

/** Leaves the slots on which a cell may begin by its length, its id and the bar lines. */
function strikeOut(row: Uint8Array, { cells, slots, barSlots = 1, rules = {} }: ArrangeRequest, c: number): void {
  const { id, slots: length } = cells[c];
  if (length > slots) return;
  row.fill(1, 0, slots - length + 1);
  if (rules.first !== undefined && id !== rules.first) row[0] = 0;
  if (rules.last !== undefined && id !== rules.last) row[slots - length] = 0;
  if (rules.withinBars)
    for (let slot = 0; slot <= slots - length; slot += 1) if ((slot % barSlots) + length > barSlots) row[slot] = 0;
}

/** Strikes out the slots from which a cell's strokes break a rule. */
function strikeOutStrokes(row: Uint8Array, { rules = {} }: ArrangeRequest, length: number, profile: CellProfile): void {
  const { accentOn = [], noAccentOn = [], lastStrokeOn } = rules;
  const unless = (place: number, holds: (offset: number) => boolean): void => {
    for (let offset = 0; offset < length && offset <= place; offset += 1) if (!holds(offset)) row[place - offset] = 0;
  };
  for (const place of accentOn) unless(place, (offset) => profile.accents.has(offset));
  for (const place of noAccentOn) unless(place, (offset) => !profile.accents.has(offset));
  if (lastStrokeOn === undefined) return;
  // No stroke after the slot of the last one, and a stroke in it.
  unless(lastStrokeOn, (offset) => profile.strokes.has(offset));
  row.fill(0, Math.max(0, lastStrokeOn - profile.lastStroke + 1));
}
