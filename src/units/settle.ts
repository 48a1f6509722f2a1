import {
  contextOf,
  readAs,
  tidyValue,
  type Field,
  type ListField,
  type NumberField,
  type TypedValue,
} from './field.ts';
import { convertTyped, formatPlain } from './format.ts';
import { readingsOf } from './list.ts';
import { parted } from './parted.ts';
import { takeApart, takeApartAs, unitSpelled } from './take-apart.ts';
import { unitOf, units } from './units.ts';

/** What a field shows. */
export interface Shown {
  readonly text: string;
  /** Id of the unit that `text` is in. */
  readonly unit: string;
  /** The ± to show with it, in the same unit unless it names its own; empty when there is none. */
  readonly plusMinus: string;
  /** True when the text is a conversion for reading, and not what is stored. */
  readonly converted: boolean;
}

/**
 * A stored value made fit for its field: a ± behind the number has its own place; a number without unit takes the field's metric one; a number whose
 * unit is of another kind carries it in the text, so that the parser names the kind instead of misreading it.
 */
export function settle(stored: TypedValue, field: Field): TypedValue {
  if (field.type === 'choice') return stored;
  const value = parted(stored, field);
  if (value.unit === '') return { ...value, unit: field.metric };
  if (!Object.hasOwn(units, value.unit)) return { ...value, unit: field.metric };
  const unit = unitOf(value.unit);
  if (unit.kind === field.kind || value.text.trim() === '') return value;
  return tidyValue({
    ...value,
    text: `${value.text} ${unit.symbol}`,
    unit: field.metric,
    plusMinus: '',
  });
}

/**
 * The value to store after a field was written. The text stays as typed; the unit becomes the one typed
 * behind the number, so that `unit` is always the unit the number is in. A bare ± that was meant in the
 * former unit keeps its meaning by naming that unit, unless the same digits are now read in another unit.
 */
export function written(
  before: TypedValue,
  typed: Partial<TypedValue>,
  field: Field,
  shown: Shown,
): TypedValue {
  if (field.type === 'choice') return tidyValue({ ...before, ...typed });
  const patch = typed.text === undefined ? typed : parted({ ...typed, text: typed.text }, field);
  const after = { ...before, ...patch };
  const unit = unitTyped(after, field);
  if (patch.plusMinus !== undefined && patch.text === undefined) {
    return tidyValue({ ...after, unit, plusMinus: named(patch.plusMinus, shown.unit, unit) });
  }
  if (before.plusMinus === undefined || patch.plusMinus !== undefined) {
    return tidyValue({ ...after, unit });
  }
  const plusMinus =
    after.text === shown.text ? shown.plusMinus : named(before.plusMinus, before.unit, unit);
  return tidyValue({ ...after, unit, plusMinus });
}

/** The unit that the number is in: the one typed behind it, else the one beside the field. */
function unitTyped({ text, unit }: TypedValue, field: NumberField | ListField): string {
  if (text.trim() === '') return unit;
  // Reading sixteen weights at each key takes long; without a letter or a sign of a unit they name none.
  if (field.type === 'list' && unit !== '' && !/[\p{L}"'′″°%]/u.test(text)) return unit;
  const reading = readAs(field, text, unit);
  return reading.ok ? reading.unit : unit;
}

/** Marks a unit that was put behind a ± here: nobody types it, so what was typed can be shown again. */
const noBreak = '\u00a0';

/** A ± with `own` written behind it where it is bare and would else be read in `read`. */
function named(plusMinus: string, own: string, read: string): string {
  if (own === read || plusMinus.trim() === '') return plusMinus;
  const typed = takeApart(plusMinus, own);
  return typed === undefined || typed.unit !== undefined
    ? plusMinus
    : plusMinus + noBreak + unitOf(own).symbol;
}

/**
 * What a field shows in a system of units: the text as typed where its unit belongs to the system, else the
 * same quantity in the field's unit of that system, with the precision that the typed digits imply. The
 * stored value is only read.
 */
export function shownIn(system: 'metric' | 'inch', value: TypedValue, field: Field): Shown {
  const { text, unit } = value;
  if (field.type === 'choice') return { text, unit, plusMinus: '', converted: false };
  const asTyped = { text, unit, plusMinus: bare(value.plusMinus ?? '', unit), converted: false };
  const target = field[system];
  const own = unitOf(unit).system;
  if (own === system || own === 'both' || unit === target) return asTyped;
  const converted =
    field.type === 'list' ? convertList(field, value, target) : convertNumber(field, value, target);
  if (converted === undefined) return asTyped;
  const plusMinus = convertPlusMinus(value.plusMinus ?? '', unit, target);
  return { text: converted, unit: target, plusMinus, converted: true };
}

function convertNumber(field: Field, value: TypedValue, target: string): string | undefined {
  const typed = takeApartAs(field, value);
  return typed === undefined
    ? undefined
    : convertTyped(typed.number, typed.unit ?? value.unit, target);
}

function convertList(
  field: ListField,
  { text, unit }: TypedValue,
  target: string,
): string | undefined {
  const found = readingsOf(text, contextOf(field, unit));
  const readings = found?.items.map((item) => takeApart(item, unit));
  if (found === undefined || readings === undefined || readings.includes(undefined))
    return undefined;
  return readings
    .filter((reading) => reading !== undefined)
    .map(({ number, unit: own }) => convertTyped(number, own ?? found.unit, target))
    .join('; ');
}

/** A ± is a difference: only the factors count, not the zero points. Per cents stay. */
function convertPlusMinus(plusMinus: string, unit: string, target: string): string {
  const typed = takeApart(plusMinus.replace(/^±\s*/, ''), unit);
  if (typed === undefined) return plusMinus;
  const from = unitOf(typed.unit ?? unit);
  if (from.kind !== unitOf(target).kind) return plusMinus;
  if (from.id === target) return bare(plusMinus, target);
  if (from.offset === undefined && unitOf(target).offset === undefined) {
    return convertTyped(typed.number, from.id, target);
  }
  const size = (Number(typed.number) * from.factor) / unitOf(target).factor;
  return Number.isFinite(size) ? formatPlain(Number(size.toPrecision(2))) : plusMinus;
}

/** A ± without the unit that {@link named} put behind it, where that is the unit of the value anyway. */
function bare(plusMinus: string, unit: string): string {
  const [typed = '', tail, ...more] = plusMinus.split(noBreak);
  const own = tail !== undefined && more.length === 0 && unitSpelled(tail, unit) === unit;
  return own ? typed : plusMinus;
}
