import { above, atLeast, atMost, below } from '../refuse.ts';

/** Which ring is meant: the first half of its quantities' names in the dictionary, for the refusals. */
export type RingName = 'ring1' | 'ring2';

/** A one-piece ring of rectangular section. Lengths [m], modulus [Pa]; symbols of ISO 6621 in brackets. */
export interface Ring {
  /** Nominal diameter (d): the bore it is made for. */
  readonly bore: number;
  /** Axial height (h). */
  readonly height: number;
  /** Radial thickness (a). */
  readonly radial: number;
  /** Young's modulus (E). */
  readonly modulus: number;
}

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

/**
 * The bending line of a ring. Throws OutOfDomain for a size or a modulus that is not greater than 0 and for
 * a radial thickness of half the bore or more, which would be no ring.
 */
export function ringLine({ bore, height, radial, modulus }: Ring, name: RingName): RingLine {
  above('bore', bore);
  above(`${name}Height`, height);
  below(`${name}Radial`, above(`${name}Radial`, radial), bore / 2, 'half the bore');
  above(`${name}Modulus`, modulus);
  return { radius: (bore - radial) / 2, secondMoment: (height * radial ** 3) / 12 };
}

/** Gap closed [m] by a tangential force [N]: 3π F_t r³/(E I). See {@link ringInBore}. */
export function closureOf(ring: Ring, tangentialForce: number, name: RingName): number {
  const { radius, secondMoment } = ringLine(ring, name);
  above(`${name}Tension`, tangentialForce);
  return (3 * Math.PI * tangentialForce * radius ** 3) / (ring.modulus * secondMoment);
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
export function ringInBore(
  ring: Ring,
  { freeGap, gap }: { readonly freeGap: number; readonly gap: number },
  name: RingName,
): RingInBore {
  const { radius: r, secondMoment: I } = ringLine(ring, name);
  const { bore: d, height: h, radial: a, modulus: E } = ring;
  atLeast(`${name}Gap`, gap);
  const closure = above(`${name}FreeGap`, freeGap, gap, 'the gap in the bore') - gap;
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
 * `opening` [m], as an expander does: (4/3π) E a (opening − free gap)/(d − a)². Negative where the opening is
 * smaller than the free gap: the ring is then still held together. Together with the stress in place it makes
 * (4/3π) E a (opening − installed gap)/(d − a)², whatever the free gap: one buys the other.
 */
export function openingStress(
  ring: Ring,
  { freeGap, opening }: { readonly freeGap: number; readonly opening: number },
  name: RingName,
): number {
  const { radius } = ringLine(ring, name);
  above('ringOpening', opening);
  return (ring.modulus * ring.radial * (opening - freeGap)) / (3 * Math.PI * radius ** 2);
}

/**
 * Greatest amplitude U [m] of a bore's waviness cos(n φ) that a ring of conformability K still follows with
 * its own spring: K r/(n² − 1)², where the pressure just reaches zero in the hollows. `order` n is 2 for an
 * oval, 4 for four bolts. Thin ring, no gap, no gas, no friction; measurements find less at low orders
 * (E. Tomanik, SAE 960356, 1996). Throws OutOfDomain for an order below 2: a ring moves with its bore there.
 */
export function followedWaviness(conformability: number, radius: number, order: number): number {
  atLeast('order', order, 2);
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
  const { ring1Tension, ring2Tension, oilRingTension } = pack;
  atLeast('ring1Tension', ring1Tension);
  atLeast('ring2Tension', ring2Tension);
  above('oilRingTension', oilRingTension);
  atMost('benchFriction', atLeast('benchFriction', benchFriction), 1);
  const tensionSum = ring1Tension + ring2Tension + oilRingTension;
  const wallForce = 2 * Math.PI * tensionSum;
  return {
    tensionSum,
    wallForce,
    oilShare: oilRingTension / tensionSum,
    pull: benchFriction * wallForce,
  };
}
