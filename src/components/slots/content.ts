import { choiceWords } from '../../calculators/choice.ts';
import type { AnyCalculator, Entry, Result, Series, Value } from '../../calculators/define.ts';
import { unitFor } from '../../calculators/output-unit.ts';
import type { PropagatedOutputs } from '../../calculators/uncertainty.ts';
import { formatQuantity } from '../../units/format.ts';
import { formatResult, withoutFalseZeros } from '../../units/result.ts';
import type { Kind, System } from '../../units/kinds.ts';

/** Inputs and outputs of one set together, in SI; empty while the set has no result. */
export type SlotValues = Readonly<Record<string, Value | Result>>;

/** Stands where there is no number. */
export const noNumber = '—';

interface Shown {
  readonly kind: Kind;
  readonly metric?: string;
  readonly inch?: string;
}

/** What a slot names: an input, an output, or a comparison of both sets. */
export function declared(calculator: AnyCalculator, name: string): Entry | Shown | undefined {
  const output = calculator.outputs[name];
  const fromOutput = output === undefined || output.type === 'series' ? undefined : output;
  return calculator.inputs[name] ?? fromOutput ?? calculator.comparisons?.[name];
}

/** True for a list of readings. */
export function isList(value: Value | Result): value is readonly number[] {
  return Array.isArray(value);
}

/**
 * One value as a slot prints it; a list with its readings one after the other. As many figures as the results
 * table shows, unless the slot stands in a line of the working and asks for its own.
 */
export function slotText(
  value: Exclude<Value | Result, Series>,
  unit: string,
  how: {
    readonly figures?: number;
    readonly guarded?: boolean;
    readonly brief?: boolean;
    /** [SI] How well a result is known: it has no more figures than that. */
    readonly plusMinus?: number;
  } = {},
): string {
  const { figures, guarded = false, brief = false, plusMinus } = how;
  function one(number: number): string {
    const isWhole = unit === 'count' && Number.isInteger(number);
    const full =
      isWhole || figures !== undefined
        ? formatQuantity(number, unit, isWhole ? { decimals: 0 } : { significant: figures ?? 0 })
        : formatResult(number, unit, plusMinus);
    const text = brief ? withoutFalseZeros(full) : full;
    return guarded && number < 0 ? `(${text})` : text;
  }
  if (isList(value)) return value.map(one).join('; ');
  return typeof value === 'number' && Number.isFinite(value) ? one(value) : noNumber;
}

/** How a slot is marked: the names are those of its data attributes. */
export interface SlotMarks {
  readonly unit?: string | undefined;
  readonly figures?: string | undefined;
  readonly guarded?: string | undefined;
  readonly zero?: string | undefined;
  /** Trailing zeros are dropped: the number stands inside a formula and claims no precision. */
  readonly brief?: string | undefined;
  /** The unit the value stands in already: this slot repeats it in the reader's, or stays empty if that is the same. */
  readonly also?: string | undefined;
}

/**
 * What one slot prints.
 *
 * @param calculator the declaration that the slot's first word names
 * @param values inputs, outputs and values on the way, of the slot's set, in SI
 * @param plusMinus the ± of the set's outputs, which sets the figures that a slot keeps
 */
export function slotContent(
  marks: SlotMarks,
  name: string,
  calculator: AnyCalculator,
  values: SlotValues,
  system: System,
  plusMinus?: PropagatedOutputs,
): string {
  const entry = declared(calculator, name);
  const value = values[name] ?? (marks.zero === undefined ? undefined : 0);
  if (entry !== undefined && 'type' in entry && entry.type === 'choice')
    return typeof value === 'string' ? (choiceWords(entry, value) ?? noNumber) : noNumber;
  const unit = marks.unit ?? (entry === undefined ? undefined : unitFor(entry, system));
  if (unit === undefined || (typeof value === 'object' && 'x' in value)) return noNumber;
  if (unit === marks.also) return '';
  const text = slotText(value, unit, {
    ...(marks.figures === undefined
      ? { plusMinus: plusMinus?.[name]?.plusMinus ?? 0 }
      : { figures: Number(marks.figures) }),
    guarded: marks.guarded !== undefined,
    brief: marks.brief !== undefined,
  });
  return marks.also === undefined ? text : ` = ${text}`;
}
