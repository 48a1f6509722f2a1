import { describe, expect, it } from 'vitest';
import { defineCalculator } from '../../src/calculators/define.ts';
import { plainWords } from '../../src/calculators/plain-words.ts';
import { propagate } from '../../src/calculators/uncertainty.ts';
import { beam, beamInput } from './tiny.ts';

const show = (_: string, si: number): string => `${Number(si.toPrecision(5))} U`;

function set(patch: object, plusMinus: Record<string, number> = {}) {
  const input = { ...beamInput, ...patch };
  return { output: beam.compute(input), plusMinus: propagate(beam, input, plusMinus) };
}

function words(before: object, after: object, plusMinus: Record<string, number> = {}) {
  return plainWords(
    beam,
    { baseline: set(before, plusMinus), candidate: set(after, plusMinus), shared: ['load'] },
    show,
  );
}

describe('one sentence a result', () => {
  it('tells rises, falls and stays, with both values and the change', () => {
    expect(words({}, { load: 150 })).toEqual([
      'The stress rises from 10000000 U to 15000000 U, by 50\u00a0%.',
      'The ratio stays at 1 U.',
      'The span per load falls from 0.01 U to 0.0066667 U, by 33\u00a0%.',
    ]);
  });

  it('gives small changes one place, and tiny ones no false zero', () => {
    expect(words({}, { load: 101.2 })[0]).toContain('by 1.2\u00a0%');
    expect(words({}, { load: 100.05 })[0]).toContain('by less than 0.1\u00a0%');
  });

  it('gives no percentage across zero or from zero', () => {
    expect(words({ load: -100 }, { load: 100 })[0]).toBe(
      'The stress rises from -10000000 U to 10000000 U.',
    );
    expect(words({ load: 0 }, { load: 100 })[0]).toBe('The stress rises from 0 U to 10000000 U.');
  });

  it('says "about" only where the ± is over three per cent', () => {
    expect(words({}, { span: 2 }, { modulus: 0.25e-6 })[0]).not.toContain('about');
    expect(words({}, { span: 2 }, { modulus: 0.35e-6 })[0]).toBe(
      'The stress rises from about 10000000 U to about 20000000 U, by 100\u00a0%.',
    );
  });

  it('says when the difference is smaller than its own ±', () => {
    const [stress] = words({}, { span: 1.01 }, { span: 0.01 });
    expect(stress).toContain(
      'the difference is smaller than its own ± of 141420 U, so the numbers given are too coarse to show one',
    );
    expect(stress).not.toMatch(/rises|falls/);
    expect(words({}, { span: 1.02 }, { span: 0.01 })[0]).toContain('rises');
  });

  it('lets a value common to both sets carry no doubt into the difference', () => {
    expect(words({}, { span: 1.01 }, { load: 10 })[0]).toContain('rises');
  });

  it('gives the reason where one set has no value', () => {
    expect(words({}, { load: 0 })[2]).toBe(
      'The span per load is 0.01 U with the baseline set; with the other it has no value: there is no load.',
    );
    expect(words({ load: 0 }, {})[2]).toBe(
      'The span per load is 0.01 U with the candidate set; with the other it has no value: there is no load.',
    );
    expect(words({ load: 0 }, { load: 0 })[2]).toBe(
      'The span per load has no value: there is no load.',
    );
  });
});

describe('results of both sets', () => {
  const compared = defineCalculator({
    ...beam,
    steps: {},
    comparisons: {
      equalSpan: {
        type: 'maybe',
        kind: 'length',
        label: 'Equal span',
        symbol: 'e',
        phrase: 'The span of equal stress',
      },
      silent: { type: 'number', kind: 'length', label: 'Silent', symbol: 's' },
    },
    compare: ({ candidate }) => ({
      equalSpan: candidate.input.load === 0 ? { absent: 'there is no load' } : 2,
      silent: 1,
    }),
  });
  const say = (comparison: Record<string, number | { absent: string }>) =>
    plainWords(
      compared,
      { baseline: set({}), candidate: set({}), shared: [], comparison },
      show,
    ).at(-1);

  it('come last', () => {
    expect(say({ equalSpan: 2, silent: 1 })).toBe('The span of equal stress is 2 U.');
    expect(say({ equalSpan: { absent: 'there is no load' }, silent: 1 })).toBe(
      'The span of equal stress has no value: there is no load.',
    );
  });
});

it('never judges', () => {
  const all = [words({}, { load: 150 }), words({}, { span: 1.01 }, { span: 0.01 })]
    .flat()
    .join(' ');
  expect(all).not.toMatch(/safe|proven|optimum|optimal|guarante|better|worse|improve/i);
});
