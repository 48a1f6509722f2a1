import { cells, isGap, isPlain, unitBehind, waysToRead } from './list-items.ts';
import { clean, longestTyped, plainToken, takeNumber } from './number.ts';
import { readQuantity } from './quantity.ts';
import type { Read, ReadContext } from './reading.ts';
import { quote, refuse, suggest, typedText, type Suggestion } from './say.ts';
import { toSI, unitOf } from './units.ts';

/** Several readings of one quantity, in SI, in the order typed. `unit` is the one typed, else assumed. */
export interface ReadMany {
  readonly ok: true;
  readonly si: readonly number[];
  readonly unit: string;
  readonly echo?: string;
}
export interface RefusedMany {
  readonly ok: false;
  readonly problem: string;
  readonly say: string;
  readonly suggestions: readonly Suggestion[];
}

/**
 * Reads several quantities from one text: the readings that {@link cells} finds, each as {@link readQuantity}
 * reads it. When only one unit is typed anywhere, it serves the bare numbers too. A comma without a space
 * parts two readings where that alone is likely; where a decimal number is likely too, both are offered and
 * nothing is read. The first reading that cannot be read is named by its place, and what may have been meant
 * is offered as the whole list. A dash keeps the place of a reading that is still missing: problem `gap`. More than
 * `most` readings: problem `too-many`. Whole numbers may have dashes between them, as a firing order is written.
 */
export function readList(
  typed: string,
  context: ReadContext,
  most: number,
): ReadMany | RefusedMany {
  const limit = longestTyped * Math.max(1, most);
  if (typed.trim().length > limit)
    return refuse('too-long', context, `You entered more than ${limit} characters.`);
  const found = findItems(context.kind === 'count' ? undashed(typed) : typed, context);
  if ('ok' in found) return found;
  const { items, unit } = found;
  if (items.length === 0) return refuse('empty', context, 'Nothing is entered.');
  if (items.length > most)
    return {
      ok: false,
      problem: 'too-many',
      say: `${context.label} takes at most ${most} readings. You entered ${items.length}.`,
      suggestions: [],
    };
  const read: Read[] = [];
  for (const [i, item] of items.entries()) {
    if (isGap(item) && items.length > 1) return missing(items, context);
    const label = items.length > 1 ? `${context.label}, reading ${i + 1},` : context.label;
    const one = readQuantity(item, { ...context, label, unit });
    if (!one.ok) return { ...one, suggestions: one.suggestions.map(instead(i, items, unit)) };
    read.push(one);
  }
  const units = new Set(read.map((r) => r.unit));
  const symbol = units.size > 1 ? 'in mixed units' : `in ${unitOf(unit).symbol || 'plain numbers'}`;
  const asked = read.flatMap((r, i) =>
    r.question === undefined ? [] : [`reading ${i + 1}: ${r.question}`],
  );
  const count = `${read.length} reading${read.length === 1 ? '' : 's'} ${symbol}`;
  return { ok: true, si: read.map((r) => r.si), unit, echo: [count, ...asked].join('; ') };
}

/** Numbers that only count, with a semicolon where a dash stood between two of them. */
function undashed(typed: string): string {
  return typed.replace(/(?<=\d)\s*[-‐-―−]\s*(?=\d)/gu, '; ');
}

/** Which readings a list still lacks. */
function missing(items: readonly string[], { label }: ReadContext): RefusedMany {
  const places = items.flatMap((item, i) => (isGap(item) ? [String(i + 1)] : []));
  const named =
    places.length === 1
      ? `Reading ${places.join('')} is`
      : `Readings ${places.slice(0, -1).join(', ')} and ${places.at(-1) ?? ''} are`;
  return {
    ok: false,
    problem: 'gap',
    say: `${label}: ${named} still missing; a dash keeps the place.`,
    suggestions: [],
  };
}

/** The readings of a text one by one; undefined where commas leave more than one way to part them. */
export function readingsOf(typed: string, context: ReadContext): Items | undefined {
  const found = findItems(typed, context);
  return 'ok' in found ? undefined : found;
}

/** The readings of a list as typed. */
export interface Items {
  readonly items: readonly string[];
  /** The unit of the bare ones. */
  readonly unit: string;
}

function findItems(typed: string, context: ReadContext): Items | RefusedMany {
  const found = cells(typed);
  const unit = onlyUnit(found, context) ?? context.unit;
  // A unit behind the last reading is typed for all.
  const ways = found.map((cell) => waysToRead(cell, { ...context, unit }));
  const choices = Math.max(1, ...ways.map((one) => one.length));
  const texts = Array.from({ length: choices }, (_, i) =>
    ways.flatMap((one) => one[Math.min(i, one.length - 1)] ?? []),
  );
  if (choices === 1) return { items: texts[0] ?? [], unit };
  const lists = texts.map((items) => items.join('; '));
  return refuse(
    'ambiguous',
    context,
    `You entered ${quote(typed.trim())}: ${lists.map(quote).join(' or ')}?`,
    lists.map(suggest),
  );
}

/** The whole list with a suggestion in the place of one reading, and its unit behind every bare one. */
function instead(
  place: number,
  items: readonly string[],
  unit: string,
): (suggestion: Suggestion) => Suggestion {
  return ({ text }) =>
    suggest(
      items
        .map((item, i) => {
          const number = takeNumber(clean(item));
          const bare = i !== place && typeof number !== 'string' && number.rest === '';
          return bare ? typedText(plainToken(number), unitOf(unit)) : i === place ? text : item;
        })
        .join('; '),
    );
}

/** The unit typed, when all that are typed are the same one of the field's kind. */
function onlyUnit(items: readonly string[], context: ReadContext): string | undefined {
  const found = new Set<string>();
  for (const item of items) {
    if (isPlain(item)) continue;
    const one = readQuantity(item, { label: '', kind: context.kind, unit: context.unit });
    if (one.ok && one.typedUnit) found.add(one.unit);
    const unit = one.ok ? undefined : unitBehind(item.split(',').at(-1) ?? '', context);
    if (!one.ok && one.problem === 'ambiguous' && unit !== undefined) found.add(unit.id);
  }
  const [first] = found;
  return found.size === 1 && first !== undefined && Number.isFinite(toSI(1, first))
    ? first
    : undefined;
}
