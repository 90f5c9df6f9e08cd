import { LEAD_OF, type Lead, type LeadName } from '../../../src/core/phrase/types.ts';

/** What a player is handed by the page: plain JSON. */
export interface PlayerProps {
  /** Under which tempo and lead are remembered: an exercise's id, or a bar's. */
  id: string;
  /** The texts of the cells, one after another; ids may repeat. */
  cells: readonly { id: string; text: string }[];
  /** Of bar 1, also where the text itself says them. */
  meter: string;
  /** Whether a beat of it is a dotted quarter note. */
  compound: boolean;
  grid: number;
  /** What its slots are called: "sixteenths". */
  slots: string;
  /** Whether there is a grace note to be wide or written out. */
  graces: boolean;
  /** Slots before bar 1. */
  pickup?: number | undefined;
  /** Names over the brackets by index of the cell, null for none. */
  names?: readonly (string | null)[] | undefined;
  /** Beats a minute: where to begin, where to arrive. */
  tempo: { from: number; to: number };
  /** Which leads can be chosen here. */
  leads: readonly LeadName[];
  /** The counting system's name; false where no counts are drawn. */
  counts?: string | false | undefined;
  staff?: 'pad' | 'kit' | 'auto' | undefined;
  /** What is played, for those who hear the button without seeing the notes. */
  barLabel?: string | undefined;
}

/** The leads that can be chosen, as a phrase knows them; the first one is where it begins. */
export function leadsOf({ leads }: Pick<PlayerProps, 'leads'>): [Lead, ...Lead[]] {
  const [first = 'right', ...others] = leads;
  return [LEAD_OF[first], ...others.map((lead) => LEAD_OF[lead])];
}
