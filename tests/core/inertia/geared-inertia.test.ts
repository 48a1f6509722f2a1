import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  gearedMass,
  pushedAcceleration,
  speedRipple,
} from '../../../src/core/inertia/geared-inertia.ts';
import { OutOfDomain } from '../../../src/core/refuse.ts';
import { routes } from '../../../content/topics/rotating-inertia/routes.ts';
import { proves } from '../../proves.ts';

const pound = 0.45359237;
const foot = 0.3048;
const car = {
  engineInertia: 0.2545,
  gearRatio: 2.52,
  finalDrive: 4.1,
  tyreRadius: 0.288,
  drivelineEfficiency: 0.93,
  carMass: 940,
  wheelInertia: 0.8,
  netTorque: 300,
};

describe('published values', () => {
  // T. Bevan, The Theory of Machines, 3rd ed., ch. 2, Example 10, transcribed: 3.35 ft/s² without loss, 3.14
  // with gears of 90 %, printed to three figures; g = 32.2 ft/s².
  const hoist = {
    engineInertia: 15 * pound * foot ** 2,
    gearRatio: 5,
    finalDrive: 1,
    tyreRadius: (8 / 12) * foot,
    drivelineEfficiency: 1,
    carMass: 150 * pound,
    wheelInertia: 50 * pound * foot ** 2,
    netTorque: 0,
  };
  const weight = 150 * pound * 32.2 * foot;
  it('a falling load that pushes two geared shafts', () => {
    expect(pushedAcceleration(hoist, weight) / foot).toBeCloseTo(3.345455, 5);
    const lossy = { ...hoist, drivelineEfficiency: 0.9 };
    expect(pushedAcceleration(lossy, weight) / foot).toBeCloseTo(3.141463, 5);
  });

  // R. S. Khurmi, J. K. Gupta, Theory of Machines, Example 3.14, transcribed: the best ratio is √(I_B/I_A) = 4.
  it('the ratio for quickest starting', () => {
    const start = (gearRatio: number): number =>
      gearedMass({
        engineInertia: 2,
        gearRatio,
        finalDrive: 1,
        tyreRadius: 1,
        drivelineEfficiency: 1,
        carMass: 32,
        wheelInertia: 0,
        netTorque: 100,
      }).acceleration;
    expect(start(4)).toBeCloseTo(6.25, 12);
    expect(start(3.99)).toBeLessThan(start(4));
    expect(start(4.01)).toBeLessThan(start(4));
  });

  // T. Bevan, Example 9, transcribed: a 10 ton truck, two wheel sets of 1000 lb, k/r = 15/21, 3 ft/s², extra
  // force 0.042 ton (two figures; 0.0424416 exactly).
  it('the extra force that wheels ask for', () => {
    const truck = gearedMass({
      ...hoist,
      engineInertia: 0,
      tyreRadius: (21 / 12) * foot,
      carMass: 22400 * pound,
      wheelInertia: 500 * pound * ((15 / 12) * foot) ** 2,
    });
    const extra = ((truck.massFactor - 1) * 10 * 3) / 32.2;
    expect(extra).toBeCloseTo(0.0424416, 6);
    expect(Math.abs(extra / 0.042 - 1)).toBeLessThan(0.012);
  });
});

describe('second routes and properties', () => {
  it(proves(routes.energyPutEnergy), () => {
    const lossless = { ...car, drivelineEfficiency: 1 };
    const { acceleration: a, engineRise } = gearedMass(lossless);
    // Over one second from rest: the work of the torque against the kinetic energies of all four kinds.
    const v = a;
    const ω = engineRise;
    const work = 300 * (engineRise / 2);
    const held = (940 * v * v) / 2 + (4 * 0.8 * (v / 0.288) ** 2) / 2 + (0.2545 * ω * ω) / 2;
    expect(held / work).toBeCloseTo(1, 12);
  });

  it('the direction of power decides on which side the loss counts', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 1, noNaN: true }), (drivelineEfficiency) => {
        const m = gearedMass({ ...car, drivelineEfficiency });
        expect(m.drivingMass).toBeLessThanOrEqual(m.equivalentMass);
        expect(m.overrunMass).toBeGreaterThanOrEqual(m.equivalentMass);
        expect(m.drivingMass * m.overrunMass).toBeCloseTo(m.equivalentMass ** 2, 6);
      }),
    );
  });

  it(proves(routes.agreesTorqueLeft), () => {
    const { acceleration, engineRise } = gearedMass(car);
    const left = car.netTorque - car.engineInertia * engineRise;
    const force = (left * 0.93 * 2.52 * 4.1) / 0.288;
    expect(force / ((940 + (4 * 0.8) / 0.288 ** 2) * acceleration)).toBeCloseTo(1, 12);
  });

  it(proves(routes.halfInertiaHas), () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1, noNaN: true }), (engineInertia) => {
        const at = (I: number) =>
          speedRipple({ engineInertia: I, energySwing: 5, meanSpeed: 90 }).coefficient;
        expect(at(engineInertia / 2) / at(engineInertia)).toBeCloseTo(2, 12);
      }),
    );
  });

  it('both extreme speeds differ in energy by just the swing', () => {
    const { highest, lowest } = speedRipple({
      engineInertia: 0.25,
      energySwing: 60,
      meanSpeed: 94,
    });
    expect((0.25 / 2) * (highest ** 2 - lowest ** 2)).toBeCloseTo(60, 10);
  });
});

describe('refusals name the quantity', () => {
  const refused = (what: () => unknown): string => {
    try {
      what();
    } catch (error) {
      if (error instanceof OutOfDomain) return error.quantity;
      throw error;
    }
    return 'nothing';
  };
  it.each([
    ['engineInertia', -1],
    ['gearRatio', 0],
    ['tyreRadius', 0],
    ['drivelineEfficiency', 0],
    ['drivelineEfficiency', 1.01],
    ['carMass', 0],
    ['wheelInertia', -0.1],
    ['netTorque', -1],
  ])('%s of %f', (name, value) => {
    expect(refused(() => gearedMass({ ...car, [name]: value }))).toBe(name);
  });
  it.each([
    ['engineInertia', 0],
    ['meanSpeed', 0],
    ['energySwing', -1],
    ['energySwing', 2 * 0.25 * 94 ** 2 * 1.001],
  ])('ripple with %s of %f', (name, value) => {
    const ripple = { engineInertia: 0.25, energySwing: 60, meanSpeed: 94, [name]: value };
    expect(refused(() => speedRipple(ripple))).toBe(name);
  });
});
