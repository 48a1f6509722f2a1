import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { cycleEnergy } from '../../../src/core/loads/cycle-energy.ts';
import { pressureCycle, type PressureInput } from '../../../src/core/loads/cylinder-pressure.ts';
import { cylinderVolume } from '../../../src/core/stack/cylinder-volume.ts';
import { seededRandom } from '../../../src/core/math/random.ts';
import { traceResults } from '../../../src/core/loads/pressure-trace.ts';
import { must } from '../../calculators/must.ts';

const { cycles } = JSON.parse(
  readFileSync('tests/fixtures/cylinder-pressure/cycles.json', 'utf8'),
) as { cycles: readonly { input: PressureInput }[] };

describe('a sampled cycle', () => {
  it('gives back peak and mean pressures of the model it was sampled from', () => {
    for (const { input } of cycles.slice(0, 10)) {
      const cycle = pressureCycle(input);
      const energy = cycleEnergy(input, cycle.model);
      const { volume } = cycle.model;
      const read = traceResults(cycle, volume);
      expect(Math.abs(read.netMep / (energy.net / volume.swept) - 1)).toBeLessThan(2e-4);
      expect(Math.abs(read.grossMep / (energy.gross / volume.swept) - 1)).toBeLessThan(2e-4);
      expect(Math.abs(read.peak.pressure / cycle.peak.pressure - 1)).toBeLessThan(2e-3);
      expect(Math.abs(read.peak.angle - cycle.peak.angle)).toBeLessThan(0.01);
    }
  });

  it('does no work at constant pressure, and as much as a rectangle does', () => {
    const volume = cylinderVolume({
      bore: 0.09,
      stroke: 0.08,
      rodLength: 0.14,
      compressionRatio: 10,
    });
    const angle = Float64Array.from(
      { length: 1441 },
      (_, i) => -Math.PI + (4 * Math.PI * i) / 1440,
    );
    const flat = traceResults({ angle, pressure: angle.map(() => 3e5) }, volume);
    expect(Math.abs(flat.netMep)).toBeLessThan(1e-6);
    // 5 bar down, 1 bar up in the first turn: 4 bar of gross, and nothing in the second.
    const box = traceResults(
      { angle, pressure: angle.map((θ) => (θ > 0 && θ < Math.PI ? 5e5 : 1e5)) },
      volume,
    );
    expect(box.grossMep).toBeCloseTo(4e5, -2);
    expect(box.netMep).toBeCloseTo(box.grossMep, 6);
  });

  it('finds the top of a parabola exactly, and takes the highest point where too few are near', () => {
    const volume = cylinderVolume({
      bore: 0.09,
      stroke: 0.08,
      rodLength: 0.14,
      compressionRatio: 10,
    });
    const degree = Math.PI / 180;
    const top = 14.3 * degree;
    const sampled = (step: number) => {
      const angle = Float64Array.from(
        { length: 720 / step + 1 },
        (_, i) => (step * i - 180) * degree,
      );
      const pressure = angle.map((θ) => Math.max(1e5, 5e6 - 1e8 * (θ - top) ** 2));
      return traceResults({ angle, pressure }, volume).peak;
    };
    // Nine points and five within two degrees of the highest; then three, of which the one at 15° is the highest.
    for (const step of [0.5, 1]) {
      expect(sampled(step).angle).toBeCloseTo(top, 9);
      expect(sampled(step).pressure).toBeCloseTo(5e6, 3);
    }
    expect(sampled(1.5).angle).toBeCloseTo(15 * degree, 12);
    expect(sampled(1.5).pressure).toBeCloseTo(5e6 - 1e8 * (0.7 * degree) ** 2, 6);
  });

  it('takes the highest point where none around it bends down, and the first of a level cycle', () => {
    const volume = cylinderVolume({
      bore: 0.09,
      stroke: 0.08,
      rodLength: 0.14,
      compressionRatio: 10,
    });
    const angle = Float64Array.from({ length: 721 }, (_, i) => ((i - 180) * Math.PI) / 180);
    // A lone spike between shoulders as high: the parabola through all five would be a trough.
    const around = [39, 10, 40, 10, 39];
    const spike = angle.map((_, i) => 1e5 * (around[i - 178] ?? 1));
    const { peak } = traceResults({ angle, pressure: spike }, volume);
    expect(peak).toEqual({ angle: 0, pressure: 40e5 });
    const level = traceResults({ angle, pressure: angle.map(() => 3e5) }, volume);
    expect(level.peak).toEqual({ angle: -Math.PI, pressure: 3e5 });
  });

  it('adds up four strokes by hand', () => {
    const volume = cylinderVolume({
      bore: 0.09,
      stroke: 0.08,
      rodLength: 0.14,
      compressionRatio: 10,
    });
    const angle = [-Math.PI, 0, Math.PI, 2 * Math.PI, 3 * Math.PI];
    const { grossMep, netMep } = traceResults(
      { angle, pressure: [1e5, 7e5, 5e5, 3e5, 2e5] },
      volume,
    );
    // (7 + 5)/2 down less (1 + 7)/2 up; then (3 + 2)/2 down less (5 + 3)/2 up.
    expect(grossMep).toBeCloseTo(2e5, 6);
    expect(netMep).toBeCloseTo(0.5e5, 6);
  });

  it('does not take the highest point of noise for the peak', () => {
    const cycle = pressureCycle(must(cycles[1]).input);
    const random = seededRandom(11);
    const noisy = cycle.pressure.map((p) => p + 1.5e5 * (random() - 0.5));
    const read = traceResults({ angle: cycle.angle, pressure: noisy }, cycle.model.volume);
    const fitted = Math.abs(read.peak.pressure - cycle.peak.pressure);
    expect(fitted).toBeLessThan(Math.max(...noisy) - cycle.peak.pressure);
    expect(fitted).toBeLessThan(0.5e5);
  });
});
