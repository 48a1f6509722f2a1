import { above, atLeast, below, fraction } from '../refuse.ts';

/** Which ring is meant: the first half of its quantities' names in the dictionary. */
export type RingName = 'ring1' | 'ring2';

/** What is known of a ring, each quantity under its name in the dictionary: `ring1Height`, `ring2Gap`. */
type Of<N extends RingName, Part extends string> = { readonly [K in `${N}${Part}`]: number };

/**
 * A one-piece ring of rectangular section. Lengths [m]: `bore`, the nominal diameter (d in ISO 6621), axial
 * height (h), radial thickness (a); Young's modulus (E) [Pa].
 */
export type Ring<N extends RingName> = Of<N, 'Height' | 'Radial' | 'Modulus'> & {
  readonly bore: number;
};

/** A ring with its gap [m] when free and when closed by the bore. */
export type GappedRing<N extends RingName> = Ring<N> & Of<N, 'FreeGap' | 'Gap'>;

/** What bends: the line through the middle of the section, and how hard it is to bend. */
export interface RingLine {
  /** Radius of that line in the bore [m]. */
  readonly radius: number;
  /** Second moment of area of the section about its own axis [m⁴]. */
  readonly secondMoment: number;
}

/** A ring in its bore. Stresses are the greatest bending stress of the section opposite the gap. */
export interface RingInBore {
  /** Free gap less installed gap [m]: what the bore closes. */
  readonly closure: number;
  /** Force along the ring that holds it closed (F_t) [N]. */
  readonly tangentialForce: number;
  /** Even pressure on the bore from the ring's own spring (p) [Pa]. */
  readonly contactPressure: number;
  /** F_t r²/(E I), a plain number: how far the ring's curvature follows an uneven bore (k). */
  readonly conformability: number;
  /** Stress in the bore [Pa]. */
  readonly placeStress: number;
}

/** A ring in the letters of the formulas; refuses what {@link ringLine} refuses. */
function sizesOf<N extends RingName>(ring: Ring<N>, name: N) {
  const d = above(ring, 'bore');
  const h = above(ring, `${name}Height`);
  above(ring, `${name}Radial`);
  const a = below(ring, `${name}Radial`, d / 2, 'half the bore');
  const E = above(ring, `${name}Modulus`);
  return { d, h, a, E, r: (d - a) / 2, I: (h * a ** 3) / 12 };
}

/**
 * The bending line of a ring. Throws OutOfDomain for a size or a modulus that is not greater than 0 and for
 * a radial thickness of half the bore or more, which would be no ring.
 */
export function ringLine<N extends RingName>(ring: Ring<N>, name: N): RingLine {
  const { r, I } = sizesOf(ring, name);
  return { radius: r, secondMoment: I };
}

/**
 * Gap closed [m] by the ring's tangential force [N]: 3π F_t r³/(E I). See {@link ringInBore}. Throws OutOfDomain
 * as {@link ringLine} does, and for a force that is not greater than 0.
 */
export function closureOf<N extends RingName>(ring: Ring<N> & Of<N, 'Tension'>, name: N): number {
  const { E, r, I } = sizesOf(ring, name);
  const F = above(ring, `${name}Tension`);
  return (3 * Math.PI * F * r ** 3) / (E * I);
}

/**
 * A ring that presses evenly on a round bore, from its free gap and the gap left in the bore [m].
 *
 * An even pressure p bends the section at the angle φ from the point opposite the gap with
 * M = F_t r (1 + cos φ), F_t = p h d/2. By the theorem of Castigliano the ends then close by 3π F_t r³/(E I),
 * a linear relation for thin rings and small bends: the real ends follow a longer way, so that the same force
 * goes with a free gap greater by about 0.83 K of the closure. Compression along the ring (2 F_t opposite
 * the gap), shear and the shift of the neutral line by curvature are left out: 1 to 3 % of the stress for a
 * radial thickness of a twenty-fifth of the bore.
 *
 * Sources: thin curved bar in any textbook of strength of materials; symbols of ISO 6621. Throws OutOfDomain
 * as {@link ringLine} does, for an installed gap below 0 and for a free gap that is not greater than it.
 */
export function ringInBore<N extends RingName>(ring: GappedRing<N>, name: N): RingInBore {
  const { d, h, a, E, r, I } = sizesOf(ring, name);
  const gap = atLeast(ring, `${name}Gap`);
  const closure = above(ring, `${name}FreeGap`, gap, 'the gap in the bore') - gap;
  const tangentialForce = (closure * E * I) / (3 * Math.PI * r ** 3);
  return {
    closure,
    tangentialForce,
    contactPressure: (2 * tangentialForce) / (d * h),
    conformability: (tangentialForce * r ** 2) / (E * I),
    placeStress: (12 * tangentialForce * r) / (h * a ** 2),
  };
}

/**
 * Greatest bending stress [Pa] of a ring whose ends are pulled apart along the ring from the free gap to
 * `ringOpening` [m], as an expander does: (4/3π) E a (opening − free gap)/(d − a)². Negative where the opening is
 * smaller than the free gap: the ring is then still held together. Together with the stress in place it makes
 * (4/3π) E a (opening − installed gap)/(d − a)², whatever the free gap: one buys the other.
 */
export function openingStress<N extends RingName>(
  ring: Ring<N> & Of<N, 'FreeGap'> & { readonly ringOpening: number },
  name: N,
): number {
  const { a, E, r } = sizesOf(ring, name);
  const opening = above(ring, 'ringOpening');
  return (E * a * (opening - ring[`${name}FreeGap`])) / (3 * Math.PI * r ** 2);
}

/**
 * Greatest amplitude U [m] of a bore's waviness cos(n φ) that a ring of conformability K still follows with
 * its own spring: K r/(n² − 1)², where the pressure just reaches zero in the hollows. `order` n is 2 for an
 * oval, 4 for four bolts. Thin ring, no gap, no gas, no friction; measurements find less at low orders
 * (E. Tomanik, SAE 960356, 1996). Throws RangeError for an order below 2: a ring moves with its bore there. No
 * reader enters an order, so that it is no quantity to refuse.
 */
export function followedWaviness(conformability: number, radius: number, order: number): number {
  if (!(order >= 2)) throw new RangeError(`order ${order} must be at least 2`);
  return (conformability * radius) / (order ** 2 - 1) ** 2;
}

/** Forces along the rings of one piston [N]. The oil ring's is measured: an expander presses it, not its bend. */
export interface RingPack {
  readonly ring1Tension: number;
  readonly ring2Tension: number;
  readonly oilRingTension: number;
}

/** What a pack presses and drags [N]; share of the oil ring, a plain number. */
export interface PackLoad {
  readonly tensionSum: number;
  /** All of the pressure on the bore added up, whatever its direction: 2π times the sum. */
  readonly wallForce: number;
  readonly oilShare: number;
  /** Pull that moves the ringed piston at the friction coefficient given. */
  readonly pull: number;
}

/**
 * The pull on a ringed piston: each ring presses p over π d h, which is 2π F_t, and friction takes its share.
 * The weight of the piston is not counted. Throws OutOfDomain for a force or a coefficient below 0, for a pack
 * without any force, and for a coefficient above 1.
 */
export function packLoad(pack: RingPack, benchFriction: number): PackLoad {
  const compression = atLeast(pack, 'ring1Tension') + atLeast(pack, 'ring2Tension');
  const oilRingTension = above(pack, 'oilRingTension');
  fraction({ benchFriction }, 'benchFriction');
  const tensionSum = compression + oilRingTension;
  const wallForce = 2 * Math.PI * tensionSum;
  return {
    tensionSum,
    wallForce,
    oilShare: oilRingTension / tensionSum,
    pull: benchFriction * wallForce,
  };
}
