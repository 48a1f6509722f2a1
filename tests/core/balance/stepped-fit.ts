import { fitPoisson, type WarmPressFit } from '../../../src/core/balance/press-fit.ts';

/** A metal as the stepping needs it: Young’s modulus [Pa], and what its temperature alone would stretch it by. */
interface Warmed {
  readonly modulus: number;
  readonly free: number;
}

/** Movement [m] and radial stress [Pa] at a radius. */
type State = readonly [movement: number, stress: number];

/** How both change with the radius: balance of an element, and Hooke’s law in plane stress. */
function slope({ modulus, free }: Warmed, r: number, [u, radial]: State): State {
  const hoop = modulus * (u / r - free) + fitPoisson * radial;
  return [(radial - fitPoisson * hoop) / modulus + free, (hoop - radial) / r];
}

/** From one radius to another by the rule of Runge and Kutta, in `steps` steps. */
function through(metal: Warmed, from: number, to: number, start: State, steps = 400): State {
  const h = (to - from) / steps;
  let state = start;
  for (let i = 0; i < steps; i += 1) {
    const r = from + i * h;
    const ahead = (by: number, [du, ds]: State): State => [state[0] + by * du, state[1] + by * ds];
    const one = slope(metal, r, state);
    const two = slope(metal, r + h / 2, ahead(h / 2, one));
    const three = slope(metal, r + h / 2, ahead(h / 2, two));
    const four = slope(metal, r + h, ahead(h, three));
    const mean = (k: 0 | 1): number => (one[k] + 2 * two[k] + 2 * three[k] + four[k]) / 6;
    state = [state[0] + h * mean(0), state[1] + h * mean(1)];
  }
  return state;
}

/** Where a straight line is 0, from two shots at it: all that is sought here answers in proportion. */
function straightRoot(of: (x: number) => number, one: number, other: number): number {
  const [first, second] = [of(one), of(other)];
  return one - (first * (other - one)) / (second - first);
}

/** The surface of a solid slug: from near its axis, where it is stretched evenly, outwards to the pressure given. */
function slugSurface(metal: Warmed, radius: number, pressure: number): State {
  const start = radius / 1000;
  const reach = (strain: number): State =>
    through(metal, start, radius, [
      strain * start,
      (metal.modulus * (strain - metal.free)) / (1 - fitPoisson),
    ]);
  const strain = straightRoot((x) => reach(x)[1] + pressure, -1e-3, 1e-3);
  return reach(strain);
}

/** The bore of a ring under a pressure, its outside free: the movement that leaves no stress there. */
function ringBore(metal: Warmed, bore: number, outside: number, pressure: number): number {
  const left = (movement: number): number =>
    through(metal, bore, outside, [movement, -pressure])[1];
  return straightRoot(left, -1e-3 * bore, 1e-3 * bore);
}

/** What the stepping finds of a press fit: the pressure, and the hoop stress at the hole [Pa]. */
export function steppedFit(
  fit: WarmPressFit,
  outside: number,
  temperature: number,
): { readonly pressure: number; readonly hoop: number } {
  const warmer = temperature - fit.assemblyTemperature;
  const slug = { modulus: fit.slugModulus, free: fit.slugExpansion * warmer };
  const ring = { modulus: fit.counterweightModulus, free: fit.crankExpansion * warmer };
  const half = fit.slugDiameter / 2;
  /** What is left of the interference, on the radius, once both have moved. */
  const gap = (pressure: number): number =>
    ringBore(ring, half, outside / 2, pressure) -
    slugSurface(slug, half, pressure)[0] -
    fit.slugInterference / 2;
  if (gap(0) >= 0) return { pressure: 0, hoop: 0 };
  const pressure = straightRoot(gap, 0, 1e-3 * fit.counterweightModulus);
  const movement = ringBore(ring, half, outside / 2, pressure);
  const hoop = ring.modulus * (movement / half - ring.free) - fitPoisson * pressure;
  return { pressure, hoop };
}
