import { describe, expect, test } from 'vitest';
import type { AnyCalculator } from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';
import { printedNumber, readCases } from '../../src/checks/case.ts';
import { isPublished, runAll, testedRange } from '../../src/checks/coverage.ts';
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

test('there is something to check', () => {
  expect(rows.length).toBeGreaterThan(50);
});

test.each(declared.map(({ id }) => id))('%s reproduces a value that somebody published', (id) => {
  const cases = topics.flatMap((topic) => topic.cases).filter((entry) => entry.calculator === id);
  expect(cases.some((entry) => isPublished(entry) || entry.evidence === 'practice')).toBe(true);
});

test('the range of the published cases leaves out memory, custom and cases that print no value', () => {
  const own = topics
    .flatMap((topic) => topic.cases)
    .filter((entry) => entry.calculator === 'bobweight');
  const range = (cases: typeof own) =>
    testedRange(calculators.bobweight, 'fraction', [{ topic: 'bobweight', cases }]);
  const printed = own.filter(isPublished);
  expect(range(printed)?.[0]).toBe(0.5);
  expect(range(printed)?.[1]).toBeCloseTo(2 / 3, 9);
  expect(
    range(printed.map((entry) => ({ ...entry, evidence: 'memory' as const }))),
  ).toBeUndefined();
  const banded = printed.map((entry) => ({
    ...entry,
    expected: entry.expected.map(({ output, unit, why }) => ({ output, unit, why, atLeast: 0 })),
  }));
  expect(range(banded)).toBeUndefined();
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
    tolerance: 1e-4,
    why: 'five figures',
  };

  test('takes a case as it should be', () => {
    expect(readCases('f.yaml', [good, { ...good, id: 'two', expected: [value] }])).toHaveLength(2);
  });
  test.each([
    [
      'a tolerance without a reason',
      { expected: [{ ...value, why: undefined }] },
      /case one, expected\.0\.why: is missing/u,
    ],
    [
      'a tolerance of nothing',
      { expected: [{ ...value, tolerance: 0 }] },
      /expected\.0\.tolerance: must be greater than 0/u,
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
