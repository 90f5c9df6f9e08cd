/** Cuts a list into shares of so many, the last one with what is left: `shares([1, 2, 3], 2)` is `[[1, 2], [3]]`. */
export const shares = <T>(all: readonly T[], atOnce: number): T[][] =>
  Array.from({ length: Math.ceil(all.length / atOnce) }, (_, share) => all.slice(share * atOnce, (share + 1) * atOnce));
