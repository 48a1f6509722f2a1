import { above, atLeast, below, refusal } from '../refuse.ts';

/** Standard gravity [m/s²], 3rd General Conference on Weights and Measures (1901). Places on earth differ by ±0.3 %. */
export const standardGravity = 9.80665;

/** Which way the part hangs. */
export type SwingRig = 'bifilar' | 'trifilar' | 'knife-edge';

/**
 * What was measured. `swingMass` kg; `swingTime` s for `swingCount` whole swings, to and fro.
 *
 * Bifilar and trifilar: two or three upright wires of length `swingWire` [m], each `swingSpacing` [m] from the
 * axis of the swing, which runs through the part's centre of gravity; trifilar with an optional platform of
 * its own mass [kg] and its own time of one swing when empty. Knife edge: the part swings as a pendulum,
 * `swingSpacing` from the edge to its centre of gravity.
 */
export interface Swing {
  readonly swingRig: SwingRig;
  readonly swingMass: number;
  readonly swingCount: number;
  readonly swingTime: number;
  readonly swingSpacing: number;
  /** Not used on the knife edge. */
  readonly swingWire: number;
  readonly platformMass?: number | undefined;
  /** Of as many swings, the platform empty. */
  readonly platformTime?: number | undefined;
}

/** The part's own inertia [kg·m²] about the axis through its centre of gravity, and what went into it. */
export interface SwungInertia {
  readonly inertia: number;
  /** √(I/m) [m]. */
  readonly gyration: number;
  /** All that swung, platform included [kg·m²]; on the knife edge about the edge. */
  readonly whole: number;
  /** What does not belong to the part [kg·m²]: the platform, or m h² on the knife edge. */
  readonly taken: number;
  /** Change of the inertia for one per cent more time [share]: above 2, the more so the more is taken off. */
  readonly timeSensitivity: number;
}

/**
 * Inertia from a timed swing.
 *
 * Wires: turned by a small angle φ the wires lean by s φ/l, and the weight pulls back with m g s φ/l at the
 * radius s, so that I = m g s² T²/(4π² l), for two wires as for three. Knife edge: I about the edge is
 * m g h T²/(4π²), and m h² of it is only distance (R. S. Khurmi, J. K. Gupta, Theory of Machines, 14th ed.,
 * ch. 4). Small swings: 10° either way lengthens the time by about 0.2 % and the inertia by 0.4 %.
 *
 * Neglected: air, the wires' mass and twist, a bifilar part not level or off its centre.
 *
 * Throws OutOfDomain for a mass, time, length or distance of zero, a platform given by half, and for a time
 * too short to be the part's (a platform that takes more than the whole, a pendulum faster than its own
 * length allows).
 */
export function benchSwing(swing: Swing): SwungInertia {
  const m = above(swing, 'swingMass');
  const n = above(swing, 'swingCount');
  const T = above(swing, 'swingTime') / n;
  const s = above(swing, 'swingSpacing');
  const g = standardGravity;
  if (swing.swingRig === 'knife-edge') {
    const least = 2 * Math.PI * Math.sqrt(s / g) * n;
    above(swing, 'swingTime', least, 'the time of a point mass hung that far down');
    return finish(m, m * g * s * (T / (2 * Math.PI)) ** 2, m * s * s);
  }
  const l = above(swing, 'swingWire');
  const perMass = (g * s * s) / l;
  const part = (mass: number, period: number): number =>
    mass * perMass * (period / (2 * Math.PI)) ** 2;
  const platform = swing.swingRig === 'trifilar' ? platformOf(swing) : undefined;
  if (platform === undefined) return finish(m, part(m, T), 0);
  const whole = part(m + platform.mass, T);
  const own = part(platform.mass, platform.period);
  if (whole <= own) {
    const least = n * platform.period * Math.sqrt(platform.mass / (m + platform.mass));
    above(swing, 'swingTime', least, 'what the platform alone explains');
  }
  return finish(m, whole, own);
}

/** Mass and time of the empty platform; undefined where there is none. */
function platformOf(swing: Swing): { readonly mass: number; readonly period: number } | undefined {
  // What was not entered weighs nothing: no platform. One with a mass must have swung for some time.
  const { platformMass = 0, platformTime = 0 } = swing;
  const mass = atLeast({ platformMass }, 'platformMass');
  if (mass === 0) return undefined;
  return { mass, period: above({ platformTime }, 'platformTime') / swing.swingCount };
}

function finish(mass: number, whole: number, taken: number): SwungInertia {
  const inertia = whole - taken;
  return {
    inertia,
    gyration: Math.sqrt(inertia / mass),
    whole,
    taken,
    timeSensitivity: (2 * whole) / inertia,
  };
}

/** A rod swung from each end in turn: distance of the two edges [m], times [s] of as many swings, mass [kg]. */
export interface TwoEndSwing {
  readonly rodMass: number;
  readonly edgeDistance: number;
  readonly rodSwingCount: number;
  readonly smallEndTime: number;
  readonly bigEndTime: number;
}

/** Centre of gravity and inertia of a rod swung from both ends. */
export interface TwoEndResult {
  /** From the small end's edge, and from the big end's, to the centre of gravity [m]. */
  readonly fromSmallEnd: number;
  readonly fromBigEnd: number;
  /** About the centre of gravity [kg·m²]. */
  readonly inertia: number;
  readonly gyration: number;
  /** Lengths [m] of the strings on which a point mass would swing in the two times. */
  readonly smallEndString: number;
  readonly bigEndString: number;
}

/**
 * Centre of gravity and inertia of a rod swung from each end: with L = g(T/2π)² for each edge,
 * k² = h₁(L₁ − h₁) = h₂(L₂ − h₂) and h₁ + h₂ = x give h₁ = x(L₂ − x)/(L₁ + L₂ − 2x) (R. S. Khurmi,
 * J. K. Gupta, Theory of Machines, 14th ed., ch. 4, Example 4.6). The ends need not be weighed.
 *
 * The nearer k² is to h₁h₂ the nearer both strings are to x, and the less the times say where the centre of
 * gravity lies; at k² = h₁h₂ they say nothing.
 *
 * Throws OutOfDomain for a mass, time or distance of zero, and for times that no one body between the two
 * edges gives: both strings must be shorter than x, or both longer, and together longer than x.
 */
export function twoEndSwing(swing: TwoEndSwing): TwoEndResult {
  const m = above(swing, 'rodMass');
  const x = above(swing, 'edgeDistance');
  const n = above(swing, 'rodSwingCount');
  const string = (time: number): number => standardGravity * (time / n / (2 * Math.PI)) ** 2;
  const timeOf = (length: number): number => 2 * Math.PI * n * Math.sqrt(length / standardGravity);
  const L1 = string(above(swing, 'smallEndTime'));
  const L2 = string(above(swing, 'bigEndTime'));
  const same = 'the time of a point mass hung as far away as the two edges are apart';
  if (L1 === x) throw refusal(swing, 'smallEndTime', 'less than', timeOf(x), same);
  if (L1 > x) above(swing, 'bigEndTime', timeOf(x), same);
  else {
    below(swing, 'bigEndTime', timeOf(x), same);
    above(
      swing,
      'bigEndTime',
      timeOf(x - L1),
      'what the small end’s time leaves for a rod of this length',
    );
  }
  const h1 = (x * (L2 - x)) / (L1 + L2 - 2 * x);
  const square = h1 * (L1 - h1);
  return {
    fromSmallEnd: h1,
    fromBigEnd: x - h1,
    inertia: m * square,
    gyration: Math.sqrt(square),
    smallEndString: L1,
    bigEndString: L2,
  };
}
