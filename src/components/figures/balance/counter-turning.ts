import { counterTurning, type CounterTurning } from '../../../core/balance/counter-turning.ts';
import { length, type Vector } from '../../../core/balance/vectors.ts';
import { short } from '../parts/short.ts';
import { numbersOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

const names = [
  'reciprocatingMass',
  'rotatingMass',
  'reciprocatingFraction',
  'rodsPerPin',
  'bankAngle',
  'stroke',
  'maxSpeed',
  'balanceRadius',
] as const;

type Values = FigureSet['input'];

/** The forces of a set's numbers at the crank angle [rad]; `undefined` while one is missing. */
export function forcesOf(input: Values, crankAngle: number): CounterTurning | undefined {
  const pin = numbersOf(input, names);
  return pin && counterTurning({ ...pin, crankAngle });
}

/**
 * The greatest force [N] that any arrow of a set shows in a turn; 0 while a number is missing.
 *
 * @param balanced with the counterweight and what it leaves; else with the pulls themselves
 */
export function greatestOf(input: Values, balanced: boolean): number {
  const still = forcesOf(input, 0);
  if (still === undefined) return 0;
  const { forward, backward, counterweight, path } = still;
  const arrows = balanced
    ? [length(counterweight), path.along, path.across]
    : // At its greatest a pull is twice its backward arrow.
      backward.map((arrow) => 2 * length(arrow));
  return Math.max(length(forward), ...backward.map(length), ...arrows);
}

/** The angle of a vector from `along` in the sense of rotation [rad], −π to π. */
export function angleOf({ along, across }: Vector): number {
  return Math.atan2(across, along);
}

/** A place in a drawing: x to the right, y down. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** The place at a distance from the centre, at an angle clockwise from straight up [rad]. */
export function spotAt(distance: number, angle: number): Spot {
  return { x: distance * Math.sin(angle), y: -distance * Math.cos(angle) };
}

/** The line of an arrow without its head, and the head as a closed shape; empty for an arrow too short to be seen. */
export function arrow(
  size: number,
  angle: number,
  half: number,
): { readonly line: string; readonly head: string } {
  if (size < 1) return { line: '', head: '' };
  const long = Math.min(2.8 * half, size);
  const tip = spotAt(size, angle);
  const foot = spotAt(size - long, angle);
  const side = spotAt(long / 2.8, angle + Math.PI / 2);
  const at = ({ x, y }: Spot): string => `${short(x)} ${short(y)}`;
  return {
    line: `M0 0L${at(foot)}`,
    head: `M${at(tip)}L${at({ x: foot.x + side.x, y: foot.y + side.y })}L${at({ x: foot.x - side.x, y: foot.y - side.y })}z`,
  };
}

const turn = 2 * Math.PI;

/**
 * Angles [rad] moved as little as needed so that neighbours stand `apart` or more, all round the circle; in the
 * order they came in. `apart` times their number must be less than a turn.
 */
export function spreadRound(angles: readonly number[], apart: number): readonly number[] {
  const places = angles
    .map((angle, at) => ({ at, angle: ((angle % turn) + turn) % turn }))
    .toSorted((one, other) => one.angle - other.angle || one.at - other.at);
  for (let round = 0; round < 60; round += 1) {
    for (const [i, place] of places.entries()) {
      const next = places[(i + 1) % places.length];
      if (next === undefined || next === place) continue;
      const gap = next.angle - place.angle + (i + 1 === places.length ? turn : 0);
      const lack = Math.max(0, apart - gap) / 2;
      place.angle -= lack;
      next.angle += lack;
    }
  }
  return places.toSorted((one, other) => one.at - other.at).map(({ angle }) => angle);
}
