import { laidEndToEnd, type BarSegment } from '../parts/stacked-bars.ts';
import { numberOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** The parts of an engine's inertia in the order they lie in the bar, the heaviest first. */
export const inertiaParts = [
  { output: 'flywheelRoad', label: 'flywheel' },
  { output: 'clutchRoad', label: 'clutch' },
  { output: 'crankRoad', label: 'crank' },
  { output: 'damperRoad', label: 'damper' },
  { output: 'movingRoad', label: 'pistons and rods' },
] as const;

/** The parts laid end to end, as mass on the road [kg]; nothing where there is no result. */
export function inertiaSegments(set: FigureSet): BarSegment[] {
  return laidEndToEnd(
    inertiaParts.map(({ output, label }) => ({ label, value: numberOf(set.output, output) ?? 0 })),
  );
}
