import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatPlain } from '../../src/units/format.ts';
import { kindWords, type Kind } from '../../src/units/kinds.ts';
import {
  readList,
  readPlusMinus,
  readQuantity,
  type Read,
  type ReadContext,
  type Refusal,
} from '../../src/units/read.ts';
import { toSI, units, unitsOfKind } from '../../src/units/units.ts';

// Ranges of a stroke, in metres: common practice, no source.
const ranges = { hard: [0.015, 0.2], usual: [0.038, 0.115] } as const;
const inches: ReadContext = { label: 'Stroke', kind: 'length', unit: 'in', ...ranges };
const millimetres: ReadContext = { ...inches, unit: 'mm' };
const free: ReadContext = { label: 'Length', kind: 'length', unit: 'mm' };
const bore: ReadContext = {
  label: 'Cylinder bore',
  kind: 'length',
  unit: 'in',
  hard: [0.02, 0.2],
  usual: [0.046, 0.118],
};
const mass: ReadContext = {
  label: 'Bare piston',
  kind: 'mass',
  unit: 'g',
  hard: [0.015, 3],
  usual: [0.09, 0.65],
};
const angle: ReadContext = { label: 'Crank angle', kind: 'angle', unit: 'deg' };
const speed: ReadContext = {
  label: 'Highest speed',
  kind: 'angularSpeed',
  unit: 'rpm',
  hard: [toSI(500, 'rpm'), toSI(25000, 'rpm')],
};

function good(typed: string, context: ReadContext): Read {
  const reading = readQuantity(typed, context);
  if (!reading.ok) throw new Error(`${JSON.stringify(typed)}: ${reading.say}`);
  return reading;
}
function bad(typed: string, context: ReadContext): Refusal {
  const reading = readQuantity(typed, context);
  if (reading.ok) throw new Error(`${JSON.stringify(typed)} was read as ${reading.si}`);
  return reading;
}

describe('what an inch field reads', () => {
  test.each([
    ['1.888', 1.888, 'in', 0.001],
    ['1.888 in', 1.888, 'in', 0.001],
    ['1 7/8"', 1.875, 'in', 1 / 16],
    ['1-7/8 in', 1.875, 'in', 1 / 16],
    ['1–7/8 in', 1.875, 'in', 1 / 16],
    ['1 7 / 8', 1.875, 'in', 1 / 16],
    ['1⅞', 1.875, 'in', 1 / 16],
    ['1⅞"', 1.875, 'in', 1 / 16],
    ['1 ⅞ in', 1.875, 'in', 1 / 16],
    ['⅞', 0.875, 'in', 1 / 16],
    ['1⁷⁄₈”', 1.875, 'in', 1 / 16],
    ['1 3/32', 1.09375, 'in', 1 / 32],
    ['1 59/64', 1.921875, 'in', 1 / 64],
    ['-1 7/8', -1.875, 'in', 1 / 16],
    ['−1-7/8', -1.875, 'in', 1 / 16],
    ['47,96mm', 47.96, 'mm', 0.01],
    ['47.96mm', 47.96, 'mm', 0.01],
    ['47,96 mm', 47.96, 'mm', 0.01],
    ['1.234,5 mm', 1234.5, 'mm', 0.1],
    ['1,234.5 mm', 1234.5, 'mm', 0.1],
    ['1.234.567 mm', 1234567, 'mm', 1],
    ['1 234.5 mm', 1234.5, 'mm', 0.1],
    ['1\u00a0234.5\u202fmm', 1234.5, 'mm', 0.1],
    ['1\u2009234,5\u00a0mm', 1234.5, 'mm', 0.1],
    ['3.480\u00a0in', 3.48, 'in', 0.001],
    ['2 thou', 2, 'thou', 1],
    ['2 tenths', 2, 'tenth', 1],
    ['3 mil', 3, 'thou', 1],
    ['2 hundredths', 2, 'hundredth', 1],
    ['12 µm', 12, 'um', 1],
    ['12 μm', 12, 'um', 1],
    ['3.48”', 3.48, 'in', 0.01],
    ['3.48″', 3.48, 'in', 0.01],
    ['3.48′′', 3.48, 'in', 0.01],
    ["3.48''", 3.48, 'in', 0.01],
    ['3.48“', 3.48, 'in', 0.01],
    ['3.48 in.', 3.48, 'in', 0.01],
    ['3.48 INCHES', 3.48, 'in', 0.01],
    ['0.29′', 0.29, 'ft', 0.01],
    ['0.29 ft', 0.29, 'ft', 0.01],
    ['\t3.480\tin\r\n', 3.48, 'in', 0.001],
    ['3.480\n', 3.48, 'in', 0.001],
    ['\ufeff3.480\u200b', 3.48, 'in', 0.001],
    ['３．４８０', 3.48, 'in', 0.001],
    ['３⅞', 3.875, 'in', 1 / 16],
    ['−3.5', -3.5, 'in', 0.1],
    ['–3.5', -3.5, 'in', 0.1],
    ['- 3.5', -3.5, 'in', 0.1],
    ['+3.5', 3.5, 'in', 0.1],
    ['.5', 0.5, 'in', 0.1],
    [',5', 0.5, 'in', 0.1],
    ['5.', 5, 'in', 1],
    ['1e6', 1e6, 'in', 1e6],
    ['1.5E-2', 0.015, 'in', 0.001],
    ['6400', 6400, 'in', 1],
    ['0,125', 0.125, 'in', 0.001],
    ['⌀3.5', 3.5, 'in', 0.1],
    ['86 in', 86, 'in', 1],
    ['0', 0, 'in', 1],
    ['-0', 0, 'in', 1],
    ['0/8', 0, 'in', 1 / 16],
  ])('%j', (typed, value, unit, step) => {
    const reading = good(typed, inches);
    expect(reading).toMatchObject({ value, unit });
    expect(reading.step).toBeCloseTo(step, 14);
    expect(reading.si).toBe(toSI(value, unit));
  });

  test('says whether the unit was typed', () => {
    expect(good('3.48', inches)).toMatchObject({ typedUnit: false, unit: 'in' });
    expect(good('88.4', millimetres)).toMatchObject({ typedUnit: false, unit: 'mm' });
    expect(good('3.48 in', millimetres)).toMatchObject({ typedUnit: true, unit: 'in' });
  });
});

describe('the line that says how it was read', () => {
  test.each([
    ['1 7/8 in', inches, '1 7/8 in = 47.625 mm'],
    ['1⅞', inches, '1 7/8 in = 47.625 mm'],
    ['1-7/8 in', millimetres, '1 7/8 in = 47.625 mm'],
    ['47,96mm', millimetres, '47,96 mm = 47.96 mm'],
    ['1.234,5 mm', free, '1.234,5 mm = 1234.5 mm'],
    ['1.888 in', millimetres, '1.888 in = 47.96 mm'],
    ['2 thou', inches, '2 thou = 0.002 in'],
    ['2 tenths', inches, '2 tenths = 0.0002 in'],
    ['2 tenths', free, '2 tenths = 0.0002 in = 0.005 mm'],
    ['2 hundredths', free, '2 hundredths = 0.02 mm'],
    ['12 oz', mass, '12 oz = 340 g'],
    ['−3,5', inches, '−3,5 in = −3.5 in'],
  ])('%s', (typed, context, echo) => {
    expect(good(typed, context).echo).toBe(echo);
  });

  test.each(['3.480', '3.480 in', '.5', '5.', '+3.5'])(
    'is absent for the plain entry %s',
    (typed) => {
      expect(good(typed, inches).echo).toBeUndefined();
    },
  );
});

describe('a comma before three digits', () => {
  test('is settled by the range when one reading fits', () => {
    expect(good('1,875', inches)).toMatchObject({ value: 1.875, step: 0.001 });
    expect(good('86,125', millimetres).value).toBe(86.125);
    expect(good('1,685', mass)).toMatchObject({ value: 1685, step: 1 });
    expect(good('6,400', speed).value).toBe(6400);
    expect(good('1,875 in', millimetres).value).toBe(1.875);
  });

  test('is settled by the usual range when both fit the hard one', () => {
    const wide = { ...free, hard: [0, 10], usual: [0.5, 5] } as const;
    expect(good('1,875', wide).value).toBe(1875);
    expect(good('1,875', { ...wide, usual: [0.001, 0.1] }).value).toBe(1.875);
  });

  test.each([
    ['neither fits', '1,875', millimetres],
    ['both fit', '1,875', { ...free, hard: [0, 10] }],
    ['there is no range', '1,875', free],
  ] as const)('is asked when %s', (_why, typed, context) => {
    const refusal = bad(typed, context);
    expect(refusal.problem).toBe('ambiguous');
    expect(refusal.suggestions.map((s) => s.text)).toEqual(['1.875 mm', '1875 mm']);
    for (const { text } of refusal.suggestions) expect(readQuantity(text, context).ok).toBe(true);
  });

  test('is decimal wherever thousands cannot be meant', () => {
    for (const [typed, value] of [
      ['0,875', 0.875],
      ['1234,567', 1234.567],
      ['1,8750', 1.875],
      ['1 234,567', 1234.567],
    ] as const)
      expect(good(typed, free).value).toBe(value);
  });

  test('counts thousands in a whole number', () => {
    expect(good('1,875', { label: 'Swings', kind: 'count', unit: 'count' }).value).toBe(1875);
  });
});

describe('questions beside a value that still stands', () => {
  test('11/4 may have lost its space', () => {
    const reading = good('11/4', inches);
    expect(reading.value).toBe(2.75);
    expect(reading.question).toBe('If you meant 1 1/4, type a space.');
    expect(reading.suggestions).toEqual([{ text: '1 1/4', label: '1 1/4' }]);
    expect(good('11/4 in', inches).suggestions[0]?.text).toBe('1 1/4 in');
  });

  test('both ways of splitting are offered, and a proper fraction is not asked', () => {
    expect(good('111/16', free).suggestions.map((s) => s.text)).toEqual(['1 11/16', '11 1/16']);
    expect(good('15/16', free).question).toBeUndefined();
    expect(good('40/4', free).question).toBeUndefined();
  });

  test('a number of millimetres with inches behind it, and the reverse', () => {
    expect(good('3.5 mm', inches)).toMatchObject({ value: 3.5, question: '3.5 in?' });
    expect(good('86 in', millimetres)).toMatchObject({
      value: 86,
      unit: 'in',
      question: '86 mm?',
      suggestions: [{ text: '86 mm', label: '86 mm' }],
    });
    expect(good('3.48', inches).question).toBeUndefined();
  });

  test('outside the usual range but inside the hard one is not asked', () => {
    expect(good('20', millimetres).question).toBeUndefined();
  });

  test('mils may have been millimetres', () => {
    expect(good('2 mil', free)).toMatchObject({ unit: 'thou', question: '2 mm?' });
  });

  test('an oversize on a bore is asked; elsewhere + is a sign', () => {
    for (const typed of ['+30', '30 over', '+30 over', '30over']) {
      const refusal = bad(typed, bore);
      expect(refusal.problem).toBe('ambiguous');
      expect(refusal.say).toContain('0.030 in over the standard bore?');
    }
    expect(bad('+.030', bore).say).toContain('0.030 in over');
    expect(bad('+0.5 mm', bore).say).toContain('0.5 mm over');
    expect(bad('+30', { ...bore, unit: 'mm' }).suggestions[0]?.text).toBe('30 mm');
    expect(good('+30', free).value).toBe(30);
    expect(good('+0.03', { ...bore, label: 'Bore-axis offset', hard: [-0.025, 0.03] }).value).toBe(
      0.03,
    );
    expect(good('4.030', bore).value).toBe(4.03);
  });
});

test('a balance quality grade may be written with its letter, as the standard writes it', () => {
  const grade: ReadContext = { label: 'Balance quality grade', kind: 'speed', unit: 'mm/s' };
  for (const typed of ['G 6.3', 'G6.3', 'g 6,3', 'G-6.3', '6.3', 'G 6.3 mm/s'])
    expect(good(typed, grade).value).toBe(6.3);
  expect(bad('G', grade).problem).toBe('text');
  expect(bad('G G 6.3', grade).problem).toBe('text');
  // No other speed has a letter before it.
  expect(bad('G 6.3', { ...grade, label: 'Mean piston speed' }).problem).toBe('text');
});

describe('angles about dead centre', () => {
  test.each([
    ['10 BTDC', -10],
    ['10° btdc', -10],
    ['10 deg ATDC', 10],
    ['20° ABDC', 200],
    ['20 BBDC', 160],
    ['0 BTDC', 0],
    ['12.5°', 12.5],
    ['12.5º', 12.5],
    ['-12.5 degrees', -12.5],
  ])('%s is %d°', (typed, degrees) => {
    const reading = good(typed, angle);
    expect(reading.value).toBe(degrees);
    expect(reading.si).toBeCloseTo((degrees * Math.PI) / 180, 14);
  });

  test('a negative angle before dead centre is asked', () => {
    const refusal = bad('-10 BTDC', angle);
    expect(refusal.problem).toBe('ambiguous');
    expect(refusal.suggestions.map((s) => good(s.text, angle).value)).toEqual([-10, 10]);
  });

  test('is no unit anywhere else', () => {
    expect(bad('10 BTDC', free).problem).toBe('unknown-unit');
  });
});

describe('other kinds', () => {
  test.each([
    ['1685.2 g', mass, 1.6852],
    ['12 oz', mass, 0.3401942775],
    ['1.2 lb', mass, 0.544310844],
    ['6 400 r/min', speed, toSI(6400, 'rpm')],
    ['6400 1/min', speed, toSI(6400, 'rpm')],
    ['6400 min⁻¹', speed, toSI(6400, 'rpm')],
    ['6400/min', speed, toSI(6400, 'rpm')],
    ['50 %', { label: 'Share', kind: 'ratio', unit: 'ratio' }, 0.5],
    ['50pct', { label: 'Share', kind: 'ratio', unit: 'ratio' }, 0.5],
    ['0.36', { label: 'Share', kind: 'ratio', unit: 'ratio' }, 0.36],
    ['20 °C', { label: 'Oil', kind: 'temperature', unit: 'degF' }, 293.15],
    ['20 C', { label: 'Oil', kind: 'temperature', unit: 'degF' }, 293.15],
    ['20°', { label: 'Oil', kind: 'temperature', unit: 'degC' }, 293.15],
    ['29.92 "Hg', { label: 'Air', kind: 'pressure', unit: 'kPa' }, 101320.748],
    ['14.5 psi', { label: 'Air', kind: 'pressure', unit: 'kPa' }, 99973.98],
    ['1 g·in', { label: 'Rest', kind: 'unbalance', unit: 'gmm' }, 2.54e-5],
    ['1 oz-in', { label: 'Rest', kind: 'unbalance', unit: 'gmm' }, 7.20077887375e-4],
    ['8', { label: 'Cylinders', kind: 'count', unit: 'count' }, 8],
    ['8/2', { label: 'Cylinders', kind: 'count', unit: 'count' }, 4],
  ] as const)('%s', (typed, context, si) => {
    // Expected values written to seven figures or more.
    expect(good(typed, context).si / si).toBeCloseTo(1, 6);
  });
});

describe('refusals', () => {
  test.each([
    ['', 'empty', 'Stroke must be a length. Nothing is entered.'],
    [' \t\n', 'empty', 'Nothing is entered'],
    ['abc', 'text', 'You entered “abc”, which holds no number.'],
    ['stroke 3.48', 'text', 'where the number does not come first'],
    ['3.4-3.5', 'text', 'more than one number'],
    ['86 ± 0.1 mm', 'text', 'more than one number'],
    ['3.48\n3.75', 'text', 'more than one number'],
    ['1.2.3,4,5', 'text', 'not a number in a form known here'],
    ['1,23.4', 'text', 'not a number in a form known here'],
    ['12,34,567', 'text', 'not a number in a form known here'],
    ['10²', 'text', 'more than one number'],
    ['1e999', 'text', 'too large or too small'],
    ['1e-999', 'text', 'too large or too small'],
    ['0e999', 'text', 'too large or too small'],
    ['350 g', 'wrong-kind', 'Stroke must be a length. You entered a mass: 350 g.'],
    ['12 oz', 'wrong-kind', 'You entered a mass: 12 oz.'],
    ['6400 rpm', 'wrong-kind', 'You entered a crank speed or angular speed: 6400 rpm.'],
    ['5 %', 'wrong-kind', 'You entered a plain number: 5 %.'],
    ['86 furlongs', 'unknown-unit', '“furlongs” is not a unit known here'],
    ['86 constructor', 'unknown-unit', '“constructor”'],
    ['86-', 'unknown-unit', '“-”'],
    ['3/0', 'zero-denominator', 'a fraction cannot have 0 below its line'],
    ['1 3/0 in', 'zero-denominator', 'Stroke must be a length'],
    ['9'.repeat(201), 'too-long', '201 characters'],
  ])('%j', (typed, problem, words) => {
    const refusal = bad(typed, inches);
    expect(refusal.problem).toBe(problem);
    expect(refusal.say).toContain(words);
    expect(refusal.say).toContain('Stroke');
  });

  test('a number that overflows only in SI is refused too', () => {
    const pressure: ReadContext = { label: 'Oil', kind: 'pressure', unit: 'MPa' };
    expect(bad('1e305', pressure).say).toContain('too large or too small');
    expect(good('1e308 ft', inches).echo).toBeUndefined();
    expect(good('0e-999', free).si).toBe(0);
    expect(bad('5e-324', free).say).toContain('too large or too small');
  });

  test('a whole number has no fraction', () => {
    const count: ReadContext = { label: 'Cylinders', kind: 'count', unit: 'count' };
    expect(bad('2.5', count)).toMatchObject({
      problem: 'not-whole',
      say: 'Cylinders must be a whole number. You entered 2.5. Write it like 4.',
    });
    expect(bad('8 mm', count).problem).toBe('wrong-kind');
    expect(good('8.0', count)).toMatchObject({ value: 8, step: 1 });
  });

  test('exactly 200 characters are read, and a quoted text is cut short', () => {
    expect(good('0'.repeat(199) + '5', free).value).toBe(5);
    expect(bad('x'.repeat(200), free).say.length).toBeLessThan(140);
  });
});

describe('properties of reading', () => {
  test('any finite number written plainly reads back identical', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        const plain = { label: 'x', kind: 'ratio', unit: 'ratio' } as const;
        expect(good(formatPlain(value), plain).si).toBe(value === 0 ? 0 : value);
      }),
      { numRuns: 2000 },
    );
  });

  const kinds = Object.keys(kindWords) as Kind[];
  const anyContext = fc.constantFrom(...kinds).chain((kind) =>
    fc.record({
      label: fc.constantFrom('Stroke', 'Cylinder bore'),
      kind: fc.constant(kind),
      unit: fc.constantFrom(...unitsOfKind(kind).map((u) => u.id)),
      hard: fc.constantFrom([0, 1] as const, [0.01, 0.2] as const),
      usual: fc.constantFrom([0, 1] as const, [0.04, 0.1] as const),
    }),
  );
  const pieces = [
    ...'0123456789.,/-+± eE"\'%°⅞½²⁄−–\u00a0\u202f\n\t;;',
    ...['over', 'BTDC', '1e', '1,875', '7/8', 'g', '０', '٣', '\ud83d', 'NaN', 'Infinity', '0x1F'],
    ...Object.values(units).map((u) => u.symbol),
  ];
  const junk = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 220 }),
    fc.array(fc.constantFrom(...pieces), { maxLength: 12 }).map((p) => p.join('')),
  );

  test('junk never throws, never gives NaN or Infinity, and a refusal names the field', () => {
    fc.assert(
      fc.property(junk, anyContext, (typed, context) => {
        for (const reading of [readQuantity(typed, context), readPlusMinus(typed, context, 0.5)]) {
          if (reading.ok) {
            expect(Number.isFinite(reading.si)).toBe(true);
            expect(Number.isFinite(reading.value)).toBe(true);
            expect(reading.step).toBeGreaterThan(0);
            expect(units[reading.unit]).toBeDefined();
            expect(reading.echo ?? '').not.toMatch(/NaN|∞|Infinity/);
          } else {
            expect(reading.say).toContain(context.label);
            expect(reading.say).not.toMatch(/please|invalid|oops/i);
          }
        }
        const list = readList(typed, context, 20);
        if (list.ok) expect(list.si.every(Number.isFinite)).toBe(true);
        else expect(list.say).not.toBe('');
      }),
      { numRuns: 3000 },
    );
  });

  test('a suggestion, once accepted, is read without the same doubt', () => {
    fc.assert(
      fc.property(junk, anyContext, (typed, context) => {
        const { suggestions } = readQuantity(typed, context);
        for (const { text } of suggestions) {
          const accepted = readQuantity(text, context);
          expect(accepted.ok, `${typed} → ${text}`).toBe(true);
        }
      }),
      { numRuns: 2000 },
    );
  });

  test('a number with each symbol is read in that unit', () => {
    for (const unit of Object.values(units)) {
      const context = { label: 'x', kind: unit.kind, unit: unit.id };
      expect(good(`12 ${unit.symbol}`, context)).toMatchObject({ value: 12, unit: unit.id });
      // `gr` is grams in one shop and grains in the next, so it is asked.
      if (unit.id !== 'gr') expect(good(`12${unit.id}`, context).unit).toBe(unit.id);
    }
  });
});

describe('several readings in one field', () => {
  const list = (typed: string, most = 20) => readList(typed, mass, most);

  test.each([
    ['421.0; 421.5; 421.1', [0.421, 0.4215, 0.4211]],
    ['421.0;421.5;', [0.421, 0.4215]],
    ['421.0\n421.5\r\n421.1\n', [0.421, 0.4215, 0.4211]],
    ['421.0\t421.5', [0.421, 0.4215]],
    ['421 420 419', [0.421, 0.42, 0.419]],
    ['421,0 421,5', [0.421, 0.4215]],
    ['421.0, 421.5, 421.1 g', [0.421, 0.4215, 0.4211]],
    ['0.421 kg; 421.5 g', [0.421, 0.4215]],
    ['421.0 g 421.5 g', [0.421, 0.4215]],
    ['1\u00a0685.2; 1\u00a0685.4', [1.6852, 1.6854]],
    ['421', [0.421]],
  ])('%j', (typed, si) => {
    const read = list(typed);
    if (!read.ok) throw new Error(read.say);
    expect(read.si).toHaveLength(si.length);
    for (const [i, one] of si.entries()) expect(read.si[i]).toBeCloseTo(one, 12);
  });

  test('fractions keep their whole number', () => {
    const read = readList('1 7/8 1 3/4"', inches, 5);
    expect(read).toMatchObject({ ok: true, unit: 'in', echo: '2 readings in in' });
    if (read.ok) expect(read.si).toEqual([toSI(1.875, 'in'), toSI(1.75, 'in')]);
  });

  test('one unit at the end serves all', () => {
    expect(list('15 16 17 oz')).toMatchObject({
      ok: true,
      unit: 'oz',
      si: [toSI(15, 'oz'), toSI(16, 'oz'), toSI(17, 'oz')],
      echo: '3 readings in oz',
    });
  });

  test('says which one is wrong, and how many are taken', () => {
    expect(list('421; abc; 420')).toMatchObject({
      ok: false,
      problem: 'text',
      say: 'Bare piston, reading 2, must be a mass. You entered “abc”, which holds no number. Write it like 240 g.',
    });
    expect(list('1 mm; 2')).toMatchObject({ ok: false, problem: 'wrong-kind' });
    expect(list('1;2;3;4', 3)).toMatchObject({
      ok: false,
      problem: 'too-many',
      say: 'Bare piston takes at most 3 readings. You entered 4.',
    });
    expect(list(' ; ')).toMatchObject({ ok: false, problem: 'empty' });
    expect(list('1;'.repeat(3000))).toMatchObject({ ok: false, problem: 'too-long' });
  });

  test('a doubtful reading is pointed out', () => {
    expect(list('421 g; 420 oz')).toMatchObject({
      ok: true,
      echo: '2 readings in mixed units; reading 2: 420 g?',
    });
  });
});

describe('±', () => {
  const pm = (typed: string, context: ReadContext = mass, of?: number) =>
    readPlusMinus(typed, context, of);

  test.each([
    ['0.1', 1e-4],
    ['±0.1 g', 1e-4],
    ['± 0,1', 1e-4],
    ['+/- 0.1', 1e-4],
    ['+-0.1', 1e-4],
    ['0', 0],
    ['1/2', 5e-4],
    ['0.01 oz', 2.8349523125e-4],
  ])('%s', (typed, si) => {
    const read = pm(typed);
    if (!read.ok) throw new Error(read.say);
    expect(read.si).toBeCloseTo(si, 14);
    expect(read.question).toBeUndefined();
  });

  test('a share of the value', () => {
    expect(pm('0.5 %', mass, 0.4)).toMatchObject({
      ok: true,
      value: 0.5,
      unit: 'pct',
      si: 0.002,
      echo: '0.5 % of the value = 2\u00a0g',
    });
    expect(pm('±5%', mass, -0.4)).toMatchObject({ ok: true, si: 0.02 });
    expect(pm('0.5 %')).toMatchObject({ ok: false });
  });

  test('a difference of temperatures has no offset', () => {
    const oil: ReadContext = { label: 'Oil', kind: 'temperature', unit: 'degC' };
    const read = pm('9 °F', oil);
    expect(read.ok && read.si).toBeCloseTo(5, 12);
    expect(read.ok && read.echo).toBe(undefined);
  });

  test('negative, empty or of another kind is refused, naming the ±', () => {
    expect(pm('-0.1')).toMatchObject({
      ok: false,
      say: '± of Bare piston must be a mass. You entered “-0.1”; 0 or more is wanted. Write it like 0.1 or 0,1 g.',
    });
    expect(pm('')).toMatchObject({ ok: false, problem: 'empty' });
    expect(pm('±')).toMatchObject({ ok: false });
    expect(pm('1 mm')).toMatchObject({ ok: false, problem: 'wrong-kind' });
    expect(pm('-5 %', mass, 1)).toMatchObject({ ok: false });
  });
});

describe('a bare number below one in a field of per cents', () => {
  const factor = { label: 'Balance factor', kind: 'ratio', unit: 'pct' } as const;

  test.each(['55', '55 %', '0.55 %', '0', '1'])('%s does not ask', (typed) => {
    expect(readQuantity(typed, factor)).not.toHaveProperty('question');
  });
});
