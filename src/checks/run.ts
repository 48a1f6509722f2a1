import { choiceProblem } from '../calculators/choice.ts';
import type { AnyCalculator, Entry, Result, Value } from '../calculators/define.ts';
import { readList, readQuantity } from '../units/read.ts';
import { fromSI, unitOf } from '../units/units.ts';
import { type CheckCase, type Expected, printedNumber, toleranceOf, wantedText } from './case.ts';

/** One expected output of one case, computed and judged. Numbers are in the unit of the published value. */
export interface Row {
  readonly topic: string;
  readonly case: CheckCase;
  readonly expected: Expected;
  /** Label of the output. */
  readonly label: string;
  /** Symbol of the unit. */
  readonly unit: string;
  /** The value as printed; absent for a band. */
  readonly published?: string;
  readonly atLeast?: number;
  readonly atMost?: number;
  /** Absent when nothing was computed; then `problem` says why. */
  readonly computed?: number;
  /** (computed − published) / |published|; absent for a band and for a published zero. */
  readonly relativeError?: number;
  /** −log10 |relative error|, at most 16; absent for a misprint too. */
  readonly agreeingDigits?: number;
  readonly passes: boolean;
  readonly problem?: string;
}

/** What one case gives to a calculator and gets from it. */
export interface Worked {
  readonly input: Readonly<Record<string, Value>>;
  readonly output: Readonly<Record<string, Result>>;
}

function readInput(entry: Entry, typed: string): Value {
  if (entry.type === 'choice') {
    if (choiceProblem(entry, typed) === undefined) return typed;
    throw new Error(`must be one of ${Object.keys(entry.options).join(', ')}; it is ${typed}`);
  }
  const context = { label: entry.label, kind: entry.kind, unit: entry.metric };
  if (entry.type === 'list') {
    const read = readList(typed, context, entry.most);
    if (!read.ok) throw new Error(read.say);
    return read.si;
  }
  const read = readQuantity(typed, context);
  if (!read.ok) throw new Error(read.say);
  // A bare number would change its meaning with the dictionary's default unit.
  if (!read.typedUnit && entry.kind !== 'ratio' && entry.kind !== 'count')
    throw new Error(`needs a unit: ${typed}`);
  return read.si;
}

/**
 * The inputs of a case in SI, read by the same parser that reads the fields.
 *
 * @throws Error naming the case and the input when one is missing, unknown or unreadable
 */
function readInputs(entry: CheckCase, calculator: AnyCalculator): Readonly<Record<string, Value>> {
  const input: Record<string, Value> = {};
  for (const [name, typed] of Object.entries(entry.inputs)) {
    const declared = calculator.inputs[name];
    if (declared === undefined)
      throw new Error(`${entry.id}, inputs.${name}: ${calculator.id} has no such input`);
    try {
      input[name] = readInput(declared, typed);
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      throw new Error(`${entry.id}, inputs.${name}: ${reason}`, { cause: error });
    }
  }
  for (const [name, declared] of Object.entries(calculator.inputs)) {
    if (!Object.hasOwn(input, name) && declared.optional !== true)
      throw new Error(`${entry.id}, inputs.${name}: is missing`);
  }
  return input;
}

/** Works a case through its calculator; throws as {@link readInputs} and the calculator do. */
export function work(entry: CheckCase, calculator: AnyCalculator): Worked {
  const input = readInputs(entry, calculator);
  return { input, output: calculator.compute(input) };
}

function agreement(relativeError: number): number {
  return relativeError === 0 ? 16 : Math.min(16, Math.max(0, -Math.log10(Math.abs(relativeError))));
}

function judge(
  expected: Expected,
  computed: number,
): Pick<Row, 'computed' | 'relativeError' | 'agreeingDigits' | 'passes'> {
  if (!('published' in expected)) {
    const { atLeast = -Infinity, atMost = Infinity } = expected;
    return { computed, passes: computed >= atLeast && computed <= atMost };
  }
  const published = printedNumber(expected.published);
  const wanted = printedNumber(wantedText(expected));
  const passes = Math.abs(computed - wanted) <= toleranceOf(expected);
  if (published === 0) return { computed, passes };
  const relativeError = (computed - published) / Math.abs(published);
  // The digits of a misprint say nothing of the formula.
  if (expected.misprint !== undefined) return { computed, relativeError, passes };
  return { computed, relativeError, agreeingDigits: agreement(relativeError), passes };
}

/**
 * Works one case and judges each expected output.
 *
 * A case that cannot be worked gives failing rows that carry the reason, so that none is ever lost.
 */
export function runCase(
  topic: string,
  entry: CheckCase,
  calculators: Readonly<Record<string, AnyCalculator>>,
): readonly Row[] {
  const calculator = calculators[entry.calculator];
  let worked: Worked | undefined;
  let problem = '';
  if (calculator === undefined) problem = `there is no calculator ${entry.calculator}`;
  else {
    try {
      worked = work(entry, calculator);
    } catch (error) {
      problem = error instanceof Error ? error.message : String(error);
    }
  }
  return entry.expected.map((expected): Row => {
    const declared = calculator?.outputs[expected.output];
    const shared = {
      topic,
      case: entry,
      expected,
      label: declared?.label ?? expected.output,
      ...('published' in expected
        ? { published: expected.published }
        : {
            ...(expected.atLeast === undefined ? {} : { atLeast: expected.atLeast }),
            ...(expected.atMost === undefined ? {} : { atMost: expected.atMost }),
          }),
    };
    function failed(reason: string): Row {
      return { ...shared, unit: expected.unit, passes: false, problem: reason };
    }
    if (worked === undefined) return failed(problem);
    if (declared === undefined || declared.type === 'series')
      return failed(`${entry.calculator} has no number ${expected.output}`);
    const result = worked.output[expected.output];
    if (typeof result !== 'number')
      return failed(
        result !== undefined && 'absent' in result ? result.absent : 'nothing was computed',
      );
    let unit;
    try {
      unit = unitOf(expected.unit);
    } catch {
      return failed(`there is no unit ${expected.unit}`);
    }
    if (unit.kind !== declared.kind)
      return failed(`${expected.unit} is no unit of ${expected.output}`);
    const computed = fromSI(result, expected.unit);
    if (!Number.isFinite(computed)) return failed('the computed value is no finite number');
    return { ...shared, unit: unit.symbol, ...judge(expected, computed) };
  });
}

/** Worst first: failing rows, then by agreeing digits, then what has no digits to compare. */
export function worstFirst(rows: readonly Row[]): readonly Row[] {
  function rank(row: Row): number {
    return row.passes ? (row.agreeingDigits ?? 17) : -1;
  }
  return [...rows].sort((one, other) => rank(one) - rank(other));
}
