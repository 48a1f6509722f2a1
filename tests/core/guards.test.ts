import { describe, expect, test } from 'vitest';
import * as quantities from '../../src/calculators/quantities.ts';
import { balance } from './balance/guards.ts';
import { bearings } from './bearings/guards.ts';
import { guardCalls } from './guard-calls.ts';
import { testGuards, type Tables } from './guards.ts';
import { inertia } from './inertia/guards.ts';
import { loads } from './loads/guards.ts';
import { motion } from './motion/guards.ts';
import { pins } from './pins/guards.ts';
import { rings } from './rings/guards.ts';
import { rods } from './rods/guards.ts';
import { stack } from './stack/guards.ts';
import { torsion } from './torsion/guards.ts';

const tables: Tables = {
  ...balance,
  ...bearings,
  ...inertia,
  ...loads,
  ...motion,
  ...pins,
  ...rings,
  ...rods,
  ...stack,
  ...torsion,
};
const calls = guardCalls();

describe.each(Object.entries(tables))('%s', (_, parts) => {
  for (const part of parts) testGuards(part);
});

describe('every guard has its row', () => {
  /** What the guards of a file state: quantity and relation, once for each call. */
  function statedIn(file: string): readonly string[] {
    return calls
      .filter((call) => call.file === file)
      .flatMap(({ quantities, relations }) =>
        quantities.flatMap((name) => relations.map((relation) => `${name} ${relation}`)),
      );
  }
  const files = new Set([...calls.map(({ file }) => file), ...Object.keys(tables)]);

  test.each([...files])('%s', (file) => {
    const rows = (tables[file] ?? [])
      .flatMap((part) => part.rows)
      .map(([quantity, relation]) => `${quantity} ${relation}`);
    const stated = statedIn(file);
    const times = (list: readonly string[], one: string): number =>
      list.filter((other) => other === one).length;
    const wrong = [...new Set([...stated, ...rows])].filter((pair) => {
      const guards = times(stated, pair);
      // A guard that several functions share may be met in each of them.
      return guards === 0 || times(rows, pair) < guards;
    });
    expect(wrong, 'guards without a row, or rows without a guard').toEqual([]);
  });
});

test('every name refused stands in the dictionary', () => {
  const known = new Set(Object.values(quantities).map(({ name }) => name as string));
  const strange = calls.flatMap(({ file, line, quantities }) => {
    const names = quantities.filter((name) => !known.has(name));
    const what = quantities.length === 0 ? ['a name that is not known before it runs'] : names;
    return what.map((name) => `src/core/${file}:${line}: ${name}`);
  });
  expect(strange).toEqual([]);
});
