import { describe, expect, it } from 'vitest';
import { at } from '../../../src/core/math/at.ts';
import { pistonMotion } from '../../../src/core/motion/piston-motion.ts';
import { angleAt, ringDrive } from '../../../src/core/rings/ring-drive.ts';
import { startState } from '../../../src/core/rings/ring-state.ts';
import { ringStepper } from '../../../src/core/rings/ring-step.ts';
import { hill, packOf } from './hill.ts';

/** One pressure everywhere, so that no gas moves the ring, and no drag of the bore: it flies as it was thrown. */
const pressure = 1e5;
const engine = { ...hill, crankcasePressure: pressure };
const drive = ringDrive(engine, new Float64Array(5761).fill(pressure));
const pack = { ...packOf(), friction: 0 };
const { clearance } = pack;
const stepper = ringStepper(pack, drive, 'free');
/** Places at which the groove is pulled towards the crank, which throws the ring up, and away from it. */
const [top, bottom] = [1440, 2880];

/** A step of a ring at `lift` [m] that rises at `rise` [m/s], over so many intervals. */
function step(place: number, lift: number, rise: number, length: number) {
  const to = startState(0, 0);
  const calm = stepper.step(startState(pressure, pressure, lift, rise), place, length, to);
  return { ...to, calm, seconds: length * drive.interval };
}

describe('a ring between its flanks', () => {
  it('flies as the groove leaves it: x + ẋt + at²/2, at the speed ẋ + at', () => {
    const [lift, rise] = [0.4 * clearance, 0.05];
    const { acceleration } = pistonMotion(engine, angleAt(drive, top), hill.maxSpeed);
    const { lift: to, rise: speed, calm, seconds } = step(top, lift, rise, 0.125);
    expect(calm).toBe(true);
    // Second order in a step of a few microseconds; the piston's own acceleration changes little in it.
    const gained = acceleration * seconds;
    expect(Math.abs(to - lift - (rise + gained / 2) * seconds)).toBeLessThan(0.001 * (to - lift));
    expect(Math.abs(speed - rise - gained)).toBeLessThan(0.1 * Math.abs(gained));
    expect(to).toBeGreaterThan(lift);
  });

  it.each([
    ['the lower', bottom, -50, 0],
    ['the upper', top, 50, 1],
    // These land in the second half of the step.
    ['the lower', bottom, -0.7, 0],
    ['the upper', top, 0.7, 1],
  ])('is stopped dead by %s flank, place %d, at %d m/s', (_flank, place, rise, share) => {
    const { lift, rise: speed, calm } = step(place, 0.5 * clearance, rise, 8);
    expect(lift).toBe(share * clearance);
    expect(speed).toBe(0);
    expect(calm).toBe(false);
  });

  it.each([
    ['the lower', bottom, 0],
    ['the upper', top, 1],
  ])('rests on %s flank while it is pressed to it', (_flank, place, share) => {
    const { lift, rise, calm } = step(place, share * clearance, 0, 8);
    expect({ lift, rise, calm }).toEqual({ lift: share * clearance, rise: 0, calm: true });
  });

  it.each([
    ['the lower', top, 0, 1],
    ['the upper', bottom, 1, -1],
  ])('is thrown off %s flank where the groove is pulled away', (_flank, place, share, way) => {
    const { lift, rise } = step(place, share * clearance, 0, 1);
    expect(lift).toBeGreaterThan(0);
    expect(lift).toBeLessThan(clearance);
    expect(Math.sign(rise)).toBe(way);
  });

  it('is not calm where it leaves its flank at a moment that only half a step meets', () => {
    // The groove is still pulled away at the middle of the step, and no more at its end.
    const turned = drive.acceleration.findIndex((each, i) => i > top && each < 0);
    const half = 4;
    const place = turned - half - 2;
    const [middle, end] = [at(drive.acceleration, place + half), at(drive.acceleration, place + 8)];
    expect(Math.sign(middle)).toBe(1);
    expect(Math.sign(end)).toBe(-1);
    const { lift, rise, calm, seconds } = step(place, 0, 0, 8);
    expect(calm).toBe(false);
    // It flies on from the middle at the speed it has there; the two halves stand as they are.
    const each = seconds / 2;
    expect(Math.abs(lift - (2 * middle + end) * each * each)).toBeLessThan(1e-6 * clearance);
    expect(Math.abs(rise / (each * (middle + end)) - 1)).toBeLessThan(1e-4);
  });

  it('leaves again as the half step has it, where it had come down in the half before', () => {
    // In a whole step it would pass the flank unseen: down from a tenth of what its groove gives way, and up again.
    const way = at(drive.acceleration, top + 8) * (8 * drive.interval) ** 2;
    const { lift, rise, calm, seconds } = step(
      top,
      0.1 * way,
      (-0.9 * way) / (8 * drive.interval),
      8,
    );
    expect(calm).toBe(false);
    expect(Math.abs(lift - way / 4)).toBeLessThan(1e-6 * clearance);
    expect(Math.abs(rise / ((2 * lift) / seconds) - 1)).toBeLessThan(1e-4);
  });
});

describe('gas through wide paths', () => {
  /** Pressures after one step from `behind` and `land`, with nothing open but huge ports and a huge second gap. */
  function after(cylinder: number, crankcase: number, behind: number, land: number) {
    const still = ringDrive(
      { ...hill, crankcasePressure: crankcase },
      new Float64Array(5761).fill(cylinder),
    );
    const wide = { ...pack, gapDoor: 0, gapArea: 0, portArea: 1e-2, exitArea: 1e-2 };
    const to = startState(0, 0);
    ringStepper(wide, still, 'shut').step(startState(behind, land), top, 32, to);
    return to;
  }
  const [low, high] = [1e5, 20e5];

  it.each([
    ['fills the space behind the ring', high, low, low, low],
    ['leaves the space behind the ring', low, high, high, high],
    ['fills the land', low, high, low, low],
    ['leaves the land', high, low, high, high],
  ])('that %s comes to the pressure on the other side and not beyond it', (_what, ...pressures) => {
    const [cylinder, crankcase] = pressures;
    const { behind, land } = after(...pressures);
    // Four degrees are long beside what these paths need; what is left over is the step’s, and rounding.
    expect(Math.abs(behind / cylinder - 1)).toBeLessThan(0.02);
    expect(Math.abs(land / crankcase - 1)).toBeLessThan(0.02);
    for (const pressure of [behind, land]) {
      expect(pressure).toBeGreaterThanOrEqual(low * (1 - 1e-12));
      expect(pressure).toBeLessThanOrEqual(high * (1 + 1e-12));
    }
  });
});
