import { toSI } from '../units/units.ts';
import type {
  Absent,
  AnyCalculator,
  ListEntry,
  NumberEntry,
  Result,
  SetId,
  Value,
} from './define.ts';

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
 * True for what a model throws where there is no answer: OutOfDomain for an input without physical meaning, a
 * plain RangeError for a search that finds nothing, as where numbers have grown past what a double can hold.
 * Anything else is a fault of the code.
 */
export function isRefusal(error: unknown): error is RangeError {
  return error instanceof RangeError;
}

/** True where every number of a result is finite, and for one that is absent with its reason. */
export function isFiniteResult(result: Result): boolean {
  if (typeof result === 'number') return Number.isFinite(result);
  if ('absent' in result) return true;
  return [result.x, result.y].every((list) => {
    for (let i = 0; i < list.length; i += 1) if (!Number.isFinite(list[i])) return false;
    return true;
  });
}

/**
 * All outputs for `input`, or undefined where the model refuses it. Only that is caught: a fault of the code
 * itself still comes through.
 */
export function outputsOrNone(
  calculator: AnyCalculator,
  input: InputValues,
): OutputValues | undefined {
  try {
    return calculator.compute(input);
  } catch (error) {
    if (isRefusal(error)) return undefined;
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

const beyond: Absent = { absent: 'no number with these inputs' };

/**
 * What a calculator says of both sets together; undefined where it compares nothing. Each of them is a finite number or
 * absent with a reason: two sets that can each be worked may still have nothing to divide by.
 */
export function compareSets(
  calculator: AnyCalculator,
  both: Readonly<Record<SetId, { readonly input: InputValues; readonly output: OutputValues }>>,
): Readonly<Record<string, number | Absent>> | undefined {
  if (calculator.compare === undefined) return undefined;
  try {
    const found = Object.entries(calculator.compare(both));
    return Object.fromEntries(
      found.map(([name, result]) => [name, isFiniteResult(result) ? result : beyond]),
    );
  } catch (error) {
    if (!isRefusal(error)) throw error;
    return Object.fromEntries(
      Object.keys(calculator.comparisons ?? {}).map((name) => [name, beyond]),
    );
  }
}
