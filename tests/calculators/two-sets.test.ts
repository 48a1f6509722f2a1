import { describe, expect, it } from 'vitest';
import type { AnyCalculator, SetId, Value } from '../../src/calculators/define.ts';
import { numberIn } from '../../src/calculators/evaluate.ts';
import { calculators } from '../../src/calculators/index.ts';
import {
  ofDifference,
  ofRatio,
  propagate,
  sharedInputs,
} from '../../src/calculators/uncertainty.ts';
import { seededRandom } from '../../src/core/math/random.ts';
import { evaluate } from '../../src/notebook/evaluation.ts';
import { exampleOf } from '../../src/notebook/example.ts';
import { bothSets } from '../../src/notebook/values.ts';
import { must } from './must.ts';

/**
 * The ± of a difference and of a ratio against drawing the errors: shared inputs are drawn once for both sets,
 * all others once for each. JCGM 101:2008 propagates distributions in this way; here it is the second route to
 * the covariance of JCGM 100:2008, 5.2.
 */

type Numbers = Readonly<Record<string, Value>>;

function exampleSet(calculator: AnyCalculator, set: SetId) {
  const { input, plusMinus } = evaluate(calculator, (entry) => exampleOf(set, entry));
  // What is not there, a lock of 0 g, cannot be lighter than that: its error has one side only.
  const given = Object.entries(plusMinus).filter(([name]) => input?.[name] !== 0);
  return { input: must(input), plusMinus: Object.fromEntries(given) };
}

const draws = 1500;
/** The errors drawn, as a part of the ±: small, so that the models are straight over them. */
const part = 1 / 8;

function standardDeviation(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length);
}

/** Both ± of an output by the covariance and by drawing. */
function bothWays(calculator: AnyCalculator, output: string) {
  const [baseline, candidate] = [
    exampleSet(calculator, 'baseline'),
    exampleSet(calculator, 'candidate'),
  ];
  const shared = sharedInputs(calculator, baseline.input, candidate.input);
  const spread = {
    baseline: must(propagate(calculator, baseline.input, baseline.plusMinus)[output]),
    candidate: must(propagate(calculator, candidate.input, candidate.plusMinus)[output]),
  };
  const value = (input: Numbers): number => must(numberIn(calculator.compute(input)[output]));
  const values = { baseline: value(baseline.input), candidate: value(candidate.input) };

  const random = seededRandom(20261129);
  // Box and Muller (1958), as good as any for fifteen hundred draws.
  const normal = (): number =>
    Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const differences: number[] = [];
  const ratios: number[] = [];
  for (let draw = 0; draw < draws; draw++) {
    const one = new Map(shared.map((name) => [name, normal()]));
    const [before, after] = bothSets.map((set) => {
      const { input, plusMinus } = set === 'baseline' ? baseline : candidate;
      const moved = Object.entries(plusMinus).map(([name, u]) => {
        const x = input[name];
        return [name, typeof x === 'number' ? x + part * u * (one.get(name) ?? normal()) : x];
      });
      return value({ ...input, ...Object.fromEntries(moved) });
    });
    differences.push(must(after) - must(before));
    ratios.push(must(after) / must(before));
  }
  return {
    difference: {
      covariance: ofDifference(spread.baseline, spread.candidate, shared).plusMinus,
      drawn: standardDeviation(differences) / part,
    },
    ratio: {
      covariance: ofRatio(values, spread.baseline, spread.candidate, shared).plusMinus,
      drawn: standardDeviation(ratios) / part,
    },
    alone: Math.hypot(spread.baseline.plusMinus, spread.candidate.plusMinus),
  };
}

// The deviation of n draws is itself uncertain by 1/√(2n), 1.8 % of it; four times that is allowed.
const tolerance = 4 / Math.sqrt(2 * draws);

describe('covariance and drawing come to the same ±', () => {
  it.each([
    ['cylinder-pressure', 'torque'],
    ['cylinder-pressure', 'peakPressure'],
    ['bobweight', 'bobweight'],
    ['rotating-inertia', 'totalInertia'],
    ['reversal-load', 'partingPull'],
    ['ring-tension', 'placeStress'],
    ['wrist-pin', 'bending'],
  ] as const)('%s: %s', (id, output) => {
    const calculator: AnyCalculator = must(calculators[id]);
    const { difference, ratio } = bothWays(calculator, output);
    expect(Math.abs(difference.drawn / difference.covariance - 1)).toBeLessThan(tolerance);
    expect(Math.abs(ratio.drawn / ratio.covariance - 1)).toBeLessThan(tolerance);
  });
});

it('what both sets share cancels: the example’s torque differs beyond doubt', () => {
  const { difference, alone } = bothWays(calculators['cylinder-pressure'], 'torque');
  expect(difference.covariance).toBeLessThan(0.6 * alone);
});
