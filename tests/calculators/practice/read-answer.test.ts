import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { readAnswer } from '../../../src/calculators/practice/read-answer.ts';
import { toSI } from '../../../src/units/units.ts';

const force = { unit: 'kN', saysUnit: true } as const;
const bare = { unit: 'kN', saysUnit: false } as const;

describe('an answer that is read', () => {
  it.each([
    ['20.1 kN', 20_100],
    ['20,1kN', 20_100],
    ['20100 N', 20_100],
    ['4518.7 lbf', 20_100.2],
    ['1 1/2 kN', 1500],
    ['1-1/2 kN', 1500],
    ['2.01e1 kN', 20_100],
    ['2.01e-1 kN', 201],
  ])('%s', (typed, newtons) => {
    const read = readAnswer(typed, force);
    // Printed to five figures.
    expect(read.ok && read.si / newtons).toBeCloseTo(1, 4);
  });

  it('takes the unit of the question for a bare number, and says so', () => {
    expect(readAnswer('20.1', force)).toMatchObject({
      ok: true,
      si: 20_100,
      echo: 'Read as 20.1\u00a0kN, in the unit of the question',
    });
  });

  it('says how a fraction and another unit were read', () => {
    const fraction = readAnswer('1 7/8 in', { unit: 'mm', saysUnit: true });
    expect(fraction.ok && fraction.echo).toMatch(/47\.625/);
    const other = readAnswer('4518.7 lbf', force);
    expect(other.ok && other.echo).toMatch(/^4518\.7\slbf = 20\.1\d*\skN$/);
  });

  it('wants no unit where there is none to want', () => {
    expect(readAnswer('0.71', { unit: 'ratio', saysUnit: true })).toMatchObject({
      ok: true,
      si: 0.71,
    });
    expect(readAnswer('71 %', { unit: 'ratio', saysUnit: true })).toMatchObject({
      ok: true,
      si: 0.71,
    });
  });

  test('whatever is typed, there is a finite number or words', () => {
    const parts = fc.constantFrom(
      '1',
      '20.1',
      '-',
      '/',
      ',',
      '.',
      ' ',
      'kN',
      'in',
      '°',
      'e',
      '±',
      '½',
      'to',
    );
    fc.assert(
      fc.property(fc.array(parts, { maxLength: 9 }), fc.boolean(), (some, saysUnit) => {
        const read = readAnswer(some.join(''), { unit: 'kN', saysUnit });
        if (read.ok) expect(Number.isFinite(read.si)).toBe(true);
        else expect(read.say).toMatch(/\.$|\?$/);
      }),
    );
  });

  test('a number with its unit is read as it is, in any unit of the kind', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 99_999 }),
        fc.constantFrom('N', 'kN', 'lbf'),
        fc.boolean(),
        (count, unit, saysUnit) => {
          const read = readAnswer(`${String(count / 8)} ${unit}`, { unit: 'kN', saysUnit });
          expect(read).toMatchObject({ ok: true, unit, si: toSI(count / 8, unit) });
        },
      ),
    );
  });
});

describe('an answer that cannot be read', () => {
  it.each([
    ['', /Nothing is entered\. Write one number with its unit, like 12\.5\u00a0kN\./],
    ['about twenty', /holds no number/],
    ['350 g', /must be a force\. You entered a mass: 350 g/],
    ['3-4', /range or two numbers/],
    ['3 kN to 4 kN', /range or two numbers/],
    ['3–4 kN', /range or two numbers/],
    ['20.1 stone', /is not a unit known here/],
    ['1/0', /cannot have 0 below/],
    ['20.1 20.1', /more than one number/],
  ])('%s gets words', (typed, words) => {
    const read = readAnswer(typed, force);
    expect(read.ok ? '' : read.say).toMatch(words);
  });

  it('has no unit where the question names none', () => {
    const read = readAnswer('20.1', bare);
    expect(read.ok ? '' : read.say).toBe(
      '“20.1” has no unit, and the question names none. Write the unit as well: kN, N or lbf.',
    );
    expect(readAnswer('20.1 kN', bare).ok).toBe(true);
  });

  it('may be one of two numbers: both are offered', () => {
    const read = readAnswer('1,875', force);
    expect(read.ok ? [] : read.suggestions.map(({ text }) => text)).toEqual([
      '1.875 kN',
      '1875 kN',
    ]);
  });
});
