import { laidEndToEnd, type BarSegment } from '../../chart/stacked-bars.ts';
import { numberOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** The parts of an engine's inertia in the order they lie in the bar, the heaviest first. */
export const inertiaParts = [
  { output: 'flywheelRoad', label: 'flywheel', letter: 'a' },
  { output: 'clutchRoad', label: 'clutch', letter: 'b' },
  { output: 'crankRoad', label: 'crank', letter: 'c' },
  { output: 'damperRoad', label: 'damper', letter: 'd' },
  { output: 'movingRoad', label: 'pistons and rods', letter: 'e' },
] as const;

/** The parts laid end to end, as mass on the road [kg]; nothing where there is no result. */
export function inertiaSegments(set: FigureSet): BarSegment[] {
  return laidEndToEnd(
    inertiaParts.map(({ output, label, letter }) => ({
      label,
      letter,
      value: numberOf(set.output, output) ?? 0,
      fill: 'lines',
    })),
  );
}
