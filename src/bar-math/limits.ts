/** How much is worked out while a finger is still on the key, how much beside the page, and how much not at all. */
import { TooLarge, type Item, type Sticking } from '../core/index.ts';

/** How far a question is followed. */
export interface WorkLimits {
  /** States in which orders are counted. */
  states: number;
  /** States among which the easiest and hardest orders are looked for; each is dearer than one that is counted. */
  ranked: number;
  /** Strokes that are laid, rests and grace notes included. */
  strokes: number;
}

/** What a page answers by itself: under 50 ms. */
export const ON_PAGE: WorkLimits = { states: 10_000, ranked: 150, strokes: 1_500 };
/** What a worker answers. Beyond it even a worker would keep a player waiting, or fill the memory of a phone. */
export const IN_WORKER: WorkLimits = { states: 300_000, ranked: 50_000, strokes: Infinity };

/** What is played at the most; more is told and drawn only. A phrase has no more bars. */
export const MOST_PLAYED = { bars: 32, strokes: 8_192 } as const;

/** So many characters can stand in a field at the most: those of the longest sticking. */
export const MOST_TYPED = 4_096;
/** The most cells of an order, and the most characters that say how often one is used, with the signs around them. */
export const MOST_ROWS = 8;
export const MOST_USES = 16;

/**
 * How many strokes a sticking has once its groups are written out, rests and grace notes included; found without writing
 * them out.
 *
 * @example strokesIn({ hands: [{ kind: 'slot', parts: [[{ limb: 'R' }]] }] }) // 1
 */
export const strokesIn = ({ hands, feet = [] }: Sticking): number => strokesOf(hands) + strokesOf(feet);

function strokesOf(items: readonly Item[]): number {
  let sum = 0;
  for (const item of items) {
    if (item.kind === 'group') sum += item.count * strokesOf(item.items);
    else if (item.kind !== 'slot') sum += 1;
    else
      for (const chord of item.parts)
        sum += chord.reduce((all, { graces = [] }) => all + 1 + graces.length, chord.length ? 0 : 1);
  }
  return sum;
}

/** Adds up the strokes of an answer; throws TooLarge once they are more than the limit. */
export function strokeCounter({ strokes }: WorkLimits): (more: number) => void {
  let sum = 0;
  return (more) => {
    sum += more;
    if (sum > strokes) throw new TooLarge(`the strokes are more than ${strokes}`);
  };
}
