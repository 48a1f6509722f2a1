import { numberOf } from './read.ts';
import type { FigureSet } from './types.ts';

/** The parts of an engine's inertia in the order they lie in the bar, the heaviest first. */
export const inertiaParts = [
  { output: 'flywheelRoad', label: 'flywheel', letter: 'a' },
  { output: 'clutchRoad', label: 'clutch', letter: 'b' },
  { output: 'crankRoad', label: 'crank', letter: 'c' },
  { output: 'damperRoad', label: 'damper', letter: 'd' },
  { output: 'movingRoad', label: 'pistons and rods', letter: 'e' },
] as const;

/** One part as it lies in the bar: from where to where, as mass on the road [kg]. */
export interface InertiaSegment {
  readonly label: string;
  readonly letter: string;
  readonly mass: number;
  readonly from: number;
  readonly to: number;
}

/** The parts laid end to end; nothing where there is no result. */
export function inertiaSegments(set: FigureSet): InertiaSegment[] {
  let end = 0;
  return inertiaParts.map(({ output, label, letter }) => {
    const mass = numberOf(set.output, output) ?? 0;
    const from = end;
    end += mass;
    return { label, letter, mass, from, to: end };
  });
}
