import { describe, expect, test } from 'vitest';
import type { AnyCalculator, SetId, Value } from '../../../src/calculators/define.ts';
import { benchSwing } from '../../../src/calculators/inertia/bench-swing.ts';
import { inertiaThroughGears } from '../../../src/calculators/inertia/inertia-through-gears.ts';
import { rodSwing } from '../../../src/calculators/inertia/rod-swing.ts';
import { rotatingInertia } from '../../../src/calculators/inertia/rotating-inertia.ts';
import { speedRipple } from '../../../src/calculators/inertia/speed-ripple.ts';
import { OutOfDomain } from '../../../src/core/refuse.ts';
import { readQuantity } from '../../../src/units/read.ts';

/** The example's numbers of one set, read as a reader's would be. */
function example(calculator: AnyCalculator, set: SetId): Record<string, Value> {
  const input: Record<string, Value> = {};
  for (const [name, entry] of Object.entries(calculator.inputs)) {
    if (entry.type === 'choice') input[name] = entry.demo[set];
    if (entry.type !== 'number' || entry.optional === true) continue;
    const { label, kind, metric } = entry;
    const read = readQuantity(entry.demo[set], { label, kind, unit: metric });
    if (!read.ok) throw new Error(`${name}: ${read.say}`);
    input[name] = read.si;
  }
  return input;
}

function both(calculator: AnyCalculator) {
  const work = (set: SetId) => {
    const input = example(calculator, set);
    return { input, output: calculator.compute(input) };
  };
  return { baseline: work('baseline'), candidate: work('candidate') };
}

const inertia: AnyCalculator = rotatingInertia;
const own = both(inertia);

describe('the example engines', () => {
  test.each([
    ['totalInertia', 0.2545, 0.1246, 4],
    ['bigEndsPart', 0.00493, 0.00358, 5],
    ['reciprocatingPart', 0.0041, 0.00302, 5],
    ['energyHeld', 57.2e3, 48.2e3, -2],
    ['riseTorque', 18.7, 14.4, 1],
    ['equivalentMass', 160.1, 78.4, 1],
    ['riseTime', 0.195, 0.116, 3],
  ])('%s is %f and %f', (name, before, after, digits) => {
    expect(own.baseline.output[name]).toBeCloseTo(before, digits);
    expect(own.candidate.output[name]).toBeCloseTo(after, digits);
  });

  test('the mean inertia torque is nothing for either set, though the torque is not', () => {
    for (const { output } of Object.values(own)) {
      expect(output['meanTorque']).toBe(0);
      expect(output['torqueAmplitude']).toBeGreaterThan(200);
    }
  });

  test('what is saved, part by part, adds up', () => {
    const saved = inertia.compare?.(own) ?? {};
    const value = (name: string): number => Number(saved[name]);
    expect(value('savedRoad')).toBeCloseTo(81.7, 1);
    expect(value('savedFlywheel')).toBeCloseTo(43.4, 1);
    expect(value('savedClutch')).toBeCloseTo(28.9, 1);
    expect(value('savedCrank')).toBeCloseTo(6.2, 1);
    expect(value('savedDamper')).toBeCloseTo(1.7, 1);
    expect(value('savedMoving')).toBeCloseTo(1.5, 1);
    const parts = ['savedFlywheel', 'savedClutch', 'savedCrank', 'savedDamper', 'savedMoving'];
    const sum = parts.reduce((total, name) => total + value(name), 0);
    expect(sum).toBeCloseTo(value('savedRoad'), 9);
  });

  test('the crank’s inertia comes back from its swing, the rod’s from its two', () => {
    const crank = both(benchSwing);
    expect(crank.baseline.output['swingPeriod']).toBeCloseTo(1.073, 3);
    expect(crank.candidate.output['swingPeriod']).toBeCloseTo(1.035, 3);
    expect(crank.baseline.output['partInertia']).toBeCloseTo(0.056, 4);
    expect(crank.candidate.output['partInertia']).toBeCloseTo(0.0462, 4);
    const rod = both(rodSwing);
    // Invented inertias of 1959 and 1512 kg·mm², from times given to a hundredth of a second.
    expect(Number(rod.baseline.output['rodInertia']) / 1959e-6).toBeCloseTo(1, 2);
    expect(Number(rod.candidate.output['rodInertia']) / 1512e-6).toBeCloseTo(1, 2);
  });

  test('in gear and at idle', () => {
    const gears = both(inertiaThroughGears);
    expect(gears.baseline.output['equivalentMass']).toBeCloseTo(160.1, 1);
    // A road tyre holds about 1 g at best, and not all of the car stands on the driven wheels.
    for (const { output } of Object.values(gears))
      expect(Number(output['acceleration']) / 9.80665).toBeLessThan(0.75);
    const ripple = both(speedRipple);
    const share =
      Number(ripple.candidate.output['coefficient']) /
      Number(ripple.baseline.output['coefficient']);
    expect(share).toBeCloseTo(0.2545 / 0.1246, 6);
  });
});

describe('the flywheel by its dimensions', () => {
  const given = { ...own.baseline.input, flywheelFrom: 'dimensions' };

  test('stands in for the measured one, which then no longer counts', () => {
    const { flywheelPart, flywheelComputed, flywheelMass } = inertia.compute(given);
    expect(flywheelPart).toBe(flywheelComputed);
    expect(flywheelMass).toBeCloseTo(9.33, 2);
    expect(flywheelPart).toBeCloseTo(0.0981, 4);
    expect(inertia.compute({ ...given, flywheelInertia: 99 })['flywheelPart']).toBe(flywheelPart);
  });

  test.each([
    ['flywheelThickness', 0],
    ['flywheelInside', 0.29],
    ['flywheelInside', 0.3],
    ['flywheelDensity', 0],
  ])(
    '%s of %f is refused there, and does not matter where the measured one counts',
    (name, value) => {
      const wrong = { ...given, [name]: value };
      const refusal = (() => {
        try {
          inertia.compute(wrong);
        } catch (error) {
          return error;
        }
        return undefined;
      })();
      expect(refusal).toBeInstanceOf(OutOfDomain);
      expect((refusal as OutOfDomain).quantity).toBe(name);
      const measured = inertia.compute({ ...wrong, flywheelFrom: 'measured' });
      expect(measured['totalInertia']).toBe(own.baseline.output['totalInertia']);
      expect(measured['flywheelComputed']).toMatchObject({ absent: expect.any(String) });
    },
  );
});

describe('every refusal names an input, so that its field can say it', () => {
  const cases: readonly (readonly [AnyCalculator, Record<string, Value>])[] = [
    [inertia, { flywheelInertia: 0 }],
    [inertia, { netTorque: 0 }],
    [inertia, { speedTo: 1 }],
    [inertia, { tyreRadius: 0 }],
    [inertia, { cylinders: 2.5 }],
    [inertia, { speedRise: -1 }],
    [inertia, { maxSpeed: -1 }],
    [inertiaThroughGears, { drivelineEfficiency: 1.2 }],
    [inertiaThroughGears, { carMass: 0 }],
    [speedRipple, { energySwing: 1e9 }],
    [benchSwing, { swingTime: 0 }],
    [benchSwing, { swingCount: 0 }],
    [benchSwing, { swingRig: 'knife-edge', swingTime: 3 }],
    [benchSwing, { swingRig: 'trifilar', platformMass: 2 }],
    [rodSwing, { bigEndTime: 60 }],
    [rodSwing, { bigEndTime: 10 }],
    [rodSwing, { rodSwingCount: 0 }],
  ];
  test.each(cases.map(([calculator, wrong]) => [calculator.id, wrong, calculator] as const))(
    '%s with %o',
    (_, wrong, calculator) => {
      let quantity: string | undefined;
      try {
        calculator.compute({ ...example(calculator, 'baseline'), ...wrong });
      } catch (error) {
        if (!(error instanceof OutOfDomain)) throw error;
        quantity = error.quantity;
      }
      expect(Object.keys(calculator.inputs)).toContain(quantity);
    },
  );
});
