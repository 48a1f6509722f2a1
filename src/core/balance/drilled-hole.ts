import { above, atMost, below } from '../refuse.ts';

/** A drill: how thick it is [m], and the angle of its point [rad] from edge to edge; π for a flat one. */
export interface Drill {
  readonly holeDiameter: number;
  readonly pointAngle: number;
}

/** Where a hole begins: the rim's radius [m] about the axis of the shaft, and the density of the metal [kg/m³]. */
export interface Rim {
  readonly counterweightRadius: number;
  readonly steelDensity: number;
}

/** Where a hole parallel to the shaft stands: the radius of its axis [m], and the density of the metal [kg/m³]. */
export interface Face {
  readonly axialHoleRadius: number;
  readonly steelDensity: number;
}

/** What one hole takes away. */
export interface HoleCut {
  /** [kg·m] About the axis of the shaft, along the radius through the hole. */
  readonly unbalance: number;
  /** [kg·m] The part of it that the cone of the drill's point takes. */
  readonly point: number;
  /** [kg·m] What the same hole in a flat rim would take more; 0 for a hole that begins on a flat face. */
  readonly rimLoss: number;
  /** [kg] */
  readonly mass: number;
}

/**
 * Length of a drill's point [m], from the tip to its full diameter: half the diameter over the tangent of half its
 * angle.
 *
 * @throws OutOfDomain for a diameter or an angle that is not above 0, or an angle above 180°
 */
export function pointLength(drill: Drill): number {
  above(drill, 'pointAngle');
  atMost(drill, 'pointAngle', Math.PI);
  return above(drill, 'holeDiameter') / 2 / Math.tan(drill.pointAngle / 2);
}

/**
 * The least depth [m] at which a radial hole has its full diameter all round: the rim is a cylinder, and at the sides
 * of the hole it lies lower than at the middle by R − √(R² − d²/4).
 *
 * @throws OutOfDomain for a drill as thick as the rim
 */
export function fullDiameterFrom(drill: Drill, rim: Rim): number {
  const radius = above(rim, 'counterweightRadius');
  const half = below(drill, 'holeDiameter', 2 * radius, 'the diameter of the rim') / 2;
  // The difference of two lengths that are nearly the same, written so that no figures are lost.
  return half ** 2 / (radius + Math.sqrt(radius ** 2 - half ** 2));
}

/** Cross-section of the hole times the density [kg/m]. */
function massPerLength(drill: Drill, metal: { readonly steelDensity: number }): number {
  return above(metal, 'steelDensity') * (Math.PI / 4) * drill.holeDiameter ** 2;
}

/**
 * A hole drilled from the rim towards the axis of the shaft. `depth` [m] is that of the full diameter, measured from
 * the rim at the middle of the hole; the point goes deeper by {@link pointLength}.
 *
 * The cylinder above the shoulder has its middle at R − h/2 and the cone its own at R − h − h_p/4, so that
 * U = ρ(πd²/4)[h(R − h/2) + (h_p/3)(R − h − h_p/4)] from a flat rim. The rim is curved: at x beside the middle it
 * ends at √(R² − x²). A column of metal there weighs about the axis ½(R² − x² − s²) a unit of area, s being the radius
 * of the shoulder; over the circle of the hole ½∫x² dA = πd⁴/128. So exactly ρπd⁴/128 is missing, whatever the rim's
 * radius and the depth: 0.6 per cent for 16 mm and 1.3 for 20 mm in holes of a usual depth.
 *
 * The mass takes the missing cap as πd⁴/(128R), its first term; the next is d²/(32R²) of it, which is
 * below 1e-5 of the mass of a usual hole.
 *
 * @throws RangeError for a depth at which the hole is not yet round, or whose point reaches the axis
 * Source: own derivation from the closed forms of cylinder and cone.
 */
export function radialHole(drill: Drill, rim: Rim, depth: number): HoleCut {
  const tip = pointLength(drill);
  const { counterweightRadius: radius } = rim;
  if (!(depth >= fullDiameterFrom(drill, rim) && depth + tip <= radius))
    throw new RangeError(`a hole of ${depth} m has no full diameter, or reaches the axis`);
  const line = massPerLength(drill, rim);
  const point = line * (tip / 3) * (radius - depth - tip / 4);
  const rimLoss = (line * drill.holeDiameter ** 2) / 32;
  return {
    unbalance: line * depth * (radius - depth / 2) + point - rimLoss,
    point,
    rimLoss,
    mass: line * (depth + tip / 3) - rimLoss / radius,
  };
}

/**
 * The depth [m] at which a radial hole takes an unbalance [kg·m]: {@link radialHole} solved for h, which is a
 * quadratic. Where no depth takes as much, the depth at which the most is taken, R − h_p/3. It may be less than
 * {@link fullDiameterFrom}: then the drill is too thick for so little.
 */
export function radialDepth(drill: Drill, rim: Rim, unbalance: number): number {
  const tip = pointLength(drill) / 3;
  const middle = above(rim, 'counterweightRadius') - tip;
  const wanted = unbalance / massPerLength(drill, rim) + drill.holeDiameter ** 2 / 32;
  const rest = tip * (rim.counterweightRadius - 0.75 * tip) - wanted;
  return middle - Math.sqrt(Math.max(0, middle ** 2 + 2 * rest));
}

/**
 * A hole drilled parallel to the shaft from a flat face: all of it at the radius of its axis, so that
 * U = ρ(πd²/4)(h + h_p/3)r.
 *
 * @throws RangeError for a depth below 0
 */
export function axialHole(drill: Drill, face: Face, depth: number): HoleCut {
  if (!(depth >= 0)) throw new RangeError(`a hole cannot be ${depth} m deep`);
  const tip = pointLength(drill) / 3;
  const line = massPerLength(drill, face);
  const radius = above(face, 'axialHoleRadius');
  const mass = line * (depth + tip);
  return { unbalance: mass * radius, point: line * tip * radius, rimLoss: 0, mass };
}

/** The depth [m] at which a hole parallel to the shaft takes an unbalance [kg·m]; below 0 where the point alone takes more. */
export function axialDepth(drill: Drill, face: Face, unbalance: number): number {
  const line = massPerLength(drill, face);
  return unbalance / (line * above(face, 'axialHoleRadius')) - pointLength(drill) / 3;
}
