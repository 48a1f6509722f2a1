import type { AnyCalculator, Entry, NumberEntry, Result, Value } from '../calculators/define.ts';
import { OutOfDomain } from '../core/refuse.ts';
import { contextOf, readAs } from '../units/field.ts';
import { formatQuantity } from '../units/format.ts';
import { readPlusMinus, readQuantity, type Suggestion } from '../units/read.ts';
import { unitOf } from '../units/units.ts';
import { sameValue, type StoredValue } from './values.ts';

/** What the page says of one field: nothing, a remark on a number that is used, or why it is not used. */
export interface FieldState {
  /** The SI value, list or choice that was understood; absent when the text gives none. */
  readonly value?: Value;
  /** The ± in SI, where one was given and could be read. */
  readonly plusMinus?: number;
  /** Why the text is not used. The last good result stays while this stands. */
  readonly problem?: string;
  /** A remark on a number that is used: how it was read, or that it is unusual. */
  readonly remark?: string;
  readonly plusMinusProblem?: string;
  /** One unit of the last digit typed; the step of the arrow keys. */
  readonly suggestions: readonly Suggestion[];
}

/** One set worked through one calculator. `input` and `output` are absent when something stops it. */
export interface Evaluation {
  readonly fields: Readonly<Record<string, FieldState>>;
  readonly input?: Readonly<Record<string, Value>>;
  readonly output?: Readonly<Record<string, Result>>;
  readonly plusMinus: Readonly<Record<string, number>>;
  /** A sentence for the whole set, when no single field is to blame. */
  readonly fault?: string;
  /** Sentences of the declared limits that do not hold. */
  readonly limits: readonly string[];
}

/**
 * Reads one stored value as its dictionary entry asks. Never throws: what cannot be read comes back as a
 * sentence that names the quantity, what was typed and what is accepted.
 */
export function readField(entry: Entry, stored: StoredValue): FieldState {
  if (entry.type === 'choice') {
    if (Object.hasOwn(entry.options, stored.text)) return { value: stored.text, suggestions: [] };
    const options = Object.values(entry.options).join(', ');
    return {
      problem: `${entry.label} must be one of: ${options}. It is “${stored.text}”.`,
      suggestions: [],
    };
  }
  if (entry.optional === true && stored.text.trim() === '') return { suggestions: [] };
  if (entry.type === 'list') {
    const read = readAs(entry, stored.text, stored.unit);
    if (!read.ok) return { problem: read.say, suggestions: read.suggestions };
    return {
      value: read.si,
      ...(read.echo === undefined ? {} : { remark: read.echo }),
      suggestions: [],
    };
  }
  const read = readAs(entry, stored.text, stored.unit);
  if (!read.ok) return { problem: read.say, suggestions: read.suggestions };
  const context = contextOf(entry, stored.unit);
  const remark =
    read.question ??
    unusual(context.usual, read.si, read.unit) ??
    (read.typedUnit ? echoOf(entry, stored.text, read.unit) : read.echo);
  const base = {
    value: read.si,
    ...(remark === undefined ? {} : { remark }),
    suggestions: read.suggestions,
  };
  const typed = stored.plusMinus?.trim() ?? '';
  if (typed === '') return base;
  const spread = readPlusMinus(typed, { ...context, unit: read.unit }, read.si);
  return spread.ok ? { ...base, plusMinus: spread.si } : { ...base, plusMinusProblem: spread.say };
}

/**
 * How a number with its own unit was read. The unit stored beside it is the one that was typed, and says
 * nothing new: the sentence is in the unit that the entry has in the same system, so that 7.3 cm is 73 mm.
 */
function echoOf(entry: NumberEntry, text: string, typed: string): string | undefined {
  const unit = unitOf(typed).system === 'inch' ? entry.inch : entry.metric;
  const read = readQuantity(text, contextOf(entry, unit));
  return read.ok ? read.echo : undefined;
}

function unusual(
  usual: readonly [number, number] | undefined,
  si: number,
  unit: string,
): string | undefined {
  if (usual === undefined) return undefined;
  const [low, high] = usual;
  if (si >= low && si <= high) return undefined;
  const show = (limit: number): string => formatQuantity(limit, unit, { significant: 3 });
  return `Unusual, but computed: most lie between ${show(low)} and ${show(high)}.`;
}

/** The sentence beside a field for a value that the physics refuses. */
function refusalSentence(
  entry: NumberEntry,
  refusal: OutOfDomain,
  typed: string,
  unit: string,
): string {
  const entered = `You entered ${typed.trim()}${/[a-z"′″%°]/i.test(typed) ? '' : `\u00a0${unitOf(unit).symbol}`}.`;
  if (refusal.relation === 'a number') return `${entry.label} must be a finite number. ${entered}`;
  const limit = Number.isFinite(refusal.limit) ? formatQuantity(refusal.limit, unit) : '';
  const bound = refusal.limitName === undefined ? limit : `${refusal.limitName} (${limit})`;
  return `${entry.label} must be ${refusal.relation} ${bound}. ${entered}`;
}

function notFinite(result: Result): boolean {
  return typeof result === 'number' && !Number.isFinite(result);
}

/**
 * {@link readField} that remembers the last reading of each entry: at one key only one field has changed,
 * and reading text is the dearest part of an evaluation.
 */
export function rememberingReader(): typeof readField {
  const last = new Map<string, { readonly stored: StoredValue; readonly field: FieldState }>();
  return (entry, stored) => {
    const known = last.get(entry.name);
    if (known !== undefined && sameValue(known.stored, stored)) return known.field;
    const field = readField(entry, stored);
    last.set(entry.name, { stored, field });
    return field;
  };
}

/**
 * Works one set through one calculator. Never throws for anything a reader can type.
 *
 * @param stored gives the text of an entry as typed (or its demo value).
 * @param read reads one entry; one that remembers saves the fields that did not change.
 */
export function evaluate(
  calculator: AnyCalculator,
  stored: (entry: Entry) => StoredValue,
  read: typeof readField = readField,
): Evaluation {
  const fields: Record<string, FieldState> = {};
  const input: Record<string, Value> = {};
  const plusMinus: Record<string, number> = {};
  let readable = true;
  for (const [name, entry] of Object.entries(calculator.inputs)) {
    const field = read(entry, stored(entry));
    fields[name] = field;
    if (field.problem !== undefined) readable = false;
    if (field.value !== undefined) input[name] = field.value;
    if (field.plusMinus !== undefined) plusMinus[name] = field.plusMinus;
  }
  if (!readable) return { fields, plusMinus, limits: [] };
  try {
    const output = calculator.compute(input);
    const lost = Object.entries(output).find(([, result]) => notFinite(result));
    if (lost !== undefined) {
      const label = calculator.outputs[lost[0]]?.label ?? lost[0];
      return {
        fields,
        plusMinus,
        limits: [],
        fault: `${label} grows past what can be computed with these numbers. Check the largest and the smallest of them.`,
      };
    }
    const limits = calculator.limits
      .filter((limit) => !limit.holds(input, output))
      .map((limit) => limit.say);
    return { fields, input, output, plusMinus, limits };
  } catch (error) {
    if (!(error instanceof OutOfDomain)) throw error;
    const entry = calculator.inputs[error.quantity];
    if (entry?.type !== 'number') {
      return { fields, plusMinus, limits: [], fault: `${error.message}.` };
    }
    const typed = stored(entry);
    fields[error.quantity] = {
      ...fields[error.quantity],
      problem: refusalSentence(entry, error, typed.text, typed.unit),
      suggestions: fields[error.quantity]?.suggestions ?? [],
    };
    return { fields, plusMinus, limits: [] };
  }
}
