import {
  compliance,
  crushOpening,
  interference,
  interferenceAt,
  shellPressure,
  type ShellFit,
  type WarmFit,
} from './bearing-fit.ts';
import { above, below, finite } from '../refuse.ts';

/** A shell fit with its journal. Diameter in m, expansion in 1/K. */
export interface RunningFit extends WarmFit {
  readonly crankpinDiameter: number;
  readonly crankExpansion: number;
}

/** Temperatures [K] of one state of the engine. The shells count as warm as the rod. */
export interface Temperatures {
  readonly rod: number;
  readonly journal: number;
}

/** One state of the bearing. */
export interface BearingState {
  /** Diametral, between journal and shells [m]; below zero the journal would not turn. */
  readonly clearance: number;
  /** Between shells and housing [Pa]. */
  readonly pressure: number;
  /** Behind loose shells, on the diameter [m]; 0 while they press. */
  readonly gap: number;
  /** The clearance if housing, shells and journal each grew freely [m]: the sum that forgets the crush. */
  readonly free: number;
}

/**
 * Housing less two walls less journal [m]: what the parts measured one by one give for the direction in line
 * with the rod. Throws OutOfDomain for a journal that does not go into the housing, and for a wall that is
 * not above 0 or does not leave room for it.
 */
export function computedClearance(fit: {
  readonly rodHousing: number;
  readonly rodShellWall: number;
  readonly crankpinDiameter: number;
}): number {
  const D = above(fit, 'rodHousing');
  above(fit, 'crankpinDiameter');
  const journal = below(fit, 'crankpinDiameter', D, 'the bore of the housing');
  above(fit, 'rodShellWall');
  const gap = (D - journal) / 2;
  const wall = below(fit, 'rodShellWall', gap, 'half the gap between housing and journal');
  return D - 2 * wall - journal;
}

/**
 * The clearance in the shop that the parts predict for a gauge [m]: housing less two walls less journal, and
 * what the crush opens the bore by. Throws OutOfDomain as {@link computedClearance} and {@link compliance} do.
 */
export function predictedClearance(fit: ShellFit & { readonly crankpinDiameter: number }): number {
  return computedClearance(fit) + crushOpening(fit);
}

/**
 * Clearance and shell pressure in another state, from the clearance [m] in the shop. The shells' bore is
 * followed through its own growth and through the squeeze on it: while the crush presses, the bore goes with
 * the housing; once it is used up, with the shells alone, and a gap opens behind them.
 *
 * First order in the strains (a thousandth of each change). Neglected: the cap's joint, uneven temperature,
 * the load, and the give of shells that bend when loose. Throws OutOfDomain as {@link compliance} and
 * {@link interferenceAt} do, and for a journal not above 0 or a number that is not finite.
 */
export function bearingState(
  fit: RunningFit,
  shopClearance: number,
  at: Temperatures,
): BearingState {
  const start = fit.assemblyTemperature;
  const warm = finite({ rodTemperature: at.rod }, 'rodTemperature') - start;
  const journal = finite(fit, 'crankExpansion');
  const journalGrowth =
    above(fit, 'crankpinDiameter') *
    journal *
    (finite({ crankpinTemperature: at.journal }, 'crankpinTemperature') - start);
  const { shellBore } = compliance(fit);
  const d = fit.rodHousing - 2 * fit.rodShellWall;
  const left = interferenceAt(fit, at.rod);
  const pressure = shellPressure(fit, left);
  const released = shellPressure(fit, interference(fit)) - pressure;
  return {
    clearance:
      finite({ rodClearance: shopClearance }, 'rodClearance') +
      d * (fit.shellExpansion * warm + shellBore * released) -
      journalGrowth,
    pressure,
    gap: Math.max(0, -left),
    free:
      shopClearance +
      fit.rodHousing * fit.rodExpansion * warm -
      2 * fit.rodShellWall * fit.shellExpansion * warm -
      journalGrowth,
  };
}

/**
 * The journal's temperature [K] while the rod warms from the shop to running: it runs ahead in proportion,
 * and is the rod's own below the shop's temperature.
 */
export function journalTemperature(rod: number, shop: number, running: Temperatures): number {
  if (rod <= shop || running.rod <= shop) return rod;
  return rod + ((running.journal - running.rod) * (rod - shop)) / (running.rod - shop);
}
