import { describe, expect, test } from 'vitest';
import { ringPack } from '../../../src/calculators/rings/ring-pack.ts';
import { thinness } from '../../../src/calculators/rings/ring-tension.compare.ts';
import { ringTension } from '../../../src/calculators/rings/ring-tension.ts';
import { wristPin } from '../../../src/calculators/pins/wrist-pin.ts';
import { OutOfDomain } from '../../../src/core/refuse.ts';

const road = {
  bore: 0.0905,
  ring1Height: 0.0015,
  ring1Radial: 0.0035,
  ring1Modulus: 160e9,
  ring1FreeGap: 0.0127,
  ring1Gap: 0.00038,
};
const hill = {
  ...road,
  ring1Height: 0.0009,
  ring1Radial: 0.0029,
  ring1Modulus: 206e9,
  ring1FreeGap: 0.0116,
  ring1Gap: 0.00042,
};

describe('thinness shared out', () => {
  const by = thinness(road, hill);
  test('height scales the force and leaves pressure and conformability at one', () => {
    expect(by.tensionByHeight).toBeCloseTo(0.6, 12);
    expect(by.pressureByHeight).toBeCloseTo(1, 12);
    expect(by.followByHeight).toBeCloseTo(1, 12);
  });
  test('radial thickness goes with the cube over the radius’s cube', () => {
    const cube = (29 / 35) ** 3 * (87 / 87.6) ** 3;
    expect(by.tensionByRadial).toBeCloseTo(cube, 12);
    expect(by.pressureByRadial).toBeCloseTo(cube, 12);
  });
  test('the rest is modulus and closure', () => {
    const rest = (206 / 160) * (11.18 / 12.32);
    expect(by.tensionByRest).toBeCloseTo(rest, 10);
    expect(by.pressureByRest).toBeCloseTo(rest, 10);
    expect(by.followByMaterial).toBeCloseTo(160 / 206, 12);
  });
});

describe('what is not there is said', () => {
  test('a radial thickness that does not go into the baseline’s bore', () => {
    const small = { ...road, bore: 0.02, ring1Radial: 0.001, ring1FreeGap: 0.004 };
    const by = thinness(small, { ...hill, ring1Radial: 0.011 });
    for (const name of [
      'tensionByRadial',
      'tensionByRest',
      'pressureByRadial',
      'pressureByRest',
      'followByRadial',
    ] as const)
      expect(by[name]).toHaveProperty('absent');
    expect(by.tensionByHeight).toBeCloseTo(0.6, 12);
  });
  test('no measured tension, no wanted free gap; no measured pull, no implied friction', () => {
    const { wantedFreeGap } = ringTension.compute({ ...road, ringOpening: 0.03 });
    expect(wantedFreeGap).toHaveProperty('absent');
    const pack = {
      ring1Tension: 13.6,
      ring2Tension: 10.2,
      oilRingTension: 34,
      benchFriction: 0.13,
    };
    expect(ringPack.compute(pack).impliedFriction).toHaveProperty('absent');
    expect(ringPack.compute({ ...pack, packDrag: 47 }).impliedFriction).toBeCloseTo(0.1294, 4);
    expect(() => ringPack.compute({ ...pack, packDrag: 0 })).toThrow(OutOfDomain);
  });

  const pin = {
    pinDiameter: 0.022,
    pinBore: 0.013,
    pinTaperBore: 0.013,
    pinTaperLength: 0,
    pinLength: 0.062,
    smallEndWidth: 0.026,
    bossGap: 0.0275,
    pinDensity: 7850,
    pinModulus: 205e9,
    bore: 0.0905,
    peakPressure: 5.4e6,
    crankcasePressure: 101e3,
    torqueSpeed: 460,
    maxSpeed: 670,
    stroke: 0.073,
    rodLength: 0.142,
    pistonMass: 0.428,
    ringMass: 0.038,
    lockMass: 0,
  };
  test('outside its range the cited method is silent, and a limit says so', () => {
    for (const pinBore of [0.0087, 0.0177]) {
      const input = { ...pin, pinBore };
      const output = wristPin.compute(input);
      expect(output.ovalization).toHaveProperty('absent');
      const limit = wristPin.limits.find(({ id }) => id === 'method-range');
      expect(limit?.holds(input, output)).toBe(false);
      expect(limit?.say).not.toMatch(/fail/u);
    }
  });
  test('the bore of equal bending gives equal bending, that of equal mass equal mass', () => {
    const smaller = { ...pin, pinDiameter: 0.024 };
    const [before, after] = [wristPin.compute(pin), wristPin.compute(smaller)];
    const found = wristPin.compare?.({
      baseline: { input: pin, output: before },
      candidate: { input: smaller, output: after },
    });
    const bored = (bore: unknown) => wristPin.compute({ ...smaller, pinBore: Number(bore) });
    // A change of bore changes the pin's mass, which the push does not feel.
    expect(bored(found?.equalBendingBore).bending / before.bending).toBeCloseTo(1, 9);
    expect(bored(found?.equalModulusBore).sectionModulus / before.sectionModulus).toBeCloseTo(1, 9);
    expect(bored(found?.equalMassBore).mass / before.mass).toBeCloseTo(1, 9);
  });
  test('a pin without density or modulus is refused by name', () => {
    for (const quantity of ['pinDensity', 'pinModulus', 'peakPressure'] as const)
      expect(() => wristPin.compute({ ...pin, [quantity]: -1 })).toThrow(
        expect.objectContaining({ quantity }),
      );
  });
});
