import { above, atLeast } from '../refuse.ts';
import { placesOf, type Throw } from './crank-throws.ts';
import { against, type CrankWeight } from './crank-weights.ts';
import { atPlanes, type AtPlanes } from './moved-planes.ts';
import { length, sumOf, type Vector } from './vectors.ts';

/** A crank that was balanced for one bobweight on every pin and gets another. */
export interface ChangedCrank {
  /** [kg] On every pin, or half of a split pin, from now on. */
  readonly newBobweight: number;
  /** [kg] That it was balanced for. */
  readonly balancedBobweight: number;
  /** [m] Twice the throw. */
  readonly stroke: number;
  /** [m] From pin to pin along the crank. */
  readonly cylinderSpacing: number;
}

/** The same unbalance [kg·m] on every throw. Throws OutOfDomain for a spacing not above 0. */
export function onEveryThrow(
  throws: readonly Throw[],
  unbalance: number,
  crank: Pick<ChangedCrank, 'cylinderSpacing'>,
): readonly CrankWeight[] {
  const spacing = above(crank, 'cylinderSpacing');
  return throws.map(({ angle, position }) => ({ angle, position: position * spacing, unbalance }));
}

/**
 * [kg·m] The unbalance Δm r that a change of bobweight puts on every throw; heavy on the side of the pin where the
 * bobweight grows, opposite where it shrinks (then it is negative).
 *
 * @throws OutOfDomain for a bobweight below 0 or a stroke not above 0
 */
export function changeOnPin(
  crank: Pick<ChangedCrank, 'newBobweight' | 'balancedBobweight' | 'stroke'>,
): number {
  const change = atLeast(crank, 'newBobweight') - atLeast(crank, 'balancedBobweight');
  return (change * above(crank, 'stroke')) / 2;
}

/** {@link changeOnPin} on every throw. Throws as it does, and for a spacing not above 0. */
export function changeOnThrows(
  throws: readonly Throw[],
  crank: ChangedCrank,
): readonly CrankWeight[] {
  return onEveryThrow(throws, changeOnPin(crank), crank);
}

/** What two end planes must answer together, and what stays inside the crank where they answer all of it. */
export interface HeldAtEnds {
  readonly ends: AtPlanes;
  /** [kg·m²] The most that the crank is bent between them, over the square of the speed. */
  readonly bending: number;
}

/**
 * A change on the throws that counterweights in two end planes take whole. Every throw still pulls, the ends pull
 * against it, and the crank carries the one to the other: the greatest bending moment along the free crank, with no help
 * from any bearing. Loads that balance each other bend a beam alike wherever it is held.
 *
 * @throws OutOfDomain as {@link atPlanes}
 * Source: equilibrium of a free beam; own derivation.
 */
export function heldAtEnds(
  unbalances: readonly CrankWeight[],
  planes: { readonly planeA: number; readonly planeB: number },
): HeldAtEnds {
  const ends = atPlanes(unbalances, planes);
  return { ends, bending: greatestBending([...unbalances, ...against(ends, planes)]) };
}

/**
 * [kg·m²] The greatest bending moment, over ω², of loads that balance each other. Between two loads the moment is a
 * straight line in space, and its size is greatest at one of them.
 */
export function greatestBending(loads: readonly CrankWeight[]): number {
  const at = (place: number): number =>
    length(
      sumOf(
        loads.filter(({ position }) => position < place),
        ({ unbalance, angle, position }) => [unbalance * (place - position), angle],
      ),
    );
  return Math.max(0, ...loads.map(({ position }) => at(position)));
}

/**
 * [kg·m] The pull, over ω², on each main that stands halfway between two neighbouring pins, as if the crank were cut
 * through at every main: half of what either neighbour pulls, added as arrows. From the nose; none where all throws
 * stand at one place.
 *
 * Source: the statically determinate crank of the textbooks, each throw borne by its own two mains.
 */
export function pullsOnMiddleMains(unbalances: readonly CrankWeight[]): readonly Vector[] {
  const places = placesOf(unbalances);
  return places.slice(1).map((place, i) =>
    sumOf(
      unbalances.filter(({ position }) => position === place || position === places[i]),
      ({ unbalance, angle }) => [unbalance / 2, angle],
    ),
  );
}

/** [N] What an unbalance [kg·m] pulls at a speed [rad/s], and [N·m] what a bending [kg·m²] comes to. */
export function atSpeed(size: number, running: { readonly maxSpeed: number }): number {
  return size * atLeast(running, 'maxSpeed') ** 2;
}
