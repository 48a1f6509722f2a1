import { placesOf, throwSums, type Throw } from './crank-throws.ts';
import { factorLeft, type PrimaryShaking } from './factor-left.ts';

/** What hangs on the pins of a crank; known from its layout, before anything is weighed. */
export interface CrankPins {
  readonly cylinders: number;
  /** Rods on each pin, or on each half of a split pin; undefined where pins carry different numbers of them. */
  readonly rodsPerPin: number | undefined;
  /** Crankpins; the halves of a split pin count as one. */
  readonly pins: number;
  /** Places for a bobweight: crankpins, or halves of split pins. */
  readonly places: number;
  /** Bobweights that a balancing machine needs: one at every place, or 0 where equal ones cancel. */
  readonly bobweights: number;
  /** [rad] Between the two banks, 0 to π; 0 for one bank. Undefined for more, which stand all round. */
  readonly bankAngle: number | undefined;
}

/**
 * Counts what hangs on a crank. Throws at one place along the crank are the halves of a split pin.
 *
 * Bobweights are needed unless Σe^{iθ} and Σz e^{iθ} are both zero, and so are the same sums with every throw as often
 * as it has rods: then masses on all throws, whatever those of a throw and of a rod, are in static and in couple balance
 * by themselves. Rods that carry unlike masses are another case.
 * @throws OutOfDomain when there is no throw; RangeError for a throw without a rod
 * Source: own derivation from {@link throwSums}.
 */
export function crankPins(throws: readonly Throw[]): CrankPins {
  const byRod = throws.flatMap((one) => one.banks.map(() => one));
  const isCancelled = [throws, byRod]
    .flatMap((list) => Object.values(throwSums(list)))
    .every(({ along, across }) => along === 0 && across === 0);
  const rods = new Set(throws.map(({ banks }) => banks.length));
  if (rods.has(0)) throw new RangeError('Every throw of a layout carries at least one rod.');
  return {
    cylinders: byRod.length,
    rodsPerPin: rods.size === 1 ? Math.max(...rods) : undefined,
    pins: placesOf(throws).length,
    places: throws.length,
    bobweights: isCancelled ? 0 : throws.length,
    bankAngle: betweenBanks(throws),
  };
}

/** [rad] Between two banks the shorter way round, 0 for one; undefined for more. */
function betweenBanks(throws: readonly Throw[]): number | undefined {
  const [one = 0, other = one, ...more] = new Set(throws.flatMap(({ banks }) => banks));
  if (more.length > 0) return undefined;
  const between = Math.abs(other - one) % (2 * Math.PI);
  return between > Math.PI ? 2 * Math.PI - between : between;
}

/** Greatest in a turn: a force in F₁ = m_rec r ω², a couple in F₁ times the pin spacing. */
export type PrimaryLeft = PrimaryShaking<number>;

/**
 * The greatest primary shaking that {@link factorLeft} leaves: |1 − 2f| times the part that rotates forward, and all of
 * the part that rotates backward, which meet twice in a turn. It is least at f = ½, for every layout.
 *
 * @throws OutOfDomain for f outside 0 to 1, and when there is no throw
 */
export function primaryLeft(
  throws: readonly Throw[],
  balance: { readonly reciprocatingFraction: number },
): PrimaryLeft {
  const { force, couple } = factorLeft(throws, balance);
  return { force: force.most, couple: couple.most };
}

/**
 * What settles the balance factor of a layout:
 * - `none`: nothing primary shakes it, so that a factor changes nothing;
 * - `result`: nothing rotates backward, so that one half takes all there is;
 * - `choice`: something rotates backward and stays, whatever the factor.
 */
export type FactorBy = 'none' | 'result' | 'choice';

/** The half that counterweights of any layout carry when the greatest force and couple left are to be least. */
export const leastFactor = 0.5;

/** What settles the balance factor of a layout. Throws OutOfDomain when there is no throw. */
export function factorBy(throws: readonly Throw[]): FactorBy {
  const { force, couple } = primaryLeft(throws, { reciprocatingFraction: leastFactor });
  if (force > 0 || couple > 0) return 'choice';
  const whole = primaryLeft(throws, { reciprocatingFraction: 0 });
  return whole.force > 0 || whole.couple > 0 ? 'result' : 'none';
}
