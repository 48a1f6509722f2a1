import { describe, expect, it } from 'vitest';
import {
  equivalentInertia,
  inertiaTorque,
  reciprocatingShare,
  torqueOfTurn,
} from '../../../src/core/inertia/inertia-torque.ts';

const parts = { mass: 0.75, stroke: 0.08, rodLength: 0.15 };
const speed = 700;
const degree = Math.PI / 180;

describe('closed forms', () => {
  // Rao, Mechanical Vibrations, and any book on engines give the series of a rod that is long: from memory.
  it('a very long rod: −½ m r² ω² sin 2θ', () => {
    const long = { ...parts, rodLength: 1e7 };
    for (const angle of [20, 75, 110, 200, 300])
      expect(inertiaTorque(long, angle * degree, speed)).toBeCloseTo(
        -0.5 * parts.mass * 0.04 ** 2 * speed ** 2 * Math.sin(2 * angle * degree),
        4,
      );
    expect(torqueOfTurn(long, speed).amplitude).toBeCloseTo(
      0.5 * parts.mass * 0.04 ** 2 * speed ** 2,
      4,
    );
    expect(reciprocatingShare(long)).toBeCloseTo(0.5, 9);
  });

  it('the first quarter of a turn takes from the crank', () => {
    expect(inertiaTorque(parts, 45 * degree, speed)).toBeLessThan(0);
    expect(torqueOfTurn(parts, speed).torques[15]).toBeLessThan(0);
  });
});

describe('second route: from the energy, −½ ω² dI/dθ', () => {
  const turn = torqueOfTurn(parts, speed);

  it('at each angle of the turn, both ends of it included', () => {
    const step = 1e-5;
    expect(turn.angles[0]).toBe(0);
    expect(turn.angles.at(-1)).toBeCloseTo(2 * Math.PI, 12);
    expect(turn.angles).toHaveLength(121);
    turn.angles.forEach((angle, i) => {
      const slope =
        (equivalentInertia(parts, angle + step) - equivalentInertia(parts, angle - step)) /
        (2 * step);
      // The central difference errs by some 1e-9 of the greatest torque.
      expect(turn.torques[i]).toBeCloseTo(-0.5 * speed ** 2 * slope, 3);
      expect(inertiaTorque(parts, angle, speed)).toBeCloseTo(turn.torques[i] ?? NaN, 9);
    });
  });

  it('nothing is left over a turn, and the size is that of many more samples', () => {
    expect(turn.mean).toBeCloseTo(0, 9);
    const many = 3600;
    let squares = 0;
    let sum = 0;
    for (let i = 0; i < many; i++) {
      const torque = inertiaTorque(parts, (2 * Math.PI * i) / many, speed);
      squares += torque ** 2;
      sum += Math.abs(torque);
    }
    expect(turn.amplitude).toBeCloseTo(Math.sqrt((2 * squares) / many), 8);
    expect(sum / many).toBeGreaterThan(100);
  });

  it('the share is the mean of (v/rω)² of many more samples', () => {
    const many = 3600;
    let sum = 0;
    for (let i = 0; i < many; i++) sum += equivalentInertia(parts, (2 * Math.PI * i) / many);
    expect(reciprocatingShare(parts)).toBeCloseTo(sum / many / (parts.mass * 0.04 ** 2), 12);
  });
});
