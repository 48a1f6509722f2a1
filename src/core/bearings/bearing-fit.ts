import { above, atLeast, atMost, below, finite } from '../refuse.ts';

/** Poisson's ratio of the shell's steel back. Half as much or half as much again changes no result by 2 %. */
export const shellPoisson = 0.3;

/** A pair of half shells held in a big end by their crush. Lengths in m, moduli in Pa. */
export interface ShellFit {
  /** Bore of the housing without shells, bolts tightened. */
  readonly rodHousing: number;
  /** Outside diameter of a ring that yields like the big end. */
  readonly housingOutside: number;
  readonly youngsModulus: number;
  readonly housingPoisson: number;
  readonly rodShellWall: number;
  readonly shellModulus: number;
  /** What one half shell is longer than half the housing's bore, measured round the outside. */
  readonly crushHeight: number;
}

/** The same with what warms up: expansions in 1/K, the temperature [K] at which everything was measured. */
export interface WarmFit extends ShellFit {
  readonly rodExpansion: number;
  readonly shellExpansion: number;
  readonly assemblyTemperature: number;
}

/**
 * How a ring gives way: relative change of a diameter for each Pa [1/Pa]. `housing` at its bore, outward;
 * `shell` at its outside, inward; `shellBore` at its bore, inward.
 */
export interface Compliance {
  readonly housing: number;
  readonly shell: number;
  readonly shellBore: number;
}

/** How much greater the shells' free diameter is than the bore they go into [m]: both halves' excess over π. */
export function interference(shells: { readonly crushHeight: number }): number {
  return (2 * atLeast(shells, 'crushHeight')) / Math.PI;
}

/**
 * The give of housing and shell as two closed rings under pressure between them (Lamé's thick cylinder,
 * plane stress). Throws OutOfDomain for a housing without metal, a wall that is not greater than 0 or is
 * more than half the bore, a modulus not above 0, and a Poisson's ratio outside 0 to 0.5.
 */
export function compliance(fit: ShellFit): Compliance {
  const D = above(fit, 'rodHousing');
  const outside = above(fit, 'housingOutside', D, 'the bore of the housing');
  above(fit, 'rodShellWall');
  const wall = atMost(fit, 'rodShellWall', D / 2, 'half the bore of the housing');
  const d = D - 2 * wall;
  const E = above(fit, 'youngsModulus');
  atLeast(fit, 'housingPoisson');
  const ν = below(fit, 'housingPoisson', 0.5);
  const shellE = above(fit, 'shellModulus');
  const across = (D + d) * (D - d);
  return {
    housing: ((outside ** 2 + D ** 2) / (outside ** 2 - D ** 2) + ν) / E,
    shell: ((D ** 2 + d ** 2) / across - shellPoisson) / shellE,
    shellBore: (2 * D ** 2) / across / shellE,
  };
}

/** What the temperature of housing and shell [K] leaves of the interference [m]; negative is a gap. */
export function interferenceAt(
  fit: WarmFit,
  housingTemperature: number,
  shellTemperature = housingTemperature,
): number {
  const start = finite(fit, 'assemblyTemperature');
  const shell = finite(fit, 'shellExpansion') * (shellTemperature - start);
  const housing = finite(fit, 'rodExpansion') * (housingTemperature - start);
  return interference(fit) + above(fit, 'rodHousing') * (shell - housing);
}

/** Pressure [Pa] between shell and housing for an interference [m] on the diameter; 0 for a gap. */
export function shellPressure(fit: ShellFit, onDiameter: number): number {
  const { housing, shell } = compliance(fit);
  return Math.max(0, onDiameter) / (fit.rodHousing * (housing + shell));
}

/** Hoop stresses [Pa] under a pressure [Pa] between shell and housing; tension is positive. */
export interface HoopStress {
  /** Mean over the shell's wall: −p·D/(2t), by balance alone. */
  readonly shell: number;
  readonly shellBore: number;
  readonly shellContact: number;
  readonly housingBore: number;
  readonly housingOutside: number;
}

/** Lamé's hoop stresses of both rings. Throws as {@link compliance}. */
export function hoopStress(fit: ShellFit, pressure: number): HoopStress {
  compliance(fit);
  const [D, outside] = [fit.rodHousing, fit.housingOutside];
  const d = D - 2 * fit.rodShellWall;
  const p = pressure;
  const ring = (D + d) * (D - d);
  const eye = (outside + D) * (outside - D);
  return {
    shell: (-p * D) / (2 * fit.rodShellWall),
    shellBore: (-2 * p * D ** 2) / ring,
    shellContact: (-p * (D ** 2 + d ** 2)) / ring,
    housingBore: (p * (outside ** 2 + D ** 2)) / eye,
    housingOutside: (2 * p * D ** 2) / eye,
  };
}

/**
 * How far the crush opens the bore between the shells beyond housing less two walls [m]: the free shells are
 * larger by the interference and are squeezed back by part of it.
 */
export function crushOpening(fit: ShellFit): number {
  const onDiameter = interference(fit);
  const d = fit.rodHousing - 2 * fit.rodShellWall;
  return onDiameter - d * compliance(fit).shellBore * shellPressure(fit, onDiameter);
}

/**
 * The temperature [K] of rod and shells together at which the shells go loose; undefined where the housing
 * does not grow faster than the shells.
 */
export function looseTemperature(fit: WarmFit): number | undefined {
  const faster = finite(fit, 'rodExpansion') - fit.shellExpansion;
  if (!(faster > 0)) return undefined;
  return fit.assemblyTemperature + interference(fit) / (above(fit, 'rodHousing') * faster);
}

/** The least crush height [m] that still touches at a rod temperature [K]; 0 where heat does not loosen. */
export function touchingCrush(fit: WarmFit, rodTemperature: number): number {
  const warm = interferenceAt(fit, rodTemperature);
  return Math.max(0, fit.crushHeight - (Math.PI / 2) * warm);
}

/**
 * The load [N] under which the length of a half shell is compared with its checking block: 6000·b·s/D with
 * the width b, wall s and housing D in mm (M. J. Neale, Tribology Handbook, sheet A12). The factor is
 * 6000 N/mm, which is 6·10⁶ N/m.
 */
export function checkingLoad(fit: {
  readonly rodHousing: number;
  readonly rodShellWall: number;
  readonly rodShellWidth: number;
}): number {
  const b = above(fit, 'rodShellWidth');
  const s = above(fit, 'rodShellWall');
  return (6e6 * b * s) / above(fit, 'rodHousing');
}
