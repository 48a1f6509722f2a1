import { above, below, finite, refusal } from '../refuse.ts';
import { turningParts, type Order, type TurningParts } from './turning-parts.ts';
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

/** The places along the crank at which anything of a list stands, from the nose, each once: halves of a split pin have one. */
export function placesOf(list: readonly { readonly position: number }[]): readonly number[] {
  return [...new Set(list.map(({ position }) => position))].sort((a, b) => a - b);
}

/** [rad] The second of the banks, in the order of the throws; undefined for an engine with one. */
export function secondBank(throws: readonly Throw[]): number | undefined {
  const [first, ...others] = throws.flatMap(({ banks }) => banks);
  return others.find((bank) => bank !== first);
}

/**
 * The shaking of a layout in one order, as turning parts: force in F₁ = m_rec r ω² (or F₂ = λF₁), couple in that times
 * the pin spacing, about the crank’s middle.
 *
 * Cylinders are alike but for those of the {@link secondBank}. Rods on one pin are taken in one plane. Counterweights
 * are absent.
 * @param second what reciprocates in a cylinder of the second bank, in that of any other
 * @throws OutOfDomain when there is no throw
 * Source: as {@link turningParts}.
 */
export function layoutParts(
  throws: readonly Throw[],
  order: Order,
  second = 1,
): { readonly force: TurningParts; readonly couple: TurningParts } {
  atLeastOne(throws);
  const other = secondBank(throws);
  const parts = (size: (one: Throw) => number): TurningParts =>
    turningParts(
      throws.flatMap((one) =>
        one.banks.map((bank) => ({
          angle: one.angle,
          bank,
          size: (bank === other ? second : 1) * size(one),
        })),
      ),
      order,
    );
  return { force: parts(() => 1), couple: parts(({ position }) => position) };
}

/** The sizes of the primary {@link layoutParts}. Throws as they do. */
export function primaryParts(throws: readonly Throw[]): {
  readonly forward: { readonly force: number; readonly couple: number };
  readonly backward: { readonly force: number; readonly couple: number };
} {
  const { force, couple } = layoutParts(throws, 1);
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
