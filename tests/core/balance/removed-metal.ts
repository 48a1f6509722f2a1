import { pointLength, type Drill, type Rim } from '../../../src/core/balance/drilled-hole.ts';
import { gauss } from '../../../src/core/math/gauss.ts';

/** What the elements of one hole come to: moments about the shaft [kg·m] along the hole and across it, and mass [kg]. */
export interface Removed {
  readonly unbalance: number;
  readonly across: number;
  readonly mass: number;
  /** [kg·m] Of the elements below the shoulder. */
  readonly point: number;
}

/**
 * All metal that a radial hole removes, element by element: the circle of the hole in rings and sectors, each a column
 * from the surface of the drill's point up to the rim, and each column in pieces along its height.
 */
export function removedMetal(drill: Drill, rim: Rim, depth: number): Removed {
  const { counterweightRadius: radius, steelDensity: density } = rim;
  const half = drill.holeDiameter / 2;
  const tip = pointLength(drill);
  const sum = { unbalance: 0, across: 0, mass: 0, point: 0 };
  const [rings, sectors] = [40, 72];
  for (let ring = 0; ring < rings; ring += 1) {
    const [inner, outer] = [(half * ring) / rings, (half * (ring + 1)) / rings];
    // The radius that stands for the ring: that of its mean square, since columns vary with its square.
    const at = Math.sqrt((inner ** 2 + outer ** 2) / 2);
    const area = (Math.PI * (outer ** 2 - inner ** 2)) / sectors;
    // The mean of a cone over a ring is that at its mean radius.
    const mean = (2 * (outer ** 3 - inner ** 3)) / (3 * (outer ** 2 - inner ** 2));
    for (let sector = 0; sector < sectors; sector += 1) {
      const x = at * Math.cos((2 * Math.PI * (sector + 0.5)) / sectors);
      const top = Math.sqrt(radius ** 2 - x ** 2);
      const shoulder = radius - depth;
      const bottom = shoulder - tip * (1 - mean / half);
      const column = density * area;
      const weigh = (from: number, to: number): number => column * gauss((z) => z, from, to, 1);
      sum.point += weigh(bottom, shoulder);
      sum.unbalance += weigh(bottom, shoulder) + weigh(shoulder, top);
      sum.across += column * x * (top - bottom);
      sum.mass += column * (top - bottom);
    }
  }
  return sum;
}
