import { fraction } from '../refuse.ts';
import { layoutParts, type Throw } from './crank-throws.ts';
import { pathOf, type Path, type TurningParts } from './turning-parts.ts';
import { length, scaled } from './vectors.ts';

/** The primary shaking of a layout: force in F₁ = m_rec r ω², couple in that times the pin spacing. */
export interface PrimaryShaking<T> {
  readonly force: T;
  readonly couple: T;
}

/**
 * The primary parts that are left when counterweights carry the balance factor f, 0 to 1, of every reciprocating mass:
 * (1 − 2f) times the part that rotates forward, and all of the part that rotates backward.
 *
 * All cylinders alike; what rotates with the pins is balanced whole.
 * @throws OutOfDomain for f outside 0 to 1, and when there is no throw
 * Source: own derivation from {@link layoutParts}, after T. Bevan, The Theory of Machines, ch. 14.
 */
export function partsLeft(
  throws: readonly Throw[],
  balance: { readonly reciprocatingFraction: number },
): PrimaryShaking<TurningParts> {
  const rest = 1 - 2 * fraction(balance, 'reciprocatingFraction');
  const { force, couple } = layoutParts(throws, 1);
  const left = ({ forward, backward }: TurningParts): TurningParts => ({
    forward: scaled(forward, rest),
    backward,
  });
  return { force: left(force), couple: left(couple) };
}

/** The ellipses that the tips of {@link partsLeft} go round in a turn. Throws as they do. */
export function factorLeft(
  throws: readonly Throw[],
  balance: { readonly reciprocatingFraction: number },
): PrimaryShaking<Path> {
  const { force, couple } = partsLeft(throws, balance);
  return { force: pathOf(force), couple: pathOf(couple) };
}

/**
 * The balance factor, 0 to ½, with which the two parts left are of one size, so that they add along one line and cancel
 * across it: ½(1 − |backward|/|forward|). One less this factor does the same for the line across.
 *
 * @param parts without counterweights
 * @returns undefined where nothing rotates backward, and where more does than forward: then no factor leaves a line
 * Source: own derivation.
 */
export function lineFactor({ forward, backward }: TurningParts): number | undefined {
  const [ahead, against] = [length(forward), length(backward)];
  // Equal parts may differ by what rounding leaves of their sums.
  if (against === 0 || against > ahead * (1 + 1e-12)) return undefined;
  return Math.max(0, (1 - against / ahead) / 2);
}
