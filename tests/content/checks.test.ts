import { describe, expect, test } from 'vitest';
import type { AnyCalculator } from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';
import {
  halfUnit,
  printedNumber,
  readCases,
  toleranceOf,
  wantedText,
} from '../../src/checks/case.ts';
import { isPublished, runAll, summarise, testedRange } from '../../src/checks/coverage.ts';
import { loadChecks, loadSources } from '../../src/checks/files.ts';
import { runCase, worstFirst } from '../../src/checks/run.ts';

const topics = loadChecks();
const sources = loadSources();
const rows = runAll(topics, calculators);
const declared: readonly AnyCalculator[] = Object.values(calculators);

describe.each(topics.map(({ topic, cases }) => [topic, cases] as const))(
  'published values of %s',
  (topic, cases) => {
    test.each(cases.map((entry) => [entry.id, entry] as const))(
      '%s names its source',
      (_, entry) => {
        if (entry.source !== 'practice') expect(Object.keys(sources)).toContain(entry.source);
      },
    );

    const own = rows
      .filter((row) => row.topic === topic)
      .map((row) => [`${row.case.id}, ${row.expected.output}`, row] as const);
    test.each(own)('%s', (_, row) => {
      expect(row.problem).toBeUndefined();
      const wanted = row.published ?? `${row.atLeast ?? ''} to ${row.atMost ?? ''}`;
      expect(
        row.passes,
        `published ${wanted}, computed ${row.computed ?? 'nothing'} ${row.unit}`,
      ).toBe(true);
    });
  },
);

test('a source that was met through another says through whom', () => {
  const through = topics
    .flatMap(({ cases }) => cases)
    .filter(({ evidence }) => evidence === 'quoted' || evidence === 'transcribed')
    .map(({ source }) => source);
  const silent = [...new Set(through)].filter((id) => sources[id]?.quotedBy === undefined);
  expect(silent).toEqual([]);
});

test('there is something to check', () => {
  expect(rows.length).toBeGreaterThan(50);
});

test.each(declared.map(({ id }) => id))('%s reproduces a value that somebody published', (id) => {
  const cases = topics.flatMap((topic) => topic.cases).filter((entry) => entry.calculator === id);
  expect(cases.some((entry) => isPublished(entry) || entry.evidence === 'practice')).toBe(true);
});

test('the range of the published cases leaves out memory, custom and cases that print no value', () => {
  const calculator = calculators['partial-balance'];
  const own = topics
    .flatMap((topic) => topic.cases)
    .filter((entry) => entry.calculator === calculator.id);
  const range = (cases: typeof own) =>
    testedRange(calculator, 'fraction', [{ topic: 'balance-factor', cases }]);
  const printed = own.filter(isPublished);
  expect(range(printed)?.[0]).toBe(0.5);
  expect(range(printed)?.[1]).toBeCloseTo(2 / 3, 9);
  expect(
    range(printed.map((entry) => ({ ...entry, evidence: 'memory' as const }))),
  ).toBeUndefined();
  const banded = printed.map((entry) => ({
    ...entry,
    expected: entry.expected.map(({ output, unit }) => ({
      output,
      unit,
      why: 'a band',
      atLeast: 0,
    })),
  }));
  expect(range(banded)).toBeUndefined();
  const derived = printed.map((entry) => ({
    ...entry,
    expected: entry.expected.map((value) => ({ ...value, derived: 'worked out by hand' })),
  }));
  expect(range(derived)).toBeUndefined();
});

test.each([
  ['ring-tension', 'thickness', 29.41],
  ['wrist-pin', 'bore-ratio', 0.6],
] as const)('%s is tested at one point of its strip, %s', (id, strip, place) => {
  const range = testedRange(calculators[id], strip, topics);
  expect(range?.[0]).toBeCloseTo(place, 2);
  expect(range?.[1]).toBeCloseTo(place, 2);
});

test.each([
  ['ring-second', 'thickness'],
  ['bobweight', 'fraction'],
  ['cylinder-pressure', 'friction-speed'],
] as const)('no printed value tests %s on its strip, %s', (id, strip) => {
  expect(testedRange(calculators[id], strip, topics)).toBeUndefined();
});

describe('reading a checks file', () => {
  const good = {
    id: 'one',
    calculator: 'bobweight',
    title: 'A case',
    source: 'practice',
    where: 'the bench',
    evidence: 'practice',
    inputs: { pistonMass: '400 g' },
    expected: [{ output: 'bobweight', atLeast: 1, unit: 'g', why: 'custom' }],
  };
  const value = {
    output: 'bobweight',
    published: '1,685.2',
    unit: 'g',
  };

  test('takes a case as it should be', () => {
    expect(readCases('f.yaml', [good, { ...good, id: 'two', expected: [value] }])).toHaveLength(2);
  });
  test.each([
    [
      'a tolerance of its own',
      { expected: [{ ...value, tolerance: 1e-4 }] },
      /case one, expected\.0\.tolerance: is not a field/u,
    ],
    [
      'an error of the print without a reason',
      { expected: [{ ...value, bookError: { size: 1 } }] },
      /case one, expected\.0\.bookError\.reason: is missing/u,
    ],
    [
      'an error of the print of no size',
      { expected: [{ ...value, bookError: { size: 0, reason: 'a slip' } }] },
      /expected\.0\.bookError\.size: must be greater than 0/u,
    ],
    [
      'a misprint that does not say what it should be',
      { expected: [{ ...value, misprint: { reason: 'a slip' } }] },
      /expected\.0\.misprint\.instead: is missing/u,
    ],
    [
      'a published value that is no text',
      { expected: [{ ...value, published: 1685.2 }] },
      /expected\.0\.published: must stand in quotes/u,
    ],
    [
      'a published value that is no number',
      { expected: [{ ...value, published: 'much' }] },
      /expected\.0\.published: is not a number/u,
    ],
    [
      'a band without ends',
      { expected: [{ output: 'bobweight', unit: 'g', why: 'custom' }] },
      /needs published, atLeast or atMost/u,
    ],
    ['a field nobody knows', { tolerence: 1 }, /case one, tolerence: is not a field/u],
    ['evidence nobody knows', { evidence: 'heard' }, /case one, evidence: must be read/u],
    [
      'a source for custom',
      { source: 'some-book-1990' },
      /source and evidence must both be practice/u,
    ],
    ['no expected value', { expected: [] }, /expected: must hold at least one/u],
  ])('refuses %s and says where', (_, change, complaint) => {
    expect(() => readCases('f.yaml', [{ ...good, ...change }])).toThrow(complaint);
  });
  test('refuses an id used twice', () => {
    expect(() => readCases('f.yaml', [good, good])).toThrow(/is used twice/u);
  });
  test.each([
    ['10,962', 10962],
    ['10 962', 10962],
    ['−0.67', -0.67],
    ['523.4', 523.4],
    ['1.2e-3', 1.2e-3],
    ['.264', 0.264],
    ['12,34', Number.NaN],
    ['', Number.NaN],
  ])('reads the printed number %s', (text, number) => {
    expect(printedNumber(text)).toBe(number);
  });
});

test.each([
  ['33.47', 0.005],
  ['.90', 0.005],
  ['10,962', 0.5],
  ['423', 0.5],
  ['−56.2', 0.05],
  ['4.79e3', 5],
  ['1.2e-3', 0.00005],
])('half a unit of the last digit of %s is %s', (text, half) => {
  expect(halfUnit(text)).toBe(half);
});

describe('the digits of the sources', () => {
  const printed = rows.flatMap((row) =>
    'published' in row.expected ? [{ row, value: row.expected }] : [],
  );
  function missOf({ row, value }: (typeof printed)[number]): number {
    return Math.abs((row.computed ?? Number.NaN) - printedNumber(wantedText(value)));
  }
  const name = ({ row }: (typeof printed)[number]): string =>
    `${row.case.id}, ${row.expected.output}`;

  test('every computed value agrees to half a unit, or within a stated error of the print', () => {
    const outside = printed.filter((entry) => {
      const { exact, bookError } = entry.value;
      const text = wantedText(entry.value);
      // A millionth of the half unit is what a value in the middle between two digits needs.
      const half = exact === undefined ? halfUnit(text) * (1 + 1e-6) : 1e-9 * scale(text);
      return !(missOf(entry) <= half + (bookError?.size ?? 0));
    });
    expect(outside.map(name)).toEqual([]);
  });
  test('no error of the print is stated that nothing needs', () => {
    const idle = printed.filter((entry) => {
      const { bookError, ...plain } = entry.value;
      return bookError !== undefined && missOf(entry) <= toleranceOf(plain);
    });
    expect(idle.map(name)).toEqual([]);
  });
  test('no misprint is named where the print agrees', () => {
    const idle = printed.filter(({ row, value }) => {
      const { misprint, ...plain } = value;
      const miss = Math.abs((row.computed ?? Number.NaN) - printedNumber(value.published));
      return misprint !== undefined && miss <= toleranceOf(plain);
    });
    expect(idle.map(name)).toEqual([]);
  });
  test('no value is so coarse that nothing could fail', () => {
    const coarse = printed.filter(({ value }) => {
      const wanted = Math.abs(printedNumber(wantedText(value)));
      return toleranceOf(value) > (wanted === 0 ? 1e-9 : 0.1 * wanted);
    });
    expect(coarse.map(name)).toEqual([]);
  });
  test('what is derived or misprinted is not counted as printed', () => {
    const { printed: count, derived, misprinted, bands, values } = summarise(rows);
    expect(count + derived + misprinted + bands).toBe(values);
    expect(derived).toBe(printed.filter(({ value }) => value.derived !== undefined).length);
    expect(derived).toBeGreaterThan(20);
  });
});

function scale(text: string): number {
  return Math.max(1, Math.abs(printedNumber(text)));
}

describe('judging a case', () => {
  const first = topics.flatMap(({ cases }) => cases)[0];
  if (first === undefined) throw new Error('there is no case');
  function judged(change: object) {
    return runCase('any', { ...first, ...change } as typeof first & {}, calculators);
  }
  test('a wrong published value fails', () => {
    const wrong = first.expected.map((row) =>
      'published' in row ? { ...row, published: '123456789' } : { ...row, atLeast: 1e12 },
    );
    expect(judged({ expected: wrong }).some(({ passes }) => passes)).toBe(false);
  });
  test.each([
    ['an unknown calculator', { calculator: 'no-such' }, /there is no calculator no-such/u],
    ['a missing input', { inputs: {} }, /is missing/u],
    ['an unknown input', { inputs: { ...first.inputs, colour: 'red' } }, /has no such input/u],
    ['an unknown unit', { expected: [{ ...first.expected[0], unit: 'cubit' }] }, /no unit cubit/u],
    [
      'a unit of another kind',
      { expected: [{ ...first.expected[0], unit: 'degC' }] },
      /is no unit of/u,
    ],
    [
      'an unknown output',
      { expected: [{ ...first.expected[0], output: 'luck' }] },
      /has no number luck/u,
    ],
  ])('%s fails and says why', (_, change, reason) => {
    for (const row of judged(change)) {
      expect(row.passes).toBe(false);
      expect(row.problem).toMatch(reason);
    }
  });
  test('failing rows come first, then the fewest agreeing digits', () => {
    const mixed = [...judged({}), ...judged({ calculator: 'no-such' })];
    const sorted = worstFirst(mixed);
    expect(sorted[0]?.passes).toBe(false);
    const digits = worstFirst(rows)
      .filter(({ passes, agreeingDigits }) => passes && agreeingDigits !== undefined)
      .map(({ agreeingDigits }) => agreeingDigits ?? 0);
    expect(digits).toEqual([...digits].sort((one, other) => one - other));
  });
});
