import { contextOf, type ListField, type TypedValue } from './field.ts';
import { readingsOf } from './list.ts';
import { gap, isGap, isPlain } from './list-items.ts';
import { readQuantity } from './quantity.ts';
import { takeApart } from './take-apart.ts';
import { differenceFromSI, differenceToSI, unitOf } from './units.ts';

/** One place of a list, as that of one cylinder: what stands there, and what it was read as. */
export interface Place {
  /** As typed or pasted; empty for a part that was not weighed. */
  readonly text: string;
  /** [SI] Absent where the text gives no number. */
  readonly si?: number;
  /** One unit of its last digit [SI]. */
  readonly step?: number;
  /** Why it gives no number, in a sentence. */
  readonly problem?: string;
  /** How a number was read that is not plain, or what may have been meant. */
  readonly remark?: string;
}

/** Places as they were read last, by field: at a key one of a list has changed, and reading text is what takes time. */
const known = new WeakMap<ListField, Map<string, Place>>();
/** As many as two sets of sixteen need, and what was typed on the way to them. */
const mostKnown = 200;

/** Reads one place by itself; never throws. `label` begins the sentence of a problem. */
export function readPlace(
  text: string,
  field: ListField,
  unit: string,
  label = field.label,
): Place {
  if (text.trim() === '' || isGap(text)) return { text: '' };
  const places = known.get(field) ?? new Map<string, Place>();
  known.set(field, places);
  const key = [unit, label, text].join('\n');
  const place = places.get(key) ?? readAnew(text, field, unit, label);
  if (places.size >= mostKnown) places.clear();
  places.set(key, place);
  return place;
}

function readAnew(text: string, field: ListField, unit: string, label: string): Place {
  // An example of one reading, and not of the list.
  const context = contextOf({ ...field, type: 'number' }, unit);
  const read = readQuantity(text, { ...context, label });
  if (!read.ok) return { text, problem: read.say };
  const remark = read.question ?? read.echo;
  const step = differenceToSI(read.step, read.unit);
  return { text, si: read.si, step, ...(remark === undefined ? {} : { remark }) };
}

/** What begins the sentence of a problem in one line: `Pistons, line 3,`. */
export function lineLabel(label: string, at: number): string {
  return `${label}, line ${String(at + 1)},`;
}

/**
 * The places of a list one by one: unlike the list as a whole, one place that cannot be read takes none of the others
 * away. Undefined where commas leave more than one way to part the text.
 */
export function placesOf(
  { text, unit }: TypedValue,
  field: ListField,
  label = field.label,
): readonly Place[] | undefined {
  const found = readingsOf(text, contextOf(field, unit));
  return found?.items.map((item, at) => readPlace(item, field, found.unit, lineLabel(label, at)));
}

/**
 * The text of a list with one text in each place, each read again as it was written: `428.0; –; n/a`. Numbers have a
 * decimal point and keep their digits; what is no number stays as it was written but for the signs that would part
 * it. Where one place names its unit, every number does.
 *
 * @param unit id of the unit of what has none
 */
export function joinedPlaces(texts: readonly string[], field: ListField, unit: string): string {
  const items = texts.map((text) => asItem(text, field, unit));
  while (items.at(-1)?.text === gap) items.pop();
  const named = items.some(({ isNamed }) => isNamed === true);
  const { symbol } = unitOf(unit);
  return items
    .map(({ text, isNamed }) => (named && isNamed === false ? `${text}\u00a0${symbol}` : text))
    .join('; ');
}

/** A text as one item of a list. `isNamed` says whether a number names its unit. */
function asItem(
  text: string,
  field: ListField,
  unit: string,
): { readonly text: string; readonly isNamed?: boolean } {
  if (text.trim() === '' || isGap(text)) return { text: gap };
  if (isPlain(text)) return { text, isNamed: false };
  const read = readQuantity(text, contextOf(field, unit));
  const typed = read.ok ? takeApart(text, unit, read.value) : undefined;
  if (!read.ok) return { text: whole(text.replace(parting, ' · ')) };
  // Two units in one reading, as pounds and ounces: a comma between them would part it.
  if (typed === undefined) return { text: whole(text.replace(/,(?=\s|$)/g, '')), isNamed: true };
  if (typed.unit === undefined) return { text: whole(typed.number), isNamed: false };
  return { text: whole(`${typed.number} ${unitOf(typed.unit).symbol}`), isNamed: true };
}

/** What would part a text into several readings. */
const parting = /[;；,\n\r\t\v\f\u2028\u2029]+/g;

/** A text that no space parts: a no-break space stays inside a reading. */
function whole(text: string): string {
  return text.trim().replace(/\s+/g, '\u00a0');
}

/** What a list of weighed parts comes to [SI]. */
export interface Summary {
  readonly count: number;
  readonly mean: number;
  readonly least: number;
  readonly greatest: number;
  /** The greatest less the least. */
  readonly spread: number;
  /** One unit of the last digit of the finest of them. */
  readonly step: number;
}

/** The summary of the places that give a number; undefined where none does. */
export function summaryOf(places: readonly Place[]): Summary | undefined {
  const weighed = places.flatMap(({ si, step }) => (si === undefined ? [] : [{ si, step }]));
  const [first] = weighed;
  if (first === undefined) return undefined;
  const values = weighed.map(({ si }) => si);
  // The sum of what each is above the first: equal parts have exactly their own mass as their mean.
  const above = values.reduce((sum, value) => sum + (value - first.si), 0);
  const [least, greatest] = [Math.min(...values), Math.max(...values)];
  return {
    count: values.length,
    mean: first.si + above / values.length,
    least,
    greatest,
    spread: greatest - least,
    step: Math.min(...weighed.map(({ step = Infinity }) => step)),
  };
}

/** More digits behind the point than any scale has. */
const mostDecimals = 6;

/** Places behind the point, in a unit, of what was read to `step` [SI], and one more for a mean of several. */
export function summaryDecimals({ step }: Summary, unit: string, more: 0 | 1): number {
  const digits = Math.ceil(-Math.log10(differenceFromSI(step, unit)) - 1e-9);
  return Math.min(mostDecimals, Math.max(0, digits + more));
}
