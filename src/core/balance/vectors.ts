/** A vector across the crank: `along` the first throw, `across` 90° further in the sense of rotation. */
export interface Vector {
  readonly along: number;
  readonly across: number;
}

/** Length of a vector, in its own unit. */
export function length(vector: Vector): number {
  return Math.hypot(vector.along, vector.across);
}

/** The angle of a vector [rad] from `along` in the sense of rotation, −π to π; 0 for no vector. */
export function direction({ along, across }: Vector): number {
  return Math.atan2(across, along);
}

/** The vector of a size at an angle [rad] from `along`, in the sense of rotation. */
export function vectorAt(size: number, angle: number): Vector {
  return { along: size * Math.cos(angle), across: size * Math.sin(angle) };
}

/** Vectors added up. */
export function added(...vectors: readonly Vector[]): Vector {
  return {
    along: vectors.reduce((sum, { along }) => sum + along, 0),
    across: vectors.reduce((sum, { across }) => sum + across, 0),
  };
}

/** A vector times a number. */
export function scaled({ along, across }: Vector, by: number): Vector {
  return { along: by * along, across: by * across };
}

/** A vector turned by an angle [rad] in the sense of rotation. */
export function turned({ along, across }: Vector, by: number): Vector {
  const [cos, sin] = [Math.cos(by), Math.sin(by)];
  return { along: along * cos - across * sin, across: along * sin + across * cos };
}

/**
 * The sum of vectors given as size and angle [rad]. What rounding alone leaves of vectors that cancel, a few 1e-16 of
 * their sizes, is nothing: it would show as a force that is not there.
 */
export function sumOf<T>(
  list: readonly T[],
  polar: (item: T) => readonly [size: number, angle: number],
): Vector {
  let size = 0;
  let along = 0;
  let across = 0;
  for (const item of list) {
    const [radius, angle] = polar(item);
    const vector = vectorAt(radius, angle);
    along += vector.along;
    across += vector.across;
    size += Math.abs(radius);
  }
  const rounding = size * 1e-14;
  return {
    along: Math.abs(along) <= rounding ? 0 : along,
    across: Math.abs(across) <= rounding ? 0 : across,
  };
}
