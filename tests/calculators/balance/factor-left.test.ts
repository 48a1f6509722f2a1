import { expect, test } from 'vitest';
import { routes } from '../../../content/topics/balance-factor/routes.ts';
import { crankLayouts, throwsOf } from '../../../src/calculators/balance/crank-layout.choices.ts';
import { factorLeft } from '../../../src/calculators/balance/factor-left.ts';
import { pistonMotion } from '../../../src/core/motion/piston-motion.ts';
import { proves } from '../../proves.ts';

/** The invented V8’s sizes, on any layout. */
const parts = {
  reciprocatingMass: 0.7568,
  rotatingMass: 0.9284,
  stroke: 0.073,
  maxSpeed: 670,
  cylinderSpacing: 0.1,
} as const;
const { reciprocatingMass: m, maxSpeed: omega, cylinderSpacing: a } = parts;
const r = parts.stroke / 2;
/** No input of the page: the primary does not know how long the rod is, and this shows it. */
const rodLength = 0.139;
const F1 = m * r * omega ** 2;
const steps = 720;

interface Pull {
  readonly x: number;
  readonly y: number;
}

/** Force or couple of the pistons’ exact motion over a turn, up and to the right, less the orders above the first. */
function primaryOver(layout: string, arm: (place: number) => number): readonly Pull[] {
  const exact = Array.from({ length: steps }, (_, i): Pull => {
    const theta = (2 * Math.PI * i) / steps;
    let [x, y] = [0, 0];
    for (const { angle, position, banks } of throwsOf(layout))
      for (const bank of banks) {
        const { acceleration } = pistonMotion({ ...parts, rodLength }, theta + angle - bank, omega);
        x += arm(position * a) * m * acceleration * Math.cos(bank);
        y += arm(position * a) * m * acceleration * Math.sin(bank);
      }
    return { x, y };
  });
  const once = (of: (pull: Pull) => number, wave: (theta: number) => number): number =>
    (2 / steps) *
    exact.reduce((sum, pull, i) => sum + of(pull) * wave((2 * Math.PI * i) / steps), 0);
  const [xc, xs] = [once(({ x }) => x, Math.cos), once(({ x }) => x, Math.sin)];
  const [yc, ys] = [once(({ y }) => y, Math.cos), once(({ y }) => y, Math.sin)];
  return exact.map((_, i) => {
    const theta = (2 * Math.PI * i) / steps;
    return {
      x: xc * Math.cos(theta) + xs * Math.sin(theta),
      y: yc * Math.cos(theta) + ys * Math.sin(theta),
    };
  });
}

/** The ends of what is left in a turn with a counterweight of f m r opposite each throw for every rod on it. */
function left(
  layout: string,
  primary: readonly Pull[],
  f: number,
  arm: (place: number) => number,
): { readonly most: number; readonly least: number; readonly axis: number } {
  const tips = primary.map(({ x, y }, i) => {
    const theta = (2 * Math.PI * i) / steps;
    let [along, across] = [x, y];
    for (const { angle, position, banks } of throwsOf(layout)) {
      const weight = arm(position * a) * f * F1 * banks.length;
      along -= weight * Math.cos(theta + angle);
      across -= weight * Math.sin(theta + angle);
    }
    return { size: Math.hypot(along, across), axis: Math.atan2(across, along) };
  });
  const [longest] = tips.toSorted((one, other) => other.size - one.size);
  return {
    most: longest?.size ?? Number.NaN,
    least: Math.min(...tips.map(({ size }) => size)),
    axis: longest?.axis ?? Number.NaN,
  };
}

const factors = [0, 0.25, (Math.sqrt(3) - 1) / 2, 0.5, 0.52, 0.8, 1];

test.each([...crankLayouts, 'own: 0 at 1: -20 35; 100 at 2: 10; 250 at 4: -20 35'])(
  proves(routes.overATurn, '%s with its counterweights, over a turn'),
  (layout) => {
    for (const [arm, per, most, least, axis, perCent, forward, backward] of [
      [
        () => 1,
        F1,
        'forceMost',
        'forceLeast',
        'forceAxis',
        'forcePerCent',
        'forwardForce',
        'backwardForce',
      ],
      [
        (place: number) => place,
        F1 * a,
        'coupleMost',
        'coupleLeast',
        'coupleAxis',
        'couplePerCent',
        'forwardCouple',
        'backwardCouple',
      ],
    ] as const) {
      const primary = primaryOver(layout, arm);
      // Half a step beside the greatest it is smaller by (0.25°)²/2 of what two parts make, 1e-5 of up to six F₁.
      const near = (one: number, other: number): void => {
        expect(Math.abs(one - other), layout).toBeLessThan(1e-4 * per);
      };
      for (const f of factors) {
        const found = factorLeft.compute({
          ...parts,
          crankLayout: layout,
          reciprocatingFraction: f,
        });
        const turned = left(layout, primary, f, arm);
        expect(found.inertiaForce).toBeCloseTo(F1, 8);
        near(found[most], turned.most);
        // Where a line is passed its least lies between two steps: a quarter of a degree of two F₁ and more.
        expect(Math.abs(found[least] - turned.least)).toBeLessThan(0.03 * per);
        const way = found[axis];
        if (typeof way === 'number') {
          expect(way).toBeGreaterThanOrEqual(0);
          expect(way).toBeLessThan(Math.PI);
          if (found[most] - found[least] > 0.2 * per)
            expect(Math.abs(Math.sin(way - turned.axis))).toBeLessThan(0.02);
        } else expect(turned.most - turned.least).toBeLessThan(1e-4 * per);
        if (f === 0) {
          const both = left(layout, primary, 0.5, arm);
          near(found[backward] * per, both.most);
          near(found[forward] * per + found[backward] * per, turned.most);
        }
        if (f === 0.52)
          near(2 * found[perCent], turned.most - left(layout, primary, 0.5, arm).most);
      }
    }
  },
);

test(proves(routes.everyFactorTried), () => {
  for (const layout of crankLayouts) {
    const sums = Array.from({ length: 1001 }, (_, i) => {
      const { forceMost, coupleMost, forceLeast, coupleLeast } = factorLeft.compute({
        ...parts,
        crankLayout: layout,
        reciprocatingFraction: i / 1000,
      });
      return { most: forceMost / F1 + coupleMost / (F1 * a), line: [forceLeast, coupleLeast] };
    });
    const { leastFactor, lineFactor, forwardForce } = factorLeft.compute({
      ...parts,
      crankLayout: layout,
      reciprocatingFraction: 0,
    });
    const most = sums.map((one) => one.most);
    if (typeof leastFactor === 'number')
      expect(most.indexOf(Math.min(...most)) / 1000, layout).toBe(leastFactor);
    else expect(Math.max(...most), layout).toBeLessThan(1e-12);
    // The least over the turn goes to nothing at the factor of the line, on its way through one half at most.
    const across = sums.slice(0, 501).map(({ line }) => line[forwardForce > 0 ? 0 : 1] ?? 0);
    if (typeof lineFactor === 'number')
      expect(Math.abs(across.indexOf(Math.min(...across)) / 1000 - lineFactor)).toBeLessThan(0.001);
  }
});

test(proves(routes.pinsByHand), () => {
  for (const layout of crankLayouts) {
    const found = factorLeft.compute({ ...parts, crankLayout: layout, reciprocatingFraction: 0.4 });
    const rods = throwsOf(layout)[0]?.banks.length ?? 0;
    expect(found.rods).toBe(rods);
    expect(found.pinBobweight).toBeCloseTo(0.9284 + 0.4 * rods * 0.7568, 12);
  }
  const count = (layout: string) =>
    factorLeft.compute({ ...parts, crankLayout: layout, reciprocatingFraction: 0.5 }).bobweights;
  expect(['inline-4-flat', 'v8-flat', 'flat-6', 'v12-60'].map(count)).toEqual([0, 0, 0, 0]);
  expect(['single', 'v2-60', 'v6-90-split', 'v8-cross'].map(count)).toEqual([1, 1, 6, 4]);
});

test('what is said of a factor is said of the right layouts', () => {
  const broken = (layout: string): readonly string[] => {
    const input = { ...parts, crankLayout: layout, reciprocatingFraction: 0.5 };
    const output = factorLeft.compute(input);
    return factorLeft.limits.filter((one) => !one.holds(input, output)).map(({ id }) => id);
  };
  expect(broken('v8-cross')).toEqual([]);
  expect(broken('inline-4-flat')).toEqual(['any-factor', 'no-bobweights']);
  expect(broken('single')).toEqual(['choice']);
  expect(broken('v6-90-split')).toEqual(['choice']);
  expect(broken('own: 0 at 1: -45 45; 180 at 2: 0')).toEqual(['choice', 'unlike-pins']);
});
