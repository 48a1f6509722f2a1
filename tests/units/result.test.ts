import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatResult, formatTo, placesBeside, withoutFalseZeros } from '../../src/units/result.ts';
import { toSI } from '../../src/units/units.ts';

const thin = '\u202f';
const space = '\u00a0';

describe('a result without ±', () => {
  test.each([
    [1967.6, 'g', `1967.6${space}g`],
    [983.8, 'g', `983.8${space}g`],
    [1685, 'g', `1685.0${space}g`],
    [0.6, 'g', `0.6${space}g`],
    [0.39243, 'g', `0.39${space}g`],
    [10599.4, 'rpm', `10${thin}599${space}rpm`],
    [900, 'rpm', `900${space}rpm`],
    [0.0028, 'in', `0.0028${space}in`],
    [0.0018149, 'in', `0.00181${space}in`],
    [152.4, 'mm', `152.4${space}mm`],
    [0.0460981, 'mm', `0.0461${space}mm`],
    [20606.53, 'm/s2', `20${thin}610${space}m/s²`],
    [82.55012, 'deg', '82.55°'],
    [9.99996, 'kN', `10${space}kN`],
    [0.00008591, 'ratio', '0.00008591'],
    [2.5e-8, 'kgm2', `2.5${space}×${space}10⁻⁸${space}kg·m²`],
    [0, 'mm', `0${space}mm`],
    [-1.11e-13, 'g', `0${space}g`],
    [1.225e-16, 'ratio', '0'],
  ])('%d %s', (value, unit, text) => {
    expect(formatResult(toSI(value, unit), unit)).toBe(text);
  });

  test('is at most half a unit of its last place away, or of the finest place of the unit', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 9e3, noNaN: true }), (value) => {
        const shown = Number.parseFloat(formatResult(toSI(value, 'Nm'), 'Nm'));
        expect(Math.abs(shown - value) / value).toBeLessThanOrEqual(0.5e-3 * (1 + 1e-9));
      }),
    );
  });

  test('never is NaN or infinite', () => {
    expect(() => formatResult(Number.NaN, 'mm')).toThrow(RangeError);
    expect(() => formatResult(Infinity, 'mm')).toThrow(RangeError);
  });
});

describe('a result beside its ±', () => {
  test.each([
    [1685.2, 2.3, 'g', 1],
    [1685.2, 0.05, 'g', 1],
    [1685.2, 50, 'g', -1],
    [35304, 552, 'N', -2],
    [35304, 152, 'N', -1],
    [82.55012, 0.0023, 'deg', 2],
    [20.19123, 0.0041, 'kN', 2],
    [59.994, 0.002, 'mm', 3],
    [0.046098, 0.0048, 'mm', 3],
    [0, 0.04, 'kN', 2],
  ])('%d ± %d %s: %d places', (value, plusMinus, unit, places) => {
    expect(placesBeside(value, plusMinus, unit)).toBe(places);
  });

  test('is rounded by a ± that is not printed, without zeros that nobody sees a reason for', () => {
    expect(formatResult(toSI(20.5, 'kN'), 'kN', toSI(0.04, 'kN'))).toBe(`20.5${space}kN`);
    expect(formatResult(toSI(35304, 'N'), 'N', toSI(552, 'N'))).toBe(`35${thin}300${space}N`);
  });
});

test('rounding to tens and hundreds', () => {
  expect(formatTo(35304, -2)).toBe(`35${thin}300`);
  expect(formatTo(-1685.2, -1)).toBe('−1690');
  expect(formatTo(4, -1)).toBe('0');
  expect(formatTo(1.005, 1)).toBe('1.0');
});

test('only zeros behind the point are false', () => {
  expect(withoutFalseZeros('0.002800')).toBe('0.0028');
  expect(withoutFalseZeros('1.000')).toBe('1');
  expect(withoutFalseZeros(`10${thin}600`)).toBe(`10${thin}600`);
  expect(withoutFalseZeros('1200')).toBe('1200');
});
