/** Gas and ring at one crank angle; filled in place, since a cycle takes thousands. */
export interface RingState {
  /** Pressures behind the ring and on the second land [Pa, absolute]. */
  behind: number;
  land: number;
  /** The ring's height over the lower flank [m], and how fast it rises there [m/s]. */
  lift: number;
  rise: number;
  /** Gas [kg] since the start of the cycle: from the cylinder, less what went back; to the crankcase. */
  inflow: number;
  outflow: number;
  /**
   * How far each pressure still hangs on what it and the other were at the start of the cycle (1 and 0 there),
   * every path as wide as it was: `behindOfLand` is ∂behind/∂(land at the start).
   */
  behindOfBehind: number;
  behindOfLand: number;
  landOfBehind: number;
  landOfLand: number;
}

/** The start of a cycle. */
export function startState(behind: number, land: number, lift = 0, rise = 0): RingState {
  return {
    behind,
    land,
    lift,
    rise,
    inflow: 0,
    outflow: 0,
    behindOfBehind: 1,
    behindOfLand: 0,
    landOfBehind: 0,
    landOfLand: 1,
  };
}

/** Copies a state into `to`. */
export function copyState(from: RingState, to: RingState): void {
  to.behind = from.behind;
  to.land = from.land;
  to.lift = from.lift;
  to.rise = from.rise;
  to.inflow = from.inflow;
  to.outflow = from.outflow;
  to.behindOfBehind = from.behindOfBehind;
  to.behindOfLand = from.behindOfLand;
  to.landOfBehind = from.landOfBehind;
  to.landOfLand = from.landOfLand;
}

/** Twice `fine` less `coarse`, into `to`. */
export function extrapolate(fine: RingState, coarse: RingState, to: RingState): void {
  to.behind = 2 * fine.behind - coarse.behind;
  to.land = 2 * fine.land - coarse.land;
  to.lift = 2 * fine.lift - coarse.lift;
  to.rise = 2 * fine.rise - coarse.rise;
  to.inflow = 2 * fine.inflow - coarse.inflow;
  to.outflow = 2 * fine.outflow - coarse.outflow;
  to.behindOfBehind = 2 * fine.behindOfBehind - coarse.behindOfBehind;
  to.behindOfLand = 2 * fine.behindOfLand - coarse.behindOfLand;
  to.landOfBehind = 2 * fine.landOfBehind - coarse.landOfBehind;
  to.landOfLand = 2 * fine.landOfLand - coarse.landOfLand;
}
