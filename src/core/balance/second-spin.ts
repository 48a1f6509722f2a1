import { above, atLeast, finite } from '../refuse.ts';
import { withinTurn } from './unbalance-reading.ts';
import { added, direction, length, scaled, vectorAt } from './vectors.ts';

/** An unbalance [kg·m] with the angle [rad] of its heavy spot, from throw 1, clockwise seen from the nose. */
export interface HeavySpot {
  readonly size: number;
  readonly angle: number;
}

/** Two readings of one plane, before and after drilling, and what the drilling was to take. */
export interface TwoSpins {
  readonly first: HeavySpot;
  readonly second: HeavySpot;
  readonly asked: HeavySpot;
}

/** What the drilling did. */
export interface SpinResult {
  /** [kg·m] Taken off, and in which direction [rad]; the direction is undefined where nothing was. */
  readonly removed: number;
  readonly removedAngle: number | undefined;
  /** Taken off over asked, less one. */
  readonly amountError: number;
  /** [rad] Direction of what was taken off less that asked for, positive clockwise, at most half a turn. */
  readonly angleError: number | undefined;
  /** [kg·m] Of what was asked for: not taken in its direction (negative: too much), and taken 90° further. */
  readonly missed: number;
  readonly astray: number;
}

/**
 * What drilling took off between two spins: the first reading less the second, as arrows; set against what it was to
 * take.
 *
 * @param spins what was asked for has a size above 0
 * Source: own derivation.
 */
export function secondSpin({ first, second, asked }: TwoSpins): SpinResult {
  const wanted = vectorAt(asked.size, asked.angle);
  const removed = added(
    vectorAt(first.size, first.angle),
    scaled(vectorAt(second.size, second.angle), -1),
  );
  const size = length(removed);
  const along = (removed.along * wanted.along + removed.across * wanted.across) / asked.size;
  const across = (removed.across * wanted.along - removed.along * wanted.across) / asked.size;
  return {
    removed: size,
    removedAngle: size > 0 ? withinTurn(direction(removed)) : undefined,
    amountError: size / asked.size - 1,
    angleError: size > 0 ? Math.atan2(across, along) : undefined,
    missed: asked.size - along,
    astray: across,
  };
}

/**
 * Refuses readings that cannot be worked, by the names they have for a reader.
 *
 * @throws OutOfDomain for a first reading or an asked amount that is not above 0, a second one below 0, or an angle that
 *   is no number
 */
export function checkSpins(spins: {
  readonly unbalanceRead: number;
  readonly secondUnbalance: number;
  readonly secondAngle: number;
  readonly askedUnbalance?: number | undefined;
  readonly askedAngle?: number | undefined;
}): void {
  const { askedUnbalance, askedAngle } = spins;
  above(spins, 'unbalanceRead');
  atLeast(spins, 'secondUnbalance');
  finite(spins, 'secondAngle');
  if (askedUnbalance !== undefined) above({ askedUnbalance }, 'askedUnbalance');
  if (askedAngle !== undefined) finite({ askedAngle }, 'askedAngle');
}
