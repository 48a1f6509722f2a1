import { above, atLeast, below } from '../refuse.ts';

/** One throw of a crank: half a main journal, web, crankpin, web, half a main journal. Lengths in m. */
export interface ThrowShape {
  readonly stroke: number;
  readonly mainDiameter: number;
  /** Of a bore through the main journal; 0 where it is solid. */
  readonly mainBore: number;
  /** One whole main journal between its webs. */
  readonly mainLength: number;
  readonly crankpinDiameter: number;
  readonly crankpinBore: number;
  /** Between its webs. */
  readonly crankpinLength: number;
  /** Along the shaft. */
  readonly crankWebThickness: number;
  /** Across the web, square to the throw. */
  readonly crankWebWidth: number;
}

/** Lengths [m] of a plain shaft as thick as the main journal that twist as much as the throw. */
export interface EquivalentLengths {
  readonly kerWilson: number;
  readonly carter: number;
}

/**
 * What one throw amounts to as a length of plain solid shaft of the main journal’s diameter, by two formulas fitted to
 * twisted cranks. D is that diameter:
 * - Ker Wilson: D⁴[(l_m + 0.4 D_m)/(D_m⁴ − d_m⁴) + (l_p + 0.4 D_p)/(D_p⁴ − d_p⁴) + (r − 0.2(D_m + D_p))/(t w³)];
 * - Carter: D⁴[(l_m + 0.8 t)/(D_m⁴ − d_m⁴) + 0.75 l_p/(D_p⁴ − d_p⁴) + 1.5 r/(t w³)].
 *
 * Both were made for cranks with little overlap and plain webs; a modern crank with counterweights and overlap may be
 * off by 10 to 30 per cent.
 * @throws OutOfDomain for a dimension not above zero, a bore below zero or not inside its journal, and a stroke so short
 * that Ker Wilson’s web has no length left
 * Source: W. Ker Wilson, Practical Solution of Torsional Vibration Problems, vol. 1; B. C. Carter, as given there. Both
 * from memory.
 */
export function equivalentLengths(shape: ThrowShape): EquivalentLengths {
  const D = above(shape, 'mainDiameter');
  atLeast(shape, 'mainBore');
  const d = below(shape, 'mainBore', D, 'the main journal');
  const Dp = above(shape, 'crankpinDiameter');
  atLeast(shape, 'crankpinBore');
  const dp = below(shape, 'crankpinBore', Dp, 'the crankpin');
  const r = above(shape, 'stroke', 0.4 * (D + Dp), 'two fifths of both journals’ diameters') / 2;
  const lm = above(shape, 'mainLength');
  const lp = above(shape, 'crankpinLength');
  const t = above(shape, 'crankWebThickness');
  const w = above(shape, 'crankWebWidth');
  // As a share of the solid main journal, so that nothing grows to a fourth power and shrinks again.
  const main = 1 - (d / D) ** 4;
  const pin = (Dp / D) ** 4 * (1 - (dp / Dp) ** 4);
  const web = (t / D) * (w / D) ** 3;
  return {
    kerWilson: (lm + 0.4 * D) / main + (lp + 0.4 * Dp) / pin + (r - 0.2 * (D + Dp)) / web,
    carter: (lm + 0.8 * t) / main + (0.75 * lp) / pin + (1.5 * r) / web,
  };
}

/**
 * Torsional stiffness [N·m/rad] of a plain solid shaft: G π D⁴/(32 L), from its shear modulus [Pa], diameter and
 * length [m].
 *
 * @throws OutOfDomain for a modulus or a diameter not above zero; RangeError for such a length, which no reader enters
 */
export function shaftStiffness(
  shaft: { readonly crankShearModulus: number; readonly mainDiameter: number },
  length: number,
): number {
  if (!(length > 0)) throw new RangeError(`a shaft must have a length; it is ${length}`);
  const modulus = above(shaft, 'crankShearModulus');
  const D = above(shaft, 'mainDiameter');
  return (modulus * Math.PI * D ** 4) / (32 * length);
}
