import { above } from '../refuse.ts';
import { checkSeat, pinBody, type Pin, type Seat } from './wrist-pin.ts';

/**
 * How far a pin bends away from its middle at `place` [m along it from the middle], under a load [N] spread evenly over
 * the eye and carried by bosses whose pressure falls outward to nothing: the loads of {@link pinStress}'s bending in
 * the middle. Positive against the load; at the ends it is the whole bend. An elastic beam with the straight
 * bore's second moment; closed form, piece by piece.
 *
 * Neglected: shear, which on so short a beam adds as much again or more, the tapered mouths, and the give of the
 * seats. Throws OutOfDomain as {@link pinStress} does, and for a modulus [Pa] not above 0. A place beyond the pin is
 * taken as its end.
 */
export function pinBend(
  pin: Pin & { readonly pinModulus: number },
  seat: Seat,
  load: number,
  place: number,
): number {
  const { sectionModulus } = pinBody(pin);
  checkSeat(pin, seat);
  const stiffness = above(pin, 'pinModulus') * ((sectionModulus * pin.pinDiameter) / 2);
  const [a, g, l] = [seat.smallEndWidth / 2, seat.bossGap / 2, pin.pinLength / 2];
  const boss = l - g;
  const x = Math.min(Math.abs(place), l);
  const even = load / (2 * a);
  const middle = (load * boss) / 6 + (load / 2) * (g - a / 2);

  const underEye = (at: number): number => (middle * at ** 2) / 2 - (even * at ** 4) / 24;
  if (x <= a) return underEye(x) / stiffness;
  const slopeEye = middle * a - (even * a ** 3) / 6;
  const edge = middle - (even * a ** 2) / 2;
  const between = (u: number): number =>
    underEye(a) + slopeEye * u + (edge * u ** 2) / 2 - (load * u ** 3) / 12;
  if (x <= g) return between(x - a) / stiffness;
  const slopeGap = slopeEye + edge * (g - a) - (load * (g - a) ** 2) / 4;
  const third = load / (6 * boss ** 2);
  const v = l - x;
  const inBoss =
    between(g - a) +
    slopeGap * (x - g) +
    third * ((boss ** 4 * (x - g)) / 4 - (boss ** 5 - v ** 5) / 20);
  return inBoss / stiffness;
}
