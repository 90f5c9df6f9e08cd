/** Park and Miller's generator, for draws that are the same each time. */
export function lehmer(seed: number): () => number {
  let x = seed;
  return () => (x = (x * 48271) % 2147483647) / 2147483647;
}
