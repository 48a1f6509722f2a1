import { ringGas, type RingPack } from './ring-pack.ts';

/** Difference, as a share of the pressure, below which a hole's flow is taken straight instead of as a root. */
const gentle = 2e-4;
const γ = ringGas.heatRatio;
const choked = Math.sqrt(γ) * (2 / (γ + 1)) ** ((γ + 1) / (2 * (γ - 1)));
const critical = (2 / (γ + 1)) ** (γ / (γ - 1));

/**
 * Flow through a hole over the difference of pressure that drives it [kg/(s·Pa)], the same both ways.
 *
 * `area` is the effective area [m²], `first` and `second` the pressures on its sides [Pa, absolute], `rt` the
 * gas's RT [J/kg]. The flow is A·p₀/√(RT)·ψ (see `flowFunction`), but straight within 0.02 % of equal
 * pressures, where the root's slope has no bound: the difference that a flow needs there is overstated by at
 * most that share.
 */
export function holeConductance(area: number, first: number, second: number, rt: number): number {
  if (area === 0) return 0;
  const scale = area / Math.sqrt(rt);
  const high = first > second ? first : second;
  const low = first > second ? second : first;
  const ratio = low / high;
  if (ratio <= critical) return (scale * choked) / (1 - ratio);
  const r = ratio < 1 - gentle ? ratio : 1 - gentle;
  const root = r ** (1 / γ);
  return (scale * root * Math.sqrt(((2 * γ) / (γ - 1)) * (1 - r / root))) / (1 - r);
}

/**
 * The same for a flank's open gap of height `gap` [m] and length `overlap` [m] along the flow: the laminar slot
 * w·h³(p_1² − p_2²)/(24µlRT) (see `slotFlow`), but no more than the choked hole of its area passes.
 */
export function flankConductance(
  pack: RingPack,
  overlap: number,
  gap: number,
  first: number,
  second: number,
): number {
  if (gap <= 0) return 0;
  const laminar =
    ((pack.girth * gap * gap * gap) / (24 * pack.viscosity * overlap * pack.rt)) * (first + second);
  const difference = Math.abs(first - second);
  const most = ((pack.girth * gap * choked) / Math.sqrt(pack.rt)) * Math.max(first, second);
  return laminar * difference <= most ? laminar : most / difference;
}
