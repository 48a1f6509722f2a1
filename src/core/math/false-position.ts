/** Trials after which a search ends wherever it is. */
const mostTrials = 50;

/**
 * The place between `low` and `high` at which `f` is zero, by false position with the end that stays halved
 * (Illinois). Each end is a place and the value of `f` there, of opposite signs; neither is asked for again.
 *
 * Ends with the first trial that is a root or moves by no more than `within` [of the places], and in any case
 * after {@link mostTrials}. The last call of `f` is for the place returned, so that what it works out on the
 * way belongs to that. Made for short searches by the thousand. `bracketedRoot` bounds its error, which this
 * does not: where `f` is all but nothing at one end, it may stay beside that end.
 * Source: M. Dowell and P. Jarratt, BIT 11 (1971), pp. 168–174; its first page was read, which tells of the plain
 * method. The halving is from memory, and a test holds it.
 */
export function falsePosition(
  f: (x: number) => number,
  [low, atLow]: readonly [number, number],
  [high, atHigh]: readonly [number, number],
  within: number,
): number {
  let [a, fa, b, fb] = [low, atLow, high, atHigh];
  for (let trial = 1; ; trial++) {
    const x = (a * fb - b * fa) / (fb - fa);
    const fx = f(x);
    if (Math.sign(fx) === Math.sign(fb)) fa /= 2;
    else [a, fa] = [b, fb];
    const moved = Math.abs(x - b);
    [b, fb] = [x, fx];
    if (fx === 0 || moved <= within || trial >= mostTrials) return x;
  }
}
