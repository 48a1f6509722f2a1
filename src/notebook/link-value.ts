import type { Entry } from '../calculators/define.ts';
import { units } from '../units/units.ts';
import { escapeText, unescapeText } from './escape.ts';
import { contextOf, readAs, tidyValue } from '../units/field.ts';
import { cells } from '../units/list-items.ts';
import { readingsOf } from '../units/list.ts';
import { takeApart, takeApartAs } from '../units/take-apart.ts';
import type { StoredValue } from './values.ts';

/**
 * One value as a link carries it: `495.2g:0.1`, `1-7/8in`, `421.0;421.5g`, `four`, or word for word as
 * `!abc@g` when it is no plain number. Empty for an empty field.
 *
 * @param entry the dictionary entry, where known: it settles what typed digits alone leave open.
 */
export function encodeValue(value: StoredValue | undefined, entry?: Entry): string {
  if (value === undefined || value.text.trim() === '') return '';
  const text = encodeText(value, entry);
  const plusMinus = value.plusMinus?.trim() ?? '';
  return plusMinus === '' ? text : `${text}:${encodePlusMinus(plusMinus, value.unit)}`;
}

function encodeText(value: StoredValue, entry: Entry | undefined): string {
  const { text, unit } = value;
  if (unit === '' && isWord(text)) return text;
  const isKnown = unit === '' || Object.hasOwn(units, unit);
  if (!isKnown || entry?.type === 'choice') return verbatim(text, unit);
  if (entry?.type === 'list' || text.includes(';'))
    return encodeList(value, entry) ?? verbatim(text, unit);
  const typed = entry === undefined ? takeApart(text, unit) : takeApartAs(entry, value);
  if (typed === undefined) return verbatim(text, unit);
  // A unit that had to be typed to be believed stays in the text: in its place it would be asked again.
  const believed = entry?.type !== 'number' || readAs(entry, typed.number, typed.unit ?? unit).ok;
  if (!believed) return verbatim(text, unit);
  return hyphened(typed.number) + inLink(typed.unit ?? unit);
}

/** A unit behind the last reading alone serves them all; where they differ each carries its own. */
function encodeList({ text, unit }: StoredValue, entry: Entry | undefined): string | undefined {
  const found =
    entry?.type === 'list'
      ? readingsOf(text, contextOf(entry, unit))
      : { items: cells(text), unit };
  if (found === undefined) return undefined;
  const readings = found.items.map((reading) => takeApart(reading, unit));
  const items = readings
    .filter((reading) => reading !== undefined)
    .map(({ number, unit: own }) => ({
      number: hyphened(number),
      unit: inLink(own ?? found.unit),
    }));
  const last = items.at(-1);
  if (last === undefined || items.length < readings.length) return undefined;
  return items.every((item) => item.unit === last.unit)
    ? items.map(({ number }) => number).join(';') + last.unit
    : items.map((item) => item.number + item.unit).join(';');
}

function encodePlusMinus(plusMinus: string, unit: string): string {
  const typed = takeApart(plusMinus.replace(/^±\s*/, ''), unit);
  return typed === undefined
    ? verbatim(plusMinus, '')
    : hyphened(typed.number) + inLink(typed.unit ?? '');
}

/** Plain numbers and counts have no unit to write. */
function inLink(unit: string): string {
  return unit === 'ratio' || unit === 'count' ? '' : unit;
}

function hyphened(number: string): string {
  return number.replace(' ', '-');
}

function isWord(text: string): boolean {
  return /^[A-Za-z][A-Za-z0-9]*$/.test(text);
}

function verbatim(text: string, unit: string): string {
  return `!${escapeText(text)}${inLink(unit) === '' ? '' : `@${escapeText(unit)}`}`;
}

/**
 * The value that {@link encodeValue} wrote; an empty text gives an empty value. Throws a RangeError whose
 * message says what is wrong with it.
 */
export function decodeValue(text: string): StoredValue {
  const [main = '', plusMinus, ...more] = text.split(':');
  if (more.length > 0) throw new RangeError(`“${shown(text)}” has more than one ±`);
  const value = decodeText(main);
  if (plusMinus === undefined) return value;
  const spread = decodeText(plusMinus);
  const unit = spread.unit === '' ? '' : ` ${symbolOf(spread.unit)}`;
  return tidyValue({ ...value, plusMinus: `${spread.text}${unit}` });
}

function decodeText(text: string): StoredValue {
  if (text === '') return { text: '', unit: '' };
  if (text.startsWith('!')) return decodeVerbatim(text);
  if (isWord(text)) return { text, unit: '' };
  if (text.includes(';')) return decodeList(text);
  return decodeNumber(text);
}

function decodeVerbatim(text: string): StoredValue {
  const [words, unit, ...more] = text.slice(1).split('@').map(unescapeText);
  const damaged = words === undefined || (unit === undefined && text.includes('@'));
  if (damaged || more.length > 0) throw new RangeError(`“${shown(text)}” is damaged`);
  return { text: words, unit: unit ?? '' };
}

function decodeNumber(text: string): StoredValue {
  const parts =
    /^(-?(?:(?:\d+-)?\d+\/\d+|(?:\d+\.?\d*|\.\d+)(?:e-?\d+)?))([A-Za-z][A-Za-z0-9/]*)?$/.exec(text);
  if (parts === null) throw new RangeError(`“${shown(text)}” is no number`);
  const [, number = '', unit = ''] = parts;
  if (unit !== '' && !Object.hasOwn(units, unit)) {
    throw new RangeError(`“${shown(unit)}” is no unit known here`);
  }
  return { text: number.replace(/(\d)-(\d+\/)/, '$1 $2'), unit };
}

function decodeList(text: string): StoredValue {
  const items = text.split(';').map(decodeNumber);
  const unit = items.at(-1)?.unit ?? '';
  const bare = items.slice(0, -1).every((item) => item.unit === '');
  const readings = items.map((item) =>
    bare || item.unit === '' ? item.text : `${item.text} ${symbolOf(item.unit)}`,
  );
  return { text: readings.join('; '), unit };
}

/** The beginning of a damaged text, for a sentence. */
export function shown(text: string): string {
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
}

function symbolOf(unit: string): string {
  return units[unit]?.symbol ?? unit;
}
