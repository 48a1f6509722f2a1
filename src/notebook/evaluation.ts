import { choiceProblem } from '../calculators/choice.ts';
import type {
  AnyCalculator,
  Entry,
  ListEntry,
  NumberEntry,
  Result,
  Value,
} from '../calculators/define.ts';
import { isFiniteResult, isRefusal } from '../calculators/evaluate.ts';
import { unitFor } from '../calculators/output-unit.ts';
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
 * Nothing about an engine is so large in SI units, and all that is worked and drawn from numbers below it has room in
 * a double, in any unit.
 */
const mostInput = 1e30;
/** Results have some more room, since they are products and powers of inputs. */
const mostResult = 1e150;

/**
 * Reads one stored value as its dictionary entry asks. Never throws: what cannot be read comes back as a
 * sentence that names the quantity, what was typed and what is accepted.
 */
export function readField(entry: Entry, stored: StoredValue): FieldState {
  if (entry.type === 'choice') {
    const problem = choiceProblem(entry, stored.text);
    return problem === undefined
      ? { value: stored.text, suggestions: [] }
      : { problem, suggestions: [] };
  }
  if (entry.optional === true && stored.text.trim() === '') return { suggestions: [] };
  if (entry.type === 'list') {
    const read = readAs(entry, stored.text, stored.unit);
    if (!read.ok) return { problem: read.say, suggestions: read.suggestions };
    if (read.si.some(isEndless)) return endless(entry, stored.text);
    return {
      value: read.si,
      ...(read.echo === undefined ? {} : { remark: read.echo }),
      suggestions: [],
    };
  }
  const read = readAs(entry, stored.text, stored.unit);
  if (!read.ok) return { problem: read.say, suggestions: read.suggestions };
  if (isEndless(read.si)) return endless(entry, stored.text);
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

function isEndless(si: number): boolean {
  return Math.abs(si) > mostInput;
}

function endless(entry: Entry, typed: string): FieldState {
  const problem = `${entry.label} is larger than anything that can be worked with. You entered ${typed.trim()}.`;
  return { problem, suggestions: [] };
}

/** True where a result has room to be shown in any unit. */
function hasRoom(result: Result): boolean {
  return isFiniteResult(result) && (typeof result !== 'number' || Math.abs(result) <= mostResult);
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

/** The sentence beside a field for a value that the physics refuses, or misses where the field is empty. */
function refusalSentence(
  entry: NumberEntry,
  refusal: OutOfDomain,
  typed: string,
  unit: string,
): string {
  if (typed.trim() === '')
    return `${refusalWords(entry.label, refusal, entry.metric)} Nothing is entered.`;
  const entered = `You entered ${typed.trim()}${/[a-z"′″%°]/i.test(typed) ? '' : `\u00a0${unitOf(unit).symbol}`}.`;
  return `${refusalWords(entry.label, refusal, unit)} ${entered}`;
}

/** The sentence beside a list: of one of its numbers, or of how many there are. */
function listRefusal(
  entry: ListEntry,
  refusal: OutOfDomain,
  field: FieldState | undefined,
): string {
  const count = Array.isArray(field?.value) ? field.value.length : 0;
  if (refusal.limitName === undefined) return refusalWords(entry.label, refusal, entry.metric);
  const named = new OutOfDomain(entry.name, count, refusal.relation, Number.NaN, refusal.limitName);
  const words = refusalWords(entry.label, named, undefined);
  // What is refused may be something else than how many there are.
  return refusal.value === count ? `${words} You entered ${count}.` : words;
}

/** What a number must be; its limit with a unit where that is known, else by its name alone. */
function refusalWords(label: string, refusal: OutOfDomain, unit: string | undefined): string {
  const { relation, limit, limitName } = refusal;
  if (relation === 'a number') return `${label} must be a finite number.`;
  const isShown = Number.isFinite(limit) && (unit !== undefined || limit === 0);
  const shown = isShown ? (unit === undefined ? '0' : formatQuantity(limit, unit)) : undefined;
  if (limitName === undefined) return `${label} must be ${relation} ${shown ?? 'its limit'}.`;
  return `${label} must be ${relation} ${limitName}${shown === undefined ? '' : ` (${shown})`}.`;
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
    const lost = Object.entries(output).find(([, result]) => !hasRoom(result));
    if (lost !== undefined) {
      const label = calculator.outputs[lost[0]]?.label ?? lost[0];
      const fault = `${label} grows past what can be computed with these numbers. Check the largest and the smallest of them.`;
      return { fields, plusMinus, limits: [], fault };
    }
    const limits = calculator.limits
      .filter((limit) => !limit.holds(input, output))
      .map((limit) => limit.say);
    return { fields, input, output, plusMinus, limits };
  } catch (error) {
    if (!isRefusal(error)) throw error;
    return { plusMinus, limits: [], ...refused(calculator, fields, error, stored) };
  }
}

/** Where a refusal is said: beside the field that it names, else of the whole set. */
function refused(
  calculator: AnyCalculator,
  fields: Evaluation['fields'],
  error: RangeError,
  stored: (entry: Entry) => StoredValue,
): Pick<Evaluation, 'fields' | 'fault'> {
  if (!(error instanceof OutOfDomain)) {
    const fault =
      'The model finds no answer with these numbers. Check the largest and the smallest of them.';
    return { fields, fault };
  }
  const { quantity } = error;
  const entry = calculator.inputs[quantity];
  if (entry?.type === 'list') {
    const field = { ...fields[quantity], problem: listRefusal(entry, error, fields[quantity]) };
    return { fields: { ...fields, [quantity]: { suggestions: [], ...field } } };
  }
  if (entry?.type !== 'number') {
    const output = calculator.outputs[quantity];
    const label = entry?.label ?? output?.label ?? inWords(quantity);
    const shown = output?.type === 'series' ? undefined : output;
    return { fields, fault: refusalWords(label, error, shown && unitFor(shown, 'metric')) };
  }
  const typed = stored(entry);
  const problem = refusalSentence(entry, error, typed.text, typed.unit);
  const field = { ...fields[quantity], problem, suggestions: fields[quantity]?.suggestions ?? [] };
  return { fields: { ...fields, [quantity]: field } };
}

/** A quantity's name in the code as words: `reciprocatingMass` is a reciprocating mass. */
function inWords(name: string): string {
  const words = name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return `The ${words}`;
}
