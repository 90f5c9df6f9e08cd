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
  const { cells, slots } = request;
  const width = slots + 1;
  const table = new Uint8Array(cells.length * width);
  cells.forEach((cell, c) => {
    for (let slot = 0; slot + cell.slots <= slots; slot += 1)
      if (fits(request, c, slot, profiles[c])) table[c * width + slot] = 1;
  });
  return (cell, slot) => table[cell * width + slot] === 1;
}

function fits(
  { cells, slots, barSlots = 1, rules = {} }: ArrangeRequest,
  c: number,
  slot: number,
  profile?: CellProfile,
): boolean {
  const { id, slots: length } = cells[c];
  const end = slot + length;
  if (rules.first !== undefined && slot === 0 && id !== rules.first) return false;
  if (rules.last !== undefined && end === slots && id !== rules.last) return false;
  if (rules.withinBars && Math.floor(slot / barSlots) !== Math.floor((end - 1) / barSlots)) return false;
  const covers = (place: number): boolean => place >= slot && place < end;
  if (rules.accentOn?.some((place) => covers(place) && !profile!.accents.has(place - slot))) return false;
  if (rules.noAccentOn?.some((place) => covers(place) && profile!.accents.has(place - slot))) return false;
  return rules.lastStrokeOn === undefined || endsRight(profile!, slot, end, rules.lastStrokeOn);
}

/** No stroke after the slot of the last one, and a stroke in it. */
function endsRight({ strokes, lastStroke }: CellProfile, slot: number, end: number, last: number): boolean {
  if (last >= slot && last < end && !strokes.has(last - slot)) return false;
  return slot + lastStroke <= last;
}
