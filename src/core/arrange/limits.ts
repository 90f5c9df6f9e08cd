/** The most states that are counted before a problem is refused as too large. */
export const MAX_STATES = 2_000_000;

/** The most states that are looked through for the easiest or the hardest orders. */
export const MAX_RANKED_STATES = 50_000;

/** The most states that are looked through to find a reason why there is no order: someone waits for a sentence. */
export const MAX_REASON_STATES = 200_000;

/** The most digits, each of 32 bits, that its numbers may take: 128 MB. */
export const MAX_DIGITS = 32_000_000;

/** The most cells of an order where orders are counted by how many of each cell they have. */
const MAX_MIXED = 1_024;

/** The most sums by which cells are mixed. */
export const MAX_MIXINGS = 20_000_000;

/** The most slots of a loop. */
const MAX_LOOP_SLOTS = 4_096;

/** The most sums, states times slots, by which loops are counted. */
const MAX_LOOP_SUMS = 10_000_000;

/** The limit for a request, which may set itself a lower one. */
export const mostOf = ({ mostStates = Infinity }: { mostStates?: number }, most: number): number =>
  Math.min(most, mostStates);

/** A problem that is well put and too large to be counted. */
export class TooLarge extends RangeError {}

/** What is said of a problem of too many states. */
export const tooLarge = (most = MAX_STATES): TooLarge =>
  new TooLarge(`the states are more than ${most.toLocaleString('en')}; fewer cells, slots or limits can be counted`);

/** What is said of a problem of too large numbers. */
export const tooWide = (): TooLarge =>
  new TooLarge(`the numbers take more than ${MAX_DIGITS.toLocaleString('en')} digits; fewer slots can be counted`);

/** What is said of cells that can be mixed in too many ways. */
export const tooMixed = (): TooLarge =>
  new TooLarge(
    `the cells mix in more than ${MAX_MIXINGS.toLocaleString('en')} sums; fewer cells or slots can be counted`,
  );

/** Refuses orders of more cells than can be mixed. */
export function checkMixed(cells: number): void {
  if (cells > MAX_MIXED)
    throw new TooLarge(
      `orders of ${cells} cells are too long; at most ${MAX_MIXED.toLocaleString('en')} cells can be mixed`,
    );
}

/** Refuses loops that would take too long to be counted. */
export function checkLoop(slots: number, states: number): void {
  if (slots > MAX_LOOP_SLOTS)
    throw new TooLarge(`a loop of ${slots} slots is too long; at most ${MAX_LOOP_SLOTS} can be counted`);
  if (slots * states > MAX_LOOP_SUMS)
    throw new TooLarge(
      `the loops take more than ${MAX_LOOP_SUMS.toLocaleString('en')} sums; fewer cells, slots or limits can be counted`,
    );
}
