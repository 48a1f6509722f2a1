/** Share of the greatest term below which a difference is rounding: some hundred times the double's own. */
const rounding = 2e-14;

/**
 * `a` less `b`, and exactly 0 where the two differ by no more than the rounding of sums of doubles may make of
 * one number. Measured numbers have no such digits: no balance tells 500 g to ten picograms.
 *
 * `greatest` is the size of the greatest term that went into either sum, where it is greater than the sums are:
 * a clearance of 0.05 mm that is left of 55 mm carries the rounding of the 55.
 */
export function difference(a: number, b: number, greatest = 0): number {
  const left = a - b;
  const size = Math.max(Math.abs(a), Math.abs(b), Math.abs(greatest));
  return Math.abs(left) <= rounding * size ? 0 : left;
}
