import { added, direction, length, sumOf, turned, type Vector } from './vectors.ts';

/** How often in a turn a force comes and goes: 1 the primary, 2 the secondary. */
export type Order = 1 | 2;

/** A straight-line pull of one cylinder: its throw and its bank [rad], and its greatest size, signed. */
export interface Pull {
  /** Of the throw at crank angle zero, in the sense of rotation. */
  readonly angle: number;
  readonly bank: number;
  readonly size: number;
}

/**
 * What one order of a force or a couple is made of: a vector that turns with the crank and one that turns against it,
 * each `order` times as fast. Both as they stand at crank angle zero.
 */
export interface TurningParts {
  readonly forward: Vector;
  readonly backward: Vector;
}

/**
 * Straight-line pulls of one order as their two turning parts. With the crank at θ, throw at α and bank at β the piston
 * pulls with P cos n(θ + α − β) along β. That is ½P at the angle nθ + nα − (n − 1)β and ½P at (n + 1)β − nα − nθ.
 *
 * @param weights what turns with the forward part besides, each whole: of order 1 the weights on the crank
 * Source: T. Bevan, The Theory of Machines (2005), ch. 14 (direct and reverse cranks); own derivation for n = 2.
 */
export function turningParts(
  pulls: readonly Pull[],
  order: Order,
  weights: readonly { readonly size: number; readonly angle: number }[] = [],
): TurningParts {
  const halves = pulls.map(({ angle, bank, size }) => ({
    size: size / 2,
    angle: order * angle - (order - 1) * bank,
  }));
  return {
    forward: sumOf([...halves, ...weights], ({ size, angle }) => [size, angle]),
    backward: sumOf(pulls, ({ angle, bank, size }) => [
      size / 2,
      (order + 1) * bank - order * angle,
    ]),
  };
}

/** The vector that both parts make with the crank at an angle [rad]. */
export function partsAt(parts: TurningParts, order: Order, crankAngle: number): Vector {
  return added(
    turned(parts.forward, order * crankAngle),
    turned(parts.backward, -order * crankAngle),
  );
}

/** The ellipse that the tip of a vector goes round. */
export interface Path {
  /** The half axes: the vector at its greatest and at its least. */
  readonly most: number;
  readonly least: number;
  /** [rad] Of the longer axis; undefined where the path is a circle or nothing. */
  readonly direction: number | undefined;
}

/**
 * The path of two parts that turn against each other. They meet twice in a turn of theirs, at the mean of their angles,
 * and stand opposite twice: half axes |A| + |B| and ||A| − |B||.
 */
export function pathOf({ forward, backward }: TurningParts): Path {
  const [ahead, against] = [length(forward), length(backward)];
  return {
    most: ahead + against,
    least: Math.abs(ahead - against),
    direction:
      ahead === 0 || against === 0 ? undefined : (direction(forward) + direction(backward)) / 2,
  };
}
