import type { SlotItem, HoldItem, Sticking } from '../sticking/types.ts';
import type { Grid, MeterText, SlotIndex, Ticks } from '../time/units.ts';

/** A short sticking under a name of its own. */
export interface Cell {
  id: string;
  sticking: Sticking;
}

/** Who leads: as written, mirrored, or each cell by the hand that did not lead the one before. */
export type Lead = (typeof LEADS)[number];

/** Every rule of lead. */
export const LEADS = ['written', 'left', 'alternating'] as const;

/** The leads as pages, addresses and content call them, and what each is to a phrase. */
export const LEAD_OF = { right: 'written', left: 'left', alternating: 'alternating' } as const satisfies Record<
  string,
  Lead
>;

/** A lead by that name. */
export type LeadName = keyof typeof LEAD_OF;

/** What `layPhrase` takes. */
export interface PhraseRequest {
  cells: readonly Cell[];
  /** Left out where the text begins with a head. */
  meter?: MeterText;
  /** Slots a beat; left out where the text begins with a head. */
  grid?: Grid;
  lead?: Lead;
  /** Slots before bar 1, at most a bar of them. */
  pickup?: number;
  /** `rests` pads an unfinished bar, for drawing. */
  fill?: 'exact' | 'rests';
}

/** One bar of a phrase. The pickup, if any, is bar 0 and holds only its last slots. */
export interface PhraseBar {
  /** From 1; 0 is the pickup. */
  number: number;
  tick: Ticks;
  meter: MeterText;
  grid: Grid;
  /** Slots it holds; for the pickup the slots written. */
  slots: number;
  /** Index in a whole bar of its first slot: 0 but for the pickup. */
  firstSlot: SlotIndex;
  slotTicks: Ticks;
}

/** One slot of a phrase: what the hands' and the feet's lines have there. */
export interface PhraseSlot {
  bar: number;
  slot: SlotIndex;
  tick: Ticks;
  hands: SlotItem | HoldItem;
  feet?: SlotItem | HoldItem;
  /** Index of the cell it belongs to; -1 for a rest that padding added. */
  cell: number;
}

/** Where a cell stands in a phrase. */
export interface PlacedCell {
  id: string;
  /** Index over the phrase's slots, pickup included. */
  from: SlotIndex;
  slots: number;
  tick: Ticks;
  bar: number;
  /** Name of the slot it starts on: `2 &`. */
  count: string;
  /** Whether the lead rule mirrored it. */
  mirrored: boolean;
}

/** Cells laid one after another over whole bars. */
export interface Phrase {
  bars: PhraseBar[];
  slots: PhraseSlot[];
  cells: PlacedCell[];
  /** Slots before bar 1. */
  pickup: number;
}
