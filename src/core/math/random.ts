/**
 * A stream of numbers, each at least 0 and below 1, that depends on `seed` alone: the same seed gives the
 * same stream on every machine. 32 bits a number; for drawing exercises, not for secrets or statistics.
 *
 * `seed` is any finite number; its lowest 32 bits count. A counter stepped by the golden ratio, its bits
 * mixed by the finaliser of the 32-bit MurmurHash3 (A. Appleby, public domain).
 */
export function seededRandom(seed: number): () => number {
  let counter = seed >>> 0;
  return () => {
    counter = (counter + 0x9e3779b9) >>> 0;
    let bits = counter;
    bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b);
    bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
    return ((bits ^ (bits >>> 16)) >>> 0) / 2 ** 32;
  };
}
