import { formatNumber } from '../units/format.ts';
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
  const exponent = [...power.replace('+', '')].map((sign) => raised[sign] ?? sign).join('');
  return `${value < 0 ? '−' : ''}${digits}\u00a0×\u00a010${exponent}`;
}

/** The computed value with more digits than any source prints; the reason when there is none. */
export function showComputed({ computed, unit, problem }: Row): string {
  if (computed === undefined) return problem ?? 'nothing';
  const text = formatNumber(computed, { significant: 7 });
  return unit === '' ? text : `${text}\u00a0${unit}`;
}

/** The published value as printed, or the band that custom expects. */
export function showPublished({ published, atLeast, atMost, unit }: Row): string {
  const ends = [
    atLeast === undefined ? '' : `at least ${formatNumber(atLeast, { significant: 4 })}`,
    atMost === undefined ? '' : `at most ${formatNumber(atMost, { significant: 4 })}`,
  ].filter((end) => end !== '');
  const text = published ?? ends.join(', ');
  return unit === '' ? text : `${text}\u00a0${unit}`;
}

/** The tolerance: relative, or in the value's unit. */
export function showTolerance({ expected, unit }: Row): string {
  if (!('published' in expected)) return 'inside the band';
  if (expected.absolute !== true) return showPower(expected.tolerance);
  return `${showPower(expected.tolerance)}${unit === '' ? '' : `\u00a0${unit}`}`;
}
