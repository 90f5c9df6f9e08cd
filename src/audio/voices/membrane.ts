/** A mode of an ideal circular membrane: its nodal diameters, nodal circles, and the zero of the Bessel function. */
export interface Mode {
  diameters: number;
  circles: number;
  zero: number;
}

/**
 * The lowest modes, by the zeros of the Bessel functions J₀, J₁ … (computed; ratios to the first 1, 1.593, 2.136, 2.295,
 * 2.653, 2.917, 3.155, 3.500, 3.598, 3.647). A real head is not ideal: air, lugs and a second head move its modes.
 */
export const MODES: readonly Mode[] = [
  { diameters: 0, circles: 1, zero: 2.404826 },
  { diameters: 1, circles: 1, zero: 3.831706 },
  { diameters: 2, circles: 1, zero: 5.135622 },
  { diameters: 0, circles: 2, zero: 5.520078 },
  { diameters: 3, circles: 1, zero: 6.380162 },
  { diameters: 1, circles: 2, zero: 7.015587 },
  { diameters: 4, circles: 1, zero: 7.588342 },
  { diameters: 2, circles: 2, zero: 8.417244 },
  { diameters: 0, circles: 3, zero: 8.653728 },
  { diameters: 5, circles: 1, zero: 8.771484 },
];

/** Frequency of a mode over that of the lowest: `ratioOf(MODES[1])` is 1.593. */
export function ratioOf(mode: Mode): number {
  return mode.zero / MODES[0].zero;
}

/** The Bessel function of the first kind by its power series; exact to nine digits for x up to 12. */
export function besselJ(order: number, x: number): number {
  let term = 1;
  for (let k = 1; k <= order; k++) term *= x / (2 * k);
  let sum = term;
  for (let k = 1; k < 40; k++) {
    term *= (-x * x) / (4 * k * (k + order));
    sum += term;
  }
  return sum;
}

/** How much of a mode a stroke wakes at a place of the head: 0 is its middle, 1 its edge, where nothing moves. */
export function strikeShare(mode: Mode, place: number): number {
  return Math.abs(besselJ(mode.diameters, mode.zero * place));
}
