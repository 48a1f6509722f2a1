import { describe, expect, it, test } from 'vitest';
import { benchGroups, weighedEach } from '../../src/calculators/bench.ts';
import { leftOut, leftOutWords } from '../../src/calculators/bench-left-out.ts';
import type { AnyCalculator } from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';
import * as quantities from '../../src/calculators/quantities.ts';

const rows = benchGroups.flatMap(({ names }) => names);
const others = Object.values(leftOut).flat();
const declared: readonly AnyCalculator[] = Object.values(calculators);

describe('the groups of the parts table', () => {
  test('hold every quantity of the dictionary once, but for those left out with a reason', () => {
    expect([...rows, ...others].sort()).toEqual(Object.keys(quantities).sort());
    expect(Object.keys(leftOut).sort()).toEqual(Object.keys(leftOutWords).sort());
  });

  test('stand in the order of work at the bench', () => {
    expect(benchGroups.map(({ id }) => id)).toEqual([
      'layout',
      'pistons',
      'pins',
      'rings',
      'locks',
      'rods',
      'bolts',
      'shells',
      'crank',
      'flywheel',
      'dimensions',
    ]);
  });

  it.each(benchGroups.map((group) => [group.id, group] as const))(
    '%s is headed by a number of its own',
    (_, { first, names }) => {
      expect(names).toContain(first);
      expect(quantities[first].type).toBe('number');
    },
  );

  // Whatever is weighed, drawn or measured on a part belongs to the bench; only what is worked from it may be missing.
  test('leave out nothing that is measured on a part but what is worked, or of a tool', () => {
    const may: readonly string[] = [...leftOut.worked, ...leftOut.tool, ...leftOut.question];
    for (const name of others) {
      const entry = quantities[name];
      if (entry.type !== 'choice' && entry.origin === 'part') expect(may).toContain(name);
    }
    for (const name of leftOut.assumed) {
      const entry = quantities[name];
      expect(entry.type !== 'choice' && entry.origin, name).toBe('assumption');
    }
  });

  test('hold what every calculator of the balance card asks for', () => {
    const asked = Object.keys(calculators.bobweight.inputs);
    for (const name of asked) expect(rows).toContain(name);
  });

  test('each row is asked for by some calculator', () => {
    const asked = new Set(declared.flatMap(({ inputs }) => Object.keys(inputs)));
    expect(rows.filter((name) => !asked.has(name))).toEqual([]);
  });

  test('the lists with one weight a cylinder are those that parts are matched by', () => {
    const { inputs } = calculators['part-matching'];
    const lists = Object.values(inputs).filter((entry) => entry.type === 'list');
    expect(lists.map(({ name }) => name).sort()).toEqual([...weighedEach].sort());
    for (const name of weighedEach) expect(rows).toContain(name);
  });
});
