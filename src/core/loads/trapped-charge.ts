import { above, atLeast, below, fraction } from '../refuse.ts';

/** Gas constant of air [J/(kg K)]; the charge counts as air. */
export const gasConstant = 287;

/** What sets how much gas is shut in and how much heat it can give. */
export interface ChargeInput {
  /** Fresh charge (air with its fuel) trapped, over the swept volume full of air at ambient state. */
  readonly volumetricEfficiency: number;
  /** [Pa] absolute, [K]. */
  readonly ambientPressure: number;
  readonly ambientTemperature: number;
  /** Share of residual gas in the trapped mass. */
  readonly residualFraction: number;
  /** Air over fuel, as a multiple of the stoichiometric ratio. */
  readonly airFuelLambda: number;
  /** Kilograms of air that one kilogram of fuel needs. */
  readonly stoichRatio: number;
  /** Lower heating value [J/kg]. */
  readonly heatingValue: number;
  /** Share of the burnable fuel that burns. */
  readonly combustionEfficiency: number;
}

/** Masses [kg] and the heat [J] of one cylinder and one cycle. */
export interface Charge {
  readonly air: number;
  readonly fuel: number;
  /** Air, fuel and residual gas. */
  readonly trapped: number;
  /** Heat if all that can burn burns: what air or fuel allows, whichever is short, times the efficiency. */
  readonly heat: number;
}

/**
 * The charge shut in at intake closing: fresh charge m = η_v p_a V_s/(R T_a), of which 1/(1 + λ AFR) is fuel;
 * with the residual gas m/(1 − x_r). A rich charge burns only as much fuel as its air allows: heat
 * η_c H_u m_fuel min(1, λ).
 *
 * Neglected: the charge counts as air throughout. A rich petrol charge has a gas constant about 5 % below
 * that of air, so that for the same mass the pressure at intake closing is up to 5 % too high.
 *
 * `swept` is the swept volume of one cylinder [m³]. Throws OutOfDomain for a value without meaning.
 */
export function trappedCharge(input: ChargeInput, swept: number): Charge {
  const filling = above(input, 'volumetricEfficiency');
  const density =
    above(input, 'ambientPressure') / (gasConstant * above(input, 'ambientTemperature'));
  atLeast(input, 'residualFraction');
  const residual = below(input, 'residualFraction', 1);
  const λ = above(input, 'airFuelLambda');
  const efficiency = fraction(input, 'combustionEfficiency');
  const fresh = filling * density * swept;
  const fuel = fresh / (1 + λ * above(input, 'stoichRatio'));
  return {
    air: fresh - fuel,
    fuel,
    trapped: fresh / (1 - residual),
    heat: efficiency * atLeast(input, 'heatingValue') * fuel * Math.min(1, λ),
  };
}
