import { above, atLeast, atMost, below, fraction, refusal } from '../refuse.ts';

/** The weighed parts of one cylinder and what hangs on one crankpin. Masses in kg. */
export interface PinParts {
  readonly pistonMass: number;
  readonly pinMass: number;
  /** All rings of one piston. */
  readonly ringMass: number;
  /** Both locks of one wrist pin. */
  readonly lockMass: number;
  /** One rod's big end, level on the scale, without shells. */
  readonly bigEndMass: number;
  readonly smallEndMass: number;
  /** Both shells of one rod. */
  readonly shellMass: number;
  /** Oil allowance, once for the crankpin. */
  readonly oilMass: number;
  readonly rodsPerPin: number;
  /** Balance factor f, of the reciprocating mass that the bobweight carries, 0 to 1. */
  readonly reciprocatingFraction: number;
  /** By how much the second rod's rotating parts are heavier; may be negative; unused with one rod. */
  readonly partnerRotating?: number | undefined;
  /** By how much the second rod's reciprocating parts are heavier; may be negative; unused with one rod. */
  readonly partnerReciprocating?: number | undefined;
}

/** One crankpin summed up. Masses in kg. */
export interface PinBobweight {
  readonly rotatingPerRod: number;
  readonly reciprocatingPerCylinder: number;
  readonly rotating: number;
  readonly reciprocating: number;
  readonly carried: number;
  readonly bobweight: number;
  /** Bobweight over everything that hangs on the pin. */
  readonly bobweightShare: number;
}

/**
 * Returns the number of rods on a pin.
 * @throws OutOfDomain unless it is a whole number from 1 to `most`
 */
export function wholeRods(pin: { readonly rodsPerPin: number }, most: number): number {
  atLeast(pin, 'rodsPerPin', 1);
  const n = atMost(pin, 'rodsPerPin', most);
  if (!Number.isInteger(n))
    throw refusal(pin, 'rodsPerPin', 'at most', Math.floor(n), 'a whole number of rods');
  return n;
}

/**
 * The bobweight of one crankpin (or of one half of a split pin, entered as one rod):
 * m_bob = Σ(big end + shells) + oil + f Σ(small end + pin + locks + piston + rings).
 *
 * Holds for a stiff crank with the rods on the pin's mid-plane; rods side by side on one pin add small
 * couples that are left out here.
 * @throws OutOfDomain for a negative mass, a piston or a rod end of no mass, f outside 0 to 1, or a number
 * of rods that is not whole or lies outside 1 to 9
 * Source: the forward half of a straight-line force, T. Bevan, The Theory of Machines, ch. 14; own summary.
 */
export function pinBobweight(parts: PinParts): PinBobweight {
  const n = wholeRods(parts, 9);
  const f = fraction(parts, 'reciprocatingFraction');
  const rotatingPerRod = above(parts, 'bigEndMass') + atLeast(parts, 'shellMass');
  const reciprocatingPerCylinder =
    above(parts, 'smallEndMass') +
    atLeast(parts, 'pinMass') +
    atLeast(parts, 'lockMass') +
    above(parts, 'pistonMass') +
    atLeast(parts, 'ringMass');
  const partner = partnerOf(parts);
  const rotating = n * rotatingPerRod + atLeast(parts, 'oilMass') + partner.rotating;
  const reciprocating = n * reciprocatingPerCylinder + partner.reciprocating;
  const carried = f * reciprocating;
  const bobweight = rotating + carried;
  return {
    rotatingPerRod,
    reciprocatingPerCylinder,
    rotating,
    reciprocating,
    carried,
    bobweight,
    bobweightShare: bobweight / (rotating + reciprocating),
  };
}

/**
 * What the second rod adds beyond the first; nothing when the pin has one rod. A difference so negative
 * that the second rod would weigh nothing is refused.
 */
function partnerOf(parts: PinParts): {
  readonly rotating: number;
  readonly reciprocating: number;
} {
  if (parts.rodsPerPin < 2) return { rotating: 0, reciprocating: 0 };
  // Rods that nobody said differ are alike.
  const { partnerRotating = 0, partnerReciprocating = 0 } = parts;
  const partner = { partnerRotating, partnerReciprocating };
  const rotating = parts.bigEndMass + parts.shellMass;
  const reciprocating =
    parts.smallEndMass + parts.pinMass + parts.lockMass + parts.pistonMass + parts.ringMass;
  return {
    rotating: above(partner, 'partnerRotating', -rotating, "minus the first rod's rotating parts"),
    reciprocating: above(
      partner,
      'partnerReciprocating',
      -reciprocating,
      "minus the first rod's reciprocating parts",
    ),
  };
}

/** How a rod must be split for a bobweight that was heard. */
export interface ImpliedEnds {
  /** [kg] May fall outside 0 to the rod's mass: then no such rod exists. */
  readonly bigEndMass: number;
  readonly smallEndMass: number;
  readonly bigEndShare: number;
}

/**
 * The formula of {@link pinBobweight} solved for the big end, with m_se = m_rod − m_be:
 * m_be = [m_bob/n − shells − oil/n − f (rod + piston + pin + rings + locks)] / (1 − f).
 *
 * At f = 1 the bobweight does not depend on the split, so there is no answer.
 * @throws OutOfDomain as pinBobweight, and for f of one or more
 * Source: own derivation.
 */
export function impliedEnds(
  heard: Omit<
    PinParts,
    'bigEndMass' | 'smallEndMass' | 'partnerRotating' | 'partnerReciprocating'
  > & { readonly bobweight: number; readonly rodMass: number },
): ImpliedEnds {
  const n = wholeRods(heard, 9);
  atLeast(heard, 'reciprocatingFraction');
  const f = below(
    heard,
    'reciprocatingFraction',
    1,
    'one, where the split of the rod no longer shows in the bobweight',
  );
  const rod = above(heard, 'rodMass');
  const reciprocating =
    above(heard, 'pistonMass') +
    atLeast(heard, 'pinMass') +
    atLeast(heard, 'ringMass') +
    atLeast(heard, 'lockMass');
  const perRod = (above(heard, 'bobweight') - atLeast(heard, 'oilMass')) / n;
  const bigEndMass = (perRod - atLeast(heard, 'shellMass') - f * (rod + reciprocating)) / (1 - f);
  return { bigEndMass, smallEndMass: rod - bigEndMass, bigEndShare: bigEndMass / rod };
}
