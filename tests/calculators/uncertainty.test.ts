import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defineCalculator } from '../../src/calculators/define.ts';
import { numberIn } from '../../src/calculators/evaluate.ts';
import { mass } from '../../src/calculators/output.ts';
import {
  ofDifference,
  ofRatio,
  sharedInputs,
  propagate,
  propagation,
} from '../../src/calculators/uncertainty.ts';
import { bare, beam, beamInput, curveOf, entry, refuse } from './tiny.ts';
import { must } from './must.ts';

/** End-gauge calibration: l = l_S + d − l_S(δα·θ + α_S·δθ). */
const gauge = defineCalculator({
  ...bare,
  id: 'gauge',
  inputs: {
    standard: entry('standard', 'length', 'mm', [0, 100]),
    difference: entry('difference', 'length', 'um', [-1, 1]),
    expansion: entry('expansion', 'ratio', 'ratio', [0, 1]),
    expansionGap: entry('expansionGap', 'ratio', 'ratio', [-1, 1]),
    warmth: entry('warmth', 'ratio', 'ratio', [-10, 10]),
    warmthGap: entry('warmthGap', 'ratio', 'ratio', [-1, 1]),
  },
  outputs: { length: { type: 'number', kind: 'length', label: 'Length', symbol: 'l' } },
  compute: ({ standard, difference, expansion, expansionGap, warmth, warmthGap }) => ({
    length: standard + difference - standard * (expansionGap * warmth + expansion * warmthGap),
  }),
  sweep: { input: 'standard', output: 'length' },
  solve: { input: 'standard', output: 'length' },
  exercise: { ask: 'length', tolerance: 0.01 },
});

describe('published value', () => {
  // JCGM 100:2008, H.1 (end-gauge calibration): 25, 9.7, 2.9 and 16.6 nm make 32 nm. From memory.
  it('reproduces the end-gauge example of the guide', () => {
    const { length } = propagate(
      gauge,
      {
        standard: 50.000623e-3,
        difference: 215e-9,
        expansion: 11.5e-6,
        expansionGap: 0,
        warmth: -0.1,
        warmthGap: 0,
      },
      {
        standard: 25e-9,
        difference: 9.7e-9,
        expansion: 1.2e-6,
        expansionGap: 0.58e-6,
        warmth: 0.41,
        warmthGap: 0.029,
      },
    );
    // Printed to two figures, from parts printed to two and three.
    expect(must(length).plusMinus * 1e9).toBeCloseTo(31.7, 1);
    expect(Math.round(must(length).plusMinus * 1e9)).toBe(32);
    const part = Object.fromEntries(
      must(length).shares.map(({ name, effect }) => [name, effect * 1e9]),
    );
    expect(part['expansionGap']).toBeCloseTo(2.9, 1);
    expect(Math.abs(must(part['warmthGap']))).toBeCloseTo(16.67, 1);
    // Both multiply a zero estimate: no first-order effect.
    expect(part['expansion']).toBeUndefined();
    expect(part['warmth']).toBeUndefined();
  });
});

describe('closed forms', () => {
  it('adds relative parts in squares for a product', () => {
    const { stress } = propagate(beam, beamInput, { load: 3, span: 0.04 });
    expect(stress?.plusMinus).toBeCloseTo(1e7 * 0.05, 3);
    expect(stress?.shares.map(({ name }) => name)).toEqual(['span', 'load']);
    expect(stress?.shares[0]?.share).toBeCloseTo(0.64, 12);
    expect(stress?.shares[1]?.share).toBeCloseTo(0.36, 12);
  });

  it('keeps the sign of each effect', () => {
    const { perLoad } = propagate(beam, beamInput, { load: 1, span: 0.01 });
    const effect = Object.fromEntries(must(perLoad).shares.map((each) => [each.name, each.effect]));
    expect(effect['span']).toBeGreaterThan(0);
    expect(effect['load']).toBeLessThan(0);
  });

  it('is exact for a linear calculator, and the shares sum to one', () => {
    const size = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
    fc.assert(
      fc.property(size, size, size, size, (a, b, ua, ub) => {
        const sum = defineCalculator({
          ...bare,
          id: 'sum',
          inputs: {
            a: entry('a', 'mass', 'kg', [0, 1e4]),
            b: entry('b', 'mass', 'kg', [0, 1e4]),
          },
          outputs: { total: { type: 'number', kind: 'mass', label: 'Total', symbol: 't' } },
          compute: (input) => ({ total: 3 * input.a - 2 * input.b }),
          sweep: { input: 'a', output: 'total' },
          solve: { input: 'a', output: 'total' },
          exercise: { ask: 'total', tolerance: 0.01 },
        });
        const { total } = propagate(sum, { a, b }, { a: ua, b: ub });
        const expected = Math.hypot(3 * ua, 2 * ub);
        // Two results of the size of a and b are subtracted: 1e-16 of them may be lost.
        expect(Math.abs(must(total).plusMinus - expected)).toBeLessThan(
          1e-14 * (a + b + ua + ub) * 10,
        );
        const whole = must(total).shares.reduce((all, { share }) => all + share, 0);
        expect(whole).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('edges', () => {
  it('gives zero and no shares without any ±', () => {
    const { stress } = propagate(beam, beamInput, { load: 0, span: Number.NaN });
    expect(stress).toEqual({ plusMinus: 0, shares: [], unknown: [] });
  });

  it('gives counts, lists and choices no ±, and curves none either', () => {
    const whole = propagation(beam, beamInput, { beams: 1, readings: 0.1, kind: 1, span: 0.1 });
    expect(whole.inputs).toEqual(['span']);
    expect(Object.keys(whole.result())).toEqual(['stress', 'slenderness', 'perLoad']);
  });

  it('takes the one side that computes', () => {
    const { stress } = propagate(beam, { ...beamInput, span: 0.01 }, { span: 0.02 });
    expect(stress?.plusMinus).toBeCloseTo((100 * 0.02) / 10e-6, 3);
    const rising = curveOf((x) => (x > 5 ? refuse(x) : x * x));
    const { y } = propagate(rising, { x: 5 }, { x: 1 });
    expect(y?.plusMinus).toBeCloseTo(25 - 16, 12);
  });

  it('names an input of which neither side computes, instead of calling its effect zero', () => {
    const island = curveOf((x) => (x === 5 ? 1 : refuse(x)));
    expect(propagate(island, { x: 5 }, { x: 1 })['y']).toEqual({
      plusMinus: 0,
      shares: [],
      unknown: ['x'],
    });
  });

  it('leaves out an output that has no value here', () => {
    expect(propagate(beam, { ...beamInput, load: 0 }, { span: 0.1 })).not.toHaveProperty('perLoad');
  });

  it('lets a fault of the code through', () => {
    const broken = curveOf((x) => {
      if (x !== 5) throw new TypeError('a fault');
      return x;
    });
    expect(() => propagate(broken, { x: 5 }, { x: 1 })).toThrow(TypeError);
  });
});

describe('in slices', () => {
  it('comes to the same in any order', () => {
    const plusMinus = { load: 3, span: 0.04, modulus: 1e-7 };
    const sliced = propagation(beam, beamInput, plusMinus);
    expect(sliced.result()['stress']?.plusMinus).toBe(0);
    [...sliced.inputs].reverse().forEach((name) => sliced.step(name));
    const whole = propagate(beam, beamInput, plusMinus);
    expect(sliced.result()['stress']?.plusMinus).toBeCloseTo(must(whole['stress']).plusMinus, 6);
    expect(sliced.result()['stress']?.shares).toEqual(whole['stress']?.shares);
  });
});

describe('the ± of a difference', () => {
  const of = (load: number) =>
    must(propagate(beam, { ...beamInput, load }, { load: 3, span: 0.04 })['stress']);

  it('adds in squares what was measured twice', () => {
    const [a, b] = [of(100), of(200)];
    const { plusMinus, shares } = ofDifference(a, b, []);
    expect(plusMinus).toBeCloseTo(Math.hypot(a.plusMinus, b.plusMinus), 3);
    expect(shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  it('cancels an error that both sets share', () => {
    expect(ofDifference(of(100), of(100), ['load', 'span']).plusMinus).toBe(0);
    const [a, b] = [of(100), of(200)];
    const spans = [a, b].map(
      ({ shares }) => must(shares.find(({ name }) => name === 'span')).effect,
    );
    expect(ofDifference(a, b, ['load']).plusMinus).toBeCloseTo(Math.hypot(...spans), 3);
  });
});

describe('the ± of a ratio', () => {
  it('of a result that goes as the load is √2 of the relative ± of the load, or nothing where the load is one', () => {
    const a = must(propagate(beam, beamInput, { load: 3 })['stress']);
    const y = must(numberIn(beam.compute(beamInput).stress));
    const values = { baseline: y, candidate: y };
    const relative = 3 / beamInput.load;
    expect(ofRatio(values, a, a, []).plusMinus).toBeCloseTo(Math.SQRT2 * relative, 9);
    expect(ofRatio(values, a, a, ['load']).plusMinus).toBe(0);
  });
});

describe('what is one error for both sets', () => {
  const two = defineCalculator({
    ...bare,
    id: 'two',
    inputs: {
      scale: { ...entry('scale', 'mass', 'g', [0, 9]), origin: 'thing' },
      part: { ...entry('part', 'mass', 'g', [0, 9]), origin: 'part' },
      share: { ...entry('share', 'ratio', 'ratio', [0, 9]), origin: 'assumption' },
      top: { ...entry('top', 'angularSpeed', 'rpm', [0, 9]), origin: 'choice' },
    },
    outputs: { y: mass('y', 'Y') },
    compute: ({ scale, part, share, top }) => ({ y: scale + part * share + top }),
    sweep: { input: 'part', output: 'y' },
    solve: { input: 'part', output: 'y' },
    exercise: { ask: 'y', tolerance: 0.01 },
  });
  const input = { scale: 1, part: 2, share: 0.5, top: 3 };

  it('is a thing that both have, an assumption and a choice; never a part, though it weighs the same', () => {
    expect(sharedInputs(two, input, input)).toEqual(['scale', 'share', 'top']);
  });

  it('is not a thing that differs; an assumption errs alike though its numbers differ', () => {
    const other = { scale: 1.5, part: 2, share: 0.6, top: 4 };
    expect(sharedInputs(two, input, other)).toEqual(['share', 'top']);
  });
});
