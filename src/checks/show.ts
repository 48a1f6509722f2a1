import { formatNumber } from '../units/format.ts';
import { halfUnit } from './case.ts';
import type { Row } from './run.ts';

const raised: Readonly<Record<string, string>> = {
  '-': '⁻',
  '0': '⁰',
  '1': '¹',
  '2': '²',
  '3': '³',
  '4': '⁴',
  '5': '⁵',
  '6': '⁶',
  '7': '⁷',
  '8': '⁸',
  '9': '⁹',
};

/** A small number as a power of ten: `−3.2 × 10⁻⁵`; plain 0 when there is none. */
export function showPower(value: number): string {
  if (value === 0) return '0';
  const [digits = '', power = ''] = Math.abs(value).toExponential(1).split('e');
  return `${value < 0 ? '−' : ''}${digits}\u00a0×\u00a010${raise(power)}`;
}

/** The computed value with more digits than any source prints; the reason when there is none. */
export function showComputed({ computed, unit, problem }: Row): string {
  if (computed === undefined) return problem ?? 'nothing';
  const text = formatNumber(computed, { significant: 7 });
  return unit === '' ? text : `${text}\u00a0${unit}`;
}

/** A printed number with its power of ten as books set it: `4.79 × 10³`. */
function showDigits(published: string): string {
  const [digits = '', power] = published.split('e');
  return power === undefined ? digits : `${digits}\u00a0×\u00a010${raise(power)}`;
}

function raise(power: string): string {
  return [...power.replace('+', '')].map((sign) => raised[sign] ?? sign).join('');
}

/** The published value as printed, or the band that is expected; says so when it is derived from the print. */
export function showPublished({ published, atLeast, atMost, unit, expected }: Row): string {
  const ends = [
    atLeast === undefined ? '' : `at least ${formatNumber(atLeast, { significant: 4 })}`,
    atMost === undefined ? '' : `at most ${formatNumber(atMost, { significant: 4 })}`,
  ].filter((end) => end !== '');
  const text = published === undefined ? ends.join(', ') : showDigits(published);
  const mark = !('published' in expected)
    ? ''
    : expected.misprint !== undefined
      ? ' (misprint)'
      : expected.derived !== undefined
        ? ' (derived)'
        : '';
  return `${unit === '' ? text : `${text}\u00a0${unit}`}${mark}`;
}

/** What the computed value must keep to, in words: half a unit of the last digit, an exact number, an error of the print. */
export function showTolerance({ expected, unit }: Row): string {
  if (!('published' in expected)) return `Inside the band: ${expected.why}.`;
  const { exact, derived, bookError, misprint, published } = expected;
  if (misprint !== undefined)
    return `Misprint: ${misprint.reason}. Taken rightly, the book’s own steps give ${showDigits(misprint.instead)}${unit === '' ? '' : `\u00a0${unit}`}.`;
  const inUnit = (size: number, significant: number): string => {
    const text = formatNumber(size, { significant });
    return unit === '' ? text : `${text}\u00a0${unit}`;
  };
  const parts = [
    exact === undefined
      ? `Half a unit of the last digit, ${inUnit(halfUnit(published), 1)}`
      : `An exact number: ${exact}`,
    ...(bookError === undefined
      ? []
      : [`an error of the print of ${inUnit(bookError.size, 2)}: ${bookError.reason}`]),
    ...(derived === undefined ? [] : [`derived from the print: ${derived}`]),
  ];
  return `${parts.join('; ')}.`;
}
