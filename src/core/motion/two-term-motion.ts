import { linkage } from './slider-crank.ts';
import { atLeast, finite } from '../refuse.ts';

/** What the textbooks' short series says. Signs and zeros as in `pistonMotion`. */
export interface TwoTermMotion {
  /** [m] below top dead centre. */
  readonly displacement: number;
  /** [m/s], positive downward. */
  readonly speed: number;
  /** [m/s²], positive towards the crank. */
  readonly acceleration: number;
}

/** Length and rod of a linkage without offset [m]: the short series knows no offset. */
export interface PlainSliderCrank {
  readonly stroke: number;
  readonly rodLength: number;
}

/**
 * Piston motion by the first two harmonics, with λ = r/L: x = r (1 − cos θ + λ/4 (1 − cos 2θ)),
 * v = rω (sin θ + λ/2 sin 2θ), a = rω² (cos θ + λ cos 2θ) + αr (sin θ + λ/2 sin 2θ).
 *
 * The rod's root is expanded to first order in λ, so every quantity errs by the order of λ³; acceleration
 * at the dead centres is exact all the same. Units, angle from TDC and refusals as in `pistonMotion`.
 * Source: Khurmi and Gupta, Theory of Machines (2009), ch. 15.
 */
export function twoTermMotion(
  geometry: PlainSliderCrank,
  crankAngle: number,
  crankSpeed: number,
  crankAcceleration = 0,
): TwoTermMotion {
  const { r, throwRatio: λ } = linkage({ stroke: geometry.stroke, rodLength: geometry.rodLength });
  const theta = finite({ crankAngle }, 'crankAngle');
  const omega = atLeast({ maxSpeed: crankSpeed }, 'maxSpeed');
  const alpha = finite({ crankAcceleration }, 'crankAcceleration');
  const half = Math.sin(theta / 2);
  const sin = Math.sin(theta);
  const slope = sin + (λ / 2) * Math.sin(2 * theta);
  return {
    displacement: r * (2 * half * half + (λ / 2) * sin * sin),
    speed: r * omega * slope,
    acceleration:
      r * omega * omega * (Math.cos(theta) + λ * Math.cos(2 * theta)) + alpha * r * slope,
  };
}

/**
 * Extremes of the short series at constant speed. `angle` [rad after TDC] is where its acceleration is
 * zero and its speed greatest, cos θ + λ cos 2θ = 0; `peakSpeed` [m/s]; `greatestUpward` [m/s², negative]
 * is −rω² (1 − λ) at BDC for λ up to a quarter, −rω² (λ + 1/(8λ)) beside it above.
 * Throws OutOfDomain as {@link twoTermMotion} does.
 */
export function twoTermPeaks(
  geometry: PlainSliderCrank,
  crankSpeed: number,
): { angle: number; peakSpeed: number; greatestUpward: number } {
  const { r, throwRatio: λ } = linkage({ stroke: geometry.stroke, rodLength: geometry.rodLength });
  const angle = Math.acos((2 * λ) / (1 + Math.sqrt(1 + 8 * λ * λ)));
  const trough = λ <= 0.25 ? 1 - λ : λ + 1 / (8 * λ);
  return {
    angle,
    peakSpeed: twoTermMotion(geometry, angle, crankSpeed).speed,
    greatestUpward: -r * crankSpeed * crankSpeed * trough,
  };
}
