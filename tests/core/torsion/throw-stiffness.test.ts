import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/crank-torsion/routes.ts';
import {
  equivalentLengths,
  shaftStiffness,
  type ThrowShape,
} from '../../../src/core/torsion/throw-stiffness.ts';
import { evenly } from '../../evenly.ts';
import { proves } from '../../proves.ts';

const shape: ThrowShape = {
  stroke: 0.073,
  mainDiameter: 0.06,
  mainBore: 0,
  mainLength: 0.026,
  crankpinDiameter: 0.052,
  crankpinBore: 0,
  crankpinLength: 0.045,
  crankWebThickness: 0.02,
  crankWebWidth: 0.09,
};

describe('closed forms and limits', () => {
  test(proves(routes.journalsAlone), () => {
    // Webs as wide as a wall: only the journals are left, each with what the formula adds for its ends.
    const wall = { ...shape, crankWebWidth: 1e4 };
    const { kerWilson, carter } = equivalentLengths(wall);
    const pin = (60 / 52) ** 4;
    expect(kerWilson).toBeCloseTo(0.026 + 0.024 + (0.045 + 0.0208) * pin, 9);
    expect(carter).toBeCloseTo(0.026 + 0.016 + 0.75 * 0.045 * pin, 9);
    // A bore of half the diameter takes a sixteenth.
    const bored = equivalentLengths({ ...wall, mainBore: 0.03, crankpinBore: 0.026 });
    expect(bored.kerWilson).toBeCloseTo(kerWilson / (15 / 16), 9);
    // Long thin webs bend as two beams: 24 r T/(E t w³) is 24 π G/(32 E) = 0.907 of r D⁴/(t w³) at E = 2.6 G.
    const long = { ...shape, stroke: 4, crankWebWidth: 0.06 };
    const journals = equivalentLengths({ ...long, crankWebWidth: 1e4 });
    const web = (2 * 0.06 ** 4) / (0.02 * 0.06 ** 3);
    const beams = (24 * Math.PI) / (32 * 2.6);
    const byKerWilson = (equivalentLengths(long).kerWilson - journals.kerWilson) / web;
    expect(Math.abs(byKerWilson / beams - 1)).toBeLessThan(0.1);
    expect((equivalentLengths(long).carter - journals.carter) / web).toBeCloseTo(1.5, 6);
  });

  test('a plain steel shaft of 60 mm and 150 mm by hand', () => {
    // G J / L with J = π 0.06⁴/32 = 1.27235e-6 m⁴.
    const k = shaftStiffness({ crankShearModulus: 80e9, mainDiameter: 0.06 }, 0.15);
    expect(k).toBeCloseTo(678584.01, 2);
    for (const length of [0, -0.1, Number.NaN])
      expect(() => shaftStiffness({ crankShearModulus: 80e9, mainDiameter: 0.06 }, length)).toThrow(
        RangeError,
      );
  });
});

describe('properties', () => {
  test('all lengths twice as great: the equivalent length too, and the stiffness eight times', () => {
    fc.assert(
      fc.property(evenly(0.3, 4), (by) => {
        const scaled = Object.fromEntries(
          Object.entries(shape).map(([name, value]) => [name, by * value]),
        ) as unknown as ThrowShape;
        const [one, other] = [equivalentLengths(shape), equivalentLengths(scaled)];
        expect(other.kerWilson / one.kerWilson).toBeCloseTo(by, 9);
        expect(other.carter / one.carter).toBeCloseTo(by, 9);
      }),
    );
  });
});
