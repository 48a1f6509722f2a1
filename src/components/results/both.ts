import type { Result } from '../../calculators/define.ts';
import { ofDifference, ofRatio, sharedInputs, type Spread } from '../../calculators/uncertainty.ts';
import type { WorkView } from '../../notebook/work.svelte.ts';

/** The inputs whose error is one for both results shown; none while a set has no result. */
export function sharedBy({
  calculator,
  sets: { baseline, candidate },
  onePart,
}: WorkView): readonly string[] {
  return baseline.input === undefined || candidate.input === undefined
    ? []
    : sharedInputs(calculator, baseline.input, candidate.input, onePart);
}

/** One output of both sets, with the ± of what is made of the two. */
export interface Pair {
  readonly baseline: Result | undefined;
  readonly candidate: Result | undefined;
  /** Of the difference; absent where neither result carries a ±. */
  readonly difference?: Spread;
  /** Of the ratio; absent likewise, and for a baseline of 0. */
  readonly ratio?: Spread;
}

const exact: Spread = { plusMinus: 0, shares: [] };

/** The output `name` of both sets. */
export function pairOf(work: WorkView, name: string, shared: readonly string[]): Pair {
  const { baseline, candidate } = work.sets;
  const values = { baseline: baseline.output?.[name], candidate: candidate.output?.[name] };
  const [b, c] = [values.baseline, values.candidate];
  if (typeof b !== 'number' || typeof c !== 'number') return values;
  const spreads = [baseline.uncertainty?.[name], candidate.uncertainty?.[name]] as const;
  if (spreads[0] === undefined && spreads[1] === undefined) return values;
  const [before = exact, after = exact] = spreads;
  const difference = ofDifference(before, after, shared);
  return b === 0
    ? { ...values, difference }
    : {
        ...values,
        difference,
        ratio: ofRatio({ baseline: b, candidate: c }, before, after, shared),
      };
}
