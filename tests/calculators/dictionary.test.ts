import { describe, expect, test } from 'vitest';
import type { AnyCalculator, Entry } from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';
import * as quantities from '../../src/calculators/quantities.ts';

const dictionary = new Map<string, Entry>(
  Object.values(quantities).map((entry) => [entry.name, entry]),
);

/** A calculator may do without what another one needs; all else is the dictionary's. */
function bare({ ...entry }: Entry): Partial<Entry> {
  const kept: Partial<Record<keyof Entry, unknown>> = entry;
  delete kept.optional;
  return kept as Partial<Entry>;
}

describe.each(Object.values<AnyCalculator>(calculators))('$id', ({ inputs }) => {
  test.each(Object.entries(inputs))('%s stands in the dictionary as it is used', (name, entry) => {
    const known = dictionary.get(name);
    expect(
      known,
      'a link or a file that brings it would be told that nobody knows it',
    ).toBeDefined();
    expect(bare(entry)).toEqual(known === undefined ? undefined : bare(known));
  });
});

test('a choice offers what it shows first, in words', () => {
  const choices = [...dictionary.values()].filter((entry) => entry.type === 'choice');
  expect(choices.length).toBeGreaterThanOrEqual(10);
  for (const { name, options, demo } of choices) {
    expect(Object.keys(options), name).toEqual(expect.arrayContaining(Object.values(demo)));
    for (const words of Object.values(options)) expect(words.trim(), name).not.toBe('');
  }
});
