import { above, atLeast } from '../refuse.ts';

/**
 * The volume [m³] that all pistons sweep, π/4 B² S N, from bore and stroke [m]. The stroke is twice the throw; an
 * offset of the bore or the pin lengthens it by a few parts in 10⁵ and is left out.
 * @throws OutOfDomain for a bore or a stroke that is not above zero, or fewer than one cylinder
 * Source: geometry.
 */
export function displacement(engine: {
  readonly bore: number;
  readonly stroke: number;
  readonly cylinders: number;
}): number {
  const area = (Math.PI / 4) * above(engine, 'bore') ** 2;
  return area * above(engine, 'stroke') * atLeast(engine, 'cylinders', 1);
}

/**
 * The mean piston speed [m/s]: two strokes a turn, S ω/π, from the stroke [m] and the crank's speed [rad/s].
 * @throws OutOfDomain for a stroke that is not above zero, or a negative speed
 * Source: geometry.
 */
export function meanPistonSpeed(engine: {
  readonly stroke: number;
  readonly maxSpeed: number;
}): number {
  return (above(engine, 'stroke') * atLeast(engine, 'maxSpeed')) / Math.PI;
}

/**
 * By how much every inertia force at the over-rev speed exceeds that at the redline, as a share of the latter: with the
 * square of the speed, (n_over/n_red)² − 1. Negative where the over-rev speed is the lower one.
 * @throws OutOfDomain for a redline that is not above zero, or a negative over-rev speed
 * Source: centrifugal and reciprocating forces go with ω².
 */
export function overRevRise(engine: {
  readonly maxSpeed: number;
  readonly missedShiftSpeed: number;
}): number {
  return (atLeast(engine, 'missedShiftSpeed') / above(engine, 'maxSpeed')) ** 2 - 1;
}
