import type { FigureSet } from './types.ts';
import { numberOf } from './read.ts';

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

export type Part = (typeof parts)[number];

/** One part as it lies in the bar: from where to where, in kg. */
export interface Segment {
  readonly part: Part;
  readonly mass: number;
  readonly from: number;
  readonly to: number;
}

/** The parts laid end to end. A part of no mass, or of less, takes no room. */
export function segmentsOf(set: FigureSet): Segment[] {
  let end = 0;
  return parts.map((part) => {
    const mass = numberOf(set.output, part.output) ?? 0;
    const from = end;
    end += Math.max(0, mass);
    return { part, mass, from, to: end };
  });
}

/** What turns and what slides of a bar, in kg. */
export function halves(segments: readonly Segment[]): { turning: number; sliding: number } {
  let turning = 0;
  let sliding = 0;
  for (const { part, mass } of segments) {
    if (part.turning) turning += mass;
    else sliding += mass;
  }
  return { turning, sliding };
}

/**
 * Moves places apart so that neighbours stand at least `gap` from each other and none leaves
 * [`low`, `high`]. The places must rise.
 */
export function spread(
  places: readonly number[],
  gap: number,
  low: number,
  high: number,
): number[] {
  const moved = [...places];
  for (let i = 0; i < moved.length; i += 1) {
    const before = i === 0 ? low - gap : (moved[i - 1] ?? low);
    moved[i] = Math.max(moved[i] ?? low, before + gap);
  }
  for (let i = moved.length - 1; i >= 0; i -= 1) {
    const after = i === moved.length - 1 ? high + gap : (moved[i + 1] ?? high);
    moved[i] = Math.min(moved[i] ?? high, after - gap);
  }
  return moved;
}
