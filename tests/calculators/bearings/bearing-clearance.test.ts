import { describe, expect, it } from 'vitest';
import { bearingClearance } from '../../../src/calculators/bearings/bearing-clearance.ts';
import { bearingCrush } from '../../../src/calculators/bearings/bearing-crush.ts';
import type { SetId } from '../../../src/calculators/define.ts';
import type { InputValues } from '../../../src/calculators/evaluate.ts';
import { propagate, worstCase } from '../../../src/calculators/uncertainty.ts';
import { OutOfDomain } from '../../../src/core/refuse.ts';
import { readQuantity } from '../../../src/units/read.ts';
import { must } from '../must.ts';

/** The invented engines as the page opens with them, with each quantity's ordinary ±, in SI. */
function example(calculator: typeof bearingClearance | typeof bearingCrush, set: SetId) {
  const values: Record<string, number> = {};
  const plusMinus: Record<string, number> = {};
  for (const entry of Object.values(calculator.inputs)) {
    const reading = readQuantity(entry.demo[set], {
      label: entry.label,
      kind: entry.kind,
      unit: entry.metric,
    });
    if (!reading.ok) {
      if (entry.demo[set] === '') continue;
      throw new Error(reading.say);
    }
    values[entry.name] = reading.si;
    if (entry.kind === 'length' && 'usualPlusMinus' in entry)
      plusMinus[entry.name] = (entry.usualPlusMinus ?? 0) / 1000;
  }
  return { values: values as InputValues, plusMinus };
}
const mm = 1e-3;

describe('the ± of the clearance by its parts', () => {
  const { values, plusMinus } = example(bearingClearance, 'baseline');
  const { computed } = propagate(bearingClearance, values, plusMinus);

  it('is 0.0047 mm as squares and 0.008 mm at worst', () => {
    expect(must(computed).plusMinus / mm).toBeCloseTo(0.0047, 4);
    expect(worstCase(must(computed)) / mm).toBeCloseTo(0.008, 9);
  });
});

describe('the invented engines on the page', () => {
  it.each([
    ['baseline', 0.046, 0.0409, 0.0466, 8.2, 8.4],
    ['candidate', 0.066, 0.0897, 0.0577, 13.5, 4.5],
  ] as const)('%s', (set, shop, hot, cold, pressure, pressureHot) => {
    const { values } = example(bearingClearance, set);
    const out = bearingClearance.compute(values as never);
    expect(out.clearance / mm).toBeCloseTo(shop, 9);
    expect(out.clearanceHot / mm).toBeCloseTo(hot, 4);
    expect(out.clearanceCold / mm).toBeCloseTo(cold, 4);
    expect(out.pressureShop / 1e6).toBeCloseTo(pressure, 1);
    expect(out.pressureHot / 1e6).toBeCloseTo(pressureHot, 1);
    // Both calculators of the page are one problem: they give one pressure.
    const crush = bearingCrush.compute(example(bearingCrush, set).values as never);
    expect(crush.pressureShop).toBe(out.pressureShop);
    expect(crush.pressureHot).toBe(out.pressureHot);
    expect(crush.pressureCold).toBe(out.pressureCold);
    expect(crush.opening).toBe(out.opening);
  });

  it('take 4.5 and 6.3 kN from each bolt’s clamp, and squeeze the shells with 129 and 185 MPa', () => {
    for (const [set, force, hoop] of [
      ['baseline', 4.48, -129],
      ['candidate', 6.33, -185],
    ] as const) {
      const out = bearingCrush.compute(example(bearingCrush, set).values as never);
      expect(out.jointForce / 1e3).toBeCloseTo(force, 2);
      expect(out.shellHoop / 1e6).toBeCloseTo(hoop, 0);
    }
  });

  it('without a gauge reading go on from the sum of the parts', () => {
    const { values } = example(bearingClearance, 'baseline');
    const out = bearingClearance.compute({ ...values, rodClearance: undefined } as never);
    expect(out.clearance).toBe(out.computed);
    expect(out.gaugeDifference).toEqual({ absent: 'No gauge reading is entered.' });
  });
});

describe('what the page says beside a result', () => {
  const limit = (id: string) => must(bearingClearance.limits.find((one) => one.id === id));
  const holds = (id: string, change: object): boolean => {
    const input = { ...example(bearingClearance, 'candidate').values, ...change } as never;
    return limit(id).holds(input, bearingClearance.compute(input));
  };
  it('a gauge 0.009 mm away from the sum', () => {
    expect(holds('gauge-apart', {})).toBe(true);
    expect(holds('gauge-apart', { rodClearance: 0.0738 * mm })).toBe(true);
    expect(holds('gauge-apart', { rodClearance: 0.075 * mm })).toBe(false);
    expect(holds('gauge-apart', { rodClearance: 0.057 * mm })).toBe(false);
  });
  it('shells that have gone loose, or press too little', () => {
    expect(holds('loose', { crushHeight: 0.075 * mm })).toBe(true);
    expect(holds('loose', { crushHeight: 0.075 * mm, rodTemperature: 273.15 + 115 })).toBe(false);
    expect(holds('low-pressure', {})).toBe(false);
  });
  it('nothing left between pin and shell', () => {
    expect(holds('no-clearance', {})).toBe(true);
    expect(holds('no-clearance', { crankpinTemperature: 273.15 + 300 })).toBe(false);
  });
});

it.each([
  ['crankpinDiameter', { crankpinDiameter: 0.06 }],
  ['rodShellWall', { rodShellWall: 0.003 }],
  ['rodShellWall', { rodShellWall: -0.001 }],
  ['housingOutside', { housingOutside: 0.05 }],
  ['journalTaper', { journalTaper: -1e-6 }],
  ['journalOutOfRound', { journalOutOfRound: -1e-6 }],
  ['crushHeight', { crushHeight: -1e-6 }],
])('refuses a %s that cannot be', (name, change) => {
  const { values } = example(bearingClearance, 'baseline');
  expect(() => bearingClearance.compute({ ...values, ...change } as never)).toThrow(OutOfDomain);
  expect(() => bearingClearance.compute({ ...values, ...change } as never)).toThrow(name);
});
