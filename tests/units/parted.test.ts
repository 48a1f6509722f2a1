import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  reciprocatingFraction,
  rodsPerPin,
  stroke,
  bigEndReadings,
} from '../../src/calculators/quantities.ts';
import { readField } from '../../src/notebook/evaluation.ts';
import type { Field, TypedValue } from '../../src/units/field.ts';
import { settle, written } from '../../src/units/settle.ts';

const before: TypedValue = { text: '70', unit: 'mm', plusMinus: '3' };
const shown = { text: '70', unit: 'mm', plusMinus: '3', converted: false };
function typed(text: string, field: Field = stroke): TypedValue {
  return written(before, { text, unit: 'mm' }, field, shown);
}

describe('a ± behind the number', () => {
  test.each([
    ['73.0 ± 0.05', '73.0', '0.05', 'mm'],
    ['73.0±0.05', '73.0', '0.05', 'mm'],
    ['73.0 +/- 0.05', '73.0', '0.05', 'mm'],
    ['73.0 +- 0.05', '73.0', '0.05', 'mm'],
    ['73.0 +/− 0,05', '73.0', '0,05', 'mm'],
    ['73.0 ± 0.05 mm', '73.0 mm', '0.05 mm', 'mm'],
    ['73.0 mm ± 0.05', '73.0 mm', '0.05', 'mm'],
    ['(73.0 ± 0.05) mm', '73.0 mm', '0.05 mm', 'mm'],
    ['2.874 in ± 0.02 mm', '2.874 in', '0.02 mm', 'in'],
    ['2.874 ± 0.001 in', '2.874 in', '0.001 in', 'in'],
    ['2 7/8 ± 1/64 in', '2 7/8 in', '1/64 in', 'in'],
    ['73.0 ± 0.5 %', '73.0', '0.5 %', 'mm'],
  ])('%s', (text, number, plusMinus, unit) => {
    const value = typed(text);
    expect(value).toEqual({ text: number, unit, plusMinus });
    expect(readField(stroke, value).plusMinus).toBeGreaterThan(0);
  });

  test('of a share is a size, not a share of the share', () => {
    const value = written(
      { text: '0.5', unit: 'ratio' },
      { text: '50 ± 1 %', unit: 'ratio' },
      reciprocatingFraction,
      { text: '0.5', unit: 'ratio', plusMinus: '', converted: false },
    );
    expect(value).toEqual({ text: '50 %', unit: 'pct', plusMinus: '1' });
    expect(readField(reciprocatingFraction, value)).toMatchObject({ value: 0.5, plusMinus: 0.01 });
  });

  test.each(['73.0 ±', '73.0 +-', '73.0 ± x', '73.0 ± -1', '± 5', '1 ± 2 ± 3', '73.0 ± 0.05 kg'])(
    '%s stays as typed, gives no value, and takes the former ± away',
    (text) => {
      const value = typed(text);
      expect(value).toEqual({ text, unit: 'mm' });
      const field = readField(stroke, value);
      expect(field.value).toBeUndefined();
      expect(field.problem).toContain(`“${text}”`);
    },
  );

  test('leaves nothing behind when it is taken back key by key', () => {
    let value = before;
    for (const text of ['73.0 ± 5', '73.0 ± ', '73.0 ±', '73.0 ', '73.0'])
      value = written(value, { text, unit: 'mm' }, stroke, {
        ...shown,
        text: value.text,
        plusMinus: value.plusMinus ?? '',
      });
    expect(value).toEqual({ text: '73.0', unit: 'mm' });
  });

  test('is parted in what was stored or came by a file, too', () => {
    expect(settle({ text: '73.0 ± 0.05', unit: 'mm' }, stroke)).toEqual({
      text: '73.0',
      unit: 'mm',
      plusMinus: '0.05',
    });
  });

  test('has no place in a count or a list', () => {
    for (const field of [rodsPerPin, bigEndReadings]) {
      const value = { text: '2 ± 1', unit: field.metric };
      expect(settle(value, field)).toEqual(value);
      expect(readField(field, value).problem).toMatch(/“2 ±/);
    }
  });

  test('a text without one is never touched', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 30 }), (text) => {
        fc.pre(!/±|\+/.test(text));
        expect(typed(text).text).toBe(text);
      }),
    );
  });
});
