import { lobeMovement, solidLobeMovement } from './thick-ring.ts';

/** A pin's section in the middle as a ring [m, Pa], loaded along its whole length. */
export interface OvalPin {
  readonly pinDiameter: number;
  readonly pinBore: number;
  readonly pinLength: number;
  readonly pinModulus: number;
}

/** Bore ratios for which the method of Kolchin and Demidov is stated. */
const ovalRange = [0.4, 0.8] as const;

/** Poisson's ratio of steel, for the share of shear in a thick ring. */
const poisson = 0.3;
/** Shear factor of a rectangular section. */
const shearFactor = 1.2;

interface Wall {
  readonly radius: number;
  /** W R³/(E I) for one newton: what every thin-ring deflection is a multiple of. */
  readonly unit: number;
  /** Wall over mean radius. */
  readonly slender: number;
}

function wallOf({ pinDiameter, pinBore, pinLength, pinModulus }: OvalPin): Wall {
  const radius = (pinDiameter + pinBore) / 4;
  const wall = (pinDiameter - pinBore) / 2;
  return {
    radius,
    unit: (12 * radius ** 3) / (pinModulus * pinLength * wall ** 3),
    slender: wall / radius,
  };
}

/**
 * How much wider a pin becomes across the load [m], by the method of A. Kolchin and V. Demidov (1984, from
 * memory): 1.35 P/(E l) [(1 + α)/(1 − α)]³ [0.1 − (α − 0.4)³]. The bracket is a correction found by test that
 * falls to nothing at α = 0.864, so that outside {@link ovalRange} there is no result: undefined.
 */
export function ovalByMethod(pin: OvalPin, load: number): number | undefined {
  const α = pin.pinBore / pin.pinDiameter;
  if (α < ovalRange[0] || α > ovalRange[1]) return undefined;
  return (
    ((1.35 * load) / (pin.pinModulus * pin.pinLength)) *
    ((1 + α) / (1 - α)) ** 3 *
    (0.1 - (α - 0.4) ** 3)
  );
}

/** Lobes up to this order are worked with the bore, those beyond it with the solid's closed form. */
const boredLobes = 40;

/**
 * The weights of the first lobes, n = 2, 4, 6, …, in a load p₀ |cos θ|, over (4/π) p₀: 1/3, 1/15, 1/35, … Their signs
 * alternate, and so does cos nθ a quarter turn from the load: there every lobe widens the pin.
 */
function lobes(count: number): readonly { readonly n: number; readonly weight: number }[] {
  return Array.from({ length: count }, (_, i) => {
    const n = 2 * i + 2;
    return { n, weight: 1 / (n ** 2 - 1) };
  });
}

/** Of what presses a solid pin, one part in a million is left out. */
const closeLobes = lobes(500);

/**
 * The same for a thick ring in a close bore, pressed from both sides by p₀ |cos θ|, p₀ = 2W/(π b l) on the
 * outer radius b: plane elasticity, lobe by lobe ({@link lobeMovement}), change of shape only (what the mean
 * pressure takes off the diameter is left out). Both sides are loaded along the whole pin, whereas eye and
 * bosses stand side by side; a solid pin is taken with a bore of a fiftieth of its diameter. In a thick ring the
 * lobes fall off as n⁻³ only; those beyond the fortieth do not feel the bore and have a closed form.
 */
export function ovalInBore(pin: OvalPin, load: number): number {
  const { pinDiameter, pinBore, pinLength, pinModulus } = pin;
  const α = Math.max(pinBore / pinDiameter, 0.02);
  const sum = closeLobes.reduce((total, { n, weight }) => {
    const movement = n <= boredLobes ? lobeMovement(α, n, poisson) : solidLobeMovement(n, poisson);
    return total + weight * movement;
  }, 0);
  // Both ends of the diameter move: 2 · (4/π) · 2/(π b l) · b/E.
  return ((16 / Math.PI ** 2) * sum * load) / (pinLength * pinModulus);
}

/**
 * The limit of {@link ovalInBore} for a thin wall, which only bends: q_n R⁴/(E I (n² − 1)²) for each pair of
 * lobes. Too small by a fifth at a bore ratio of 0.6 and by 4 % at 0.8.
 */
export function ovalByCosine(pin: OvalPin, load: number): number {
  // Terms fall as n⁻⁶: what twenty leave out is less than one part in ten million.
  const sum = lobes(20).reduce((total, { n, weight }) => total + weight / (n ** 2 - 1) ** 2, 0);
  return (16 / Math.PI ** 2) * sum * wallOf(pin).unit * load;
}

/**
 * The same for a ring under two opposite point loads: (2/π − 1/2) W R³/(E I) when thin (case 1 of the ring
 * table in Roark's Formulas, which prints 0.1366). An upper bound: no bore presses so narrowly.
 */
export function ovalByPoints(pin: OvalPin, load: number): number {
  return (2 / Math.PI - 0.5) * wallOf(pin).unit * load;
}

/**
 * How much that pin becomes flatter along the load [m]: (π/4 − 2/π) W R³/(E I) when thin (0.1488). With
 * `thick` the stretch and the shear of the wall are added as in the same table: k₁ π/4 − 2 k₂²/π with
 * k₂ = 1 − I/(A R²) and k₁ = k₂ + F E I/(G A R²).
 */
export function flatByPoints(pin: OvalPin, load: number, thick = false): number {
  const { unit, slender } = wallOf(pin);
  const stretch = thick ? slender ** 2 / 12 : 0;
  const k2 = 1 - stretch;
  const k1 = k2 + shearFactor * 2 * (1 + poisson) * stretch;
  return ((k1 * Math.PI) / 4 - (2 * k2 ** 2) / Math.PI) * unit * load;
}
