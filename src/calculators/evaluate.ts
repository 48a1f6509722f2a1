import { OutOfDomain } from '../core/refuse.ts';
import { toSI } from '../units/units.ts';
import type { AnyCalculator, ListEntry, NumberEntry, Result, Value } from './define.ts';

export type InputValues = Readonly<Record<string, Value>>;
export type OutputValues = Readonly<Record<string, Result>>;

/** Names of the outputs that are a number, always or mostly; curves are left out. In declared order. */
export function numericOutputs(calculator: AnyCalculator): string[] {
  return Object.entries(calculator.outputs)
    .filter(([, output]) => output.type !== 'series')
    .map(([name]) => name);
}

/**
 * The inputs that can run through a range: plain numbers, in declared order. Counts are left out, since half
 * a rod means nothing, and so are lists and choices.
 */
export function continuousInputs(calculator: AnyCalculator): NumberEntry[] {
  return Object.values(calculator.inputs).filter(
    (entry): entry is NumberEntry => entry.type === 'number' && entry.kind !== 'count',
  );
}

/** The entry of a continuous input. Throws RangeError for any other name. */
export function continuousInput(calculator: AnyCalculator, name: string): NumberEntry {
  const entry = continuousInputs(calculator).find((each) => each.name === name);
  if (entry === undefined)
    throw new RangeError(`${calculator.id} has no input "${name}" that can run through a range`);
  return entry;
}

/** The hard or the usual range of an entry [SI]. */
export function rangeInSI(
  entry: NumberEntry | ListEntry,
  which: 'hard' | 'usual',
): readonly [number, number] {
  const [low, high] = entry[which];
  return [toSI(low, entry.rangeUnit), toSI(high, entry.rangeUnit)];
}

/** The number in a result [SI]; undefined for a typed absence, a curve, or anything not finite. */
export function numberIn(result: Result | undefined): number | undefined {
  return typeof result === 'number' && Number.isFinite(result) ? result : undefined;
}

/**
 * All outputs for `input`, or undefined where the input has no physical meaning. Only that refusal is
 * caught: a fault of the code itself still comes through.
 */
export function outputsOrNone(
  calculator: AnyCalculator,
  input: InputValues,
): OutputValues | undefined {
  try {
    return calculator.compute(input);
  } catch (error) {
    if (error instanceof OutOfDomain) return undefined;
    throw error;
  }
}

/** One output as a number [SI], or undefined where the input is refused or the output does not exist. */
export function outputAt(
  calculator: AnyCalculator,
  input: InputValues,
  output: string,
): number | undefined {
  return numberIn(outputsOrNone(calculator, input)?.[output]);
}
