import { above, atLeast, atMost } from '../refuse.ts';
import {
  axialDepth,
  axialHole,
  type Drill,
  type Face,
  fullDiameterFrom,
  type HoleCut,
  pointLength,
  radialDepth,
  radialHole,
  type Rim,
} from './drilled-hole.ts';
import {
  axialSpacing,
  axialWall,
  type Fan,
  hair,
  placeFan,
  radialSpacing,
  radialWall,
  spreadFactor,
} from './hole-fan.ts';

/** From the rim towards the shaft, or from a face parallel to it. */
export type HoleKind = 'radial' | 'axial';

/** What is to be taken off, with what, and where it may be taken. Angles as in {@link Fan}. */
export interface DrillingInput extends Drill, Rim, Face, Fan {
  readonly holeKind: HoleKind;
  /** [kg·m] */
  readonly unbalanceRead: number;
  /** [rad] */
  readonly heavyAngle: number;
  /** [m] Of the counterweight, along the shaft. */
  readonly counterweightWidth: number;
  /** [m] Of the full diameter. */
  readonly depthLimit: number;
  /** [m] No hole may come nearer to the axis: journals, fillets and oil ways lie inside. */
  readonly keepOutRadius: number;
  /** [m] Metal to be left between holes, and between a hole and a face or the rim. */
  readonly holeWall: number;
}

/** Equal holes, and what they leave. */
export interface DrillingPlan {
  /** [m] Of the full diameter. */
  readonly depth: number;
  /** [m] Of the tip of the point. */
  readonly tipDepth: number;
  /** What one hole takes. */
  readonly hole: HoleCut;
  /** What of n holes is left because they do not all stand in one direction. */
  readonly spread: number;
  /** [rad] Middle of the holes, and how far from the heavy spot it had to be set. */
  readonly middle: number;
  readonly aside: number;
  /** [kg·m] All holes together, in the direction of their middle. */
  readonly taken: number;
  /** [kg·m] The most that they could take within the limit of depth. */
  readonly most: number;
  /** [kg·m] What stays: in the direction of the middle of the holes, and 90° further. */
  readonly leftAlong: number;
  readonly leftAcross: number;
  /** [m] Least metal between two holes; undefined for one hole. */
  readonly wall: number | undefined;
}

/** A hole of one kind with this drill in this counterweight. */
interface Way {
  /** [m] The least depth and the greatest. */
  readonly least: number;
  readonly deepest: number;
  cut(depth: number): HoleCut;
  depthFor(unbalance: number): number;
  /** [m] Metal between neighbours at a depth, and the spacing [rad] that leaves what is wanted. */
  wall(depth: number): number;
  spacing(depth: number): number;
}

function radialWay(input: DrillingInput): Way {
  const tip = pointLength(input);
  const radius = above(input, 'counterweightRadius');
  const half = input.holeDiameter / 2;
  const walls = 2 * atLeast(input, 'holeWall');
  above(input, 'counterweightWidth', walls, 'the metal to be left on both sides');
  atMost(
    input,
    'holeDiameter',
    input.counterweightWidth - walls + hair,
    'the width of the counterweight less the metal to be left on both sides',
  );
  const least = fullDiameterFrom(input, input);
  atLeast(input, 'depthLimit', least, 'the depth at which the hole is round');
  const deepest = atMost(
    input,
    'depthLimit',
    radius - tip - atLeast(input, 'keepOutRadius') + hair,
    'the depth at which the point reaches the radius that no hole may reach',
  );
  const reach = (depth: number) => ({
    shoulder: radius - depth,
    tip: radius - depth - tip,
    half,
  });
  return {
    least,
    deepest,
    cut: (depth) => radialHole(input, input, depth),
    depthFor: (unbalance) => radialDepth(input, input, unbalance),
    wall: (depth) => radialWall(reach(depth), input.holeSpacing),
    spacing: (depth) => radialSpacing(reach(depth), input.holeWall),
  };
}

function axialWay(input: DrillingInput): Way {
  const tip = pointLength(input);
  const half = input.holeDiameter / 2;
  const wall = atLeast(input, 'holeWall');
  const radius = atLeast(
    input,
    'axialHoleRadius',
    atLeast(input, 'keepOutRadius') + half - hair,
    'the radius that no hole may reach, and half the drill',
  );
  atMost(
    input,
    'axialHoleRadius',
    above(input, 'counterweightRadius') - half - wall + hair,
    'the rim’s radius less half the drill and the metal to be left',
  );
  const inside = above(input, 'counterweightWidth', tip, 'the length of the drill’s point') - tip;
  return {
    least: 0,
    deepest: Math.min(atLeast(input, 'depthLimit'), inside),
    cut: (depth) => axialHole(input, input, depth),
    depthFor: (unbalance) => axialDepth(input, input, unbalance),
    wall: () => axialWall(radius, half, input.holeSpacing),
    spacing: () => axialSpacing(radius, half, wall),
  };
}

/**
 * Equal holes that take an unbalance out of a counterweight: their depth, where they stand, and what they leave.
 *
 * They stand about the heavy spot, or as near to it as the allowed angle lets them; there they take the part of the
 * unbalance that points their way. Where that would need more than the limit of depth, they go to the limit and the
 * rest stays.
 *
 * @throws OutOfDomain where a hole would leave the rim or reach a journal, holes would meet or want more than the allowed
 *   angle, the heavy spot stands on the other side of the crank, or so little is wanted that a hole would not be round
 * Source: own derivation.
 */
export function counterweightDrilling(input: DrillingInput): DrillingPlan {
  const way = input.holeKind === 'radial' ? radialWay(input) : axialWay(input);
  const spread = spreadFactor(input);
  const { middle, aside } = placeFan(input, input);
  const together = input.holeCount * spread;
  const facing = above(input, 'unbalanceRead') * Math.cos(aside);
  atLeast(
    input,
    'unbalanceRead',
    (together * way.cut(way.least).unbalance) / Math.cos(aside),
    'what these holes take as soon as they are round',
  );
  const wanted = Math.max(way.least, way.depthFor(facing / together));
  const depth = Math.min(wanted, way.deepest);
  if (input.holeCount > 1)
    atLeast(
      input,
      'holeSpacing',
      way.spacing(depth),
      'the spacing that leaves the metal wanted between holes of this depth',
    );
  const hole = way.cut(depth);
  const taken = together * hole.unbalance;
  return {
    depth,
    tipDepth: depth + pointLength(input),
    hole,
    spread,
    middle,
    aside,
    taken,
    most: together * way.cut(way.deepest).unbalance,
    // What was solved for is taken whole; only rounding would be left of it.
    leftAlong: wanted > way.deepest ? facing - taken : 0,
    leftAcross: -input.unbalanceRead * Math.sin(aside) + 0,
    wall: input.holeCount > 1 ? way.wall(depth) : undefined,
  };
}
