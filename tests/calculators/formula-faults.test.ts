import { describe, expect, test } from 'vitest';
import { defineCalculator, optional, type AnyCalculator } from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';
import { length, maybe, ratio } from '../../src/calculators/output.ts';
import { area, is } from '../../src/calculators/step.ts';
import { faultText, fileOf } from './fault-text.ts';
import { formulaFaults } from './formula-faults.ts';
import { must } from './must.ts';
import { bare, entry } from './tiny.ts';

/** A bar, round or square, with a side that may be left out and a length that exists only above the other. */
const bar: AnyCalculator = defineCalculator({
  ...bare,
  id: 'bar',
  inputs: {
    shape: {
      type: 'choice',
      name: 'shape',
      label: 'Shape',
      symbol: 'S',
      options: { round: 'round', square: 'square' },
      demo: { baseline: 'round', candidate: 'square' },
    },
    side: entry('side', 'length', 'mm', [1, 100], [10, 50]),
    skin: optional(entry('skin', 'length', 'mm', [0, 10], [1, 5])),
  },
  outputs: {
    weight: ratio('w', 'Weight of a slice', { main: true }),
    rest: maybe(length('r', 'What is left of 30 mm')),
  },
  compute: ({ shape, side, skin = 0 }) => ({
    weight: (shape === 'round' ? Math.PI / 4 : 1) * side ** 2 + skin ** 2,
    rest: side > 0.03 ? { absent: 'nothing is left' } : 0.03 - side,
  }),
  steps: {
    cut: area('A', 'when(shape == "round", pi / 4 * side^2, side^2)', 'The cut.'),
    weight: is('cut + skin^2', 'With its skin.'),
    rest: is('when(0.03 < side, missing, 0.03 - side)', 'The rest.'),
  },
  sweep: { input: 'side', output: 'weight' },
  solve: { input: 'side', output: 'weight' },
  exercise: { ask: 'weight', tolerance: 0.01 },
});

/** The lines at fault when one step has another formula. */
function faultsWith(of: string, formula: string): ReturnType<typeof formulaFaults> {
  const step = must(bar.steps.find((each) => each.of === of));
  return formulaFaults(bar, { ...step, formula }, 200, 1);
}

describe('the comparison of a formula with compute', () => {
  test('finds nothing where both agree; a name of the case not taken need not have a value', () => {
    for (const step of bar.steps) expect(formulaFaults(bar, step, 200, 1)).toEqual([]);
  });

  test('finds an output that comes out wrong, and says so in a few lines', () => {
    const [fault] = faultsWith('weight', 'cut + skin');
    expect(fault).toMatchObject({ of: 'weight', answered: 200 });
    // Only a skin that was given tells the two apart: about half of the draws.
    expect(fault?.missed).toBeGreaterThan(60);
    expect(fault?.missed).toBeLessThan(140);
    const text = faultText(bar, must(fault));
    expect(text.split('\n')).toHaveLength(5);
    expect(text).toMatch(/step "weight": wrong for \d+ of 200 random inputs/u);
    expect(text).toMatch(/gives {2}0\.\d+, with cut [\d.e-]+, skin 0\.\d+;/u);
    expect(text).toMatch(/compute gives {2}0\.\d+: correct whichever is wrong/u);
    expect(text).toMatch(/Inputs: shape "\w+", side 0\.\d+, skin 0\.\d+$/u);
  });

  test('finds a value on the way that is wrong through the output that uses it', () => {
    const faults = faultsWith('cut', '3 * (when(shape == "round", pi / 4 * side^2, side^2))');
    expect(faults.map(({ of, missed }) => [of, missed])).toEqual([['weight', 200]]);
  });

  test('finds cases that were taken for each other, and one that is wrong alone', () => {
    expect(faultsWith('cut', 'when(shape == "square", pi / 4 * side^2, side^2)')).toHaveLength(1);
    const [fault] = faultsWith('cut', 'when(shape == "round", pi / 4 * side^2, side^3)');
    expect(fault?.missed).toBeLessThan(200);
  });

  test('asks for an answer in a tenth of the draws at least', () => {
    const rare: AnyCalculator = {
      ...bar,
      compute: () => ({ weight: 1, rest: { absent: 'never' } }),
      steps: [{ of: 'rest', formula: '0.03 - side', say: 'The rest.' }],
    };
    const [fault] = formulaFaults(rare, must(rare.steps[0]), 50, 1);
    expect(faultText(rare, must(fault))).toMatch(
      /step "rest": only 0 of 50 random inputs have an answer.*Correct the usual ranges/u,
    );
  });
});

describe('the file that declares a step', () => {
  test.each([
    ['crank-overlap', 'share', 'bearings/crank-overlap.ts'],
    ['rod-shank', 'area', 'rods/rod-shank.steps.ts'],
    // Shared with another calculator.
    ['ring-second', 'closure', 'rings/ring-tension.steps.ts'],
    ['bearing-clearance', 'shellBore', 'bearings/bearing-crush.steps.ts'],
    ['bearing-clearance', 'clearance', 'bearings/bearing-clearance.steps.ts'],
  ] as const)('%s: %s', (id, step, file) => {
    expect(fileOf(calculators[id], step)).toBe(`src/calculators/${file}`);
  });
});
