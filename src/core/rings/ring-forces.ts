import type { RingPack } from './ring-pack.ts';

/**
 * Radial gas pressure on the bore [Pa]: pressure behind less the mean on the face. The face touches at a
 * height that leaves the share κ_f below: above it stands the cylinder's pressure, below it the second
 * land's. Positive presses the ring to the bore; negative lifts it off, against its tension.
 */
export function netGas(
  pack: Pick<RingPack, 'faceFactor'>,
  cylinder: number,
  behind: number,
  land: number,
): number {
  return behind - (1 - pack.faceFactor) * cylinder - pack.faceFactor * land;
}

/** Radial force [N] all round the bore, tension and gas together; zero once gas would lift the ring off. */
export function radialForce(
  pack: RingPack,
  cylinder: number,
  behind: number,
  land: number,
): number {
  return Math.max(0, pack.faceArea * (pack.tensionPressure + netGas(pack, cylinder, behind, land)));
}

/**
 * Gas force [N] that presses the ring down in its groove, at `lift` [m] over the lower flank.
 *
 * The upper side sees the cylinder's pressure at its outer edge and the pressure behind at its inner one, the
 * underside the second land's and the pressure behind. An open flank takes their mean. A closed one takes the
 * outer pressure for the share κ_a of its width: one where it seals at the inner edge, a half for a straight
 * fall across it. Between the flanks the share changes in step with the height, so that nothing jumps.
 */
export function axialGas(
  pack: RingPack,
  cylinder: number,
  behind: number,
  land: number,
  lift: number,
): number {
  const place = pack.clearance > 0 ? lift / pack.clearance : 0;
  const spread = pack.flankFactor - 0.5;
  const lower = pack.flankFactor - spread * place;
  const upper = 0.5 + spread * place;
  // A·[(p_b + u(p_1 − p_b)) − (p_b + l(p_2 − p_b))]
  return pack.sideArea * (upper * (cylinder - behind) + lower * (behind - land));
}
