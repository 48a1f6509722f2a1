import { readList } from './list.ts';
import { tidyMarks, type Marks } from './marks.ts';
import { readQuantity } from './quantity.ts';
import type { ReadContext } from './reading.ts';
import type { Kind } from './kinds.ts';
import { toSI } from './units.ts';

/** A number or a list as typed, in the words that reading needs: what it is, its units, its ranges in `rangeUnit`. */
export interface NumberField {
  readonly type: 'number';
  readonly label: string;
  readonly kind: Kind;
  /** Default unit ids in each system. */
  readonly metric: string;
  readonly inch: string;
  readonly rangeUnit: string;
  /**
   * Outside: nearly always a slip of unit. Asked before it is computed where another unit makes it likely and
   * none was typed; else still computed if it has a meaning.
   */
  readonly hard: readonly [number, number];
  /** Outside: flagged as unusual, still computed. */
  readonly usual: readonly [number, number];
  /** What a reader would type, for the example at the end of a refusal. */
  readonly demo?: { readonly baseline: string };
}
export interface ListField extends Omit<NumberField, 'type'> {
  readonly type: 'list';
  readonly most: number;
}
/** Text that is none of the parser's business. */
export interface ChoiceField {
  readonly type: 'choice';
}
export type Field = NumberField | ListField | ChoiceField;

/** Where a reader has a number from, in the words that follow it. */
export const fromWords = {
  measured: 'measured',
  drawing: 'from the drawing',
  maker: 'stated by the maker',
  assumed: 'assumed',
} as const;
export type From = keyof typeof fromWords;

/**
 * What stands in a field, as typed. The number in SI is always derived from it, never the other way round, so
 * that neither a change of system nor a better parser can alter what the reader wrote.
 */
export interface TypedValue {
  /** A number in any spelling, a list, the key of a choice, or nothing. */
  readonly text: string;
  /** Id of the unit that the number is in; empty for a choice. */
  readonly unit: string;
  /** The half-width of the interval, as typed: bare in `unit`, or with a unit of its own, or in per cent. */
  readonly plusMinus?: string;
  /** Where the reader has it from, where they said so. */
  readonly from?: From | undefined;
  /** What else the reader wrote of it; of a number that another page gives, how it came. */
  readonly note?: string;
  /** Of a list of parts: what stands on each of them. */
  readonly marks?: Marks | undefined;
}

/** The same value with nothing but its own members, and without those that were left empty. */
export function tidyValue({ text, unit, plusMinus, from, note, marks }: TypedValue): TypedValue {
  const tidied = tidyMarks(marks);
  return {
    text,
    unit,
    ...(plusMinus === undefined || plusMinus === '' ? {} : { plusMinus }),
    ...(from === undefined ? {} : { from }),
    ...(note === undefined || note === '' ? {} : { note }),
    ...(tidied === undefined ? {} : { marks: tidied }),
  };
}

/** What the parser needs to know about a field to read a value of it in `unit`, its own metric one if empty. */
export function contextOf(field: NumberField | ListField, unit: string): ReadContext {
  const inSI = ([low, high]: readonly [number, number]): readonly [number, number] => [
    toSI(low, field.rangeUnit),
    toSI(high, field.rangeUnit),
  ];
  return {
    label: field.label,
    kind: field.kind,
    unit: unit === '' ? field.metric : unit,
    usual: inSI(field.usual),
    hard: inSI(field.hard),
    own: [field.metric, field.inch],
    samples: samplesOf(field),
  };
}

/** The first of the field's examples; two of a list, which say how readings are parted. */
function samplesOf({ type, demo }: NumberField | ListField): readonly string[] {
  const texts = (demo?.baseline ?? '').split(';').filter((text) => text.trim() !== '');
  return texts.slice(0, type === 'list' ? 2 : 1);
}

type Reading = ReturnType<typeof readQuantity> | ReturnType<typeof readList>;

let last:
  { field: NumberField | ListField; text: string; unit: string; reading: Reading } | undefined;

/**
 * Reads text as the field asks: one number, or the readings of a list. The last reading is kept, since what is
 * typed is read once to be stored and once more to be worked.
 */
export function readAs(
  field: NumberField,
  text: string,
  unit: string,
): ReturnType<typeof readQuantity>;
export function readAs(field: ListField, text: string, unit: string): ReturnType<typeof readList>;
export function readAs(field: NumberField | ListField, text: string, unit: string): Reading;
export function readAs(field: NumberField | ListField, text: string, unit: string): Reading {
  if (last?.field === field && last.text === text && last.unit === unit) return last.reading;
  const context = contextOf(field, unit);
  const reading =
    field.type === 'list' ? readList(text, context, field.most) : readQuantity(text, context);
  last = { field, text, unit, reading };
  return reading;
}
