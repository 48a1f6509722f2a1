import { above, refusal } from '../refuse.ts';
import { secondBank, type Throw } from './crank-throws.ts';

/** More cylinders than any engine has; a longer list is a mistake. */
export const mostCylinders = 64;

/** One cylinder, with the throw that its rod hangs on. Cylinders of one engine may differ in all of it. */
export interface Cylinder {
  /** [rad] Of the throw at crank angle zero, in the sense of rotation. */
  readonly angle: number;
  /** [rad] Of the bore, from the same line in the same sense. */
  readonly bank: number;
  /** [m] Along the crank from its middle, positive towards the flywheel. */
  readonly position: number;
  /** [kg] */
  readonly reciprocatingMass: number;
  /** [m] Twice the throw. */
  readonly stroke: number;
  /** [m] */
  readonly rodLength: number;
}

/**
 * The cylinders of a layout, alike but for what reciprocates in those of its second bank: places in pin spacings become
 * metres.
 *
 * @param alike masses [kg] and lengths [m]; `partnerReciprocating` is what a cylinder of the second bank has more
 * @throws OutOfDomain for a spacing not above zero, and for a second bank with nothing left that reciprocates
 */
export function cylindersOf(
  throws: readonly Throw[],
  alike: {
    readonly reciprocatingMass: number;
    readonly partnerReciprocating?: number | undefined;
    readonly stroke: number;
    readonly rodLength: number;
    readonly cylinderSpacing: number;
  },
): readonly Cylinder[] {
  const spacing = above(alike, 'cylinderSpacing');
  const { reciprocatingMass, stroke, rodLength } = alike;
  const second = reciprocatingMass + heavierBy(alike);
  const other = secondBank(throws);
  return throws.flatMap(({ angle, position, banks }) =>
    banks.map((bank) => ({
      angle,
      bank,
      position: position * spacing,
      reciprocatingMass: bank === other ? second : reciprocatingMass,
      stroke,
      rodLength,
    })),
  );
}

/**
 * [kg] How much more reciprocates in a cylinder of the second bank: 0 where nothing is said of it.
 *
 * @throws OutOfDomain for a mass not above zero, and where nothing would be left there
 */
export function heavierBy(masses: {
  readonly reciprocatingMass: number;
  readonly partnerReciprocating?: number | undefined;
}): number {
  const reciprocatingMass = above(masses, 'reciprocatingMass');
  const { partnerReciprocating = 0 } = masses;
  return above(
    { partnerReciprocating },
    'partnerReciprocating',
    -reciprocatingMass,
    'all that reciprocates in the first bank',
  );
}

/**
 * Refuses a list of cylinders that is no engine.
 *
 * @throws OutOfDomain for no cylinder, or more than {@link mostCylinders}; RangeError for two in one place, or a place
 * that is no number: nobody can enter these
 */
export function checkCylinders(list: readonly Cylinder[]): void {
  const engine = { cylinders: list.length };
  if (list.length < 1) throw refusal(engine, 'cylinders', 'at least', 1, 'one cylinder');
  if (list.length > mostCylinders) throw refusal(engine, 'cylinders', 'at most', mostCylinders);
  for (const [at, { angle, bank, position }] of list.entries()) {
    if (![angle, bank, position].every(Number.isFinite))
      throw new RangeError('Throw angle, bank and place of a cylinder must be finite numbers.');
    const isSame = (other: Cylinder): boolean =>
      other.position === position && Math.abs(Math.sin((other.bank - bank) / 2)) < 1e-9;
    if (list.slice(0, at).some(isSame))
      throw new RangeError('Two cylinders stand in the same bank at the same place.');
  }
}
