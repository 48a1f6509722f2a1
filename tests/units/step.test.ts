import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clean, takeNumber } from '../../src/units/number.ts';
import { stepText } from '../../src/units/step.ts';

function valueOf(text: string): number {
  const number = takeNumber(clean(text));
  if (typeof number === 'string') throw new Error(`${text}: ${number}`);
  return number.value;
}

describe('one press of a step key', () => {
  test.each([
    ['3.480', 'one', '3.481', '3.479'],
    ['3.480', 'ten', '3.490', '3.470'],
    ['3.480', 'tenth', '3.4801', '3.4799'],
    ['3.480 in', 'one', '3.481 in', '3.479 in'],
    ['47,96mm', 'one', '47,97mm', '47,95mm'],
    ['47,99\u00a0mm', 'one', '48,00\u00a0mm', '47,98\u00a0mm'],
    ['6400 rpm', 'one', '6401 rpm', '6399 rpm'],
    ['6400 rpm', 'ten', '6410 rpm', '6390 rpm'],
    ['6400', 'tenth', '6400.1', '6399.9'],
    ['1 7/8', 'one', '1 15/16', '1 13/16'],
    ['1-7/8 in', 'one', '1 15/16 in', '1 13/16 in'],
    ['1⅞”', 'one', '1 15/16”', '1 13/16”'],
    ['1 15/16"', 'one', '2 0/16"', '1 7/8"'],
    ['2 0/16"', 'one', '2 1/16"', '1 15/16"'],
    ['1/16', 'one', '1/8', '0/16'],
    ['0/16', 'one', '1/16', '-1/16'],
    ['1 3/32', 'one', '1 4/32', '1 2/32'],
    ['1/3', 'one', '2/3', '0/3'],
    ['1 7/8', 'ten', '2 1/2', '1 1/4'],
    ['1 7/8', 'tenth', '1 57/64', '1 55/64'],
    ['.5', 'one', '.6', '.4'],
    ['.9', 'one', '1.0', '.8'],
    ['5.', 'one', '6.', '4.'],
    ['0.000', 'one', '0.001', '-0.001'],
    ['-0.001 mm', 'one', '0.000 mm', '-0.002 mm'],
    ['−3', 'one', '-2', '-4'],
    ['+3', 'one', '+4', '+2'],
    ['1e6', 'one', '2e6', '0e6'],
    ['9,999.5', 'one', '9,999.6', '9,999.4'],
    ['9,999.9', 'one', '10,000.0', '9,999.8'],
    ['1.234,5', 'one', '1.234,6', '1.234,4'],
    ['1.234.567', 'tenth', '1.234.567,1', '1.234.566,9'],
    ['1,875', 'one', '1,876', '1,874'],
    ['12.5° BTDC', 'one', '12.6° BTDC', '12.4° BTDC'],
    ['12 µm', 'one', '13 µm', '11 µm'],
  ] as const)('%j by %s', (typed, size, up, down) => {
    expect(stepText(typed, 1, size)).toBe(up);
    expect(stepText(typed, -1, size)).toBe(down);
  });

  test.each(['', 'abc', 'mm', '3/0', '1e999', '9'.repeat(201)])(
    'nothing to step in %j',
    (typed) => {
      expect(stepText(typed, 1, 'one')).toBeUndefined();
    },
  );

  test('1,875 may be thousands, so no digit is added to it', () => {
    expect(stepText('1,875', 1, 'tenth')).toBeUndefined();
  });

  test('quarter steps end where no rule goes further', () => {
    let text: string | undefined = '1 7/8';
    for (let i = 0; i < 20 && text !== undefined; i++) text = stepText(text, 1, 'tenth');
    expect(text).toBeUndefined();
  });
});

const decimals = fc
  .tuple(fc.integer({ min: -99999, max: 99999 }), fc.integer({ min: 0, max: 5 }))
  .map(([n, places]) => (n / 10 ** places).toFixed(places));
const fractions = fc
  .tuple(
    fc.integer({ min: 0, max: 30 }),
    fc.integer({ min: 0, max: 63 }),
    fc.integer({ min: 0, max: 6 }),
  )
  .map(([whole, top, power]) => `${whole} ${top % 2 ** power}/${2 ** power}`);

describe('properties of stepping', () => {
  test('100 ups and downs in any order come back to the same value, notation and unit kept', () => {
    fc.assert(
      fc.property(
        fc.oneof(decimals, fractions),
        fc.constantFrom('', ' in', '″', '\u00a0mm'),
        fc.constantFrom('one', 'ten'),
        fc.array(fc.boolean(), { minLength: 100, maxLength: 100 }),
        (number, unit, size, ups) => {
          let text = number + unit;
          for (const direction of [...ups, ...ups.map((up) => !up)]) {
            const next = stepText(text, direction ? 1 : -1, size);
            if (next === undefined) throw new Error(`${text} cannot be stepped`);
            expect(next.endsWith(unit)).toBe(true);
            expect(next.includes('/')).toBe(number.includes('/'));
            text = next;
          }
          expect(valueOf(text)).toBe(valueOf(number));
        },
      ),
      { numRuns: 100 },
    );
  });

  test('a step changes the value by one unit of the last digit typed', () => {
    fc.assert(
      fc.property(fc.oneof(decimals, fractions), (text) => {
        const number = takeNumber(clean(text));
        const next = stepText(text, 1, 'one');
        if (typeof number === 'string' || next === undefined) throw new Error(text);
        expect(valueOf(next) - number.value).toBeCloseTo(number.step, 9);
      }),
    );
  });
});
