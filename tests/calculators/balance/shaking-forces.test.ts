import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/shaking-forces/routes.ts';
import { crankLayout } from '../../../src/calculators/balance/crank-layout.ts';
import {
  crankLayouts,
  throwsOf,
  type CrankLayout,
} from '../../../src/calculators/balance/crank-layout.choices.ts';
import { shakingForces } from '../../../src/calculators/balance/shaking-forces.ts';
import { pistonMotion } from '../../../src/core/motion/piston-motion.ts';
import { proves } from '../../proves.ts';

/** The invented V8’s sizes, on any layout. */
const parts = {
  reciprocatingMass: 0.7568,
  reciprocatingFraction: 0.4,
  stroke: 0.073,
  rodLength: 0.139,
  maxSpeed: 670,
  cylinderSpacing: 0.1,
  rotatingMass: 0.9284,
  balanceShafts: 'none',
  crankAngle: 0.7,
} as const;
const r = parts.stroke / 2;
const lambda = r / parts.rodLength;
const omega = parts.maxSpeed;

/** All pistons and counterweights of a layout, each with its arm: 1 for the force, its place for the couple. */
function rodsOf(id: CrankLayout) {
  return throwsOf(id).flatMap(({ angle, position, banks }) =>
    banks.map((bank) => ({ angle, bank, place: position * parts.cylinderSpacing })),
  );
}

type Arm = 'force' | 'couple';

/** The vector [N or N·m] with the crank at θ, with counterweights of the factor f opposite each throw. */
function vectorAt(
  id: CrankLayout,
  theta: number,
  arm: Arm,
  f: number,
  acceleration: (psi: number) => number,
): readonly [number, number] {
  let [x, y] = [0, 0];
  for (const { angle, bank, place } of rodsOf(id)) {
    const by = (arm === 'force' ? 1 : place) * parts.reciprocatingMass;
    const pull = by * acceleration(theta + angle - bank);
    const weight = by * f * r * omega ** 2;
    x += pull * Math.cos(bank) - weight * Math.cos(theta + angle);
    y += pull * Math.sin(bank) - weight * Math.sin(theta + angle);
  }
  return [x, y];
}

const exact = (psi: number): number => pistonMotion(parts, psi, omega).acceleration;

/** Sizes of what turns n times as fast as the crank, with it and against it, by a Fourier sum over a turn. */
function turning(id: CrankLayout, n: number, arm: Arm, f: number): readonly [number, number] {
  const steps = 360;
  const sums = [0, 0, 0, 0] as [number, number, number, number];
  for (let i = 0; i < steps; i += 1) {
    const theta = (2 * Math.PI * i) / steps;
    const [x, y] = vectorAt(id, theta, arm, f, exact);
    const [cos, sin] = [Math.cos(n * theta) / steps, Math.sin(n * theta) / steps];
    sums[0] += x * cos + y * sin;
    sums[1] += y * cos - x * sin;
    sums[2] += x * cos - y * sin;
    sums[3] += y * cos + x * sin;
  }
  return [Math.hypot(sums[0], sums[1]), Math.hypot(sums[2], sums[3])];
}

describe('second route', () => {
  test.each(crankLayouts)(
    proves(routes.exactPistons, '%s from its pistons’ exact motion'),
    (id) => {
      const found = shakingForces.compute({ ...parts, crankLayout: id });
      const F1 = parts.reciprocatingMass * r * omega ** 2;
      // The exact second order is greater by the next terms of λ. After these a millionth of each pull is left out, and
      // twelve cylinders stand up to 2.5 spacings from the middle.
      const more = 1 + lambda ** 2 / 4 + (15 * lambda ** 4) / 128 + (35 * lambda ** 6) / 512;
      expect(found.inertiaForce).toBeCloseTo(F1, 8);
      for (const [arm, least, most, held, ahead, against, second, secondMost] of [
        [
          'force',
          'primaryForceLeast',
          'primaryForce',
          'heldForce',
          'forwardForce',
          'backwardForce',
          'secondForce',
          'secondaryForce',
        ],
        [
          'couple',
          'primaryCoupleLeast',
          'primaryCouple',
          'heldCouple',
          'forwardCouple',
          'backwardCouple',
          'secondCouple',
          'secondaryCouple',
        ],
      ] as const) {
        const per = F1 * (arm === 'force' ? 1 : parts.cylinderSpacing);
        const bare = turning(id, 1, arm, 0);
        const left = turning(id, 1, arm, parts.reciprocatingFraction);
        const twice = turning(id, 2, arm, 0);
        // Forces of some 10⁴ N from sums of 360 × 12: nine digits are left.
        const near = (one: number, other: number, of = per): void => {
          expect(Math.abs(one - other), `${id} ${arm}`).toBeLessThan(1e-9 * of);
        };
        near(found[most], left[0] + left[1]);
        near(found[least], Math.abs(left[0] - left[1]));
        near(found[held], bare[0] - left[0]);
        near(found[ahead] * per, bare[0]);
        near(found[against] * per, bare[1]);
        const seconds = (twice[0] + twice[1]) / more;
        expect(Math.abs(found[secondMost] - seconds)).toBeLessThan(5e-6 * per);
        expect(Math.abs(found[second] * per * lambda - seconds)).toBeLessThan(5e-6 * per);
        expect(found.secondaryOne).toBeCloseTo(F1 * lambda, 8);
      }
    },
  );

  test(proves(routes.atOneAngle), () => {
    const twoTerms = (psi: number): number =>
      r * omega ** 2 * (Math.cos(psi) + lambda * Math.cos(2 * psi));
    for (const id of crankLayouts)
      for (const crankAngle of [0, 0.7, 2, 4.5, -3]) {
        const found = shakingForces.compute({ ...parts, crankLayout: id, crankAngle });
        const size = (arm: Arm): number =>
          Math.hypot(...vectorAt(id, crankAngle, arm, parts.reciprocatingFraction, twoTerms));
        expect(found.forceNow).toBeCloseTo(size('force'), 6);
        expect(found.coupleNow).toBeCloseTo(size('couple'), 6);
      }
  });
});

describe('closed forms', () => {
  test(proves(routes.classical), () => {
    const of = (id: CrankLayout) => shakingForces.compute({ ...parts, crankLayout: id });
    const nothing = {
      forwardForce: 0,
      backwardForce: 0,
      forwardCouple: 0,
      backwardCouple: 0,
      secondForce: 0,
      secondCouple: 0,
    };
    expect(of('inline-6')).toMatchObject(nothing);
    expect(of('v12-60')).toMatchObject(nothing);
    const close = (value: number) => expect.closeTo(value, 13) as number;
    expect(of('inline-4-flat')).toMatchObject({ ...nothing, secondForce: 4 });
    expect(of('v2-45')).toMatchObject({ forwardForce: 1, backwardForce: close(Math.SQRT1_2) });
    expect(of('v2-90')).toMatchObject({ forwardForce: 1, backwardForce: 0 });
    expect(of('v8-cross')).toMatchObject({ ...nothing, forwardCouple: close(Math.sqrt(10)) });
    expect(of('v8-flat')).toMatchObject({ ...nothing, secondForce: close(4 * Math.SQRT2) });
    expect(of('radial-3')).toMatchObject({
      forwardForce: 1.5,
      backwardForce: 0,
      secondForce: close(1.5),
    });
    expect(of('inline-3')).toMatchObject({
      forwardCouple: close(Math.sqrt(3) / 2),
      backwardCouple: close(Math.sqrt(3) / 2),
      secondCouple: close(Math.sqrt(3)),
    });
  });

  test(proves(routes.evenlyFiringSix), () => {
    const behind = (reciprocatingFraction: number) =>
      shakingForces.compute({ ...parts, crankLayout: 'v6-90-split', reciprocatingFraction });
    const one = ((Math.sqrt(3) - 1) / 2) * Math.sqrt(1.5);
    const plane = behind((Math.sqrt(3) - 1) / 2);
    const per = plane.inertiaForce * parts.cylinderSpacing;
    // In newtonmetres of some 10³: twelve digits of F₁ times the spacing.
    expect(plane.primaryCouple / per).toBeCloseTo(2 * one, 12);
    expect(plane.primaryCoupleLeast / per).toBeCloseTo(0, 12);
    const half = behind(0.5);
    expect(half.primaryCouple / per).toBeCloseTo(one, 12);
    expect(half.primaryCoupleLeast / per).toBeCloseTo(one, 12);
  });

  test(proves(routes.shaftsByHand), () => {
    const of = (id: CrankLayout) =>
      shakingForces.compute({ ...parts, crankLayout: id, balanceShafts: 'both' });
    const mr = parts.reciprocatingMass * r;
    const single = of('single');
    expect(single.shaftForce).toBeCloseTo(mr / 2, 14);
    expect(single.pairForce).toBeCloseTo((mr * lambda) / 8, 14);
    // The counterweights’ factor is 40 per cent: a fifth of the forward half is left, and nothing else.
    expect(single.primaryForce / single.inertiaForce).toBeCloseTo(0.1, 12);
    expect(single.primaryForceLeast).toBe(single.primaryForce);
    expect(single.secondaryForce).toBe(0);
    const three = of('inline-3');
    expect(three.shaftCouple).toBeCloseTo((mr * Math.sqrt(3)) / 2, 14);
    expect(three.shaftForce).toBe(0);
    // √3 F₂ of couple, half on each shaft, at four times the square of the speed.
    expect(three.pairCouple).toBeCloseTo((mr * lambda * Math.sqrt(3)) / 8, 14);
    const four = of('inline-4-flat');
    expect(four.pairForce).toBeCloseTo((mr * lambda) / 2, 14);
    expect([four.secondaryForce, four.pairCouple, four.forceNow]).toEqual([0, 0, 0]);
    // Shafts that are not chosen are none, and leave all as it is.
    const bare = shakingForces.compute({ ...parts, crankLayout: 'single', balanceShafts: 'pair' });
    expect(bare.shaftForce).toHaveProperty('absent');
    expect(bare.primaryForce / bare.inertiaForce).toBeCloseTo(0.6, 12);
    const one = shakingForces.compute({ ...parts, crankLayout: 'single', balanceShafts: 'one' });
    expect(one.pairForce).toHaveProperty('absent');
    expect(one.secondaryForce).toBe(one.secondaryOne);
  });

  test(proves(routes.weighedByHand), () => {
    for (const id of crankLayouts) {
      const { rods, pinBobweight, bobweights } = shakingForces.compute({
        ...parts,
        crankLayout: id,
      });
      const layout = crankLayout.compute({ crankLayout: id });
      expect(rods).toBe(layout.rodsPerPin);
      expect(bobweights).toBe(layout.bobweights);
      expect(pinBobweight).toBeCloseTo(0.9284 + 0.4 * rods * 0.7568, 12);
    }
  });
});

test('what is said of a layout is said of the right ones', () => {
  const broken = (
    id: CrankLayout,
    balanceShafts: 'none' | 'one' | 'pair' | 'both' = 'none',
  ): readonly string[] => {
    const input = { ...parts, crankLayout: id, balanceShafts };
    const output = shakingForces.compute(input);
    return shakingForces.limits.filter(({ holds }) => !holds(input, output)).map((one) => one.id);
  };
  expect(broken('inline-6')).toEqual(['cancels', 'no-bobweights']);
  expect(broken('inline-4-flat')).toEqual(['cancels', 'secondary', 'no-bobweights']);
  expect(broken('v8-cross')).toEqual(['all-forward']);
  expect(broken('v2-90')).toEqual(['all-forward', 'secondary']);
  expect(broken('single')).toEqual(['backward', 'secondary']);
  expect(broken('inline-3')).toEqual(['backward', 'secondary']);
  expect(broken('radial-5')).toEqual(['all-forward']);
  expect(broken('single', 'one')).toEqual(['secondary']);
  expect(broken('single', 'pair')).toEqual(['backward']);
  expect(broken('single', 'both')).toEqual([]);
});
