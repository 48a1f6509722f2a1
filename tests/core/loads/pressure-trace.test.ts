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
