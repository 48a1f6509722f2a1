import { toSI } from '../units/units.ts';
import type { AnyCalculator, NumberEntry } from './define.ts';
import { continuousInput, outputAt, rangeInSI, type InputValues } from './evaluate.ts';

/** A sweep to run: which input moves, which output is read, from where to where [SI]. */
export interface SweepRequest {
  readonly variable: string;
  readonly output: string;
  readonly from: number;
  readonly to: number;
  /** At least 2. */
  readonly points: number;
}

/** One output against one input [SI]. A gap is undefined: refused there, or no such value. */
export interface Sweep {
  readonly x: readonly number[];
  readonly y: readonly (number | undefined)[];
}

/** A sweep cut into one task for each point, to be run in idle slices. */
export interface SweepInSlices {
  readonly x: readonly number[];
  step(index: number): void;
  /** Points not stepped yet are gaps. */
  result(): Sweep;
}

/** Prepares a sweep. Throws RangeError for an input that cannot run through a range, or fewer than 2 points. */
export function sweepInSlices(
  calculator: AnyCalculator,
  input: InputValues,
  { variable, output, from, to, points }: SweepRequest,
): SweepInSlices {
  continuousInput(calculator, variable);
  if (!Number.isInteger(points) || points < 2)
    throw new RangeError(`a sweep needs at least 2 points; ${points} were asked for`);
  const x = Array.from({ length: points }, (_, i) =>
    i === points - 1 ? to : from + ((to - from) * i) / (points - 1),
  );
  const y: (number | undefined)[] = x.map(() => undefined);
  return {
    x,
    step(index) {
      y[index] = outputAt(calculator, { ...input, [variable]: x[index] }, output);
    },
    result: () => ({ x, y: [...y] }),
  };
}

/** {@link sweepInSlices} in one go. */
export function sweep(calculator: AnyCalculator, input: InputValues, request: SweepRequest): Sweep {
  const slices = sweepInSlices(calculator, input, request);
  slices.x.forEach((_, index) => slices.step(index));
  return slices.result();
}

/** The usual range of an input, widened to hold the values given (both sets' own) [SI]. */
export function sweepRange(entry: NumberEntry, ...current: readonly number[]): [number, number] {
  const within = [...rangeInSI(entry, 'usual'), ...current.filter(Number.isFinite)];
  const from = Math.min(...within);
  const to = Math.max(...within);
  if (to > from) return [from, to];
  const room = Math.abs(from) / 10 || toSI(1, entry.rangeUnit) - toSI(0, entry.rangeUnit);
  return [from - room, to + room];
}
