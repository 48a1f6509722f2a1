import { above, atLeast } from '../refuse.ts';

/** Speed [m/s] of a journal's surface: π·d·n = ω·d/2, the shaft turning at ω [rad/s]. */
export function surfaceSpeed(diameter: number, speed: number): number {
  return (diameter / 2) * speed;
}

/**
 * Projected area [m²] of a rod bearing, diameter times the shell's width, and the mean pressure [Pa] that a
 * load [N] makes on it. The real film pressure is many times greater in one spot and nothing in another.
 * Throws OutOfDomain for a length not above 0 or a load below 0.
 */
export function journalLoad(journal: {
  readonly crankpinDiameter: number;
  readonly rodShellWidth: number;
  readonly bearingLoad: number;
}): { readonly projectedArea: number; readonly unitLoad: number } {
  const projectedArea = above(journal, 'crankpinDiameter') * above(journal, 'rodShellWidth');
  return { projectedArea, unitLoad: atLeast(journal, 'bearingLoad') / projectedArea };
}

/**
 * Viscous drag of one journal over another's at the same shaft speed, oil, width and clearance: (d/d₀)³.
 * Shear stress goes with the surface speed, which brings one d; the skin and the arm bring the other two
 * (Petroff). With a clearance that grows with the diameter it would be the square. A plain ratio, of torque
 * and of power alike; both diameters [m] above 0.
 */
export function dragRatio(diameter: number, reference: number): number {
  const d = above({ crankpinDiameter: diameter }, 'crankpinDiameter');
  return (d / above({ crankpinDiameter: reference }, 'crankpinDiameter')) ** 3;
}
