import { describe, expect, test } from 'vitest';
import type { Absent } from '../../../src/calculators/define.ts';
import { gasPort } from '../../../src/calculators/rings/gas-port.ts';
import { seededRandom } from '../../../src/core/math/random.ts';
import { OutOfDomain } from '../../../src/core/refuse.ts';
import { greatestSideClearance } from '../../../src/core/rings/ring-pack.ts';
import { ringSideClearance } from '../../../src/calculators/rings/quantities.ts';
import { rangeInSI } from '../../../src/calculators/evaluate.ts';
import { demo, drawn, six, worked, workOf, type Drawn } from './gas-port-draws.ts';
import { routes } from '../../../content/topics/gas-port/routes.ts';
import { proves } from '../../proves.ts';

const seed = 20240611;
/**
 * Steps of implicit Euler for one set of six rings. A ring's rounds end at 40,000 and one cycle more; half of
 * the sets below take a sixth of this, and the worst of 4,000 others three quarters.
 */
const mostWork = 160_000;

/**
 * Refused by the name of a field, or finite, inside the span, between the flanks and within the work; with
 * `all` every output of the calculator too.
 */
function check(input: Drawn, what: string, all = true): 'refused' | 'worked' {
  const result = worked(input);
  if (result instanceof OutOfDomain) {
    expect(Object.keys(gasPort.inputs), what).toContain(result.quantity);
    return 'refused';
  }
  const { drive, pack } = result;
  for (const [name, { trace }] of Object.entries(six(result))) {
    const of = `${what}, ${name}`;
    const pressures = [trace.behind, trace.land].flatMap((list) => [...list]);
    // Twelve digits: a mean of numbers may round past the greatest of them.
    expect(Math.min(...pressures), of).toBeGreaterThanOrEqual(drive.lowest * (1 - 1e-12));
    expect(Math.max(...pressures), of).toBeLessThanOrEqual(drive.highest * (1 + 1e-12));
    expect(Math.min(...trace.lift), of).toBeGreaterThanOrEqual(0);
    expect(Math.max(...trace.lift), of).toBeLessThanOrEqual(pack.clearance);
  }
  expect(workOf(result), what).toBeLessThan(mostWork);
  if (!all) return 'worked';
  for (const [name, output] of Object.entries(gasPort.compute(input))) {
    if (typeof output === 'number') expect(output, `${what}, ${name}`).toSatisfy(Number.isFinite);
    else if ('y' in output)
      expect(Array.from(output.y).every(Number.isFinite), `${what}, ${name}`).toBe(true);
    else expect((output as Absent).absent.length, `${what}, ${name}`).toBeGreaterThan(5);
  }
  return 'worked';
}

/** Checks `count` draws and returns how many of them were worked; one in five with every output. */
function checkAll(count: number, one: () => Drawn): number {
  let done = 0;
  for (let i = 0; i < count; i++) {
    const input = one();
    const what = `seed ${seed}, draw ${i}: ${JSON.stringify(input)}`;
    if (check(input, what, i % 5 === 0) === 'worked') done++;
  }
  return done;
}

/** A busy machine may take its time over a hundred cycles of six rings. */
const patience = 60_000;

describe(`four hundred draws (seed ${seed})`, () => {
  test(
    proves(routes.drawnAnywhere, 'from the hard ranges of everything'),
    () => {
      const random = seededRandom(seed);
      // Much is refused: the valves and the burn have to fit each other.
      expect(checkAll(200, () => drawn(random, () => 'hard'))).toBeGreaterThan(100);
    },
    patience,
  );

  test(
    'with about every sixth input up to three times beyond its hard range',
    () => {
      const random = seededRandom(seed + 1);
      const one = (): Drawn => {
        const far = Object.entries(drawn(random, () => 'hard', 3));
        const few = Object.fromEntries(far.filter(() => random() < 0.16));
        return { ...drawn(random, () => 'usual'), ...few };
      };
      expect(checkAll(100, one)).toBeGreaterThan(15);
    },
    patience,
  );

  test(
    'of the engine of the example with a ring from anywhere',
    () => {
      const random = seededRandom(seed + 2);
      const own =
        /^(ring|port|topLand|secondLand|maxSpeed|discharge|face|flank|crankcase|bore[ET])/;
      const one = (): Drawn => {
        const ring = Object.entries(drawn(random, () => 'hard')).filter(([name]) => own.test(name));
        return { ...demo('candidate'), ...Object.fromEntries(ring) };
      };
      expect(checkAll(100, one)).toBeGreaterThan(50);
    },
    patience,
  );
});

describe('the ends of what can be entered', () => {
  const extremes: readonly Partial<Drawn>[] = [
    { ringSideClearance: 0 },
    { ringSideClearance: greatestSideClearance },
    { ringSideClearance: greatestSideClearance, maxSpeed: 52 },
    { ringSideClearance: greatestSideClearance, maxSpeed: 2600 },
    { ringSideClearance: 2e-6, portCount: 0 },
    { ring1Gap: 0, ring2Gap: 0 },
    { ring1Gap: 0, ring2Gap: 3e-3 },
    { ring1Gap: 3e-3, ring2Gap: 0 },
    { portCount: 60, portDiameter: 4e-3, portPlugged: 0 },
    { portPlugged: 1 },
    { ring1Tension: 0 },
    { burnDuration: 0 },
    { exhaustOpen: 0 },
    { faceFactor: 0, flankFactor: 0 },
    { faceFactor: 1, flankFactor: 1, ringFriction: 0.3 },
    { ringBackClearance: 10e-6 },
    { secondLandHeight: 15e-3, secondLandClearance: 3e-3 },
    { ringDensity: 1, maxSpeed: 2600 },
    { compressionRatio: 25, volumetricEfficiency: 1.6 },
  ];
  const seats = ['free', 'lower', 'shut'] as const;
  test.each(extremes.map((change) => [JSON.stringify(change), change] as const))(
    '%s',
    (what, change) => {
      for (const set of ['baseline', 'candidate'] as const)
        for (const ringSeat of seats)
          check({ ...demo(set), ringSeat, ...change }, `${set} ${ringSeat} ${what}`);
    },
  );

  test('a number typed key by key on its way to 45 µm is refused at once, not worked', () => {
    for (const clearance of [4e-3, 45e-3, 0.0254, 1.5 * 0.0254]) {
      const result = worked({ ...demo('baseline'), ringSideClearance: clearance });
      expect(result).toBeInstanceOf(OutOfDomain);
      expect(result).toMatchObject({ quantity: 'ringSideClearance', relation: 'at most' });
    }
  });

  test('core’s greatest side clearance is the dictionary’s', () => {
    expect(rangeInSI(ringSideClearance, 'hard')[1]).toBeCloseTo(greatestSideClearance, 12);
  });

  test('without tension only the ratio to it is absent', () => {
    const output = gasPort.compute({ ...demo('candidate'), ring1Tension: 0 });
    expect(output.gasOverTension).toEqual({ absent: 'the ring has no tension' });
    expect(output.tensionPressure).toBe(0);
    expect(output.shortfall).toBeGreaterThan(0);
  });
});
