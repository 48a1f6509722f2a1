import { counterTurning, type CounterTurning } from '../../../core/balance/counter-turning.ts';
import type { Vector } from '../../../core/balance/crank-throws.ts';
import type { PartialBalance } from '../../../core/balance/partial-balance.ts';
import { numberOf } from '../read.ts';
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

/** One crankpin as a set has it, at the crank angle [rad]; `undefined` while a number is missing. */
export function pinOf(set: FigureSet, crankAngle: number): PartialBalance | undefined {
  const pin: Partial<Record<(typeof names)[number], number>> = {};
  for (const name of names) {
    const value = numberOf(set.input, name);
    if (value === undefined) return undefined;
    pin[name] = value;
  }
  return { ...(pin as Record<(typeof names)[number], number>), crankAngle };
}

/** The forces of a set at the crank angle [rad]; `undefined` while a number is missing. */
export function forcesOf(set: FigureSet, crankAngle: number): CounterTurning | undefined {
  const pin = pinOf(set, crankAngle);
  return pin && counterTurning(pin);
}

/** The greatest force [N] that any arrow of the set shows in a turn, in either view. */
export function greatestOf(set: FigureSet): number {
  const still = forcesOf(set, 0);
  const first = numberOf(set.output, 'inertiaForce');
  if (still === undefined || first === undefined) return 0;
  const { forward, counterweight, path } = still;
  return Math.max(
    first,
    Math.abs(forward.along),
    Math.abs(counterweight.along),
    path.along,
    path.across,
  );
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
  const side = spotAt((half * long) / (2.8 * half), angle + Math.PI / 2);
  const at = ({ x, y }: Spot): string => `${x.toFixed(2)} ${y.toFixed(2)}`;
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
