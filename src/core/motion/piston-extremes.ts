import { at } from '../math/at.ts';
import { fourier } from '../math/fourier.ts';
import { bracketedRoot, rootsBetween } from '../math/roots.ts';
import { deadCentres } from './piston-motion.ts';
import { atLeast, finite } from '../refuse.ts';
import { bendSlope, descent, linkage, postureAt } from './slider-crank.ts';
import type { Linkage, SliderCrank } from './slider-crank.ts';

const fullTurn = 2 * Math.PI;

/** A greatest value and the crank angle [rad from true TDC] where it stands. */
export interface Peak {
  readonly value: number;
  readonly angle: number;
}

/** The extremes of one turn at constant speed. Speeds [m/s] and accelerations [m/s²] positive downward. */
export interface MotionPeaks {
  /** Greatest speed of the downstroke. */
  readonly down: Peak;
  /** Greatest speed of the upstroke; negative. */
  readonly up: Peak;
  /** Greatest acceleration towards the crank; its angle lies between −π and π, near or at TDC. */
  readonly greatestDownward: Peak;
  /**
   * Greatest acceleration away from the crank; negative. Its angle lies between 0 and 2π. Where both sides
   * of BDC come within a thousandth of each other, the earlier angle is named.
   */
  readonly greatestUpward: Peak;
}

/** Every local extreme of acceleration ÷ rω² in one turn, from a little below −π/2 on. */
function accelerationExtremes(link: Linkage): Peak[] {
  const cells = 48;
  // The mesh is shifted so that no sample stands at a dead centre, an extreme by symmetry.
  const start = -Math.PI / 2 - fullTurn / cells / 3;
  const slope = (theta: number): number => bendSlope(link, postureAt(link, theta));
  return rootsBetween(slope, start, start + fullTurn, cells).roots.map((root) => {
    const centre = Math.round(root / Math.PI) * Math.PI;
    const angle = link.e === 0 && Math.abs(root - centre) < 1e-9 ? centre : root;
    return { angle, value: postureAt(link, angle).bend };
  });
}

/**
 * The extremes of piston speed and acceleration over one turn at constant speed.
 *
 * `geometry` in m, `crankSpeed` [rad/s], zero or more; at zero speed the values are zero and the angles
 * those of the geometry. Peak speed is where the exact acceleration crosses zero; the extremes of
 * acceleration are zeros of its derivative, so that a small change of an input moves the angles smoothly.
 * The greatest upward acceleration stands at BDC only while λ = r/L is at most 0.2638 (no offset);
 * above that it stands on both sides of it.
 * Throws OutOfDomain as `pistonMotion` does.
 */
export function motionPeaks(geometry: SliderCrank, crankSpeed: number): MotionPeaks {
  const link = linkage(geometry);
  const { bottomAngle } = deadCentres(geometry);
  const omega = atLeast({ maxSpeed: crankSpeed }, 'maxSpeed');
  const unitSpeed = link.r * omega;
  const unitAcceleration = unitSpeed * omega;
  const bend = (theta: number): number => postureAt(link, theta).bend;
  const fastest = (low: number, high: number): Peak => {
    const angle = bracketedRoot(bend, low, high);
    return { angle, value: unitSpeed * postureAt(link, angle).slope };
  };

  const all = accelerationExtremes(link);
  const top = all.reduce((best, peak) => (peak.value > best.value ? peak : best));
  const lowest = Math.min(...all.map(({ value }) => value));
  const bottomAngles = all
    .filter(({ value }) => value <= lowest * (1 - 1e-3))
    .map(({ angle }) => (angle < 0 ? angle + fullTurn : angle));
  return {
    down: fastest(0, bottomAngle),
    up: fastest(bottomAngle, fullTurn),
    greatestDownward: { angle: top.angle, value: unitAcceleration * top.value },
    greatestUpward: { angle: Math.min(...bottomAngles), value: unitAcceleration * lowest },
  };
}

/**
 * Crank angle [rad after true TDC] at which the piston has done half of its travel on the way down.
 * Less than a quarter turn wherever the rod is short enough to matter. Throws OutOfDomain for a bad linkage.
 */
export function halfStrokeAngle(geometry: SliderCrank): number {
  const link = linkage(geometry);
  const { bottomAngle, travel } = deadCentres(geometry);
  const half = travel / (2 * link.r);
  return bracketedRoot((theta) => descent(link, postureAt(link, theta)) - half, 0, bottomAngle);
}

/**
 * Crank angle [rad after true TDC] on the downstroke at which the piston's acceleration is zero, with the
 * crank gaining `crankAcceleration` [rad/s²] at the speed `crankSpeed` [rad/s]. At constant speed this is
 * the angle of greatest speed. With both at zero the answer is that of constant speed; as the gain comes to
 * outweigh the speed the place nears a dead centre, BDC for a crank that gains, and is there at speed zero.
 * Throws OutOfDomain for a bad linkage or speed.
 */
export function zeroAccelerationAngle(
  geometry: SliderCrank,
  crankSpeed: number,
  crankAcceleration = 0,
): number {
  const link = linkage(geometry);
  const { bottomAngle } = deadCentres(geometry);
  const omega = atLeast({ maxSpeed: crankSpeed }, 'maxSpeed');
  const alpha = finite({ crankAcceleration }, 'crankAcceleration');
  const square = omega * omega === 0 && alpha === 0 ? 1 : omega * omega;
  if (square === 0) return alpha > 0 ? bottomAngle : 0;
  return bracketedRoot(
    (theta) => {
      const { bend, slope } = postureAt(link, theta);
      // At a dead centre the slope is zero; what rounding leaves of it may outweigh a very low speed.
      const gain = theta === 0 || theta === bottomAngle ? 0 : alpha * slope;
      return square * bend + gain;
    },
    0,
    bottomAngle,
  );
}

/**
 * Amplitude of each of the `orders` in the piston's acceleration at constant speed, ÷ rω², without sign:
 * √(cosine² + sine²) of the exact motion. Without offset only order 1 (exactly 1) and even orders exist,
 * all cosines: +, then −, + … from order 2 on. An offset adds odd orders and sine terms.
 *
 * Source of the convention: Taylor, The Internal-Combustion Engine in Theory and Practice, vol. 2, ch. 8.
 * From 128 samples a turn: exact to rounding for every rod longer than 1.1 throws.
 * Throws OutOfDomain for a bad linkage, RangeError for an order that 128 samples cannot tell.
 */
export function harmonics(
  geometry: SliderCrank,
  orders: readonly number[],
): readonly { readonly cosine: number; readonly sine: number; readonly amplitude: number }[] {
  const link = linkage(geometry);
  const { cosine, sine } = fourier((theta) => postureAt(link, theta).bend, orders, 128);
  return cosine.map((c, i) => {
    const s = at(sine, i);
    return { cosine: c, sine: s, amplitude: Math.hypot(c, s) };
  });
}
