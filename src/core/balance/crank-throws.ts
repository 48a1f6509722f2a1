import { above, below, finite, refusal } from '../refuse.ts';
import { turningParts } from './turning-parts.ts';
import { inTwoPlanes } from './two-planes.ts';
import { length, scaled, sumOf, type Vector } from './vectors.ts';

/** One place where a bobweight is clamped: a pin, or half of a split pin. */
export interface Throw {
  /** [rad] From the first throw, in the sense of rotation. */
  readonly angle: number;
  /** Along the crank from its middle, in pin spacings; positive towards plane B. */
  readonly position: number;
  /** [rad] Bank of each rod on it, from the vertical, in the sense of rotation. */
  readonly banks: readonly number[];
}

/**
 * Unit throws added up: the force Σe^{iθ} and, about the crank's middle, the couple Σz e^{iθ} in pin
 * spacings. Both zero: equal bobweights on all pins cancel, and so does none at all.
 *
 * @throws OutOfDomain when there is no throw
 * Source: own derivation; the same sums give the table of free forces and moments in the Bosch Automotive
 * Handbook, "Reciprocating-piston engines".
 */
export function throwSums(throws: readonly Throw[]): { force: Vector; couple: Vector } {
  atLeastOne(throws);
  return {
    force: sumOf(throws, ({ angle }) => [1, angle]),
    couple: sumOf(throws, ({ angle, position }) => [position, angle]),
  };
}

/**
 * The primary shaking of equal cylinders, in F₁ = m_rec r ω² and F₁ times the pin spacing. Each rod's
 * straight-line force is ½ rotating with the crank and ½ rotating against it; the forward parts add at the
 * throw's own angle θ, the backward ones at 2β − θ, β being the rod's bank.
 *
 * Rods on one pin are taken in one plane. Counterweights are absent.
 * @throws OutOfDomain when there is no throw
 * Source: own derivation after T. Bevan, The Theory of Machines, ch. 14 (direct and reverse cranks).
 */
export function primaryParts(throws: readonly Throw[]): {
  readonly forward: { readonly force: number; readonly couple: number };
  readonly backward: { readonly force: number; readonly couple: number };
} {
  atLeastOne(throws);
  const force = turningParts(
    throws.flatMap(({ angle, banks }) => banks.map((bank) => ({ angle, bank, size: 1 }))),
    1,
  );
  const couple = turningParts(
    throws.flatMap(({ angle, position, banks }) =>
      banks.map((bank) => ({ angle, bank, size: position })),
    ),
    1,
  );
  return {
    forward: { force: length(force.forward), couple: length(couple.forward) },
    backward: { force: length(force.backward), couple: length(couple.backward) },
  };
}

/**
 * [kg·m] The unbalance in each end plane that the same mass Δm on every throw makes:
 * U_B = Δm r (a Σz e^{iθ} − z_A Σe^{iθ})/(z_B − z_A) and U_A = Δm r (z_B Σe^{iθ} − a Σz e^{iθ})/(z_B − z_A).
 *
 * Positions [m] from the crank's middle, B on the positive side. Rigid crank.
 * @throws OutOfDomain for a stroke or spacing not above zero, or planes in the wrong order
 * Source: own derivation; equilibrium of forces and of moments.
 */
export function planeUnbalance(
  throws: readonly Throw[],
  crank: {
    readonly bobweightError: number;
    readonly stroke: number;
    readonly cylinderSpacing: number;
    readonly planeA: number;
    readonly planeB: number;
  },
): { readonly atA: Vector; readonly atB: Vector } {
  const { force, couple } = throwSums(throws);
  const u = (finite(crank, 'bobweightError') * above(crank, 'stroke')) / 2;
  const a = above(crank, 'cylinderSpacing');
  const zB = finite(crank, 'planeB');
  const zA = below(crank, 'planeA', zB, 'the place of plane B');
  return inTwoPlanes({ force: scaled(force, u), couple: scaled(couple, u * a) }, { zA, zB });
}

function atLeastOne(throws: readonly Throw[]): void {
  const crank = { crankLayout: throws.length };
  if (throws.length < 1) throw refusal(crank, 'crankLayout', 'at least', 1, 'one throw');
}
