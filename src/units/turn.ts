/** A turn [rad] as it is made the shorter way round: from −π to π. */
export function shorterWay(turn: number): number {
  return turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI));
}
