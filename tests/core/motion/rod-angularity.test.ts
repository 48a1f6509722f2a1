import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/rod-angularity/routes.ts';
import { deadCentres, pistonMotion } from '../../../src/core/motion/piston-motion.ts';
import { greatestLeans, rodLean } from '../../../src/core/motion/rod-angularity.ts';
import { proves } from '../../proves.ts';
import { evenly } from '../../evenly.ts';

const degree = Math.PI / 180;

describe('closed forms', () => {
  test(proves(routes.threeFourFive), () => {
    const { down, up } = greatestLeans({ stroke: 0.06, rodLength: 0.05 });
    expect(down.thrust).toBeCloseTo(0.75, 14);
    expect(up.thrust).toBeCloseTo(0.75, 14);
  });
  test('in line at TDC and BDC there is no side thrust without offset', () => {
    for (const crankAngle of [0, Math.PI])
      expect(rodLean({ stroke: 0.08, rodLength: 0.14, crankAngle }).thrust).toBeCloseTo(0, 15);
  });
});

describe('second route', () => {
  test(proves(routes.everyAngle), () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1.5, max: 5, noNaN: true }),
        evenly(-0.2, 0.2),
        (rods, offset) => {
          const geometry = { stroke: 0.08, rodLength: 0.04 * rods, boreOffset: 0.04 * offset };
          const leans = Array.from({ length: 36_000 }, (_, i) => ({
            at: i / 100,
            lean: pistonMotion(geometry, (i / 100) * degree, 0).rodAngle,
          }));
          const most = leans.reduce((one, other) => (other.lean > one.lean ? other : one));
          const least = leans.reduce((one, other) => (other.lean < one.lean ? other : one));
          const { down, up } = greatestLeans(geometry);
          expect(down.lean).toBeCloseTo(most.lean, 7);
          expect(up.lean).toBeCloseTo(-least.lean, 7);
          expect(Math.abs(down.crankAngle / degree - most.at)).toBeLessThan(0.0101);
          expect(Math.abs(up.crankAngle / degree - least.at)).toBeLessThan(0.0101);
        },
      ),
      { numRuns: 30 },
    );
  });
});

const linkages = fc
  .record({
    rods: fc.double({ min: 1.5, max: 5, noNaN: true }),
    boreOffset: evenly(-0.008, 0.008),
    pinOffset: evenly(-0.002, 0.002),
  })
  .map(({ rods, ...offsets }) => ({ stroke: 0.08, rodLength: 0.04 * rods, ...offsets }));

describe('side thrust', () => {
  test('turns the crank as much as the work of the piston says', () => {
    // A force of one along the bore reaches the crank along the rod; its moment about the crank's axis, taken at
    // the piston pin, is e + height · thrust. By virtual work it is the piston's way per radian of the crank.
    fc.assert(
      fc.property(linkages, evenly(-7, 7), (geometry, crankAngle) => {
        const e = geometry.boreOffset - geometry.pinOffset;
        const { displacement, speed } = pistonMotion(geometry, crankAngle, 1);
        const height = Math.sqrt((geometry.rodLength + 0.04) ** 2 - e ** 2) - displacement;
        const { lean, thrust } = rodLean({ ...geometry, crankAngle });
        expect(e + height * thrust).toBeCloseTo(speed, 14);
        expect(Math.tan(lean)).toBeCloseTo(thrust, 14);
      }),
    );
  });
  test('is greatest where the greatest leans are said to stand', () => {
    fc.assert(
      fc.property(linkages, (geometry) => {
        const { down, up } = greatestLeans(geometry);
        const { bottomAngle } = deadCentres(geometry);
        for (const [most, sign] of [
          [down, 1],
          [up, -1],
        ] as const) {
          const at = rodLean({ ...geometry, crankAngle: most.crankAngle });
          expect(sign * at.lean).toBeCloseTo(most.lean, 14);
          expect(sign * at.thrust).toBeCloseTo(most.thrust, 14);
        }
        expect(down.crankAngle).toBeLessThan(bottomAngle);
        expect(up.crankAngle).toBeGreaterThan(bottomAngle);
      }),
    );
  });
});

describe('properties', () => {
  test('an offset to the other side exchanges the strokes', () => {
    const sides = [0.003, -0.003].map((boreOffset) =>
      greatestLeans({ stroke: 0.08, rodLength: 0.14, boreOffset }),
    );
    expect(sides[0]?.down.lean).toBeCloseTo(sides[1]?.up.lean ?? Number.NaN, 15);
    expect(sides[0]?.up.thrust).toBeCloseTo(sides[1]?.down.thrust ?? Number.NaN, 15);
  });
});
