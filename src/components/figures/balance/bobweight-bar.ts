import { laidEndToEnd, type BarSegment } from '../../chart/stacked-bars.ts';
import type { FigureSet } from '../types.ts';
import { numberOf } from '../read.ts';

/** The parts of a bobweight in the order they stand in the bar: first what rotates, then what reciprocates. */
export const parts = [
  { output: 'bigEnds', label: 'big ends', letter: 'a', rotating: true },
  { output: 'shells', label: 'shells', letter: 'b', rotating: true },
  { output: 'oil', label: 'oil', letter: 'c', rotating: true },
  { output: 'smallEndsCarried', label: 'small ends', letter: 'd', rotating: false },
  { output: 'pinsCarried', label: 'pins', letter: 'e', rotating: false },
  { output: 'locksCarried', label: 'locks', letter: 'f', rotating: false },
  { output: 'pistonsCarried', label: 'pistons', letter: 'g', rotating: false },
  { output: 'ringsCarried', label: 'rings', letter: 'h', rotating: false },
] as const;

/** The parts laid end to end, in kg: lines fill what rotates, dots what reciprocates. */
export function segmentsOf(set: FigureSet): BarSegment[] {
  return laidEndToEnd(
    parts.map(({ output, label, letter, rotating }) => ({
      label,
      letter,
      value: numberOf(set.output, output) ?? 0,
      fill: rotating ? 'lines' : 'dots',
    })),
  );
}

/** What turns and what reciprocates of a bar, in kg. */
export function halves(segments: readonly BarSegment[]): {
  rotating: number;
  reciprocating: number;
} {
  let rotating = 0;
  let reciprocating = 0;
  for (const { fill, value } of segments) {
    if (fill === 'lines') rotating += value;
    else reciprocating += value;
  }
  return { rotating, reciprocating };
}
