import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  convertTyped,
  decimalsFor,
  formatNumber,
  formatPlain,
  formatQuantity,
} from '../../src/units/format.ts';
import { clean, takeNumber } from '../../src/units/number.ts';
import { toSI, unitOf } from '../../src/units/units.ts';

const thin = '\u202f';
const space = '\u00a0';

describe('numbers for reading', () => {
  test.each([
    [1234.5, {}, '1234.5'],
    [12345.6, { decimals: 1 }, `12${thin}345.6`],
    [9999, { decimals: 0 }, '9999'],
    [10000, { decimals: 0 }, `10${thin}000`],
    [1234567, { significant: 7 }, `1${thin}234${thin}567`],
    [-3.5, {}, '−3.5'],
    [3.48, { decimals: 3 }, '3.480'],
    [20.48, { significant: 5 }, '20.480'],
    [0.000123456, { significant: 3 }, '0.000123'],
    [1685.21, { decimals: 1 }, '1685.2'],
    [123456.7, {}, `123${thin}460`],
    [0, { significant: 4 }, '0'],
    [-0, {}, '0'],
    [-0.0001, { decimals: 2 }, '0.00'],
    [1.2345e21, { significant: 4 }, `1.234${space}×${space}10²¹`],
    [-1e300, { decimals: 2 }, `−1.0000${space}×${space}10³⁰⁰`],
    [2.5e-9, { significant: 2 }, `2.5${space}×${space}10⁻⁹`],
    [2.5e-9, { decimals: 3 }, '0.000'],
  ])('%d with %j', (value, how, text) => {
    expect(formatNumber(value, how)).toBe(text);
  });

  test.each([Number.NaN, Infinity, -Infinity])('%d is never shown', (value) => {
    expect(() => formatNumber(value, {})).toThrow(RangeError);
    expect(() => formatPlain(value)).toThrow(RangeError);
    expect(() => formatQuantity(value, 'mm')).toThrow(RangeError);
    expect(() => decimalsFor(value, 1)).toThrow(RangeError);
  });
});

describe('quantities for reading', () => {
  test.each([
    [1.6852, 'g', { plusMinus: 0.002 }, `1685.2${space}g`],
    [1.6852, 'g', { plusMinus: 0.0005 }, `1685.2${space}g`],
    [1.6852, 'g', { plusMinus: 0.005 }, `1685${space}g`],
    [0.088392, 'in', { decimals: 3 }, `3.480${space}in`],
    [0.0884, 'mm', { significant: 3 }, `88.4${space}mm`],
    [0.5, 'ratio', { decimals: 2 }, '0.50'],
    [0.5, 'pct', {}, `50${space}%`],
    [Math.PI / 4, 'deg', {}, '45°'],
    [293.15, 'degC', { decimals: 1 }, `20.0${space}°C`],
    [293.15, 'degC', { plusMinus: 3 }, `20${space}°C`],
    [toSI(6400, 'rpm'), 'rpm', {}, `6400${space}rpm`],
    [9.80665 * 2000, 'gravity', {}, `2000${space}× gravity`],
  ])('%d in %s', (si, unit, how, text) => {
    expect(formatQuantity(si, unit, how)).toBe(text);
  });
});

describe('places that a ± justifies', () => {
  test.each([
    [1685.2, 2, 1],
    [1685.2, 0.5, 1],
    [1685.2, 0.12, 2],
    [1685.2, 50, 0],
    [3, 0.0297, 2],
    [3, 0.031, 2],
    [1, 0.0996, 2],
    [1685.2, 0, 2],
    [0, 0, 0],
    [0.01234, 0, 7],
  ])('%d ± %d', (value, plusMinus, places) => {
    expect(decimalsFor(value, plusMinus)).toBe(places);
  });
});

describe('converting what was typed', () => {
  // NIST SP 811 (2008), B.7.2 (read in a retyped copy): the worked example.
  test('36 ft is 11.0 m', () => {
    expect(convertTyped('36', 'ft', 'm')).toBe('11.0');
  });

  test.each([
    ['3.480', 'in', 'mm', '88.39'],
    ['88.4', 'mm', 'in', '3.480'],
    ['47.96', 'mm', 'm', '0.04796'],
    ['47,96', 'mm', 'in', '1.8882'],
    ['1 7/8', 'in', 'mm', '47.625'],
    ['6', 'in', 'mm', '152.4'],
    ['5', 'in', 'mm', '127'],
    ['6.0', 'in', 'mm', '152.4'],
    ['1⅞"', 'mm', 'mm', '47.625'],
    ['1 2/3', 'in', 'mm', '42.33333'],
    ['2', 'thou', 'in', '0.002'],
    ['12', 'oz', 'g', '340'],
    ['-3.5', 'in', 'mm', '−88.9'],
    ['20', 'degC', 'degF', '68'],
    ['12500', 'mm', 'mm', '12500'],
  ])('%s %s in %s is %s', (text, from, to, converted) => {
    expect(convertTyped(text, from, to)).toBe(converted);
  });

  test('no number and another kind are refused', () => {
    expect(() => convertTyped('abc', 'in', 'mm')).toThrow(RangeError);
    expect(() => convertTyped('3', 'in', 'g')).toThrow(RangeError);
    expect(() => convertTyped('3 g', 'in', 'mm')).toThrow(RangeError);
  });

  const pairs = [
    ['in', 'mm'],
    ['mm', 'in'],
    ['g', 'oz'],
    ['lb', 'kg'],
    ['degF', 'degC'],
    ['psi', 'kPa'],
    ['lbft', 'Nm'],
    ['rpm', 'rad/s'],
    ['deg', 'rad'],
  ] as const;
  const typedNumber = fc
    .tuple(fc.integer({ min: -999999, max: 999999 }), fc.integer({ min: 0, max: 5 }))
    .map(([n, places]) => ({ text: (n / 10 ** places).toFixed(places), step: 10 ** -places }));

  test('there and back stays within one unit of the last digit typed', () => {
    fc.assert(
      fc.property(typedNumber, fc.constantFrom(...pairs), ({ text, step }, [from, to]) => {
        // Where the other unit is coarse, B.7.2 would round to tens; units are the coarsest shown.
        const back = convertTyped(convertTyped(text, from, to), to, from);
        expect(Math.abs(valueOf(back) - Number(text))).toBeLessThanOrEqual(step * (1 + 1e-9));
      }),
      { numRuns: 1000 },
    );
  });

  test('rounding loses no more than the digits implied, and claims at most ten times finer', () => {
    fc.assert(
      fc.property(typedNumber, fc.constantFrom(...pairs), ({ text, step }, [from, to]) => {
        const converted = convertTyped(text, from, to);
        // Inches to a tenth are sizes and are converted exactly: see the cases above.
        fc.pre(from !== 'in' || /\.\d\d/.test(text) || Math.abs(Number(text)) >= 1000);
        const target = unitOf(to);
        const shown = toSI(valueOf(converted), to);
        const error = Math.abs(shown - toSI(Number(text), from)) / target.factor;
        const implied = (step * unitOf(from).factor) / target.factor;
        const place = 10 ** -(converted.split('.')[1] ?? '').length;
        expect(error).toBeLessThanOrEqual(place * 0.5000001 + 1e-9 * Math.abs(valueOf(converted)));
        expect(place).toBeLessThanOrEqual(implied < 1 ? implied * (1 + 1e-6) : 1);
        expect(place).toBeGreaterThan(Math.min(implied, 1) / 10.001);
      }),
      { numRuns: 1000 },
    );
  });
});

function valueOf(text: string): number {
  const number = takeNumber(clean(text));
  if (typeof number === 'string') throw new Error(text);
  return number.form === 'decimal' && number.asThousands !== undefined && !text.includes('.')
    ? number.asThousands
    : number.value;
}
