import { describe, expect, test } from 'vitest';
import { bobweight } from '../../../src/calculators/balance/bobweight.ts';
import type { AnyCalculator, Entry, SetId } from '../../../src/calculators/define.ts';
import { isInvented } from '../../../src/components/card/invented.ts';
import { evaluate } from '../../../src/notebook/evaluation.ts';
import { exampleOf } from '../../../src/notebook/example.ts';

const calculator: AnyCalculator = bobweight;
const entries = Object.values(calculator.inputs);

/** The names that a card would call invented when the reader has entered all but those of `left`. */
function invented(set: SetId, left: readonly Entry[]): readonly string[] {
  const { fields } = evaluate(calculator, (entry) => exampleOf(set, entry));
  return entries
    .filter((entry) => isInvented(entry, left.includes(entry), fields[entry.name]?.value))
    .map(({ name }) => name);
}

describe('the card calls its numbers invented', () => {
  test('until every number needed is entered', () => {
    const needed = entries.filter((entry) => entry.optional !== true);
    expect(needed.length).toBeGreaterThan(5);
    expect(invented('baseline', needed)).toEqual(needed.map(({ name }) => name));
    expect(invented('baseline', needed.slice(0, 1))).toHaveLength(1);
  });

  test('no more when only what can be left out, and is nothing, was left out', () => {
    const zeros = entries.filter(
      (entry) => entry.optional === true && /^0\b/.test(exampleOf('baseline', entry).text),
    );
    expect(zeros.length).toBeGreaterThan(0);
    expect(invented('baseline', zeros)).toEqual([]);
  });
});
