import { clean } from '../../units/number.ts';
import { formatNumber, withUnit } from '../../units/format.ts';
import { readQuantity, type Suggestion } from '../../units/read.ts';
import { unitOf, unitsOfKind, type Unit } from '../../units/units.ts';
import { fromSI } from '../../units/units.ts';

/** What an answer is asked as. */
export interface Asked {
  /** The unit of the question. */
  readonly unit: string;
  /** Whether the question names it; else the answer has to. */
  readonly saysUnit: boolean;
}

/** An answer that could not be read: why, and how to write it. */
export interface Unread {
  readonly ok: false;
  readonly say: string;
  readonly suggestions: readonly Suggestion[];
}
export interface Answer {
  readonly ok: true;
  /** [SI] */
  readonly si: number;
  /** The number as typed, in `unit`. */
  readonly value: number;
  readonly unit: string;
  /** One unit of the last digit typed, in `unit`. */
  readonly step: number;
  /** How it was read, where that does not go without saying. */
  readonly echo?: string;
}

/** `3-4`, `3 to 4 kN`, `3 kN … 4 kN`: two numbers; a dash before a fraction is that of `1-7/8`. */
const range =
  /^[+-]?[\d.,]+ ?[a-z°µ"'/·²³%]* ?(?:-|\.\.\.?|…|~|to|or|and) ?[\d.,]+(?![\d.,]*\s*\/)/i;
/** The power of ten of `1e-3` is no range. */
const exponent = /\de[+-]?\d/gi;

function unread(say: string, suggestions: readonly Suggestion[] = []): Unread {
  return { ok: false, say, suggestions };
}

/** The units that shops use for a kind, as a list for a sentence; the one asked first. */
function unitsToWrite(asked: Unit): string {
  const symbols = [asked, ...unitsOfKind(asked.kind)].map(({ symbol }) => symbol);
  const some = [...new Set(symbols)].filter((symbol) => symbol !== '').slice(0, 4);
  return some.length < 2
    ? some.join('')
    : `${some.slice(0, -1).join(', ')} or ${some.at(-1) ?? ''}`;
}

/**
 * Reads an answer by the site's own parser. A number without a unit counts in the unit that the question names; where
 * it names none, the answer has to. Never throws on what a reader may type.
 */
export function readAnswer(typed: string, { unit, saysUnit }: Asked): Answer | Unread {
  const asked = unitOf(unit);
  const example = `Write one number${asked.symbol === '' ? '' : ' with its unit'}, like ${withUnit('12.5', unit)}.`;
  const text = clean(typed);
  if (range.test(text.replace(exponent, '1')))
    return unread(`“${typed.trim()}” is a range or two numbers. ${example}`);
  const reading = readQuantity(typed, { label: 'The answer', kind: asked.kind, unit });
  if (!reading.ok) {
    const say = reading.say.replace(/ Write it like .*$/u, '');
    return unread(reading.problem === 'ambiguous' ? say : `${say} ${example}`, reading.suggestions);
  }
  if (!reading.typedUnit && !saysUnit && asked.symbol !== '')
    return unread(
      `“${typed.trim()}” has no unit, and the question names none. Write the unit as well: ${unitsToWrite(asked)}.`,
    );
  const { si, value, step } = reading;
  const read = withUnit(formatNumber(value, { significant: figures(value) }), reading.unit);
  const echo =
    reading.echo ??
    (reading.unit !== unit
      ? `${read} = ${withUnit(formatNumber(fromSI(si, unit), { significant: 4 }), unit)}`
      : reading.typedUnit || asked.symbol === ''
        ? undefined
        : `Read as ${read}, in the unit of the question`);
  return { ok: true, si, value, unit: reading.unit, step, ...(echo === undefined ? {} : { echo }) };
}

/** As many figures as a number has, at most nine. */
function figures(value: number): number {
  return Math.min(9, Math.max(1, String(Math.abs(value)).replace(/^0\.0*|\.|e.*$/gu, '').length));
}
