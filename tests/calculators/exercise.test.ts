import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defineCalculator } from '../../src/calculators/define.ts';
import { rangeInSI } from '../../src/calculators/evaluate.ts';
import { makeExercise, markAnswer } from '../../src/calculators/exercise.ts';
import { reversalLoad } from '../../src/calculators/loads/reversal-load.ts';
import { seededRandom } from '../../src/core/math/random.ts';
import { toSI } from '../../src/units/units.ts';
import { beam, curveOf, refuse } from './tiny.ts';
import { must } from './must.ts';

describe('the stream behind it', () => {
  it('depends on the seed alone', () => {
    const draw = (seed: number) => Array.from({ length: 5 }, seededRandom(seed));
    expect(draw(7)).toEqual(draw(7));
    expect(draw(7)).not.toEqual(draw(8));
  });

  it('fills its range evenly', () => {
    const random = seededRandom(1);
    const tenths = Array.from({ length: 10 }, () => 0);
    for (let i = 0; i < 20_000; i++) {
      const tenth = Math.floor(random() * 10);
      tenths[tenth] = must(tenths[tenth]) + 1;
    }
    // 2000 expected in each; five standard deviations are 212.
    for (const count of tenths) expect(Math.abs(count - 2000)).toBeLessThan(212);
  });
});

describe('an exercise', () => {
  it('is the same for the same seed and fresh for another', () => {
    expect(makeExercise(beam, 3)).toEqual(makeExercise(beam, 3));
    expect(makeExercise(beam, 3).given).not.toEqual(makeExercise(beam, 4).given);
  });

  it('gives usual values, and what is read from its text is what it computes with', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), (seed) => {
        const { given, input, answer } = makeExercise(reversalLoad, seed);
        for (const [name, entry] of Object.entries(reversalLoad.inputs)) {
          const value = input[name] as number;
          const number = Number.parseFloat(must(given[name]).replace('−', '-'));
          expect(toSI(number, entry.metric)).toBeCloseTo(value, 12);
          // Rounding to the last figure shown may step over an end of the range by one part in a hundred.
          const [low, high] = rangeInSI(entry, 'usual');
          const room = (high - low) / 100;
          expect(value).toBeGreaterThanOrEqual(low - room);
          expect(value).toBeLessThanOrEqual(high + room);
        }
        const output = reversalLoad.compute(input as Parameters<typeof reversalLoad.compute>[0]);
        expect(output.partingPull).toBe(answer);
        for (const limit of reversalLoad.limits)
          expect(limit.holds(input as never, output), limit.id).toBe(true);
      }),
      { numRuns: 30 },
    );
  });

  it('draws counts whole, lists close together, and one of the options', () => {
    const { input, given } = makeExercise(beam, 11);
    expect(Number.isInteger(input['beams'])).toBe(true);
    const readings = input['readings'] as readonly number[];
    expect(readings).toHaveLength(5);
    expect(Math.max(...readings) / Math.min(...readings)).toBeLessThan(1.01);
    expect(['pinned', 'fixed']).toContain(input['kind']);
    expect(given['readings']).toMatch(/^[\d.]+\u00a0g(; [\d.]+\u00a0g){4}$/);
  });

  it('passes over what is refused and what breaks a limit', () => {
    const halves = curveOf((x) => (x < 5 ? refuse(x) : x));
    for (let seed = 0; seed < 20; seed++)
      expect(makeExercise(halves, seed).input['x']).toBeGreaterThanOrEqual(5);
    const limited = defineCalculator({
      ...curveOf((x) => x),
      steps: {},
      limits: [{ id: 'high', holds: ({ x }: { x: number }) => x > 8, say: 'x must be over 8.' }],
    });
    for (let seed = 0; seed < 20; seed++)
      expect(makeExercise(limited, seed).answer).toBeGreaterThan(8);
  });

  it('says so when nothing usual computes', () => {
    expect(() => makeExercise(curveOf(refuse), 1)).toThrow(/no usual values/);
  });
});

describe('marking', () => {
  const exercise = makeExercise(beam, 5);
  const { answer } = exercise;

  it('takes what lies within the tolerance and nothing beyond', () => {
    expect(markAnswer(exercise, answer * 1.009)).toMatchObject({ right: true });
    expect(markAnswer(exercise, answer * 0.991)).toMatchObject({ right: true });
    expect(markAnswer(exercise, answer * 1.011).right).toBe(false);
    expect(markAnswer(exercise, answer * 1.011).error).toBeCloseTo(0.011, 9);
  });

  it.each([
    [2, /radius/],
    [1e-3, /thousand/],
    [-1, /sign/],
    [25.4, /inch/],
    [(30 / Math.PI) ** 2, /squared/],
    [Math.PI / 180, /degrees/],
  ])('knows the slip that leaves %s', (factor, hint) => {
    expect(markAnswer(exercise, answer * factor).hint).toMatch(hint);
  });

  it('claims no slip where none fits', () => {
    expect(markAnswer(exercise, answer * 1.37)).not.toHaveProperty('hint');
  });

  it('marks an answer of zero by its plain size', () => {
    const zero = { ...exercise, answer: 0 };
    expect(markAnswer(zero, 0).right).toBe(true);
    expect(markAnswer(zero, 1).right).toBe(false);
  });
});
