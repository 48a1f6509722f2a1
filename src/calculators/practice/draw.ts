import { readAs } from '../../units/field.ts';
import { formatNumber, withUnit } from '../../units/format.ts';
import { differenceFromSI, differenceToSI, fromSI, unitOf } from '../../units/units.ts';
import type { Kind, System } from '../../units/kinds.ts';
import { shownIn } from '../../units/settle.ts';
import type { Entry, ListEntry, NumberEntry, SetId, Value } from '../define.ts';
import { rangeInSI } from '../evaluate.ts';
import type { Spread } from './declare.ts';
import { exampleUnit, exampleValue } from './example.ts';

/** One quantity of a question: as the question states it, and in SI. */
export interface Stated {
  readonly text: string;
  readonly value: Value;
  /** The unit it is stated in; empty for a choice. */
  readonly unit: string;
}

/** The units that a question states its numbers in: of both systems, as drawings and gauges come, or of one. */
export type Units = 'mixed' | System;

/** Half of what a number is drawn within [SI, a difference]. */
export function halfWidth(entry: NumberEntry | ListEntry, value: number, spread: Spread): number {
  return typeof spread === 'number'
    ? Math.abs(value) * spread
    : differenceToSI(spread.by, entry.rangeUnit);
}

/** Kinds that one shop meets in both systems, on drawings, gauges and data sheets. */
const mixed: ReadonlySet<Kind> = new Set(['length', 'pressure', 'force', 'torque', 'temperature']);
const inchOf = 3;
const ounceOf = 6;
/** [kg] Nothing heavier is weighed in ounces beside grams. */
const lightest = 0.2;
/** [m] Shorter is said in thousandths of an inch. */
const fine = 0.0005;

/** The unit of one system in which a number is stated: the example's own where it belongs there. */
function unitInSystem(entry: NumberEntry, value: number, own: string, system: System): string {
  const other: System = system === 'metric' ? 'inch' : 'metric';
  if (unitOf(own).system !== other) return own;
  const unit = entry[system];
  return unit === 'in' && Math.abs(value) < fine ? 'thou' : unit;
}

/** The unit in which a number is stated: now and then the other system's, as drawings and scales come. */
function unitOfDraw(
  entry: NumberEntry,
  value: number,
  set: SetId,
  units: Units,
  random: () => number,
): string {
  const own = exampleUnit(entry, set);
  const dice = random();
  if (units !== 'mixed') return unitInSystem(entry, value, own, units);
  if (entry.kind === 'mass' && own === 'g' && value < lightest)
    return dice < 1 / ounceOf ? 'oz' : own;
  if (!mixed.has(entry.kind) || dice >= 1 / inchOf) return own;
  return entry.inch === 'in' && Math.abs(value) < fine ? 'thou' : entry.inch;
}

/** What a shop’s gauges show at most. */
const finest: Readonly<Record<string, number>> = { mm: 1e-3, in: 1e-4, thou: 0.1 };
/** The fewest steps on either side of the example. */
const fewest = 5;

/**
 * The step in `unit` on which a number is drawn: one unit of the last digit that the example is stated with. The
 * zeros that end a whole number are no digits, as in 6400 rpm.
 */
function stepIn(entry: NumberEntry | ListEntry, set: SetId, unit: string, half: number): number {
  const [first = ''] = entry.demo[set].split(';');
  const read = readAs({ ...entry, type: 'number' }, first, entry.metric);
  if (!read.ok) return 10 ** Math.floor(Math.log10(differenceFromSI(half, unit) / 20));
  let { step } = read;
  // A count is whole, and readings are as fine as their scale.
  if (entry.kind === 'count' || entry.type === 'list') return step;
  while (step >= 1 && read.value !== 0 && read.value % (10 * step) === 0) step *= 10;
  const there = (step * unitOf(read.unit).factor) / unitOf(unit).factor;
  // A tenth of a tenth is no step of any scale: to the next power of ten, with room for the rounding of a logarithm.
  let power = unit === read.unit ? step : 10 ** Math.ceil(Math.log10(there) - 0.01);
  const room = differenceFromSI(half, unit) / fewest;
  const least = Math.min(finest[unit] ?? 0, unit === read.unit ? step : Infinity);
  while (power > room && room > 0 && power / 10 >= least * 0.99) power /= 10;
  return power;
}

function placesOf(step: number): number {
  return Math.max(0, -Math.round(Math.log10(step)));
}

/** One number within `half` of `value` [SI], on the steps of `unit`, inside the usual range of the quantity. */
function near(
  entry: NumberEntry | ListEntry,
  value: number,
  half: number,
  how: { readonly unit: string; readonly step: number },
  random: () => number,
): string {
  const usual = rangeInSI(entry, 'usual');
  const low = Math.max(value - half, Math.min(usual[0], value));
  const high = Math.min(value + half, Math.max(usual[1], value));
  const { unit, step } = how;
  const least = Math.ceil(fromSI(low, unit) / step - 1e-6);
  const most = Math.floor(fromSI(high, unit) / step + 1e-6);
  const count = least + Math.floor(random() * (Math.max(most, least) - least + 1));
  return (count * step).toFixed(placesOf(step));
}

/** A plain number as a question prints it, and what the site's own parser reads of that. */
function stated(entry: NumberEntry, digits: string, unit: string): Stated {
  const read = readAs(entry, digits, unit);
  if (!read.ok) throw new RangeError(`${entry.name}: ${read.say}`);
  const text = withUnit(
    formatNumber(read.value, { decimals: (digits.split('.')[1] ?? '').length }),
    unit,
  );
  return { text, value: read.si, unit };
}

/** In what a drawn number is stated. */
interface HowStated {
  readonly units: Units;
  /** The unit, where another set is stated beside it. */
  readonly like?: string | undefined;
}

/** A number of an exercise, drawn near the example's. Undefined where the example leaves it out. */
function drawNumber(
  entry: NumberEntry,
  set: SetId,
  spread: Spread,
  random: () => number,
  { like, units }: HowStated,
): Stated | undefined {
  const value = exampleValue(entry, set);
  if (typeof value !== 'number') return undefined;
  const half = halfWidth(entry, value, spread);
  const unit = like ?? unitOfDraw(entry, value, set, units, random);
  const step = stepIn(entry, set, unit, half);
  return stated(entry, near(entry, value, half, { unit, step }, random), unit);
}

/** A list of an exercise: all readings moved together, and each by itself as far as the example's readings differ. */
function drawList(
  entry: ListEntry,
  set: SetId,
  spread: Spread,
  random: () => number,
): Stated | undefined {
  const value = exampleValue(entry, set);
  if (typeof value !== 'object') return undefined;
  const unit = entry.metric;
  const mean = value.reduce((sum, one) => sum + one, 0) / value.length;
  const apart = (Math.max(...value) - Math.min(...value)) / 2;
  const middle = mean + (2 * random() - 1) * halfWidth(entry, mean, spread);
  const how = { unit, step: stepIn(entry, set, unit, apart) };
  const digits = value.map(() => near(entry, middle, apart, how, random));
  const read = readAs(entry, digits.join('; '), unit);
  return read.ok ? { text: withUnit(digits.join('; '), unit), value: read.si, unit } : undefined;
}

/** One quantity of an exercise, drawn near the example of `set`. Undefined where the example leaves it out. */
export function draw(
  entry: Entry,
  set: SetId,
  spread: Spread,
  random: () => number,
  how: HowStated,
): Stated | undefined {
  if (entry.type === 'choice') {
    const keys = Object.keys(entry.options);
    const key = keys[Math.floor(random() * keys.length)] ?? '';
    return { text: entry.options[key] ?? key, value: key, unit: '' };
  }
  return entry.type === 'list'
    ? drawList(entry, set, spread, random)
    : drawNumber(entry, set, spread, random, how);
}

/** What the example states of a quantity, in units of one system: as many figures as its digits imply, and no more. */
function keptIn(entry: NumberEntry | ListEntry, set: SetId, system: System): Stated | undefined {
  const shown = shownIn(system, { text: entry.demo[set], unit: exampleUnit(entry, set) }, entry);
  const read = readAs(entry, shown.text, shown.unit);
  if (!read.ok) return undefined;
  // It is worked with as it is printed.
  const { text, unit } = shown;
  const decimals = (text.split('.')[1] ?? '').length;
  const written = 'value' in read ? formatNumber(read.value, { decimals }) : text;
  return { text: withUnit(written, unit), value: read.si, unit };
}

/** One quantity as the example has it. Undefined where the example leaves it out. */
export function kept(entry: Entry, set: SetId, units: Units = 'mixed'): Stated | undefined {
  const value = exampleValue(entry, set);
  if (value === undefined) return undefined;
  if (entry.type === 'choice') {
    const key = String(value);
    return { text: entry.options[key] ?? key, value: key, unit: '' };
  }
  const unit = exampleUnit(entry, set);
  const isOther =
    units !== 'mixed' && unitOf(unit).system === (units === 'metric' ? 'inch' : 'metric');
  if (isOther) return keptIn(entry, set, units);
  if (entry.type === 'list') return { text: withUnit(entry.demo[set], unit), value, unit };
  const read = readAs(entry, entry.demo[set], entry.metric);
  if (!read.ok) return undefined;
  const text = withUnit(formatNumber(read.value, { decimals: placesOf(read.step) }), read.unit);
  return { text, value, unit: read.unit };
}
