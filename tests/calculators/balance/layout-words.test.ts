import { expect, test } from 'vitest';
import {
  crankLayouts,
  throwsOf,
  tradeFactorOf,
} from '../../../src/calculators/balance/crank-layout.choices.ts';
import {
  bobweightsWords,
  factorInShort,
  factorWords,
  hangsWords,
  needsBobweights,
  noBobweights,
} from '../../../src/calculators/balance/layout.words.ts';
import { bobweight } from '../../../src/calculators/balance/bobweight.ts';
import { factorBy } from '../../../src/core/balance/crank-pins.ts';

test('what hangs on a crank, and what the balancing machine needs for it', () => {
  expect(hangsWords('v8-cross')).toBe('Four pins with two rods each');
  expect(hangsWords('v2-45')).toBe('One pin with two rods');
  expect(hangsWords('single')).toBe('One pin with one rod');
  expect(hangsWords('v6-60-split')).toBe('Three split pins, one rod on each half');
  expect(bobweightsWords('v8-cross')).toBe('Four bobweights to make.');
  expect(bobweightsWords('v2-45')).toBe('One bobweight to make.');
  expect(bobweightsWords('v6-60-split')).toBe(
    'Six bobweights to make, each clamped at the angle of its half pin.',
  );
  expect(bobweightsWords('inline-6')).toBe(noBobweights);
});

test('the balance factor says whether it is a result or a choice, what stays, and what is custom', () => {
  expect(factorWords('v8-cross')).toMatch(/^Balance factor: 50 %, a result\./);
  expect(factorWords('inline-6')).toMatch(/^Balance factor: none to choose/);
  expect(factorWords('v2-45')).toContain(
    'It leaves the least: 0.707 × the greatest primary force of one cylinder, rotating backward',
  );
  expect(factorWords('v2-45')).toMatch(/50 to 66 % \(common practice, no source\)\.$/);
  expect(factorWords('v6-90-split')).toContain(
    'a couple of 0.448 × the greatest primary force of one cylinder × the pin spacing',
  );
  expect(factorWords('v6-90-split')).toMatch(/36\.6 % or 50 % \(common practice, no source\)\.$/);
  expect(factorWords('inline-2-270')).toContain('and a couple of 0.354 × that force');
});

test.each(crankLayouts)('%s: no sentence says what the others deny', (id) => {
  const by = factorBy(throwsOf(id));
  for (const words of [factorWords(id), factorInShort(id)]) {
    expect(words.includes('a result')).toBe(by === 'result');
    expect(words.includes('a choice')).toBe(by === 'choice');
    expect(words.includes('common practice')).toBe(tradeFactorOf(id) !== undefined);
  }
  expect(bobweightsWords(id).startsWith('No bobweights')).toBe(!needsBobweights(id));
  // A crank that needs none has nothing to choose either.
  if (!needsBobweights(id)) expect(by).toBe('none');
});

test('the bobweight page says it of the layout chosen, and nothing where none is', () => {
  const limit = bobweight.limits.find((one) => one.id === 'no-bobweights');
  const holds = (layout: (typeof crankLayouts)[number] | undefined): boolean | undefined => {
    const input = {
      pistonMass: 0.4,
      pinMass: 0.1,
      ringMass: 0.03,
      lockMass: 0,
      smallEndMass: 0.15,
      bigEndMass: 0.42,
      shellMass: 0.04,
      oilMass: 0.004,
      rodsPerPin: 1,
      reciprocatingFraction: 0.5,
      crankLayout: layout,
    };
    return limit?.holds(input, bobweight.compute(input));
  };
  expect(limit?.say).toBe(noBobweights);
  expect(holds(undefined)).toBe(true);
  expect(holds('v8-cross')).toBe(true);
  expect(holds('inline-6')).toBe(false);
});
