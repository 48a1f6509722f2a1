import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as quantities from '../../src/calculators/quantities.ts';
import { percent } from '../../src/calculators/quantity.ts';
import { readAs, type NumberField } from '../../src/units/field.ts';
import { fromSI, toSI } from '../../src/units/units.ts';

const { pistonMass, stroke, maxSpeed, reciprocatingFraction, ringSideClearance } = quantities;
/** The share as a field of per cent has it. */
const inPercent = percent('share', 'f', 'Balance factor', [0, 36, 55, 100], {
  demo: '50 %',
  origin: 'choice',
});

function offers(field: NumberField, text: string, unit: string): readonly string[] {
  const reading = readAs(field, text, unit);
  if (reading.ok) throw new Error(`${text} was read as ${String(reading.si)}`);
  expect(reading.problem).toBe('ambiguous');
  expect(reading.say).toContain(
    `“${text}”: ${reading.suggestions.map((s) => s.text).join(' or ')}?`,
  );
  return reading.suggestions.map((suggestion) => suggestion.text);
}
function si(field: NumberField, text: string, unit: string): number {
  const reading = readAs(field, text, unit);
  if (!reading.ok) throw new Error(reading.say);
  return reading.si;
}

describe('a bare number that only another unit makes likely', () => {
  test.each([
    ['grams after kilograms', pistonMass, '428', 'kg', ['428 g', '428 kg']],
    ['part of it, at a key before', pistonMass, '42', 'kg', ['42 g', '42 kg']],
    ['kilograms among grams', pistonMass, '0.428', 'g', ['0.428 kg', '0.428 g']],
    ['millimetres among inches', stroke, '86', 'in', ['86 mm', '86 in']],
    ['inches among millimetres', stroke, '3.48', 'mm', ['3.48 in', '3.48 mm']],
    ['a fraction among millimetres', stroke, '3 1/2', 'mm', ['3 1/2 in', '3 1/2 mm']],
    ['micrometres among millimetres', ringSideClearance, '45', 'mm', ['45 µm', '45 mm']],
    ['thousandths among inches', ringSideClearance, '1.5', 'in', ['1.5 thou', '1.5 in']],
    [
      'inches among millimetres that are possible too',
      ringSideClearance,
      '0.0025',
      'mm',
      ['0.0025 in', '0.0025 mm'],
    ],
  ] as const)('is asked: %s', (_what, field, text, unit, expected) => {
    expect(offers(field, text, unit)).toEqual(expected);
    for (const one of expected) expect(readAs(field, one, unit).ok).toBe(true);
  });

  test.each([
    ['a typed unit is taken at its word', pistonMass, '428 kg', 'kg', 428],
    ['it is usual', pistonMass, '0.428', 'kg', 0.428],
    ['it is unusual, but no other unit makes it usual', stroke, '20', 'mm', 0.02],
    ['nothing makes it likely', pistonMass, '5000', 'g', 5],
    ['zero is zero in any unit', pistonMass, '0', 'kg', 0],
  ] as const)('is not asked where %s', (_what, field, text, unit, value) => {
    expect(si(field, text, unit)).toBeCloseTo(value, 12);
  });

  test('is never computed in the unit that went before', () => {
    const grams = fc.double({ min: 90, max: 650, noNaN: true });
    fc.assert(
      fc.property(grams, fc.constantFrom('kg', 'lb'), (mass, before) => {
        const reading = readAs(pistonMass, mass.toFixed(1), before);
        expect(reading.ok).toBe(false);
        expect(reading.suggestions[0]?.text).toBe(
          `${String(Number(mass.toFixed(1)))} g`.replace(/^(\d+) g$/, '$1.0 g'),
        );
      }),
    );
  });

  test('every usual value is read in each of its own units', () => {
    const fields = Object.values(quantities).filter((entry) => entry.type === 'number');
    fc.assert(
      fc.property(
        fc.constantFrom(...fields),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (field, at) => {
          const [low, high] = field.usual;
          const value = toSI(low + at * (high - low), field.rangeUnit);
          for (const unit of [field.metric, field.inch]) {
            const text =
              field.kind === 'count'
                ? String(Math.round(value))
                : fromSI(value, unit).toPrecision(6);
            const reading = readAs(field, text, unit);
            const inside = reading.ok || Math.abs(at - 0.5) > 0.4999;
            expect(inside, `${field.name}: ${text} ${unit}`).toBe(true);
          }
        },
      ),
      { numRuns: 1000 },
    );
  });
});

describe('a share', () => {
  test.each([
    ['55', inPercent, 'pct', 0.55],
    ['55 %', inPercent, 'pct', 0.55],
    ['0.55 %', inPercent, 'pct', 0.0055],
    ['1', inPercent, 'pct', 0.01],
    ['0.55', reciprocatingFraction, 'ratio', 0.55],
    ['55 %', reciprocatingFraction, 'ratio', 0.55],
  ] as const)('%s is read', (text, field, unit, value) => {
    expect(si(field, text, unit)).toBeCloseTo(value, 12);
  });
  test('below one per cent is asked, and so is a plain number above one', () => {
    expect(offers(inPercent, '0.55', 'pct')).toEqual(['55 %', '0.55 %']);
    expect(offers(inPercent, '.3', 'pct')).toEqual(['30 %', '0.3 %']);
    expect(offers(reciprocatingFraction, '55', 'ratio')).toEqual(['55 %', '5500 %']);
  });
  test('a number that is no share of a whole is never taken for one', () => {
    expect(si(quantities.compressionRatio, '1200', 'ratio')).toBe(1200);
  });
});

describe('a point before three digits', () => {
  test.each([
    ['8.400', ['8400 rpm', '8.4 rpm']],
    ['8.400 rpm', ['8400 rpm', '8.4 rpm']],
    ['8.425', ['8425 rpm', '8.4250 rpm']],
  ])('%s may part thousands of turns', (text, expected) => {
    expect(offers(maxSpeed, text, 'rpm')).toEqual(expected);
    for (const one of expected) expect(readAs(maxSpeed, one, 'rpm').ok).toBe(true);
  });
  test('is a decimal point wherever that is possible', () => {
    expect(si(stroke, '73.125', 'mm')).toBeCloseTo(0.073125, 12);
  });
});

describe('gr', () => {
  test.each(['512.4 gr', '512.4gr', '512.4 Gr.'])('%s is grams or grains: asked', (text) => {
    expect(offers(pistonMass, text, 'g')).toEqual(['512.4 g', '512.4 grain']);
  });
  test('each answer is read, and a grain spelt out is one', () => {
    expect(si(pistonMass, '512.4 g', 'g')).toBeCloseTo(0.5124, 12);
    // 1 grain = 0.45359237 kg / 7000, exact.
    for (const text of ['512.4 grain', '512.4 grains'])
      expect(si(pistonMass, text, 'g')).toBeCloseTo((512.4 * 0.45359237) / 7000, 12);
  });
});
