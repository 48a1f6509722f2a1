import fc from 'fast-check';

const parts = 2 ** 30;

/**
 * Numbers spread evenly from `min` to `max`, both ends among them. `fc.double` draws as many from each power of two as
 * from the next, so that nine of ten between −1 and 1 are nearly nothing.
 */
export function evenly(min: number, max: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: parts }).map((part) => min + ((max - min) * part) / parts);
}
