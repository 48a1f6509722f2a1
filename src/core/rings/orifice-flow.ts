import { above, atLeast, atMost } from '../refuse.ts';

/** A gas that is taken as perfect: R [J/(kg·K)], the ratio of its specific heats, its temperature [K] at rest. */
export interface RestingGas {
  readonly gasConstant: number;
  readonly heatRatio: number;
  readonly gasTemperature: number;
}

/** A hole between two spaces. Area in m², pressures absolute in Pa. */
export interface Orifice {
  readonly orificeArea: number;
  readonly dischargeCoefficient: number;
  readonly upstreamPressure: number;
  readonly downstreamPressure: number;
}

/** The ratio of specific heats is refused where it first counts, in {@link criticalRatio}. */
function checkGas(gas: RestingGas): void {
  above(gas, 'gasConstant');
  above(gas, 'gasTemperature');
}

/**
 * Downstream over upstream pressure below which a hole passes no more: (2/(γ+1))^(γ/(γ−1)).
 * Throws OutOfDomain unless the ratio of specific heats is above one.
 * Source: NACA Report 1135 (1953), isentropic flow; from memory, derived on the page.
 */
export function criticalRatio(heatRatio: number): number {
  above({ heatRatio }, 'heatRatio', 1, 'one');
  return (2 / (heatRatio + 1)) ** (heatRatio / (heatRatio - 1));
}

/**
 * The flow function ψ of a frictionless hole: mass flow = A·p₀/√(RT₀)·ψ. Dimensionless.
 *
 * `ratio` is downstream over upstream pressure, zero to one. Below the critical ratio ψ keeps its greatest
 * value √γ·(2/(γ+1))^((γ+1)/(2(γ−1))). One-dimensional, isentropic up to the throat, perfect gas.
 * Throws OutOfDomain for a ratio outside zero to one.
 * Source: J. B. Heywood, Internal Combustion Engine Fundamentals (1988), appendix C; from memory.
 */
export function flowFunction(ratio: number, heatRatio: number): number {
  // The pressure after the hole, counted in the pressure before it.
  const after = { downstreamPressure: ratio };
  atLeast(after, 'downstreamPressure');
  atMost(after, 'downstreamPressure', 1, 'the upstream pressure');
  const critical = criticalRatio(heatRatio);
  if (ratio <= critical)
    return (
      Math.sqrt(heatRatio) * (2 / (heatRatio + 1)) ** ((heatRatio + 1) / (2 * (heatRatio - 1)))
    );
  const root = ratio ** (1 / heatRatio);
  return root * Math.sqrt(((2 * heatRatio) / (heatRatio - 1)) * Math.max(0, 1 - ratio / root));
}

/** What passes a hole, and the state where the stream is narrowest. */
export interface OrificeFlow {
  /** [kg/s]. */
  readonly massFlow: number;
  readonly choked: boolean;
  readonly throatPressure: number;
  readonly throatTemperature: number;
  /** [kg/m³]. */
  readonly throatDensity: number;
  /** [m/s], before the losses that the discharge coefficient stands for. */
  readonly throatSpeed: number;
  /** Speed at the throat over the speed of sound there; one when choked. */
  readonly throatMach: number;
}

/**
 * Mass flow [kg/s] through a hole and the state at its throat.
 *
 * C_d·A·p₀/√(RT₀)·ψ (see {@link flowFunction}); the gas upstream is at rest. Choked, the throat keeps the
 * critical pressure whatever waits downstream. Neglected: heat from the wall, a real gas's compressibility;
 * friction and contraction only as C_d.
 * Throws OutOfDomain for a negative area, a coefficient outside zero to one, no upstream pressure, or a
 * downstream pressure above it.
 */
export function orificeFlow(orifice: Orifice, gas: RestingGas): OrificeFlow {
  checkGas(gas);
  const { heatRatio: γ, gasConstant: R, gasTemperature: T } = gas;
  const area = atLeast(orifice, 'orificeArea');
  atLeast(orifice, 'dischargeCoefficient');
  const coefficient = atMost(orifice, 'dischargeCoefficient', 1, 'one');
  const p0 = above(orifice, 'upstreamPressure');
  atLeast(orifice, 'downstreamPressure');
  const p = atMost(orifice, 'downstreamPressure', p0, 'the upstream pressure');
  const ratio = Math.max(p / p0, criticalRatio(γ));
  const throatTemperature = T * ratio ** ((γ - 1) / γ);
  const throatSpeed = Math.sqrt(((2 * γ) / (γ - 1)) * R * Math.max(0, T - throatTemperature));
  const throatPressure = p0 * ratio;
  return {
    massFlow: ((coefficient * area * p0) / Math.sqrt(R * T)) * flowFunction(p / p0, γ),
    choked: p / p0 <= criticalRatio(γ),
    throatPressure,
    throatTemperature,
    throatDensity: throatPressure / (R * throatTemperature),
    throatSpeed,
    throatMach: throatSpeed / Math.sqrt(γ * R * throatTemperature),
  };
}

/**
 * The time constant [s] of a vessel of volume V [m³] behind a choked hole: V/(C_d·A·ψ*·√(RT)).
 * In this time a choked hole passes as much gas as fills the vessel to the upstream pressure at the
 * upstream temperature. Throws OutOfDomain for a vessel or a hole of no size.
 */
export function chokedTime(
  vessel: {
    readonly vesselVolume: number;
    readonly orificeArea: number;
    readonly dischargeCoefficient: number;
  },
  gas: RestingGas,
): number {
  checkGas(gas);
  const volume = above(vessel, 'vesselVolume');
  const area = above(vessel, 'orificeArea');
  const coefficient = above(vessel, 'dischargeCoefficient');
  return (
    volume /
    (coefficient *
      area *
      flowFunction(0, gas.heatRatio) *
      Math.sqrt(gas.gasConstant * gas.gasTemperature))
  );
}

/**
 * Pressure over the first pressure, in a vessel that empties through a choked hole, after the time `t` [s]
 * counted in time constants `tau` [s] of the first state. `wall` true: the gas keeps the wall's
 * temperature, e^(−t/τ); false: no heat comes in, (1 + (γ−1)t/(2τ))^(−2γ/(γ−1)).
 * Holds while the hole stays choked. Source: mass balance of the vessel (own derivation).
 */
export function blowDown(t: number, tau: number, heatRatio: number, wall: boolean): number {
  return wall
    ? Math.exp(-t / tau)
    : (1 + ((heatRatio - 1) * t) / (2 * tau)) ** ((-2 * heatRatio) / (heatRatio - 1));
}

/**
 * Time [s] in which that vessel falls from its first pressure to `share` of it (0 to 1): the inverse of
 * {@link blowDown}. Throws OutOfDomain for a share outside zero to one.
 */
export function blowDownTime(share: number, tau: number, heatRatio: number, wall: boolean): number {
  above({ pressureShare: share }, 'pressureShare');
  atMost({ pressureShare: share }, 'pressureShare', 1, 'the first pressure');
  return wall
    ? -tau * Math.log(share)
    : ((2 * tau) / (heatRatio - 1)) * (share ** (-(heatRatio - 1) / (2 * heatRatio)) - 1);
}

/**
 * Viscosity of air [Pa·s] at a temperature [K]: 1.716e-5·(T/273)^1.5·(273 + 110.4)/(T + 110.4).
 * Within 2 % of measurement from 170 K to 1900 K. Throws OutOfDomain unless T > 0.
 * Source: F. M. White, Viscous Fluid Flow (the law of Sutherland for air); from memory, checked against a
 * value read elsewhere.
 */
export function airViscosity(gasTemperature: number): number {
  above({ gasTemperature }, 'gasTemperature');
  return (1.716e-5 * (gasTemperature / 273) ** 1.5 * (273 + 110.4)) / (gasTemperature + 110.4);
}

/** A flat gap between two walls: width across the flow, height and length along it, all in m. */
export interface Slot {
  readonly slotWidth: number;
  readonly slotHeight: number;
  readonly slotLength: number;
}

/**
 * Mass flow [kg/s] of a gas that creeps through a flat slot at one temperature:
 * w·h³(p_u² − p_d²)/(24·µ·l·R·T). It grows with the third power of the height. Positive from `up` to `down`.
 *
 * Laminar, thin, isothermal, no inertia; the caller sets the choked limit of the slot's area over it.
 * Source: J. B. Heywood and M. Namazian, SAE 820088 (1982), from memory; derived on the page from the
 * laminar profile and the perfect gas. Throws RangeError for a slot of no length or a negative width or height:
 * no reader enters a slot, it is made of sizes that were refused before, so that it has no quantity to name.
 */
export function slotFlow(
  { slotWidth, slotHeight, slotLength }: Slot,
  upstreamPressure: number,
  downstreamPressure: number,
  viscosity: number,
  gas: RestingGas,
): number {
  checkGas(gas);
  if (!(slotWidth >= 0 && slotHeight >= 0 && slotLength > 0))
    throw new RangeError(`no slot is ${slotWidth} wide, ${slotHeight} high and ${slotLength} long`);
  return (
    (slotWidth * slotHeight ** 3 * (upstreamPressure ** 2 - downstreamPressure ** 2)) /
    (24 * viscosity * slotLength * gas.gasConstant * gas.gasTemperature)
  );
}
