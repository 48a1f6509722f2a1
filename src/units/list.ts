import { clean, longestTyped } from './number.ts';
import { readQuantity } from './quantity.ts';
import type { Read, ReadContext } from './reading.ts';
import { refuse, type Suggestion } from './say.ts';
import { findUnit, toSI, unitOf } from './units.ts';

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
 * Reads several quantities from one text. Semicolons, line breaks, tabs, a comma followed by a space, and
 * plain spaces between numbers separate; a no-break space stays inside a number. Each item is read as
 * {@link readQuantity} does; when only one unit is typed anywhere, it serves the bare numbers too. The
 * first item that cannot be read is named by its place. More than `most` items: problem `too-many`.
 */
export function readList(
  typed: string,
  context: ReadContext,
  most: number,
): ReadMany | RefusedMany {
  const limit = longestTyped * Math.max(1, most);
  if (typed.trim().length > limit)
    return refuse('too-long', context, `You entered more than ${limit} characters.`);
  const items = split(typed);
  if (items.length === 0) return refuse('empty', context, 'Nothing is entered.');
  if (items.length > most)
    return {
      ok: false,
      problem: 'too-many',
      say: `${context.label} takes at most ${most} readings. You entered ${items.length}.`,
      suggestions: [],
    };
  const unit = onlyUnit(items, context) ?? context.unit;
  const read: Read[] = [];
  for (const [i, item] of items.entries()) {
    const label = items.length > 1 ? `${context.label}, reading ${i + 1},` : context.label;
    const one = readQuantity(item, { ...context, label, unit });
    // Suggestions of one item would replace the whole text, so they are dropped.
    if (!one.ok) return { ...one, suggestions: [] };
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

function split(typed: string): string[] {
  return (
    typed
      .split(/[;\n\r\t\v\f\u2028\u2029；]|,(?=\s)|,\s*$/)
      // A plain space before a number starts a new item, unless that number is the fraction of a mixed one.
      .flatMap((part) => part.split(/(?<=[^\s/⁄]) +(?=[-+−]?[.,]?\d)(?!\d+ ?[/⁄] ?\d)/))
      .map((part) => part.trim())
      .filter((part) => part !== '')
  );
}

/** The unit typed, when all that are typed are the same one of the field's kind. */
function onlyUnit(items: readonly string[], context: ReadContext): string | undefined {
  const found = new Set<string>();
  for (const item of items) {
    const one = readQuantity(item, { label: '', kind: context.kind, unit: context.unit });
    if (one.ok && one.typedUnit) found.add(one.unit);
    const tail = /[^\d\s.,/+-].*$/.exec(clean(item))?.[0];
    if (!one.ok && one.problem === 'ambiguous' && tail !== undefined) {
      const unit = findUnit(tail, context.kind);
      if (unit?.kind === context.kind) found.add(unit.id);
    }
  }
  const [first] = found;
  return found.size === 1 && first !== undefined && Number.isFinite(toSI(1, first))
    ? first
    : undefined;
}
