import { laidEndToEnd, type BarSegment } from '../../chart/stacked-bars.ts';
import type { FigureSet } from '../types.ts';
import { numberOf } from '../read.ts';

/** The parts of a bobweight in the order they stand in the bar: first what turns, then what slides. */
export const parts = [
  { output: 'bigEnds', label: 'big ends', letter: 'a', turning: true },
  { output: 'shells', label: 'shells', letter: 'b', turning: true },
  { output: 'oil', label: 'oil', letter: 'c', turning: true },
  { output: 'smallEndsCarried', label: 'small ends', letter: 'd', turning: false },
  { output: 'pinsCarried', label: 'pins', letter: 'e', turning: false },
  { output: 'locksCarried', label: 'locks', letter: 'f', turning: false },
  { output: 'pistonsCarried', label: 'pistons', letter: 'g', turning: false },
  { output: 'ringsCarried', label: 'rings', letter: 'h', turning: false },
] as const;

/** The parts laid end to end, in kg: lines fill what turns, dots what slides. */
export function segmentsOf(set: FigureSet): BarSegment[] {
  return laidEndToEnd(
    parts.map(({ output, label, letter, turning }) => ({
      label,
      letter,
      value: numberOf(set.output, output) ?? 0,
      fill: turning ? 'lines' : 'dots',
    })),
  );
}

/** What turns and what slides of a bar, in kg. */
export function halves(segments: readonly BarSegment[]): { turning: number; sliding: number } {
  let turning = 0;
  let sliding = 0;
  for (const { fill, value } of segments) {
    if (fill === 'lines') turning += value;
    else sliding += value;
  }
  return { turning, sliding };
}
