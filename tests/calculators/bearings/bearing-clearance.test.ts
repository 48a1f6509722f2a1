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
    ['baseline', 0.0461, 0.041, 0.0467, 8.2, 8.4],
    ['candidate', 0.0663, 0.09, 0.0581, 13.6, 4.6],
  ] as const)('%s', (set, shop, hot, cold, pressure, pressureHot) => {
    const { values } = example(bearingClearance, set);
    const out = bearingClearance.compute(values as never);
    expect(out.clearance / mm).toBeCloseTo(shop, 4);
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

  it('take 4.5 and 6.4 kN from each bolt’s clamp, and squeeze the shells with 129 and 185 MPa', () => {
    for (const [set, force, hoop] of [
      ['baseline', 4.49, -128.9],
      ['candidate', 6.36, -184.8],
    ] as const) {
      const out = bearingCrush.compute(example(bearingCrush, set).values as never);
      expect(out.jointForce / 1e3).toBeCloseTo(force, 2);
      expect(out.shellHoop / 1e6).toBeCloseTo(hoop, 1);
    }
  });

  it.each(['baseline', 'candidate'] as const)(
    'without a gauge reading the %s goes on from the sum and the opening by the crush',
    (set) => {
      const { values } = example(bearingClearance, set);
      const out = bearingClearance.compute(values as never);
      expect(out.clearance).toBe(out.predicted);
      expect(out.predicted).toBe(out.computed + out.opening);
      expect(out.gaugeDifference).toEqual({ absent: 'No gauge reading is entered.' });
    },
  );

  it.each(['baseline', 'candidate'] as const)(
    'a gauge that reads what was predicted for the %s changes nothing and asks for nothing',
    (set) => {
      const { values } = example(bearingClearance, set);
      const alone = bearingClearance.compute(values as never);
      const input = { ...values, rodClearance: alone.predicted } as never;
      const gauged = bearingClearance.compute(input);
      expect(gauged).toEqual({ ...alone, gaugeDifference: 0 });
      const limit = must(bearingClearance.limits.find(({ id }) => id === 'gauge-apart'));
      expect(limit.holds(input, gauged)).toBe(true);
    },
  );
});

describe('what the page says beside a result', () => {
  const limit = (id: string) => must(bearingClearance.limits.find((one) => one.id === id));
  const holds = (id: string, change: object): boolean => {
    const input = { ...example(bearingClearance, 'candidate').values, ...change } as never;
    return limit(id).holds(input, bearingClearance.compute(input));
  };
  it('a gauge 0.009 mm away from what the parts and their crush predict', () => {
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
