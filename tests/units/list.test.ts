import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bigEndReadings, smallEndReadings } from '../../src/calculators/quantities.ts';
import { decodeValue, encodeValue } from '../../src/notebook/link-value.ts';
import { readAs, type ListField } from '../../src/units/field.ts';
import { readList } from '../../src/units/list.ts';
import { shownIn } from '../../src/units/settle.ts';

function grams(text: string, field: ListField = bigEndReadings, unit = 'g'): readonly number[] {
  const read = readAs(field, text, unit);
  if (!read.ok) throw new Error(read.say);
  return read.si.map((one) => Number((one * 1000).toFixed(6)));
}
function offers(text: string, field: ListField = bigEndReadings): readonly string[] {
  const read = readAs(field, text, 'g');
  if (read.ok) throw new Error(`read as ${String(read.si)}`);
  return read.suggestions.map((suggestion) => suggestion.text);
}

describe('a comma without a space', () => {
  test.each([
    ['421,422,421', [421, 422, 421]],
    ['421.0,421.5', [421, 421.5]],
    ['421.0,421.5 g', [421, 421.5]],
    ['421.0,421.5;421.1', [421, 421.5, 421.1]],
    ['421,5', [421.5]],
    ['421,50', [421.5]],
    ['421,5; 421,4', [421.5, 421.4]],
    ['1,421', [1421]],
  ])('%s is read where one way is likely', (text, expected) => {
    expect(grams(text)).toEqual(expected);
  });

  test.each([
    ['421,422', ['421; 422', '421.422']],
    ['421,422 g', ['421; 422 g', '421.422 g']],
    ['421,422; 420', ['421; 422; 420', '421.422; 420']],
    ['421,422; 420,421', ['421; 422; 420; 421', '421.422; 420.421']],
  ])('%s is asked where two are', (text, expected) => {
    expect(offers(text)).toEqual(expected);
    for (const one of expected) expect(readAs(bigEndReadings, one, 'g').ok).toBe(true);
  });

  test('far apart is no pair of readings', () => {
    expect(grams('170,90', smallEndReadings)).toEqual([170.9]);
    expect(offers('98,101', smallEndReadings)).toEqual(['98; 101', '98.101']);
  });

  test('never makes one reading of two, nor tonnes of three', () => {
    const usual = fc.integer({ min: 105, max: 660 });
    fc.assert(
      fc.property(fc.array(usual, { minLength: 2, maxLength: 20 }), (masses) => {
        const read = readAs(bigEndReadings, masses.join(','), 'g');
        if (!read.ok) expect(read.suggestions[0]?.text).toBe(masses.join('; '));
        else expect(read.si.map((one) => Math.round(one * 1000))).toEqual(masses);
        expect(masses.length > 2).toBe(read.ok);
      }),
    );
  });
});

describe('a block from a spreadsheet', () => {
  const cell = fc.integer({ min: 1050, max: 6600 }).map((tenths) => tenths / 10);
  const rows = fc.array(fc.array(cell, { minLength: 1, maxLength: 4 }), {
    minLength: 1,
    maxLength: 5,
  });

  test('is read cell by cell, whatever ends its lines and marks its decimals', () => {
    fc.assert(
      fc.property(
        rows,
        fc.constantFrom('\n', '\r\n', '\r'),
        fc.constantFrom('.', ','),
        fc.boolean(),
        fc.boolean(),
        (block, end, mark, quoted, last) => {
          const write = (value: number): string => {
            const text = value.toFixed(1).replace('.', mark);
            return quoted ? `"${text}"` : text;
          };
          const text = block.map((row) => row.map(write).join('\t')).join(end) + (last ? end : '');
          expect(grams(text)).toEqual(block.flat());
        },
      ),
    );
  });

  test('with a heading names the reading that is none', () => {
    const read = readAs(bigEndReadings, 'Lift\tMass\r\n1\t421.0', 'g');
    expect(!read.ok && read.say).toContain('reading 1, must be a mass. You entered “Lift”');
  });
});

describe('a list', () => {
  test('takes pounds and ounces as one reading', () => {
    const [first = 0, second = 0, third = 0] = grams('1 lb 2 oz; 1 lb 3 oz 510 g');
    expect(first).toBeCloseTo(18 * 28.349523125, 5);
    expect(second).toBeCloseTo(19 * 28.349523125, 5);
    expect(third).toBe(510);
  });

  test('asks for a reading that only another unit makes likely, and offers the whole list', () => {
    const expected = ['421 g; 0.421 kg', '421 g; 0.421 g'];
    expect(offers('421; 0.421')).toEqual(expected);
    for (const one of expected) expect(readAs(bigEndReadings, one, 'g').ok).toBe(true);
  });

  test.each(['421 422', '421\n422', '421,422,421', '421.0\t421.5', '421; 422 g', '15 16 oz'])(
    '%j is the same in a link and in the other system',
    (text) => {
      const read = readAs(bigEndReadings, text, 'g');
      if (!read.ok) throw new Error(read.say);
      const back = decodeValue(encodeValue({ text, unit: read.unit }, bigEndReadings));
      expect(readAs(bigEndReadings, back.text, back.unit)).toMatchObject({ si: read.si });
      const field = { ...bigEndReadings, inch: 'oz' };
      const shown = shownIn('inch', { text, unit: read.unit }, field);
      const again = readAs(field, shown.text, shown.unit);
      expect(again.ok && again.si.length).toBe(read.si.length);
    },
  );
});

test('whole numbers may have dashes between them, as a firing order is written', () => {
  const context = { label: 'Firing order', kind: 'count', unit: 'count' } as const;
  for (const typed of ['1-8-4-3', '1 – 8 – 4 – 3', '1; 8; 4; 3', '1, 8, 4, 3'])
    expect(readList(typed, context, 12)).toMatchObject({ ok: true, si: [1, 8, 4, 3] });
  expect(readList('1-8--4', context, 12).ok).toBe(false);
  const mass = { label: 'Masses', kind: 'mass', unit: 'g' } as const;
  expect(readList('421-422', mass, 12).ok).toBe(false);
});
