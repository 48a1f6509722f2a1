import { describe, expect, test } from 'vitest';
import { inRowUnit } from '../../../src/components/form/row-unit.ts';

const shown = (text: string, unit: string) => ({ text, unit, plusMinus: '', converted: false });

describe('what a cell shows whose row stands in another unit', () => {
  test.each([
    ['73.0', 'mm', '73.0'],
    ['7.3', 'cm', '7.3\u00a0cm'],
    ['7.3 cm', 'cm', '7.3 cm'],
    ['2.875"', 'in', '2.875"'],
    ['7,3e1', 'cm', '7,3e1\u00a0cm'],
    ['', 'cm', ''],
  ])('%s in %s', (text, unit, wanted) => {
    expect(inRowUnit(shown(text, unit), 0.073, 'mm', false)).toBe(wanted);
  });

  test('an example is written anew', () => {
    expect(inRowUnit(shown('7.3', 'cm'), 0.073, 'mm', true)).toBe('73.00');
  });

  test('what cannot be read stands as it was typed', () => {
    expect(inRowUnit(shown('4x', 'cm'), undefined, 'mm', false)).toBe('4x');
  });
});
