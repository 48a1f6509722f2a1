/** The longest text a field reads; longer is a slip of the clipboard. */
export const longestTyped = 200;

/** A number as typed at the front of a text, with what followed it. Shapes: {@link Fraction}, {@link Decimal}. */
interface Typed {
  /** The number alone, spaces and dashes tidied. */
  readonly token: string;
  /** What follows: a unit, or something else. */
  readonly rest: string;
  readonly sign: '' | '+' | '-';
  readonly value: number;
  /** One unit of the last digit typed, > 0. */
  readonly step: number;
}
/** `7/8`, `1 7/8`, `1-7/8`. Nominal sizes: taken as exact. `step` is that of {@link fractionStep}. */
export interface Fraction extends Typed {
  readonly form: 'fraction';
  readonly whole: string;
  readonly top: string;
  readonly bottom: string;
}
/** `3.480`, `47,96`, `1.234,5`, `1'234.5`, `1e6`. `whole` and `decimals` are digits only. */
export interface Decimal extends Typed {
  readonly form: 'decimal';
  readonly whole: string;
  readonly decimals: string;
  /** The decimal mark as typed, '' when there is none. */
  readonly mark: string;
  /** The thousands separator as typed, '' when there is none. */
  readonly separator: string;
  /** 'e6' as typed, or ''. */
  readonly exponent: string;
  /** `1,875` may also be 1875; `value` is then the reading 1.875. */
  readonly asThousands?: number;
}
export type TypedNumber = Fraction | Decimal;
export type NoNumber = 'text' | 'zero-denominator' | 'too-large';

/**
 * What was typed or pasted, in one plain spelling: one kind of space, dash, quote and slash; ⅞ as 7/8;
 * full-width digits as digits; no invisible characters. A superscript after a digit becomes `^2`, so that
 * 10² is not taken for 102.
 */
export function clean(typed: string): string {
  return typed
    .replace(/[\u00ad\u200b-\u200f\u202a-\u202e\u2060-\u2064\ufeff]/g, '')
    .replace(/[‘’‚‛′ʹˈ´`＇]/g, "'")
    .replace(/[“”„‟″ˮ〃＂]|''/g, '"')
    .replace(/[º˚]/g, '°')
    .replace(/([\d０-９])([¼-¾⅐-⅞↉]|[⁰¹²³⁴-⁹]+[⁄/])/g, '$1 $2')
    .replace(/([\d０-９])([⁰¹²³⁴-⁻₀-₉])/g, '$1^$2')
    .normalize('NFKC')
    .replace(/[‐-―−]/g, '-')
    .replace(/[⁄∕]/g, '/')
    .replace(/\s+/g, ' ')
    .replace(/^ ?[Øø⌀]/, '')
    .trim();
}

/**
 * The denominator of the step of a fraction: sixteenths for halves to sixteenths, since 1 7/8 steps to
 * 1 15/16 on a rule; as typed for finer or unusual ones.
 */
export function fractionStep(bottom: number): number {
  return [1, 2, 4, 8].includes(bottom) ? 16 : bottom;
}

/** Reads the number at the front of a {@link clean} text; a word says why there is none. Never NaN. */
export function takeNumber(text: string): TypedNumber | NoNumber {
  const found = takeFraction(text) ?? takeDecimal(text) ?? 'text';
  if (typeof found === 'string') return found;
  const { value, step, token } = found;
  const vanished = value === 0 && /[1-9]/.test(token.replace(/e.*|\/.*/i, ''));
  // 1e999 would be Infinity, and 1e-999 a silent 0.
  return Number.isFinite(value) && Number.isFinite(step) && !vanished ? found : 'too-large';
}

function takeFraction(text: string): Fraction | 'zero-denominator' | undefined {
  const m = /^([+-]?) ?(?:(\d+)[ +-])?(\d+) ?\/ ?(\d+)(?![\d.,])/.exec(text);
  if (m === null) return undefined;
  const [all, sign = '', whole = '', top = '', bottom = ''] = m;
  const below = Number(bottom);
  if (below === 0) return 'zero-denominator';
  const size = (Number(whole) * below + Number(top)) / below;
  return {
    form: 'fraction',
    token: all,
    rest: text.slice(all.length).trim(),
    sign: sign as Fraction['sign'],
    value: sign === '-' && size !== 0 ? -size : size,
    step: 1 / fractionStep(below),
    whole,
    top,
    bottom,
  };
}

function takeDecimal(text: string): Decimal | undefined {
  // A space or an apostrophe belongs to the number only before a group of exactly three digits: 1 685.2
  const m = /^([+-]?) ?([.,]?\d(?:[\d.,]|[ '](?=\d{3}(?!\d)))*)(e[+-]?\d+)?/i.exec(text);
  if (m === null) return undefined;
  const [all, sign = '', found = '', exponent = ''] = m;
  const stop = all.length === text.length && exponent === '' ? finalStop(found) : 0;
  if (stop === undefined) return undefined;
  const token = all.slice(0, all.length - stop);
  const body = found.slice(0, found.length - stop);
  const marks = body.replace(/[\d ']/g, '');
  const kinds = new Set(marks).size;
  const last = marks.at(-1) ?? '';
  // One mark is the decimal mark; several alike separate thousands; of two sorts the last is decimal.
  const mark = marks.length === 1 || kinds === 2 ? last : '';
  if (kinds === 2 && marks.indexOf(last) !== marks.length - 1) return undefined;
  const cut = mark === '' ? body.length : body.lastIndexOf(mark);
  const decimals = body.slice(cut + 1);
  const groups = body.slice(0, cut).split(/[., ']/);
  const separators = new Set(body.slice(0, cut).replace(/\d/g, ''));
  const grouped = groups.length > 1;
  if (
    /\D/.test(decimals) ||
    separators.size > 1 ||
    (grouped && !(/^[1-9]\d{0,2}$/.test(groups[0] ?? '') && groups.slice(1).every(isThree)))
  )
    return undefined;
  const whole = groups.join('');
  const power = Number(exponent.slice(1)) - decimals.length;
  const value = Number(`${sign}${whole}.${decimals}${exponent}`);
  const unclear =
    mark === ',' && !grouped && isThree(decimals) && /^[1-9]\d{0,2}$/.test(whole) && !exponent;
  return {
    form: 'decimal',
    token,
    rest: text.slice(all.length).trim(),
    sign: sign as Decimal['sign'],
    value: value === 0 ? 0 : value,
    // Below the smallest double a step would be 0.
    step: Math.max(Number(`1e${power}`), Number.MIN_VALUE),
    whole,
    decimals,
    mark,
    separator: [...separators][0] ?? '',
    exponent,
    ...(unclear ? { asThousands: Number(`${sign}${whole}${decimals}`) } : {}),
  };
}

/**
 * How many characters at the end close the sentence and not the number: `1.888.` is 1.888. Undefined where
 * the last mark makes another number of the ones before: `1,888.` may be 1888 or a 1.888 with its stop.
 */
function finalStop(body: string): 0 | 1 | undefined {
  const [, before = '', last] = /^(.*[.,].*)([.,])$/.exec(body) ?? [];
  if (last === undefined) return 0;
  return /[.,]$/.test(before) || (/^\d{1,3}[.,]\d{3}$/.test(before) && !before.includes(last))
    ? undefined
    : 1;
}

function isThree(digits: string): boolean {
  return /^\d{3}$/.test(digits);
}

/** The number with a decimal point and nothing else: `1.234,5` → `1234.5`; a fraction keeps its form. */
export function plainToken(typed: TypedNumber): string {
  if (typed.form === 'fraction') {
    const sign = typed.sign === '-' ? '−' : '';
    return `${sign}${typed.whole}${typed.whole === '' ? '' : ' '}${typed.top}/${typed.bottom}`;
  }
  const { sign, whole, decimals, exponent } = typed;
  return `${sign === '-' ? '−' : ''}${whole || '0'}${decimals ? `.${decimals}` : ''}${exponent}`;
}
