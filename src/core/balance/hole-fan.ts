import { above, atLeast, atMost, finite, refusal } from '../refuse.ts';

/** Holes side by side on one counterweight, all alike. Angles in rad, from throw 1, clockwise seen from the nose. */
export interface Fan {
  readonly holeCount: number;
  /** Between the axes of neighbours. */
  readonly holeSpacing: number;
  /** The middle of the counterweight. */
  readonly counterweightAngle: number;
  /** How far to either side of that middle the axis of a hole may stand. */
  readonly holeAngleLimit: number;
}

/** Where the holes come to stand. */
export interface FanPlace {
  /** [rad] The middle of the holes, within half a turn of the middle of the counterweight. */
  readonly middle: number;
  /** [rad] How far that is from the heavy spot, positive clockwise; 0 where there is room for them about it. */
  readonly aside: number;
}

/** [m] What just fits is taken: a sum of numbers as they were typed may miss its limit by rounding. */
export const hair = 1e-9;

/** More holes than this in one counterweight nobody drills. */
const mostHoles = 12;

/**
 * What is left of n equal arrows that stand β apart, as a share of n times one: sin(nβ/2) / (n sin(β/2)).
 *
 * @throws OutOfDomain for a count that is not a whole number from 1 to 12, or a spacing that is not above 0
 */
export function spreadFactor(fan: Pick<Fan, 'holeCount' | 'holeSpacing'>): number {
  const count = atLeast(fan, 'holeCount', 1);
  atMost(fan, 'holeCount', mostHoles);
  if (!Number.isInteger(count))
    throw refusal(fan, 'holeCount', 'at most', Math.floor(count), 'a whole number of holes');
  const half = above(fan, 'holeSpacing') / 2;
  return count === 1 ? 1 : Math.sin(count * half) / (count * Math.sin(half));
}

/**
 * The holes about the heavy spot, or as near to it as the allowed angle lets them stand.
 *
 * @throws OutOfDomain where the holes need more than the allowed angle, or the heavy spot stands a quarter turn or more
 *   from the middle of the counterweight: holes in it would then make the unbalance no smaller
 */
export function placeFan(fan: Fan, spot: { readonly heavyAngle: number }): FanPlace {
  const limit = atLeast(fan, 'holeAngleLimit');
  const gaps = fan.holeCount - 1;
  if (gaps > 0)
    atMost(fan, 'holeSpacing', (2 * limit) / gaps, 'what the allowed angle has room for');
  const away = finite(spot, 'heavyAngle') - finite(fan, 'counterweightAngle');
  const turned = Math.atan2(Math.sin(away), Math.cos(away));
  if (!(Math.cos(away) > 1e-12)) {
    // The middle as it stands nearest to the heavy spot, whatever whole turns lie between the numbers.
    const middle = spot.heavyAngle - turned;
    const quarter = Math.PI / 2;
    throw turned < 0
      ? refusal(
          spot,
          'heavyAngle',
          'greater than',
          middle - quarter,
          'the middle of the counterweight less a quarter turn; drill the one on the heavy side, and give its middle',
        )
      : refusal(
          spot,
          'heavyAngle',
          'less than',
          middle + quarter,
          'the middle of the counterweight and a quarter turn; drill the one on the heavy side, and give its middle',
        );
  }
  const room = Math.max(0, limit - (gaps * fan.holeSpacing) / 2);
  const within = Math.max(-room, Math.min(room, turned));
  return { middle: fan.counterweightAngle + within, aside: within - turned };
}

/** The two places [m] where neighbours come nearest: the shoulder, `half` thick about the axis, and the tip of the point. */
export interface RadialReach {
  /** Radius of the shoulder, about the axis of the shaft. */
  readonly shoulder: number;
  readonly tip: number;
  /** Half the diameter. */
  readonly half: number;
}

/**
 * The least metal [m] between two radial holes whose axes stand β apart: twice the distance of the nearer of shoulder
 * and tip from the plane midway between them. Negative where they meet.
 */
export function radialWall({ shoulder, tip, half }: RadialReach, spacing: number): number {
  const [sine, cosine] = [Math.sin(spacing / 2), Math.cos(spacing / 2)];
  return 2 * Math.min(shoulder * sine - half * cosine, tip * sine);
}

/** The spacing [rad] at which {@link radialWall} leaves a wall [m]; half a turn where none does. */
export function radialSpacing({ shoulder, tip, half }: RadialReach, wall: number): number {
  const sine = wall / 2 / Math.hypot(shoulder, half);
  const atShoulder = Math.atan2(half, shoulder) + Math.asin(Math.min(1, sine));
  const atTip = wall > 0 ? Math.asin(Math.min(1, wall / 2 / tip)) : 0;
  return Math.min(Math.PI, 2 * Math.max(atShoulder, atTip));
}

/** The least metal [m] between two holes parallel to the shaft at a radius [m], a spacing [rad] apart; negative where they meet. */
export function axialWall(radius: number, half: number, spacing: number): number {
  return 2 * (radius * Math.sin(spacing / 2) - half);
}

/** The spacing [rad] at which {@link axialWall} leaves a wall [m]; half a turn where none does. */
export function axialSpacing(radius: number, half: number, wall: number): number {
  return 2 * Math.asin(Math.min(1, (wall / 2 + half) / radius));
}
