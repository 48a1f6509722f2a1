import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type CrankLayout,
  crankLayouts,
  throwsOf,
} from '../../../src/calculators/balance/crank-layout.choices.ts';
import { pairAtTwiceSpeed, shaftAgainstCrank } from '../../../src/core/balance/balance-shafts.ts';
import { crankBobweights } from '../../../src/core/balance/crank-bobweights.ts';
import { crankPins, primaryLeft } from '../../../src/core/balance/crank-pins.ts';
import { carriedWeights, perfectWeights } from '../../../src/core/balance/crank-weights.ts';
import { type Cylinder, cylindersOf, mostCylinders } from '../../../src/core/balance/cylinders.ts';
import {
  type OrderOfShaking,
  reachOf,
  type Shaking,
  shakingAt,
  shakingForces,
} from '../../../src/core/balance/shaking-forces.ts';
import { partsAt, pathOf, type TurningParts } from '../../../src/core/balance/turning-parts.ts';
import { length, type Vector } from '../../../src/core/balance/vectors.ts';
import { routes } from '../../../content/topics/shaking-forces/routes.ts';
import { evenly } from '../../evenly.ts';
import { byFourier } from './by-fourier.ts';
import { proves } from '../../proves.ts';

const degrees = Math.PI / 180;

/** A kilogram on a metre of throw at 1 rad/s, a metre apart, λ = ¼: F₁ = 1 and F₂ = ¼, so that forces read in F₁. */
const unit = { reciprocatingMass: 1, stroke: 2, rodLength: 4, cylinderSpacing: 1 };
const running = { maxSpeed: 1 };

function shakingOf(id: CrankLayout): Shaking {
  return shakingForces(cylindersOf(throwsOf(id), unit), running);
}

/** Half axes of all four, the secondary ones in F₂. */
function pathsOf({ primary, secondary }: Shaking) {
  return {
    force1: pathOf(primary.force),
    couple1: pathOf(primary.couple),
    force2: inF2(secondary.force),
    couple2: inF2(secondary.couple),
  };
}

function inF2(parts: TurningParts) {
  const { most, least, direction } = pathOf(parts);
  return { most: 4 * most, least: 4 * least, direction };
}

/** Twelve digits of sums of a few numbers of the order of one. */
function expectSame(one: Vector, other: Vector, digits = 12): void {
  expect(one.along).toBeCloseTo(other.along, digits);
  expect(one.across).toBeCloseTo(other.across, digits);
}

function expectSameShaking(one: Shaking, other: Shaking, digits = 10): void {
  for (const order of ['primary', 'secondary'] as const)
    for (const what of ['force', 'couple'] as const)
      for (const part of ['forward', 'backward'] as const)
        expectSame(one[order][what][part], other[order][what][part], digits);
}

const { sqrt } = Math;

describe('published values', () => {
  // Bosch, Automotive Handbook, "Reciprocating-piston engines", free forces and moments of the first and second order:
  // from memory. Force in F₁, couple in F₁a, both of the second order in F₂; the greatest in a turn.
  test.each<[CrankLayout, number, number, number, number]>([
    ['inline-3', 0, 1.732, 0, 1.732],
    ['inline-4-flat', 0, 0, 4, 0],
    ['inline-5', 0, 0.449, 0, 4.98],
    ['inline-6', 0, 0, 0, 0],
    ['v6-90-common', 0, 1.732, 0, 2.449],
    ['v6-60-split', 0, 1.5, 0, 1.5],
    ['v8-cross', 0, 3.162, 0, 0],
    ['v12-60', 0, 0, 0, 0],
    ['flat-4', 0, 0, 0, 2],
    ['flat-6', 0, 0, 0, 0],
  ])('%s in the table of a handbook', (id, force1, couple1, force2, couple2) => {
    const { most } = mostOf(id);
    // Half a unit of the third decimal, as the table prints them.
    expect(Math.abs(most.force1 - force1)).toBeLessThan(5e-4);
    expect(Math.abs(most.couple1 - couple1)).toBeLessThan(5e-4);
    expect(Math.abs(most.force2 - force2)).toBeLessThan(5e-4);
    expect(Math.abs(most.couple2 - couple2)).toBeLessThan(5e-4);
  });

  function mostOf(id: CrankLayout) {
    const { force1, couple1, force2, couple2 } = pathsOf(shakingOf(id));
    return {
      most: {
        force1: force1.most,
        couple1: couple1.most,
        force2: force2.most,
        couple2: couple2.most,
      },
    };
  }

  test('an in-line four with throws at 90° in the order 1-4-2-3: a secondary couple of 479.663 N·m', () => {
    // B. K. Sarkar, Theory of Machines (2002), Illustration 12.8, p. 320, from a companion that retypes it. Its primary
    // couple of 675 N·m takes 0.019 for a coefficient of 0.0190919, which is half a per cent.
    const engine = cylindersOf(throwsOf('inline-4-cross-1423'), {
      reciprocatingMass: 1.5,
      stroke: 0.12,
      rodLength: 0.24,
      cylinderSpacing: 0.15,
    });
    const { primary, secondary } = shakingForces(engine, { maxSpeed: 60 * Math.PI });
    expect(pathOf(secondary.couple).most).toBeCloseTo(479.663, 3);
    expect(pathOf(primary.couple).most / (60 * Math.PI) ** 2).toBeCloseTo(0.019, 3);
    expect(pathOf(primary.force).most).toBe(0);
    expect(pathOf(secondary.force).most).toBe(0);
  });
});

describe('closed forms, to the last digits of a double', () => {
  const near = (computed: number, exact: number): void => {
    expect(Math.abs(computed - exact)).toBeLessThanOrEqual(8e-15);
  };

  test.each(['inline-6', 'v12-60', 'flat-6'] as const)('%s: nothing at all', (id) => {
    for (const { most } of Object.values(pathsOf(shakingOf(id)))) expect(most).toBe(0);
  });

  test.each<[CrankLayout, 'force1' | 'couple1' | 'force2' | 'couple2', number, number]>([
    ['single', 'force1', 1, 0],
    ['single', 'force2', 1, 0],
    ['inline-2-360', 'force1', 2, 0],
    ['inline-2-180', 'couple1', 1, 0],
    ['inline-2-180', 'force2', 2, 0],
    ['inline-2-270', 'force1', Math.SQRT2, 0],
    ['inline-2-270', 'couple1', Math.SQRT1_2, 0],
    ['inline-2-270', 'force2', 0, 0],
    ['inline-2-270', 'couple2', 1, 0],
    ['inline-3', 'couple1', sqrt(3), 0],
    ['inline-3', 'couple2', sqrt(3), 0],
    ['inline-4-flat', 'force2', 4, 0],
    ['inline-4-cross', 'couple1', sqrt(10), 0],
    ['inline-4-cross', 'force2', 0, 0],
    ['inline-4-cross', 'couple2', 0, 0],
    ['v2-90', 'force1', 1, 1],
    ['v2-90', 'force2', Math.SQRT2, 0],
    ['v2-60', 'force1', 1.5, 0.5],
    ['v2-60', 'force2', sqrt(3) / 2, sqrt(3) / 2],
    ['v2-45', 'force1', 1 + Math.SQRT1_2, 1 - Math.SQRT1_2],
    ['v4-90', 'couple1', 1, 1],
    ['v6-90-common', 'couple1', sqrt(3), sqrt(3)],
    ['v6-90-common', 'couple2', sqrt(6), 0],
    ['v6-60-split', 'couple1', 1.5, 1.5],
    ['v6-60-split', 'couple2', 1.5, 1.5],
    ['v8-cross', 'force1', 0, 0],
    ['v8-cross', 'couple1', sqrt(10), sqrt(10)],
    ['v8-cross', 'force2', 0, 0],
    ['v8-cross', 'couple2', 0, 0],
    ['v8-flat', 'force1', 0, 0],
    ['v8-flat', 'force2', 4 * Math.SQRT2, 0],
    ['v8-flat', 'couple1', 0, 0],
    ['v8-flat', 'couple2', 0, 0],
    ['flat-2', 'force1', 0, 0],
    ['flat-2', 'couple1', 1, 0],
    ['flat-4', 'couple2', 2, 0],
    ['radial-3', 'force1', 1.5, 1.5],
    ['radial-3', 'force2', 1.5, 1.5],
    ['radial-5', 'force1', 2.5, 2.5],
    ['radial-5', 'force2', 0, 0],
    ['radial-7', 'force1', 3.5, 3.5],
    ['radial-7', 'force2', 0, 0],
    ['radial-9', 'force1', 4.5, 4.5],
    ['radial-9', 'force2', 0, 0],
  ])('%s: %s between %f and %f', (id, what, most, least) => {
    const path = pathsOf(shakingOf(id))[what];
    near(path.most, most);
    near(path.least, least);
  });

  test('an in-line four pulls with 4 m r ω² λ along its bores, twice a turn', () => {
    const alike = { reciprocatingMass: 0.6, stroke: 0.086, rodLength: 0.15, cylinderSpacing: 0.09 };
    const engine = cylindersOf(throwsOf('inline-4-flat'), alike);
    const omega = 700;
    const { most, least, direction } = pathOf(
      shakingForces(engine, { maxSpeed: omega }).secondary.force,
    );
    expect(most).toBeCloseTo(4 * 0.6 * 0.043 * omega ** 2 * (0.043 / 0.15), 8);
    expect(least).toBe(0);
    expect(direction).toBe(0);
  });

  test('a flat-plane V8 shakes sideways only', () => {
    const { direction, least } = pathsOf(shakingOf('v8-flat')).force2;
    expect(Math.abs(direction ?? 0)).toBeCloseTo(Math.PI / 2, 12);
    near(least, 0);
  });

  test('the couple of a cross-plane V8 and the force of a radial turn with the crank alone', () => {
    expect(length(shakingOf('v8-cross').primary.couple.backward)).toBe(0);
    expect(length(shakingOf('v8-cross').primary.force.forward)).toBe(0);
    for (const id of ['radial-3', 'radial-5', 'radial-7', 'radial-9'] as const)
      expect(length(shakingOf(id).primary.force.backward)).toBe(0);
  });

  test('the secondary of a radial of three turns against the crank, at twice its speed', () => {
    const { forward, backward } = shakingOf('radial-3').secondary.force;
    expect(length(forward)).toBe(0);
    near(4 * length(backward), 1.5);
  });

  test('V on one pin: F₁ rotates forward and F₁ |cos γ| backward, at any bank angle', () => {
    fc.assert(
      fc.property(evenly(0.01, Math.PI), (gamma) => {
        const throws = [{ angle: 0, position: 0, banks: [-gamma / 2, gamma / 2] }];
        const { forward, backward } = shakingForces(cylindersOf(throws, unit), running).primary
          .force;
        expect(length(forward)).toBeCloseTo(1, 14);
        expect(length(backward)).toBeCloseTo(Math.abs(Math.cos(gamma)), 13);
      }),
    );
  });

  test('a pin split by 180° − 2γ leaves no V-twin anything that rotates backward', () => {
    for (const id of ['v2-45-split', 'v2-52-split', 'v2-60-split', 'v2-75-split'] as const)
      expect(length(shakingOf(id).primary.force.backward)).toBe(0);
  });

  test.each([
    'v2-90',
    'v2-52-split',
    'v4-90',
    'v6-60-split',
    'v8-cross',
    'v10-90',
    'radial-9',
  ] as const)(
    'one half in the counterweights of %s leaves exactly nothing of the primary',
    (id) => {
      const left = balanced(id, 0.5).primary;
      expect(pathOf(left.force).most).toBe(0);
      expect(pathOf(left.couple).most).toBe(0);
    },
  );

  test('(√3 − 1)/2 brings the couple of an evenly firing V6 at 90° into one plane, one half makes it a circle', () => {
    const evenly = pathOf(balanced('v6-90-split', (sqrt(3) - 1) / 2).primary.couple);
    const backward = ((sqrt(3) - 1) / 2) * sqrt(3 / 2);
    near(evenly.most, 2 * backward);
    near(evenly.least, 0);
    const half = pathOf(balanced('v6-90-split', 0.5).primary.couple);
    near(half.most, backward);
    near(half.least, backward);
  });

  test('the ellipse of a single: (1 − f) F₁ along the bore and f F₁ across it', () => {
    fc.assert(
      fc.property(evenly(0, 1), (f) => {
        const { most, least } = pathOf(balanced('single', f).primary.force);
        expect(most).toBeCloseTo(Math.max(f, 1 - f), 14);
        expect(least).toBeCloseTo(Math.min(f, 1 - f), 14);
      }),
    );
  });

  test('two shafts at twice crank speed take all of an in-line four, each with m r λ/2', () => {
    const { forward, backward, left } = pairAtTwiceSpeed(shakingOf('inline-4-flat'), running);
    near(length(forward.unbalance), 1 / 8);
    near(length(backward.unbalance), 1 / 8);
    expect(length(forward.coupleUnbalance)).toBe(0);
    expect(pathOf(left.secondary.force).most).toBe(0);
  });

  test('one shaft against the crank takes what counterweights leave of a single, and of an in-line three', () => {
    const single = shaftAgainstCrank(balanced('single', 0.5), running);
    near(length(single.shaft.unbalance), 0.5);
    expect(pathOf(single.left.primary.force).most).toBe(0);
    // What comes twice a turn is not its business.
    expect(pathOf(single.left.secondary.force).most).toBe(0.25);
    const three = shaftAgainstCrank(balanced('inline-3', 0.5), running);
    near(length(three.shaft.coupleUnbalance), sqrt(3) / 2);
    expect(length(three.shaft.unbalance)).toBe(0);
    expect(pathOf(three.left.primary.couple).most).toBe(0);
  });

  test('shafts pull opposite to what they take, at every angle', () => {
    for (const id of crankLayouts) {
      const bare = shakingOf(id);
      const { forward, backward } = pairAtTwiceSpeed(bare, running);
      for (const crankAngle of [0, 1, 2.5]) {
        const taken = shakingAt(bare, { crankAngle }).couple.secondary;
        // Each shaft stands at 2θ, with the crank or against it, and pulls with U (2ω)².
        const parts = { forward: forward.coupleUnbalance, backward: backward.coupleUnbalance };
        const pull = partsAt(parts, 2, crankAngle);
        expectSame({ along: -4 * pull.along, across: -4 * pull.across }, taken);
      }
    }
  });
});

function balanced(id: CrankLayout, reciprocatingFraction: number): Shaking {
  const engine = cylindersOf(throwsOf(id), unit);
  return shakingForces(engine, running, carriedWeights(engine, { reciprocatingFraction }));
}

/** Any cylinder: banks and throws anywhere, masses, strokes and rods unlike. */
const cylinder: fc.Arbitrary<Cylinder> = fc
  .record({
    angle: evenly(-7, 7),
    bank: evenly(-3, 3),
    position: evenly(-0.5, 0.5),
    reciprocatingMass: evenly(0.1, 2),
    stroke: evenly(0.04, 0.2),
    ratio: evenly(1.2, 6),
  })
  .map(({ ratio, ...one }) => ({ ...one, rodLength: ratio * one.stroke }));
const engines = fc.uniqueArray(cylinder, {
  minLength: 1,
  maxLength: 8,
  selector: ({ position }) => position,
});
const fast = { maxSpeed: 3 };

describe('properties', () => {
  test(
    proves(routes.mirrored, 'turning the whole engine turns all vectors and changes no size'),
    () => {
      fc.assert(
        fc.property(engines, evenly(-7, 7), evenly(-7, 7), (engine, turn, theta) => {
          const moved = engine.map((one) => ({
            ...one,
            angle: one.angle + turn,
            bank: one.bank + turn,
          }));
          const before = shakingAt(shakingForces(engine, fast), { crankAngle: theta });
          const after = shakingAt(shakingForces(moved, fast), { crankAngle: theta });
          for (const what of ['force', 'couple'] as const)
            for (const order of ['primary', 'secondary', 'together'] as const)
              expect(length(after[what][order])).toBeCloseTo(length(before[what][order]), 9);
        }),
      );
    },
  );

  test('turning the crank alone by θ is the same as the crank angle θ', () => {
    fc.assert(
      fc.property(engines, evenly(-7, 7), (engine, theta) => {
        const moved = engine.map((one) => ({ ...one, angle: one.angle + theta }));
        const one = shakingAt(shakingForces(engine, fast), { crankAngle: theta });
        const other = shakingAt(shakingForces(moved, fast), { crankAngle: 0 });
        expectSame(one.force.together, other.force.together, 10);
        expectSame(one.couple.together, other.couple.together, 10);
      }),
    );
  });

  test(proves(routes.mirrored, 'a mirror image has mirrored vectors'), () => {
    fc.assert(
      fc.property(engines, (engine) => {
        const image = engine.map((one) => ({ ...one, angle: -one.angle, bank: -one.bank }));
        const mirrored = ({ forward, backward }: TurningParts): TurningParts => ({
          forward: { ...forward, across: -forward.across },
          backward: { ...backward, across: -backward.across },
        });
        const { primary, secondary } = shakingForces(engine, fast);
        const each = ({ force, couple }: OrderOfShaking): OrderOfShaking => ({
          force: mirrored(force),
          couple: mirrored(couple),
        });
        expectSameShaking(shakingForces(image, fast), {
          primary: each(primary),
          secondary: each(secondary),
        });
      }),
    );
  });

  test(proves(routes.mirrored, 'an engine shakes as its parts do together'), () => {
    fc.assert(
      fc.property(engines, fc.integer({ min: 0, max: 8 }), evenly(-7, 7), (engine, at, theta) => {
        const parts = [engine.slice(0, at), engine.slice(at)].filter((part) => part.length > 0);
        const whole = shakingAt(shakingForces(engine, fast), { crankAngle: theta });
        const sum = parts
          .map((part) => shakingAt(shakingForces(part, fast), { crankAngle: theta }))
          .reduce(
            ({ force, couple }, next) => ({
              force: add(force, next.force.together),
              couple: add(couple, next.couple.together),
            }),
            { force: none, couple: none },
          );
        expectSame(sum.force, whole.force.together, 10);
        expectSame(sum.couple, whole.couple.together, 10);
      }),
    );
  });

  test(proves(routes.planeMoved), () => {
    fc.assert(
      fc.property(engines, evenly(-1, 1), evenly(-7, 7), (engine, referencePlane, theta) => {
        const here = shakingAt(shakingForces(engine, fast), { crankAngle: theta });
        const there = shakingAt(shakingForces(engine, { ...fast, referencePlane }), {
          crankAngle: theta,
        });
        expectSame(there.force.together, here.force.together, 11);
        for (const order of ['primary', 'secondary'] as const) {
          const force = here.force[order];
          expectSame(
            there.couple[order],
            add(here.couple[order], {
              along: -referencePlane * force.along,
              across: -referencePlane * force.across,
            }),
            10,
          );
        }
      }),
    );
  });

  test(proves(routes.perfectWeights), () => {
    fc.assert(
      fc.property(engines, evenly(-0.6, -0.1), evenly(0.1, 0.6), (engine, planeA, planeB) => {
        const bare = shakingForces(engine, fast);
        const fitted = shakingForces(engine, fast, perfectWeights(engine, { planeA, planeB }));
        expectSameShaking(fitted, reachOf(bare).byNone);
      }),
    );
  });

  test('forward and backward together are the straight pulls at every angle', () => {
    fc.assert(
      fc.property(engines, evenly(-7, 7), (engine, theta) => {
        const { force, couple } = shakingAt(shakingForces(engine, fast), { crankAngle: theta });
        const pulls = engine.map((one) => {
          const r = one.stroke / 2;
          const psi = theta + one.angle - one.bank;
          const size = one.reciprocatingMass * r * 9;
          return {
            one,
            primary: size * Math.cos(psi),
            secondary: ((size * r) / one.rodLength) * Math.cos(2 * psi),
          };
        });
        for (const order of ['primary', 'secondary'] as const) {
          const sum = (arm: (one: Cylinder) => number): Vector => ({
            along: pulls.reduce(
              (all, pull) => all + arm(pull.one) * pull[order] * Math.cos(pull.one.bank),
              0,
            ),
            across: pulls.reduce(
              (all, pull) => all + arm(pull.one) * pull[order] * Math.sin(pull.one.bank),
              0,
            ),
          });
          expectSame(
            force[order],
            sum(() => 1),
            11,
          );
          expectSame(
            couple[order],
            sum(({ position }) => position),
            11,
          );
        }
      }),
    );
  });

  test('the path of a turn stays inside its ellipse and reaches both ends', () => {
    fc.assert(
      fc.property(engines, (engine) => {
        const shaking = shakingForces(engine, fast);
        const { most, least, direction = 0 } = pathOf(shaking.primary.force);
        // In the direction of the longer axis, and a right angle from it, the tip goes exactly so far.
        const sizes = Array.from({ length: 720 }, (_, i) => {
          const { primary } = shakingAt(shaking, { crankAngle: i * degrees }).force;
          return {
            long: primary.along * Math.cos(direction) + primary.across * Math.sin(direction),
            short: primary.across * Math.cos(direction) - primary.along * Math.sin(direction),
          };
        });
        // Half a degree off the end lacks 4 in 10⁵.
        expect(Math.max(...sizes.map(({ long }) => long))).toBeCloseTo(most, 2);
        expect(Math.max(...sizes.map(({ short }) => short))).toBeCloseTo(least, 2);
      }),
    );
  });

  test('half of what reciprocates on each pin stands in its bobweight, whatever the other pins carry', () => {
    const pin = fc.record({
      angle: evenly(-7, 7),
      position: evenly(-0.5, 0.5),
      stroke: evenly(0.04, 0.2),
      rotatingMass: evenly(0, 2),
      reciprocatingMasses: fc.array(evenly(0.1, 2), { minLength: 1, maxLength: 3 }),
    });
    fc.assert(
      fc.property(fc.array(pin, { minLength: 1, maxLength: 6 }), (pins) => {
        const { bobweights } = crankBobweights(pins, { reciprocatingFraction: 0.5 });
        const rotating = pins.map((one) => one.rotatingMass);
        // Half of the reciprocating mass of each pin is what its forward part weighs.
        bobweights.forEach((weight, at) => {
          const half = (pins[at]?.reciprocatingMasses ?? []).reduce((sum, m) => sum + m / 2, 0);
          expect(weight - (rotating[at] ?? 0)).toBeCloseTo(half, 12);
        });
      }),
    );
  });

  const none: Vector = { along: 0, across: 0 };
  function add(one: Vector, other: Vector): Vector {
    return { along: one.along + other.along, across: one.across + other.across };
  }
});

describe('second route', () => {
  test('the primary of any engine is the first order of the exact piston motion', () => {
    // The exact first order of a rod without offset is m r ω² itself.
    for (const id of crankLayouts) {
      const engine = cylindersOf(throwsOf(id), unit);
      const exact = byFourier(engine, 1);
      const { primary } = shakingForces(engine, running);
      for (const what of ['force', 'couple'] as const) {
        expectSame(primary[what].forward, exact[what].forward, 11);
        expectSame(primary[what].backward, exact[what].backward, 11);
      }
    }
  });

  test('the secondary is the second order of the exact motion, but for the next terms of λ', () => {
    const lambda = 1 / 4;
    // λ + λ³/4 + 15λ⁵/128 + …, of which the model keeps the first; the next is 35 λ⁷/512.
    const more = 1 + lambda ** 2 / 4 + (15 * lambda ** 4) / 128 + (35 * lambda ** 6) / 512;
    for (const id of crankLayouts) {
      const engine = cylindersOf(throwsOf(id), unit);
      const exact = byFourier(engine, 2);
      const { secondary } = shakingForces(engine, running);
      for (const what of ['force', 'couple'] as const)
        for (const part of ['forward', 'backward'] as const) {
          const { along, across } = secondary[what][part];
          expectSame(
            { along: along * more, across: across * more },
            exact[what][part],
            // 12 cylinders at 2.5 spacings, each 1e-6 off by what is left of the series.
            4,
          );
        }
    }
  });

  test('unlike cylinders in any place: first order as by the exact motion', () => {
    fc.assert(
      fc.property(engines, (engine) => {
        const exact = byFourier(engine, 1);
        const { primary } = shakingForces(engine, { maxSpeed: 1 });
        for (const what of ['force', 'couple'] as const) {
          expectSame(primary[what].forward, exact[what].forward, 9);
          expectSame(primary[what].backward, exact[what].backward, 9);
        }
      }),
      { numRuns: 20 },
    );
  });

  test('what is left of equal cylinders, as the layout page has it', () => {
    for (const id of crankLayouts)
      for (const f of [0, 0.366, 0.5, 0.8]) {
        const { force, couple } = balanced(id, f).primary;
        const left = primaryLeft(throwsOf(id), { reciprocatingFraction: f });
        expect(pathOf(force).most).toBeCloseTo(left.force, 12);
        expect(pathOf(couple).most).toBeCloseTo(left.couple, 12);
      }
  });

  test('equal pins: bobweights are needed where the layout says so', () => {
    for (const id of crankLayouts) {
      const pins = throwsOf(id).map(({ angle, position, banks }) => ({
        angle,
        position,
        stroke: 0.08,
        rotatingMass: 0.9,
        reciprocatingMasses: banks.map(() => 0.7),
      }));
      const { areNeeded } = crankBobweights(pins, { reciprocatingFraction: 0.5 });
      expect(areNeeded, id).toBe(crankPins(throwsOf(id)).bobweights > 0);
    }
  });

  test('one heavier pin asks for bobweights on any crank', () => {
    for (const id of crankLayouts) {
      const pins = throwsOf(id).map(({ angle, position, banks }, at) => ({
        angle,
        position,
        stroke: 0.08,
        rotatingMass: at === 0 ? 0.95 : 0.9,
        reciprocatingMasses: banks.map(() => 0.7),
      }));
      expect(crankBobweights(pins, { reciprocatingFraction: 0.5 }).areNeeded, id).toBe(true);
    }
  });
});

describe('refusals', () => {
  const one: Cylinder = {
    angle: 0,
    bank: 0,
    position: 0,
    reciprocatingMass: 1,
    stroke: 0.08,
    rodLength: 0.15,
  };

  test('no cylinder, and a layout of two hundred', () => {
    expect(() => shakingForces([], fast)).toThrow(
      expect.objectContaining({ quantity: 'cylinders', relation: 'at least', limit: 1 }),
    );
    const many = Array.from({ length: 200 }, (_, position) => ({ ...one, position }));
    expect(() => shakingForces(many, fast)).toThrow(
      expect.objectContaining({ quantity: 'cylinders', relation: 'at most', limit: mostCylinders }),
    );
    expect(() => shakingForces(many.slice(0, mostCylinders), fast)).not.toThrow();
  });

  test('two cylinders in one place, and a place that is no number', () => {
    expect(() => shakingForces([one, { ...one, angle: 2 }], fast)).toThrow(RangeError);
    expect(() => shakingForces([one, { ...one, bank: 2 * Math.PI }], fast)).toThrow(RangeError);
    expect(() => shakingForces([one, { ...one, bank: 1 }], fast)).not.toThrow();
    for (const name of ['angle', 'bank', 'position'] as const)
      expect(() => shakingForces([{ ...one, [name]: Number.NaN }], fast)).toThrow(RangeError);
    expect(() => shakingForces([one], { ...fast, referencePlane: Number.NaN })).toThrow(RangeError);
  });
});
