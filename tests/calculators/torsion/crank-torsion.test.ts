import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/crank-torsion/routes.ts';
import { ownLayoutFrom } from '../../../src/calculators/balance/crank-layout.choices.ts';
import type { SetId } from '../../../src/calculators/define.ts';
import { numberIn } from '../../../src/calculators/evaluate.ts';
import { exampleInput } from '../../../src/calculators/practice/example.ts';
import { rotatingInertia } from '../../../src/calculators/inertia/rotating-inertia.ts';
import { crankTorsion } from '../../../src/calculators/torsion/crank-torsion.ts';
import { shaftLine } from '../../../src/calculators/torsion/shaft-line.ts';
import { at } from '../../../src/core/math/at.ts';
import { OutOfDomain } from '../../../src/core/refuse.ts';
import { jacobiModes } from '../../core/torsion/jacobi.ts';
import { proves } from '../../proves.ts';

type Input = Parameters<typeof crankTorsion.compute>[0];
const example = (set: SetId): Input => exampleInput(crankTorsion, set) as Input;
const turn = 2 * Math.PI;

/** The example as a line, written down by hand: ring, hub, four throws, flywheel with clutch. */
function lineOf(input: Input, damper: 'sprung' | 'locked' | 'bare') {
  const ring = input.damperInertia - input.hubInertia;
  const heads = {
    sprung: [ring, input.hubInertia],
    locked: [input.damperInertia],
    bare: [input.hubInertia],
  };
  const throws = new Array<number>(4).fill(input.throwInertia);
  const between = new Array<number>(3).fill(input.throwStiffness);
  return {
    lineInertias: [...heads[damper], ...throws, input.flywheelInertia + input.clutchInertia],
    lineStiffnesses: [
      ...(damper === 'sprung' ? [input.ringStiffness ?? 0] : []),
      input.noseStiffness,
      ...between,
      input.flangeStiffness,
    ],
  };
}

describe.each(['baseline', 'candidate'] as const)('the %s of the example', (set) => {
  const input = example(set);
  const output = crankTorsion.compute(input);

  test(proves(routes.exampleTurned), () => {
    const [first, second] = jacobiModes(lineOf(input, 'sprung'));
    expect(output.firstFrequency * turn).toBeCloseTo(first?.frequency ?? 0, 6);
    expect(output.secondFrequency * turn).toBeCloseTo(second?.frequency ?? 0, 6);
    const locked = at(jacobiModes(lineOf(input, 'locked')), 0);
    expect(output.lockedFrequency * turn).toBeCloseTo(locked.frequency, 6);
    const bareLine = lineOf(input, 'bare');
    const bare = at(jacobiModes(bareLine), 0);
    expect(output.bareFrequency * turn).toBeCloseTo(bare.frequency, 6);
    const seen = bareLine.lineInertias.reduce((sum, J, i) => sum + J * at(bare.shape, i) ** 2, 0);
    expect(output.seenInertia).toBeCloseTo(seen / at(bare.shape, 0) ** 2, 9);
    const shape = first?.shape ?? [];
    const before = shape.findIndex((each, i) => each * (shape[i + 1] ?? 0) < 0);
    const share = at(shape, before) / (at(shape, before) - at(shape, before + 1));
    // Ring and hub stand before the first throw.
    expect(output.firstNode).toBeCloseTo(before + share - 1, 9);
    expect(output.inertias).toBe(7);
  });

  test(proves(routes.ordersOfFiring), () => {
    expect(output.firingRate).toBe(4);
    expect((output.firstCritical / turn) * 4).toBeCloseTo(output.firstFrequency, 9);
    expect((output.secondCritical / turn) * 4).toBeCloseTo(output.secondFrequency, 9);
  });

  test(proves(routes.nearestByHand), () => {
    // Firing angles of 1-8-4-3-6-5-7-2, two cylinders on each throw.
    const angles = [
      [0, 630],
      [270, 180],
      [450, 360],
      [540, 90],
    ];
    const modes = jacobiModes(lineOf(input, 'sprung')).slice(0, 2);
    const sum = (mode: number, order: number): number => {
      const swings = at(modes, mode).shape.slice(2, 6);
      const arrows = angles.flatMap((pair, i) =>
        pair.map((angle) => [at(swings, i), (order * angle * Math.PI) / 180] as const),
      );
      const x = arrows.reduce((all, [size, turned]) => all + size * Math.cos(turned), 0);
      const y = arrows.reduce((all, [size, turned]) => all + size * Math.sin(turned), 0);
      return Math.hypot(x, y) / arrows.reduce((all, [size]) => all + Math.abs(size), 0);
    };
    expect(output.firstSum).toBeCloseTo(sum(0, 4), 9);
    expect(output.secondSum).toBeCloseTo(sum(1, 4), 9);
    let best = { away: Infinity, order: 0, speed: 0, sum: 0 };
    for (let mode = 0; mode < 2; mode++)
      for (let order = 0.5; order <= 12; order += 0.5) {
        const speed = at(modes, mode).frequency / order;
        const away = Math.abs(Math.log(speed / input.maxSpeed));
        if (sum(mode, order) >= 0.25 && away < best.away)
          best = { away, order, speed, sum: sum(mode, order) };
      }
    expect(output.nearOrder).toBe(best.order);
    expect(numberIn(output.nearCritical)).toBeCloseTo(best.speed, 6);
    expect(numberIn(output.nearSum)).toBeCloseTo(best.sum, 9);
  });

  test(proves(routes.ringByHand), () => {
    const ring = input.damperInertia - input.hubInertia;
    const own = Math.sqrt((input.ringStiffness ?? 0) / ring) / turn;
    expect(numberIn(output.ringTuning)).toBeCloseTo(own, 9);
    expect(numberIn(output.ringRatio)).toBeCloseTo(ring / output.seenInertia, 12);
    const best = output.bareFrequency / (1 + ring / output.seenInertia);
    expect(numberIn(output.bestTuning)).toBeCloseTo(best, 9);
  });
});

test('without a spring the ring is one with its hub, and nothing is tuned', () => {
  const fast = crankTorsion.compute({ ...example('baseline'), ringStiffness: undefined });
  expect(fast.firstFrequency).toBe(fast.lockedFrequency);
  expect(fast.inertias).toBe(6);
  for (const none of [fast.ringTuning, fast.ringRatio, fast.bestTuning])
    expect(none).toEqual({ absent: 'no ring on a spring of its own' });
  const solid = { ...example('baseline'), hubInertia: example('baseline').damperInertia };
  expect(crankTorsion.compute(solid).inertias).toBe(6);
});

test('another firing order leaves the frequencies and moves what drives them', () => {
  const usual = crankTorsion.compute(example('baseline'));
  const other = crankTorsion.compute({
    ...example('baseline'),
    firingOrder: [1, 8, 7, 3, 6, 5, 4, 2],
  });
  expect(other.firstFrequency).toBe(usual.firstFrequency);
  expect(other.firstSums.y).not.toEqual(usual.firstSums.y);
});

test('a layout written by the reader fires evenly where no order is told', () => {
  const own = { ...example('baseline'), crankLayout: ownLayoutFrom('v8-cross') };
  const [written, ready] = [crankTorsion.compute(own), crankTorsion.compute(example('baseline'))];
  expect(written.firstFrequency).toBe(ready.firstFrequency);
  expect(written.firstSum).toBeCloseTo(ready.firstSum, 9);
});

test('an order that cannot be fired is refused by name', () => {
  const wrong = { ...example('baseline'), firingOrder: [1, 2, 3, 4, 5, 6, 7, 8] };
  expect(() => crankTorsion.compute(wrong)).toThrow(OutOfDomain);
});

test('a line of two has one frequency, and says why there is no second', () => {
  const { secondFrequency, thirdFrequency, secondNode } = shaftLine.compute({
    lineInertias: [0.02, 0.16],
    lineStiffnesses: [5e5],
    trialFrequency: 100,
  });
  for (const none of [secondFrequency, thirdFrequency, secondNode])
    expect(none).toEqual({ absent: 'there are too few inertias for it' });
});

test(proves(routes.sharedOut), () => {
  const inertia = exampleInput(rotatingInertia, 'baseline') as Parameters<
    typeof rotatingInertia.compute
  >[0];
  const whole = rotatingInertia.compute(inertia);
  const r = inertia.stroke / 2;
  const going =
    inertia.pistonMass +
    inertia.pinMass +
    inertia.ringMass +
    inertia.lockMass +
    inertia.smallEndMass;
  const onPins =
    8 * r ** 2 * (inertia.bigEndMass + inertia.shellMass + whole.reciprocatingShare * going);
  expect(numberIn(whole.throwInertia)).toBeCloseTo((inertia.crankInertia + onPins) / 4, 12);
  expect(rotatingInertia.compute({ ...inertia, rodsPerPin: undefined }).throwInertia).toEqual({
    absent: 'enter how many rods share a crankpin',
  });
  expect(() => rotatingInertia.compute({ ...inertia, rodsPerPin: 0.5 })).toThrow(OutOfDomain);
  const [before, after] = (['baseline', 'candidate'] as const).map((set) => {
    const input = example(set);
    return { input, output: crankTorsion.compute(input) };
  });
  if (before === undefined || after === undefined) throw new Error('both sets are there');
  const { moved } = crankTorsion.compare?.({ baseline: before, candidate: after }) ?? {};
  expect(moved).toBeCloseTo(after.output.firstCritical - before.output.firstCritical, 9);
  const line = exampleInput(shaftLine, 'baseline') as Parameters<typeof shaftLine.compute>[0];
  expect(shaftLine.compute(line).inertias).toBe(6);
});
