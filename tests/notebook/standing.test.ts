import { expect, test } from 'vitest';
import { bobweight } from '../../src/calculators/balance/bobweight.ts';
import { calculators } from '../../src/calculators/index.ts';
import type { AnyCalculator, Entry } from '../../src/calculators/define.ts';
import { evaluate } from '../../src/notebook/evaluation.ts';
import { exampleOf } from '../../src/notebook/example.ts';
import {
  lastGoodMark,
  reasonWords,
  standingOf,
  standingWords,
  type Standing,
  type TypedValues,
} from '../../src/notebook/standing.ts';

const calculator: AnyCalculator = bobweight;
const entries = Object.values(calculator.inputs);

function typed(changes: TypedValues): TypedValues {
  const of = (entry: Entry) => changes[entry.name] ?? exampleOf('candidate', entry);
  return Object.fromEntries(entries.map((entry) => [entry.name, of(entry)]));
}

function standing(now: TypedValues, last?: TypedValues): Standing {
  const found = evaluate(calculator, (entry) => now[entry.name] ?? exampleOf('candidate', entry));
  return standingOf(calculator, found, now, last);
}

const good = typed({ pistonMass: { text: '381.5', unit: 'g' } });

test('a last good result says what it was for, as it was typed', () => {
  const now = typed({ pistonMass: { text: '4x', unit: 'g' } });
  const at = standing(now, good);
  expect(lastGoodMark(at, 'metric')).toBe('for 381.5\u00a0g');
  expect(standingWords('candidate', at, true, 'metric')).toBe(
    'The candidate shows the last good result, for 381.5\u00a0g, not the numbers in the form.',
  );
});

test('two changes are named, many are counted', () => {
  const bad = { text: '4x', unit: 'g' };
  const two = standing(typed({ pistonMass: bad, ringMass: bad }), good);
  expect(lastGoodMark(two, 'metric')).toMatch(
    /^for Piston, bare 381\.5\u00a0g and Rings of one piston \S+\u00a0g$/,
  );
  const all = standing(
    typed({ pistonMass: bad, ringMass: bad, pinMass: bad, lockMass: bad, oilMass: bad }),
    good,
  );
  expect(lastGoodMark(all, 'metric')).toMatch(/ and 2 more as they were$/);
});

test('of a long list the first reading is named and the others are counted', () => {
  const matching: AnyCalculator = calculators['part-matching'];
  const last = Object.fromEntries(
    Object.values(matching.inputs).map((entry) => [entry.name, exampleOf('baseline', entry)]),
  );
  const now: TypedValues = { ...last, pinMasses: { text: '120.2; 120.6', unit: 'g' } };
  const found = evaluate(matching, (entry) => now[entry.name] ?? exampleOf('baseline', entry));
  const at = standingOf(matching, found, now, last);
  expect(lastGoodMark(at, 'metric')).toBe('for 120.2\u00a0g and 7 more');
  expect(at.blamed).toEqual(['Wrist pins, each']);
});

test('without a result there is a reason and no number', () => {
  const now = typed({ pistonMass: { text: '4x', unit: 'g' } });
  const at = standing(now);
  expect(at.lastFor).toEqual([]);
  expect(reasonWords(at)).toBe('It cannot be worked with what stands in “Piston, bare”.');
  expect(standingWords('candidate', at, false, 'metric')).toMatch(/^No result for the candidate/);
});
