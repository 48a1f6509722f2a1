import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calculationsVersion } from '../../src/calculators/version.ts';
import { escapeText, unescapeText } from '../../src/notebook/escape.ts';
import { isOther, readThen, writeThen } from '../../src/notebook/then.ts';

describe('results as they were', () => {
  test('are read as they were written, through a link', () => {
    const results = [
      { calculator: 'bobweight', output: 'bobweight', baseline: 1.6852, candidate: 1.2331 },
      { calculator: 'reversal-load', output: 'partingPull', candidate: 19_712.346 },
      { calculator: 'crank-overlap', output: 'overlap', baseline: -1.25e-7, candidate: 0 },
    ];
    const text = writeThen(results);
    expect(text).toBe(
      '1/bobweight.bobweight/1.6852/1.2331/reversal-load.partingPull//19712.35/crank-overlap.overlap/-1.25e-7/0',
    );
    expect(readThen(unescapeText(escapeText(text)))).toEqual({
      version: calculationsVersion,
      results: [results[0], { ...results[1], candidate: 19_712.35 }, results[2]],
    });
  });

  test('none is nothing', () => {
    expect(writeThen([])).toBe('');
    expect(writeThen([{ calculator: 'bobweight', output: 'bobweight' }])).toBe('');
  });

  test.each([
    [undefined],
    [''],
    ['1'],
    ['x/bobweight.bobweight/1/2'],
    ['1/bobweight.bobweight/1'],
    ['1/bobweight/1/2'],
    ['1/__proto__.x/1/2'],
    ['1/a.b/1/2/c.d/3'],
  ])('%j was no result', (text) => {
    expect(readThen(text)).toBeUndefined();
  });

  test('a number that is none is left out', () => {
    expect(readThen('1/a.b/NaN/1e999')).toEqual({
      version: 1,
      results: [{ calculator: 'a', output: 'b' }],
    });
  });

  test('seven figures are the same result; a part in a hundred thousand is another', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 1e9, noNaN: true }),
        fc.constantFrom(1, -1),
        (size, sign) => {
          const si = size * sign;
          const was = readThen(writeThen([{ calculator: 'a', output: 'b', baseline: si }]));
          const baseline = was?.results[0]?.baseline;
          expect(isOther(baseline, si)).toBe(false);
          expect(isOther(baseline, si * 1.00001)).toBe(true);
        },
      ),
    );
    expect(isOther(0, 0)).toBe(false);
    expect(isOther(undefined, 1)).toBe(false);
    expect(isOther(1, undefined)).toBe(true);
  });
});
