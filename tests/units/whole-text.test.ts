import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as quantities from '../../src/calculators/quantities.ts';
import type { Entry } from '../../src/calculators/define.ts';
import { readAs } from '../../src/units/field.ts';
import { takeNumber, clean } from '../../src/units/number.ts';
import { readQuantity } from '../../src/units/read.ts';
import { findUnit, toSI, units } from '../../src/units/units.ts';

const { pistonMass, ringSideClearance, stroke, maxSpeed } = quantities;
const plain = { label: 'Length', kind: 'length', unit: 'mm' } as const;

function value(text: string, kind: 'length' | 'mass' | 'angularSpeed' = 'length'): number {
  const unit = { length: 'mm', mass: 'g', angularSpeed: 'rpm' }[kind];
  const reading = readQuantity(text, { label: 'It', kind, unit });
  if (!reading.ok) throw new Error(reading.say);
  return reading.value;
}

describe('spellings', () => {
  test.each([
    ["1'234.5", 1234.5],
    ['1’234.5', 1234.5],
    ['1’234’567,5 mm', 1234567.5],
    ["12'345 mm", 12345],
    ['1.888.', 1.888],
    ['1,8880,', 1.888],
    ['73,5.', 73.5],
    ['1.234.567.', 1234567],
    ['−3,5', -3.5],
    ['1\u2009234,5\u202fmm', 1234.5],
    ['⅞', 0.875],
  ])('%s is %d', (text, expected) => {
    expect(value(text)).toBe(expected);
  });
  test.each(["1'23", "0'234", "12'34.5", '1,888.', '1.234,', '1.888..', '1..', "'234"])(
    '%s is no number',
    (text) => {
      expect(readQuantity(text, plain).ok).toBe(false);
    },
  );

  test.each([
    ['8400 U/min', 8400, 1],
    ['8400 u/min', 8400, 1],
    ['8.4k rpm', 8400, 100],
    ['8.4 k U/min', 8400, 100],
    ['8,45k', 8450, 10],
    ['8.4k', 8400, 100],
    ['8k', 8000, 1000],
    ['8.40025k rpm', 8400.25, 0.01],
  ])('%s is %d turns a minute', (text, expected, step) => {
    const reading = readAs(maxSpeed, text, 'rpm');
    expect(reading).toMatchObject({ ok: true, value: expected, unit: 'rpm' });
    expect(reading.ok && reading.step).toBeCloseTo(step, 12);
  });
  test('thousands are said in full', () => {
    expect(readAs(maxSpeed, '8.4k rpm', 'rpm')).toMatchObject({ echo: '8.4k rpm = 8400 rpm' });
  });
  test('a k is no thousand anywhere else', () => {
    for (const text of ['8.4k', '8.4k mm']) expect(readQuantity(text, plain).ok).toBe(false);
    expect(readAs(maxSpeed, '8.4k kg', 'rpm').ok).toBe(false);
  });

  test.each([
    ['1 lb 2 oz', 18],
    ['1lb 2oz', 18],
    ['1 lb, 2 oz', 18],
    ['1 pound 2 ounces', 18],
    ['2 lbs 0.5 oz', 32.5],
    ['1 lb 2 1/2 oz', 18.5],
    ['0 lb 15,5 oz', 15.5],
    ['-1 lb 2 oz', -18],
  ])('%s is %d ounces', (text, ounces) => {
    const reading = readQuantity(text, { label: 'Piston', kind: 'mass', unit: 'g' });
    expect(reading).toMatchObject({ ok: true, value: ounces, unit: 'oz', typedUnit: true });
    expect(reading.ok && reading.si).toBeCloseTo((ounces * 0.45359237) / 16, 12);
  });
  test('pounds and ounces are said in grams', () => {
    expect(readAs(pistonMass, '1 lb 2 oz', 'g')).toMatchObject({ echo: '1 lb 2 oz = 510 g' });
  });
  test('feet and inches go the same way', () => {
    expect(value('5 ft 2 1/2 in')).toBe(62.5);
    expect(value('5\' 2"')).toBe(62);
  });
  test.each([
    ['1 lb 2', 'more than one number'],
    ['1 lb 2 o', 'more than one number'],
    ['1 lb 2 g', 'more than one number'],
    ['1.5 lb 2 oz', 'more than one number'],
    ['1 lb 16 oz', '16 oz or more are another lb'],
  ])('%s is refused', (text, words) => {
    const reading = readAs(pistonMass, text, 'g');
    expect(!reading.ok && reading.say).toContain(words);
  });
  test('pounds and ounces are named where a length is wanted', () => {
    expect(readAs(stroke, '1 lb 2 oz', 'mm')).toMatchObject({ ok: false, problem: 'wrong-kind' });
  });
});

describe('typing, key by key', () => {
  const keys = (text: string): readonly string[] =>
    Array.from(text, (_, i) => text.slice(0, i + 1)).map((part) => part);

  test('45 um: a full reading at each key, or none', () => {
    const read = keys('45 um').map((text) => readAs(ringSideClearance, text, 'mm'));
    // 4 mm is a reading in full, if an unusual one; 45 is asked, and “45 u” is no number yet.
    expect(read.map((one) => one.ok)).toEqual([true, false, false, false, true]);
    expect(read[0]).toMatchObject({ si: toSI(4, 'mm') });
    expect(read.at(-1)).toMatchObject({ si: toSI(45, 'um') });
  });
  test('1.5 thou in an inch field', () => {
    const read = keys('1.5 thou').map((text) => readAs(ringSideClearance, text, 'in'));
    expect(read.slice(4, -1).map((one) => one.ok)).toEqual([false, false, false]);
    expect(read.at(-1)).toMatchObject({ ok: true, si: toSI(1.5, 'thou') });
  });
  test('a fragment gives no value and says what was typed', () => {
    for (const text of [
      '4x',
      '1 lb 2',
      '1e',
      '1e+',
      '7/',
      '1 7',
      '1 7/',
      '3-',
      '73.0 ±',
      '- ',
      '.',
    ]) {
      const reading = readAs(pistonMass, text, 'g');
      expect(reading.ok, text).toBe(false);
      expect(!reading.ok && reading.say).toContain(`“${text.trim()}”`);
    }
  });

  const digits = fc.oneof(
    fc.stringMatching(/^-?\d{1,4}([.,]\d{1,4})?$/),
    fc.stringMatching(/^\d{1,2} \d{1,2}\/(2|4|8|16|32|64)$/),
    fc.stringMatching(/^[1-9]\d{0,2}('\d{3}){1,2}(\.\d)?$/),
    fc.stringMatching(/^\d\.\dk$/),
    fc.stringMatching(/^\d{1,3}\.\d ± 0\.\d$/),
    fc.stringMatching(/^\d lb \d oz$/),
  );
  const tails = fc.constantFrom(
    '',
    ...Object.values(units).flatMap(({ symbol }) => [symbol, ` ${symbol}`]),
  );
  const fields = Object.values(quantities).filter((entry) => entry.type === 'number');

  test('what is read is the whole text: its number and a unit that is known, with nothing left over', () => {
    fc.assert(
      fc.property(digits, tails, fc.constantFrom(...fields), (number, tail, field) => {
        for (const text of keys(number + tail)) {
          const reading = readAs(field, text, field.metric);
          if (!reading.ok) continue;
          const tidy = clean(text);
          if (/^-?\d+ ?(lb|ft|') ?\d/.test(tidy)) continue;
          const token = takeNumber(tidy);
          if (typeof token === 'string') throw new Error(`${text} was read`);
          const behind = tidy.slice(token.token.length).replace(/^\.$/, '').trim();
          const turns = field.kind === 'angularSpeed' ? behind.replace(/^k ?/i, '') : behind;
          expect(
            turns === '' ||
              /^(°|deg)$/.test(turns) ||
              findUnit(turns, field.kind)?.kind === field.kind,
            `${field.name}: ${text}`,
          ).toBe(true);
        }
      }),
      { numRuns: 3000 },
    );
  });
});

describe('a refusal shows how it is written here', () => {
  test.each([
    [stroke, 'mm', 'abc', 'Write it like 73.00 or 73,00 mm.'],
    [stroke, 'in', 'abc', 'Write it like 2.8740 or 2,8740 in.'],
    [pistonMass, 'g', '', 'Write it like 428.0 or 428,0 g.'],
    [maxSpeed, 'rpm', '5 kg', 'Write it like 6400 rpm.'],
    [quantities.bigEndReadings, 'g', 'x', 'Write it like 421.0; 421.5 g.'],
    [quantities.rodsPerPin, 'count', '1.5', 'Write it like 2.'],
  ] as const)('%#', (field, unit, text, end) => {
    const reading = readAs(field, text, unit);
    if (reading.ok) throw new Error('was read');
    expect(reading.say.endsWith(` ${end}`), reading.say).toBe(true);
  });

  test('for every field of the site in either system, and each example is read to the same value', () => {
    const all = Object.values<Entry>(quantities).filter((entry) => entry.type !== 'choice');
    expect(all.length).toBeGreaterThan(100);
    for (const field of all) {
      for (const unit of [field.metric, field.inch]) {
        const reading = readAs(field, 'nothing of the sort', unit);
        const [, said = ''] = /Write it like (.*)\.$/.exec(reading.ok ? '' : reading.say) ?? [];
        expect(said, field.name).not.toBe('');
        const answers = said.split(' or ').map((text) => readAs(field, text, unit));
        for (const answer of answers) {
          expect(answer.ok, `${field.name}: ${said}`).toBe(true);
          expect(answer.ok && answer.si).toEqual(answers[0]?.ok === true && answers[0].si);
        }
      }
    }
  });
});
