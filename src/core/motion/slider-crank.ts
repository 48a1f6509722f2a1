import { above, finite, type OutOfDomain, refusal } from '../refuse.ts';

/**
 * A crank, its rod and the line its piston runs on. Lengths in m.
 *
 * `stroke` is twice the throw, whatever the offsets (the piston then travels a little further).
 * The crank is seen from its nose and turns clockwise, the cylinder stands upward. `boreOffset` is positive
 * to the right, where the crankpin goes after TDC; `pinOffset` is the pin's place in the piston, positive
 * to the left, towards the major thrust side. Absent offsets are zero.
 */
export interface SliderCrank {
  readonly stroke: number;
  readonly rodLength: number;
  readonly boreOffset?: number | undefined;
  readonly pinOffset?: number | undefined;
}

/**
 * The constants of one linkage, made once and used at every angle. `r` throw, `l` rod length, `e` distance
 * [m] of the pin's path to the right of the crank axis, `throwRatio` = r/l (λ in the books and inside the
 * functions), `psiTop` [rad] the crank's angle from the line of the bore, clockwise, when the piston is highest.
 */
export interface Linkage {
  readonly r: number;
  readonly l: number;
  readonly e: number;
  readonly throwRatio: number;
  readonly psiTop: number;
}

/**
 * Checks a linkage and works out its constants. The rod must be longer than the throw and the offset
 * together, or the crank cannot turn full circle.
 *
 * Throws OutOfDomain naming `stroke` or `rodLength`; and the greater of `boreOffset` and `pinOffset` where the
 * offset alone passes the throw, since then it is not the rod that is wrong.
 */
export function linkage({
  stroke,
  rodLength,
  boreOffset = 0,
  pinOffset = 0,
}: SliderCrank): Linkage {
  const crank = { stroke, rodLength, boreOffset, pinOffset };
  const r = above(crank, 'stroke') / 2;
  const l = above(crank, 'rodLength');
  const e = finite(crank, 'boreOffset') - finite(crank, 'pinOffset');
  const reach = r + Math.abs(e);
  if (l > r && l <= reach && Math.abs(e) > r) throw offsetTooGreat(crank, l - r);
  const limitName = e === 0 ? 'half the stroke' : 'half the stroke plus the offset';
  above(crank, 'rodLength', reach, limitName);
  return { r, l, e, throwRatio: r / l, psiTop: Math.asin(e / (l + r)) };
}

/** Blames the greater of the two offsets; `room` [m] is the rod length less the throw. */
function offsetTooGreat(
  offsets: { readonly boreOffset: number; readonly pinOffset: number },
  room: number,
): OutOfDomain {
  const { boreOffset, pinOffset } = offsets;
  const [name, value, other] =
    Math.abs(boreOffset) > Math.abs(pinOffset)
      ? (['boreOffset', boreOffset, pinOffset] as const)
      : (['pinOffset', pinOffset, boreOffset] as const);
  const sign = Math.sign(value);
  return refusal(
    offsets,
    name,
    sign > 0 ? 'less than' : 'greater than',
    other + sign * room,
    other === 0
      ? `${sign > 0 ? '' : 'minus '}the rod length less half the stroke`
      : 'what the rod length, half the stroke and the other offset leave',
  );
}

/**
 * A linkage at one angle, per unit of throw and of crank speed. All dimensionless but the angles [rad].
 * `psi` crank from the line of the bore; `phi` rod from the line of the bore, positive with the crankpin
 * to the right of the piston pin; `delta` half of what the rod has turned since TDC;
 * `slope` piston speed ÷ rω, positive downward; `bend` piston acceleration ÷ rω² at constant crank speed,
 * positive downward; `turn` rod angular speed ÷ ω.
 */
export interface Posture {
  readonly theta: number;
  readonly psi: number;
  readonly phi: number;
  readonly delta: number;
  readonly cosPhi: number;
  readonly slope: number;
  readonly bend: number;
  readonly turn: number;
}

/**
 * The linkage at the crank angle `theta` [rad] from true TDC.
 *
 * From loop closure, l sin φ = r sin ψ − e. Sums of angles stand in place of differences of lengths: at TDC
 * rod and crank are in one line, φ = −ψ, so ψ + φ = θ + 2δ, and nothing nearly equal is subtracted.
 */
export function postureAt({ r, l, e, throwRatio: λ, psiTop }: Linkage, theta: number): Posture {
  const psi = psiTop + theta;
  const sinPhi = (r * Math.sin(psi) - e) / l;
  const cosPhi = Math.sqrt((1 - sinPhi) * (1 + sinPhi));
  const phi = Math.asin(sinPhi);
  const half = theta / 2;
  // sin φ − sin φ_TDC, both sides turned into products of half sums and half differences.
  const delta = Math.asin(
    (λ * Math.cos(psiTop + half) * Math.sin(half)) / Math.cos((phi - psiTop) / 2),
  );
  const turn = (λ * Math.cos(psi)) / cosPhi;
  return {
    theta,
    psi,
    phi,
    delta,
    cosPhi,
    slope: Math.sin(theta + 2 * delta) / cosPhi,
    bend: Math.cos(theta + 2 * delta) / cosPhi + (turn * Math.cos(psi)) / (cosPhi * cosPhi),
    turn,
  };
}

/** How far the piston has come down from TDC, ÷ throw: 2 sin(θ/2) sin(θ/2 + δ) ÷ cos of the mean rod angle. */
export function descent({ psiTop }: Linkage, { theta, phi, delta }: Posture): number {
  return (2 * Math.sin(theta / 2) * Math.sin(theta / 2 + delta)) / Math.cos((phi - psiTop) / 2);
}

/** The derivative of {@link Posture.bend} by the crank angle: its zeros are the extremes of acceleration. */
export function bendSlope({ throwRatio: λ }: Linkage, { psi, phi, cosPhi, turn }: Posture): number {
  const sin = Math.sin(psi);
  const cos = Math.cos(psi);
  const secant = 1 / cosPhi;
  const tan = Math.sin(phi) * secant;
  return (
    -sin -
    turn * secant * secant * sin -
    tan * cos -
    2 * λ * cos * sin * secant ** 3 +
    3 * λ * cos * cos * tan * turn * secant ** 3
  );
}
