import { above, atLeast, atMost, below } from '../refuse.ts';

/** A wrist pin by its dimensions [m]; the bore is straight in the middle and may widen towards both mouths. */
export interface Pin {
  readonly pinDiameter: number;
  /** Bore of the straight part; 0 for a solid pin. */
  readonly pinBore: number;
  /** Bore at the mouths. Of no effect where the taper has no length. */
  readonly pinTaperBore: number;
  /** Length of each of the two tapers. */
  readonly pinTaperLength: number;
  readonly pinLength: number;
}

/** Where the pin is carried [m]: the eye in the middle, a boss on each side of the gap. */
export interface Seat {
  readonly smallEndWidth: number;
  readonly bossGap: number;
}

/** A pin's body. */
export interface PinBody {
  /** Volume of the metal [m³], chamfers not counted. */
  readonly volume: number;
  /** Bore over diameter in the middle. */
  readonly boreRatio: number;
  /** π (d⁴ − d_i⁴)/(32 d) in the middle [m³]. */
  readonly sectionModulus: number;
}

/** What a load does to a pin in its seat. Pressures and stresses [Pa], all with the sign of the load. */
export interface PinStress {
  /** Load over the projected area of the eye. */
  readonly smallEndPressure: number;
  /** Load over the projected area of both bosses. */
  readonly bossPressure: number;
  /** Bending in the middle, pressure in the bosses falling to nothing at the pin's ends. */
  readonly bending: number;
  /** Bending in the middle, supported at the middles of the bosses: the upper bound. */
  readonly bendingMiddle: number;
  /** Greatest shear stress between eye and boss. */
  readonly shear: number;
}

/** Throws OutOfDomain for a pin that cannot be: no wall, a taper too wide or longer than half the pin. */
function checkPin(pin: Pin): void {
  const diameter = above(pin, 'pinDiameter');
  const length = above(pin, 'pinLength');
  atLeast(pin, 'pinBore');
  const bore = below(pin, 'pinBore', diameter, 'the pin’s diameter');
  atLeast(pin, 'pinTaperLength');
  const taper = atMost(pin, 'pinTaperLength', length / 2, 'half the pin’s length');
  atLeast(pin, 'pinTaperBore');
  if (taper > 0) {
    atLeast(pin, 'pinTaperBore', bore, 'the bore of the straight part');
    below(pin, 'pinTaperBore', diameter, 'the pin’s diameter');
  }
}

/** Volume and section of a pin. Throws OutOfDomain as said at {@link Pin}. */
export function pinBody(pin: Pin): PinBody {
  checkPin(pin);
  const { pinDiameter: d, pinBore: di, pinTaperBore: dt, pinTaperLength: lt, pinLength: l } = pin;
  const taper = (Math.PI / 12) * lt * (di ** 2 + di * dt + dt ** 2);
  return {
    volume: (Math.PI / 4) * (d ** 2 * l - di ** 2 * (l - 2 * lt)) - 2 * taper,
    boreRatio: di / d,
    sectionModulus: (Math.PI * (d ** 4 - di ** 4)) / (32 * d),
  };
}

/** Bore [m] at the distance `place` from the middle of the pin. */
export function boreAt(pin: Pin, place: number): number {
  const into = place - (pin.pinLength / 2 - pin.pinTaperLength);
  if (pin.pinTaperLength === 0 || into <= 0) return pin.pinBore;
  return pin.pinBore + ((pin.pinTaperBore - pin.pinBore) * into) / pin.pinTaperLength;
}

/** Throws OutOfDomain for an eye wider than the gap or a gap that the pin does not bridge. */
export function checkSeat({ pinLength }: Pin, seat: Seat): void {
  above(seat, 'smallEndWidth');
  above(seat, 'bossGap');
  const gap = below(seat, 'bossGap', pinLength, 'the pin’s length');
  atMost(seat, 'smallEndWidth', gap, 'the gap between the bosses');
}

/**
 * Greatest shear stress [Pa] of a hollow round section under the transverse force V [N]:
 * (4/3)(V/A)(1 + α + α²)/(1 + α²), V Q/(I t) at the middle; 4V/3A when solid, 2V/A for a thin tube.
 */
export function hollowShear(force: number, diameter: number, bore: number): number {
  const α = bore / diameter;
  const area = (Math.PI / 4) * (diameter ** 2 - bore ** 2);
  return ((4 / 3) * force * (1 + α + α ** 2)) / (area * (1 + α ** 2));
}

/**
 * Bearing pressures, bending and shear of a pin under the load [N] that the eye takes from the bosses.
 *
 * The eye loads evenly, and two pictures of the bosses enclose what they do. In one their pressure falls
 * to nothing at the pin's ends, as it does in stiff bosses under a bending pin: each half of the load then
 * acts at (l_p + 2b)/6 from the middle, and M = P (l_p + 2b − 1.5 l_se)/12 (so in A. Kolchin and
 * V. Demidov, 1984, with the section modulus rounded to 0.1 d³ (1 − α⁴), which this function keeps: 1.9 %).
 * In the other each boss carries at its middle: M = P [(l_p + b)/8 − l_se/8], as R. S. Khurmi and
 * J. K. Gupta (2005) take it, with the exact section modulus. The bore of the middle counts for bending, that
 * at the boss's edge for shear. Contact of the edges, fit and oil film are left out.
 */
export function pinStress(pin: Pin, seat: Seat, load: number): PinStress {
  const { sectionModulus, boreRatio: α } = pinBody(pin);
  checkSeat(pin, seat);
  const { pinDiameter: d, pinLength: l } = pin;
  const { smallEndWidth: w, bossGap: b } = seat;
  return {
    smallEndPressure: load / (d * w),
    bossPressure: load / (d * (l - b)),
    bending: (load * (l + 2 * b - 1.5 * w)) / (1.2 * (1 - α ** 4) * d ** 3),
    bendingMiddle: (load * (l + b - w)) / (8 * sectionModulus),
    shear: hollowShear(load / 2, d, boreAt(pin, b / 2)),
  };
}

/** Bore [m] of a straight pin of this diameter with the section modulus given; undefined if even a solid one has less. */
export function boreForModulus(diameter: number, sectionModulus: number): number | undefined {
  const inner = diameter ** 4 - (32 * sectionModulus * diameter) / Math.PI;
  // A solid pin's own modulus may come out a rounding short.
  return inner < -1e-12 * diameter ** 4 ? undefined : Math.max(0, inner) ** 0.25;
}

/** Bore [m] of a straight pin of this diameter and length with the volume given; undefined if even a solid one has less. */
export function boreForVolume(
  { pinDiameter, pinLength }: Pick<Pin, 'pinDiameter' | 'pinLength'>,
  volume: number,
): number | undefined {
  const inner = pinDiameter ** 2 - (4 * volume) / (Math.PI * pinLength);
  return inner < -1e-12 * pinDiameter ** 2 ? undefined : Math.sqrt(Math.max(0, inner));
}

/** What loads a pin: gas above the piston, and the parts that hang on it. SI units. */
export interface PinDuty {
  readonly bore: number;
  /** Absolute. */
  readonly peakPressure: number;
  /** Absolute. */
  readonly crankcasePressure: number;
  /** Piston, rings and locks [kg]: what the bosses carry. */
  readonly bossMass: number;
  /** [kg] */
  readonly pinMass: number;
  /** Acceleration of the piston at TDC over the square of the crank's speed [m]. */
  readonly topFactor: number;
  /** Speed at which the peak pressure acts [rad/s]. */
  readonly torqueSpeed: number;
  /** Speed at which the parts pull hardest [rad/s]. */
  readonly maxSpeed: number;
}

/** Loads on the pin [N]. */
export interface PinLoads {
  /** Gas at its peak with the parts at rest: the push at low speed. */
  readonly gasLoad: number;
  /** Gas less what it takes to turn piston, rings and locks round at TDC, at the speed of greatest torque. */
  readonly pushLoad: number;
  /** Pull at overlap TDC at the highest speed; the pin's own inertia is in it. */
  readonly pullLoad: number;
}

/**
 * Loads on the pin. The push is what the bosses hand to the pin; the eye gets it less the pin's own inertia,
 * which is neglected. The peak is taken at TDC, where the parts take off most: some 15° later, where it
 * really stands, they take off about 5 % less. Throws OutOfDomain for pressures or masses below 0, a bore
 * of 0 and a speed below 0.
 */
export function pinLoads(duty: PinDuty): PinLoads {
  const { bossMass, pinMass, topFactor } = duty;
  const area = (Math.PI / 4) * above(duty, 'bore') ** 2;
  const gasLoad = (atLeast(duty, 'peakPressure') - atLeast(duty, 'crankcasePressure')) * area;
  const [slow, fast] = [atLeast(duty, 'torqueSpeed') ** 2, atLeast(duty, 'maxSpeed') ** 2];
  return {
    gasLoad,
    pushLoad: gasLoad - bossMass * topFactor * slow,
    pullLoad: (bossMass + pinMass) * topFactor * fast,
  };
}
