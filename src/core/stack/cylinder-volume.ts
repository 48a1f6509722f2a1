import { above } from '../refuse.ts';

/** What sets the volume over one piston. Lengths in m; the ratio is the geometric one. */
export interface CylinderGeometry {
  readonly bore: number;
  readonly stroke: number;
  readonly rodLength: number;
  readonly compressionRatio: number;
}

/** Volumes [m³] of one cylinder, and its volume as a function of the crank angle. */
export interface CylinderVolume {
  readonly swept: number;
  readonly clearance: number;
  /** Volume [m³] at the crank angle [rad] from TDC; any turn. */
  at(angle: number): number;
  /** dV/dθ [m³/rad]; positive while the piston goes down. */
  slope(angle: number): number;
}

/**
 * Volume over the piston: V = V_c + A·r[(1 − cos θ) + λ sin²θ/(1 + √(1 − λ² sin²θ))], λ = r/L, which is the
 * exact motion of a crank and rod with no offset, written so that nothing nearly equal is subtracted.
 *
 * Neglected: an offset of pin or bore. With 0.8 mm in the example engine it moves the volume by at most
 * 0.1 % of the swept volume.
 *
 * Throws OutOfDomain unless bore and stroke > 0, rodLength > stroke/2, compressionRatio > 1.
 */
export function cylinderVolume(geometry: CylinderGeometry): CylinderVolume {
  const bore = above(geometry, 'bore');
  const stroke = above(geometry, 'stroke');
  above(geometry, 'rodLength', stroke / 2, 'half the stroke');
  above(geometry, 'compressionRatio', 1);
  const r = stroke / 2;
  const λ = r / geometry.rodLength;
  const perThrow = (Math.PI / 4) * bore * bore * r;
  const swept = 2 * perThrow;
  const clearance = swept / (geometry.compressionRatio - 1);
  return {
    swept,
    clearance,
    at(angle) {
      const half = Math.sin(angle / 2);
      const sine = λ * Math.sin(angle);
      const rod = (sine * Math.sin(angle)) / (1 + Math.sqrt(1 - sine * sine));
      return clearance + perThrow * (2 * half * half + rod);
    },
    slope(angle) {
      const sin = Math.sin(angle);
      const sine = λ * sin;
      return perThrow * sin * (1 + (λ * Math.cos(angle)) / Math.sqrt(1 - sine * sine));
    },
  };
}
