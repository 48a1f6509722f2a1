import { convertDigits } from './format.ts';
import { plainToken, takeNumber } from './number.ts';
import { quote, refuse, typedText } from './say.ts';
import type { ReadContext, Reading } from './reading.ts';
import { findUnit, toSI, unitOf } from './units.ts';

/** A larger unit, the smaller one that may follow it, and how many of these make one of the larger. */
const pairs = [
  { kind: 'mass', large: 'lb', small: 'oz', times: 16 },
  { kind: 'length', large: 'ft', small: 'in', times: 12 },
] as const;

/**
 * `1 lb 2 oz`, `5 ft 2 1/2 in`: a whole number of the larger unit and less than one more of it in the smaller,
 * read in the smaller. Undefined where the text has not this form: two numbers with a unit behind each.
 */
export function readCompound(text: string, context: ReadContext): Reading | undefined {
  const [, sign = '', whole = '', largeTyped = '', smaller = ''] =
    /^(-?) ?(\d+) ?([a-z]+|')[ ,]*(\d.*)$/i.exec(text) ?? [];
  const pair = pairs.find(({ kind, large }) => findUnit(largeTyped, kind)?.id === large);
  const below = takeNumber(smaller);
  if (pair === undefined || typeof below === 'string') return undefined;
  const unit = unitOf(pair.small);
  if (below.rest === '' || findUnit(below.rest, pair.kind)?.id !== unit.id) return undefined;
  if (pair.kind !== context.kind)
    return refuse(
      'wrong-kind',
      context,
      `You entered ${pair.kind === 'mass' ? 'a mass' : 'a length'}: ${text}.`,
    );
  if (below.value >= pair.times)
    return refuse(
      'text',
      context,
      `You entered ${quote(text)}: ${pair.times} ${unit.symbol} or more are another ${pair.large}.`,
    );
  const size = Number(whole) * pair.times + below.value;
  const value = sign === '-' && size !== 0 ? -size : size;
  const si = toSI(value, unit.id);
  if (!Number.isFinite(si)) return undefined;
  const exact = below.form === 'fraction';
  const said = typedText(plainToken(below), unit);
  const target = unitOf(context.unit === unit.id ? (context.own?.[0] ?? unit.id) : context.unit);
  const digits = convertDigits(value, exact ? 0 : below.step, unit.id, target.id);
  return {
    ok: true,
    si,
    value,
    unit: unit.id,
    typedUnit: true,
    step: below.step,
    echo: `${sign === '-' ? '−' : ''}${whole} ${unitOf(pair.large).symbol} ${said} = ${typedText(digits, target)}`,
    suggestions: [],
  };
}
