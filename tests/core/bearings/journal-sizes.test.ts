import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import sizes from '../../../content/tables/journal-sizes.json' with { type: 'json' };
import { dragRatio, journalLoad, surfaceSpeed } from '../../../src/core/bearings/journal-sizes.ts';
import { routes } from '../../../content/topics/journal-sizes/routes.ts';
import { proves } from '../../proves.ts';

const rpm = Math.PI / 30;
const length = fc.double({ min: 0.02, max: 0.2, noNaN: true });

describe('the invented engines', () => {
  it('run their pins at 17.4 and 20.2 m/s, and 52 mm would run at 22.9', () => {
    expect(surfaceSpeed(0.052, 6400 * rpm)).toBeCloseTo(17.43, 2);
    expect(surfaceSpeed(0.046, 8400 * rpm)).toBeCloseTo(20.23, 2);
    expect(surfaceSpeed(0.052, 8400 * rpm)).toBeCloseTo(22.87, 2);
  });
  it('carry 22.8 and 33.8 MPa on the projected area', () => {
    const road = { crankpinDiameter: 0.052, rodShellWidth: 0.0196, bearingLoad: 23200 };
    const hill = { crankpinDiameter: 0.046, rodShellWidth: 0.0188, bearingLoad: 29200 };
    expect(journalLoad(road).unitLoad / 1e6).toBeCloseTo(22.8, 1);
    expect(journalLoad(hill).unitLoad / 1e6).toBeCloseTo(33.8, 1);
  });
  it('lose 31 % of the drag from 52 to 46 mm', () => {
    expect(dragRatio(0.046, 0.052)).toBeCloseTo(0.692, 3);
  });
});

it(proves(routes.dragThinFilm), () => {
  fc.assert(
    fc.property(length, length, fc.double({ min: 1, max: 900, noNaN: true }), (d, d0, ω) => {
      // Petroff, worked from shear stress: viscosity × surface speed ÷ gap, over the journal's skin.
      const power = (diameter: number): number => {
        const speed = surfaceSpeed(diameter, ω);
        const shear = (0.01 * speed) / (0.0005 * diameter);
        return shear * Math.PI * diameter * 0.02 * speed;
      };
      // One arm, surface speed, and one of skin: shear stress itself does not change.
      expect(power(d) / power(d0) / (d / d0) ** 2).toBeCloseTo(1, 9);
      // With the gap kept the same in micrometres instead, the cube.
      const kept = (diameter: number): number => power(diameter) * diameter;
      expect(kept(d) / kept(d0) / dragRatio(d, d0)).toBeCloseTo(1, 9);
    }),
  );
});

describe('the table of sizes', () => {
  const millimetres = ({ size, unit }: { size: string; unit: string }): number =>
    Number(size) * (unit === 'in' ? 25.4 : 1);
  const rows = Object.values(sizes);
  it('holds pins and mains of both systems, each with where it comes from', () => {
    for (const journal of ['crankpin', 'main'])
      for (const unit of ['in', 'mm'])
        expect(
          rows.filter((row) => row.journal === journal && row.unit === unit).length,
        ).toBeGreaterThan(5);
    for (const row of rows) expect(row.source).toMatch(/^(practice|journal-overlap-article)$/);
  });
  it('names no size twice and keeps to what engines have', () => {
    const seen = rows.map((row) => `${row.journal} ${row.size} ${row.unit}`);
    expect(new Set(seen).size).toBe(seen.length);
    // Two names nearer than a fiftieth of a millimetre are one size.
    for (const [i, row] of rows.entries())
      for (const other of rows.slice(i + 1))
        if (other.journal === row.journal)
          expect(
            Math.abs(millimetres(row) - millimetres(other)),
            `${row.journal}: ${row.size} ${row.unit} and ${other.size} ${other.unit}`,
          ).toBeGreaterThan(0.02);
    for (const row of rows) {
      const mm = millimetres(row);
      expect(mm).toBeGreaterThan(35);
      expect(mm).toBeLessThan(80);
    }
  });
});
