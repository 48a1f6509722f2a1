import { laidEndToEnd, type BarSegment } from '../parts/stacked-bars.ts';
import type { FigureSet } from '../types.ts';
import { numberOf } from '../read.ts';

/**
 * The parts of a bobweight in the order they stand in the bar: first what rotates, then what reciprocates. Each stands
 * for the mass entered and for its share of the bobweight.
 */
export const parts = [
  { input: 'bigEndMass', output: 'bigEnds', label: 'big ends', rotating: true },
  { input: 'shellMass', output: 'shells', label: 'shells', rotating: true },
  { input: 'oilMass', output: 'oil', label: 'oil', rotating: true },
  { input: 'smallEndMass', output: 'smallEndsCarried', label: 'small ends', rotating: false },
  { input: 'pinMass', output: 'pinsCarried', label: 'pins', rotating: false },
  { input: 'lockMass', output: 'locksCarried', label: 'locks', rotating: false },
  { input: 'pistonMass', output: 'pistonsCarried', label: 'pistons', rotating: false },
  { input: 'ringMass', output: 'ringsCarried', label: 'rings', rotating: false },
] as const;

/** The parts laid end to end, in kg. */
export function segmentsOf(set: FigureSet): BarSegment[] {
  return laidEndToEnd(
    parts.map(({ input, output, label }) => ({
      label,
      value: numberOf(set.output, output) ?? 0,
      quantity: `${input} ${output}`,
    })),
  );
}

/** The first part that reciprocates. */
export const firstReciprocating = parts.findIndex(({ rotating }) => !rotating);

/** What turns and what reciprocates of a bar, in kg. */
export function halves(segments: readonly BarSegment[]): {
  rotating: number;
  reciprocating: number;
} {
  const sum = (list: readonly BarSegment[]): number =>
    list.reduce((all, { value }) => all + value, 0);
  return {
    rotating: sum(segments.slice(0, firstReciprocating)),
    reciprocating: sum(segments.slice(firstReciprocating)),
  };
}
