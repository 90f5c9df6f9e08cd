/** Counts completions from any state a phrase can pass through while it is laid. States are numbers; -1 is none. */
export interface Counter {
  readonly start: number;
  readonly count: bigint;
  /** The state after one more cell; -1 where a rule, a use or the slots forbid it. */
  next(state: number, cell: number): number;
  /** Whether there is any way to complete the phrase from here. */
  isOpen(state: number): boolean;
  /** Whether all slots are filled. */
  isFull(state: number): boolean;
  /** A number from which the ways of states are taken away: false where it is less than they are. */
  remainder(k: bigint): (state: number) => boolean;
  /** A sum to which the ways of states are added. */
  sum(): { add(state: number): void; total(): bigint };
}
