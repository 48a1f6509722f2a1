import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pistonMasses } from '../../src/calculators/quantities.ts';
import { readList } from '../../src/units/read.ts';
import { contextOf } from '../../src/units/field.ts';
import {
  joinedPlaces,
  placesOf,
  readPlace,
  summaryDecimals,
  summaryOf,
} from '../../src/units/places.ts';

const field = pistonMasses;
const grams = (text: string): readonly (number | undefined)[] | undefined =>
  placesOf({ text, unit: 'g' }, field)?.map(({ si }) => si && Math.round(si * 1e7) / 1e4);

describe('the places of a list', () => {
  test('are read one by one: what is no number takes none of the others away', () => {
    expect(grams('428.0; n/a; 429.2')).toEqual([428, undefined, 429.2]);
    const [, second] = placesOf({ text: '428.0; n/a; 429.2', unit: 'g' }, field) ?? [];
    expect(second?.text).toBe('n/a');
    expect(second?.problem).toMatch(
      /^Pistons, each, line 2, must be a mass\. You entered “n\/a”.*like 428\.0 or 428,0 g\.$/,
    );
  });

  test('keep those after a part that was not weighed where they are', () => {
    expect(grams('428.0; –; 429.2')).toEqual([428, undefined, 429.2]);
    expect(placesOf({ text: '428.0; -; 429.2', unit: 'g' }, field)?.[1]).toEqual({ text: '' });
    expect(readList('428.0; –; 429.2; —', contextOf(field, 'g'), 16)).toMatchObject({
      ok: false,
      problem: 'gap',
      say: 'Pistons, each: Readings 2 and 4 are still missing; a dash keeps the place.',
    });
    expect(grams('')).toEqual([]);
  });

  test('are unknown where commas leave two ways to part them', () => {
    expect(placesOf({ text: '421,422', unit: 'g' }, field)).toBeUndefined();
  });

  test('say how an unusual number was read', () => {
    expect(readPlace('15.1 oz', field, 'g').remark).toBe('15.1 oz = 428 g');
    expect(readPlace('428.0', field, 'g')).toEqual({ text: '428.0', si: 0.428, step: 1e-4 });
  });
});

describe('texts joined to a list', () => {
  test('have a decimal point, and keep their digits', () => {
    expect(joinedPlaces(['428,0', '427.10', '1.234,5'], field, 'g')).toBe('428.0; 427.10; 1234.5');
    // Side by side in one text, these would be asked about.
    expect(joinedPlaces(['421,422'], field, 'g')).toBe('421.422');
  });

  test('name every unit where one is named: else it would serve the bare ones too', () => {
    const text = joinedPlaces(['428', '15.1 oz', ''], field, 'g');
    expect(text).toBe('428\u00a0g; 15.1\u00a0oz');
    expect(grams(text)?.[0]).toBe(428);
  });

  test('leave no gap at the end, and nothing of nothing', () => {
    expect(joinedPlaces(['', '428', '', ' '], field, 'g')).toBe('–; 428');
    expect(joinedPlaces(['', ''], field, 'g')).toBe('');
  });

  // Whatever was typed in one place, the others stand where they stood, and no number comes of what was none.
  test('are as many places again, each read as it was by itself', () => {
    const odd = fc.constantFrom(
      'n/a',
      '12; 13',
      '428, 5',
      '1 lb, 2 oz',
      '=1+1',
      '"',
      '3\t4',
      '12 13',
      '<b>',
    );
    const texts = fc.array(
      fc.oneof(
        fc.double({ min: 20, max: 900 }).map((n) => n.toFixed(1)),
        odd,
        fc.string(),
      ),
      {
        maxLength: 16,
      },
    );
    fc.assert(
      fc.property(texts, (all) => {
        const text = joinedPlaces(all, field, 'g');
        const places = placesOf({ text, unit: 'g' }, field) ?? [];
        all.forEach((one, at) => {
          expect(places[at]?.si, one).toEqual(readPlace(one, field, 'g').si);
        });
        expect(places.length).toBeLessThanOrEqual(all.length);
      }),
    );
  });
});

describe('the summary of a list', () => {
  test('by hand', () => {
    const places = placesOf({ text: '428.0; 427.1; –; 429.2; n/a', unit: 'g' }, field) ?? [];
    const summary = summaryOf(places);
    expect(summary?.count).toBe(3);
    expect(summary?.mean).toBeCloseTo(0.4281, 12);
    expect(summary?.least).toBeCloseTo(0.4271, 12);
    expect(summary?.greatest).toBeCloseTo(0.4292, 12);
    expect(summary?.spread).toBeCloseTo(0.0021, 12);
    // Read to a tenth of a gram; the mean to a hundredth.
    expect(summary && summaryDecimals(summary, 'g', 0)).toBe(1);
    expect(summary && summaryDecimals(summary, 'g', 1)).toBe(2);
  });

  test('of equal parts is their own mass, and of none there is none', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-3, max: 5, noNaN: true }),
        fc.integer({ min: 1, max: 16 }),
        (si, count) => {
          const summary = summaryOf(
            Array.from({ length: count }, () => ({ text: '', si, step: 1e-4 })),
          );
          expect(summary).toMatchObject({ count, mean: si, least: si, greatest: si, spread: 0 });
        },
      ),
    );
    expect(summaryOf([{ text: '' }, { text: 'n/a', problem: 'none' }])).toBeUndefined();
  });
});
