import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  gearedMass,
  speedAtEnergy,
  speedRipple,
} from '../../../src/core/inertia/geared-inertia.ts';
import { routes } from '../../../content/topics/inertia-through-gears/routes.ts';
import { routes as speedRoutes } from '../../../content/topics/speed-fluctuation/routes.ts';
import { proves } from '../../proves.ts';

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

describe('closed forms', () => {
  it('the ratio for quickest starting is the root of load over motor inertia', () => {
    const start = (gearRatio: number): number =>
      gearedMass({
        engineInertia: 3,
        gearRatio,
        finalDrive: 1,
        tyreRadius: 1,
        drivelineEfficiency: 1,
        carMass: 75,
        wheelInertia: 0,
        netTorque: 40,
      }).acceleration;
    const best = Math.sqrt(75 / 3);
    // There both sides count alike: torque times ratio over twice the load.
    expect(start(best)).toBeCloseTo((40 * best) / (2 * 75), 12);
    expect(start(best - 0.01)).toBeLessThan(start(best));
    expect(start(best + 0.01)).toBeLessThan(start(best));
  });
});

it('the mass factor is the energy of all that moves over the energy of the car alone', () => {
  const speed = 20;
  const { massFactor } = gearedMass(car);
  const wheel = speed / car.tyreRadius;
  const engine = wheel * car.gearRatio * car.finalDrive;
  const moving =
    0.5 * car.carMass * speed ** 2 +
    4 * 0.5 * car.wheelInertia * wheel ** 2 +
    0.5 * car.engineInertia * engine ** 2;
  expect(massFactor).toBeCloseTo(moving / (0.5 * car.carMass * speed ** 2), 12);
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

  it(proves(speedRoutes.halfInertiaHas), () => {
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

describe('the speed at a part of the swing of energy', () => {
  const engine = fc.record({
    engineInertia: fc.double({ min: 0.002, max: 10, noNaN: true }),
    meanSpeed: fc.double({ min: 30, max: 2600, noNaN: true }),
    // Of what would stop the engine.
    part: fc.double({ min: 0, max: 1, noNaN: true }),
  });
  const share = fc.double({ min: 0, max: 1, noNaN: true });

  it('holds the energy of the slowest moment and that share of the swing', () => {
    fc.assert(
      fc.property(engine, share, ({ engineInertia, meanSpeed, part }, taken) => {
        const energySwing = part * 2 * engineInertia * meanSpeed ** 2;
        const given = { engineInertia, meanSpeed, energySwing };
        const speed = speedAtEnergy(given, taken);
        const { lowest } = speedRipple(given);
        const held = (engineInertia / 2) * (speed ** 2 - lowest ** 2);
        // In parts of twice the mean energy, of which the swing is at most all.
        expect(held / (engineInertia * meanSpeed ** 2)).toBeCloseTo(2 * part * taken, 9);
      }),
    );
  });
  it('begins at the least speed and ends at the greatest', () => {
    const given = { engineInertia: 0.25, meanSpeed: 94, energySwing: 60 };
    const { lowest, highest } = speedRipple(given);
    expect(speedAtEnergy(given, 0)).toBeCloseTo(lowest, 12);
    expect(speedAtEnergy(given, 1)).toBeCloseTo(highest, 12);
    // Half the energy is more than half the speed.
    expect(speedAtEnergy(given, 0.5)).toBeGreaterThan(94);
  });
  it('has no share outside 0 to 1', () => {
    const given = { engineInertia: 0.25, meanSpeed: 94, energySwing: 60 };
    for (const taken of [-0.001, 1.001, Number.NaN])
      expect(() => speedAtEnergy(given, taken)).toThrow(RangeError);
  });
});
