import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  radiiOf,
  sectionScale,
} from '../../../../src/components/figures/bearings/bearing-section.ts';
import {
  bearingOf,
  stateAt,
  temperatureRange,
} from '../../../../src/components/figures/bearings/clearance-temperature.ts';
import { must } from '../../../calculators/must.ts';

/** An aluminium rod on a steel pin. */
const input = {
  rodHousing: 0.056,
  housingOutside: 0.08,
  youngsModulus: 72e9,
  housingPoisson: 0.33,
  rodShellWall: 0.0015,
  shellModulus: 200e9,
  crushHeight: 0.05e-3,
  rodExpansion: 23e-6,
  shellExpansion: 12e-6,
  assemblyTemperature: 293.15,
  crankpinDiameter: 0.05294,
  crankExpansion: 12e-6,
  coldStartTemperature: 268.15,
  rodTemperature: 373.15,
  crankpinTemperature: 373.15,
};
const bearing = must(bearingOf({ input, output: { clearance: 60e-6 }, stale: false }));
const range = temperatureRange([bearing]);
const scale = sectionScale([bearing], range);

describe('the section through shell and journal', () => {
  test('is to scale but for the gaps, which are magnified as it says', () => {
    const state = stateAt(bearing, bearing.shop);
    const radii = radiiOf(bearing, state, scale);
    expect(radii.housing / radii.outside).toBeCloseTo(0.056 / 0.08, 12);
    expect(radii.back - radii.bore).toBeCloseTo(0.0015 * scale.length, 9);
    expect((radii.bore - radii.journal) / scale.length / scale.times).toBeCloseTo(30e-6, 12);
    expect(radii.back).toBe(radii.housing);
  });

  test('opens with temperature, and behind the shells once they are loose', () => {
    const loose = must(bearing.loose);
    const at = (kelvin: number) => radiiOf(bearing, stateAt(bearing, kelvin), scale);
    expect(at(loose - 5).back).toBe(at(loose - 5).housing);
    expect(at(loose + 10).back).toBeLessThan(at(loose + 10).housing);
    expect(at(loose + 10).push).toBe(0);
    expect(at(bearing.cold).push).toBeGreaterThan(at(bearing.hot).push);
  });

  test('no gap leaves its room, whatever the temperature', () => {
    fc.assert(
      fc.property(fc.double({ min: range[0], max: range[1], noNaN: true }), (kelvin) => {
        const { bore, journal, housing, back, push } = radiiOf(
          bearing,
          stateAt(bearing, kelvin),
          scale,
        );
        // Thirteen drawing units are the room, with the little that lies between two of the states looked at.
        expect(bore - journal).toBeLessThan(13.5);
        expect(housing - back).toBeLessThan(13.5);
        expect(push).toBeLessThanOrEqual(17.01);
        expect(journal).toBeGreaterThan(0);
      }),
    );
  });

  test('a clearance of less than nothing is drawn as none', () => {
    const state = { clearance: -20e-6, pressure: 0, gap: 0, free: -20e-6 };
    const { bore, journal } = radiiOf(bearing, state, scale);
    expect(journal).toBe(bore);
  });
});
