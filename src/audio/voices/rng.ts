/** Gives the next number of a sequence, from 0 up to but not including 1. */
export type Random = () => number;

/** The 32-bit words a generator starts from; not all of them zero. */
export type GeneratorState = readonly [number, number, number, number];

/**
 * The 32-bit FNV-1a hash of a text's UTF-16 units, low byte first where a unit is above 255 (Fowler, Noll, Vo).
 * `hash('foobar')` is `0xbf9cf968`.
 */
export function hash(text: string): number {
  let sum = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    sum = Math.imul(sum ^ (unit & 0xff), 0x01000193);
    if (unit > 0xff) sum = Math.imul(sum ^ (unit >> 8), 0x01000193);
  }
  return sum >>> 0;
}

/** xoshiro128++ 1.0 (D. Blackman and S. Vigna, public domain): whole numbers from 0 to 2³² − 1. */
export function xoshiro128(state: GeneratorState): () => number {
  // In an array of integers, for captured variables of 32 bits are boxed and made this eight times slower.
  const s = Int32Array.from(state);
  return () => {
    const [a, b, c, d] = [s[0], s[1], s[2], s[3]];
    const sum = (a + d) | 0;
    const mixed = d ^ b;
    s[0] = a ^ mixed;
    s[1] = b ^ c ^ a;
    s[2] = c ^ a ^ (b << 9);
    s[3] = (mixed << 11) | (mixed >>> 21);
    return (((sum << 7) | (sum >>> 25)) + a) >>> 0;
  };
}

/** A sequence of its own for each seed, the same on every machine: `rng('snare 3')`. */
export function rng(seed: string): Random {
  const word = (n: number) => hash(`${seed}#${n}`);
  const next = xoshiro128([word(0), word(1), word(2), word(3)]);
  // Seeds that differ in one letter start from related words; a few turns part them.
  for (let i = 0; i < 8; i++) next();
  return () => next() / 0x100000000;
}

/** A number near 1, at most `share` away from it: `nearly(random, 0.02)`. */
export function nearly(random: Random, share: number): number {
  return 1 + share * (2 * random() - 1);
}
