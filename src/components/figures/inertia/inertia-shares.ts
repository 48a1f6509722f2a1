import { laidEndToEnd, type BarSegment } from '../parts/stacked-bars.ts';
import { numberOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

/**
 * The parts of an engine's inertia in the order they lie in the bar, the heaviest first. Each stands for the inertia
 * behind it too.
 */
export const inertiaParts = [
  {
    output: 'flywheelRoad',
    label: 'flywheel',
    quantity: 'flywheelInertia flywheelPart flywheelRoad',
  },
  { output: 'clutchRoad', label: 'clutch', quantity: 'clutchInertia clutchRoad' },
  { output: 'crankRoad', label: 'crank', quantity: 'crankInertia crankRoad' },
  { output: 'damperRoad', label: 'damper', quantity: 'damperInertia damperRoad' },
  {
    output: 'movingRoad',
    label: 'pistons and rods',
    quantity: 'bigEndsPart reciprocatingPart movingRoad',
  },
] as const;

/** The parts laid end to end, as mass on the road [kg]; nothing where there is no result. */
export function inertiaSegments(set: FigureSet): BarSegment[] {
  return laidEndToEnd(
    inertiaParts.map(({ output, label, quantity }) => ({
      label,
      value: numberOf(set.output, output) ?? 0,
      quantity,
    })),
  );
}
