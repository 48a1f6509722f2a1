import { describe, expect, test } from 'vitest';
import type { AnyCalculator } from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';
import { isPrinted } from '../../src/checks/case.ts';
import { isPublished, runAll } from '../../src/checks/coverage.ts';
import { loadChecks } from '../../src/checks/files.ts';
import { proofs, type Leg } from '../../src/checks/proof.ts';
import { allRoutes } from '../../src/checks/routes.ts';
import { unproved } from '../../src/checks/unproved.ts';

const declared: readonly AnyCalculator[] = Object.values(calculators);
const rows = runAll(loadChecks(), calculators);
const all = proofs(declared, rows, allRoutes);
/** Nothing at all, or what somebody remembers. */
const standsOnNothing = (legs: readonly Leg[]): boolean => legs.every((leg) => leg === 'memory');
const bare = all.filter(({ legs }) => standsOnNothing(legs)).map(({ result }) => result);
/** How long the list of exceptions may be: lower it with every name that leaves. */
const most = 1;
const excused: ReadonlySet<string> = new Set(unproved);

describe('what a result stands on', () => {
  test.each(all.map((proof) => [proof.result, proof] as const))(
    '%s: a published value, another route, a closed form or practice',
    (result, { legs }) => {
      if (!excused.has(result))
        expect(
          standsOnNothing(legs),
          `Nothing outside reaches ${result}. Add a case to content/topics/<topic>/checks.yaml, or a route to routes.ts beside it and name it in a test with proves().`,
        ).toBe(false);
    },
  );

  test('the list of those that stand on nothing holds no other and only shrinks', () => {
    const found = new Set(bare);
    expect(
      unproved.filter((result) => !found.has(result)),
      'these stand on something by now: take them out of src/checks/unproved.ts',
    ).toEqual([]);
    expect(unproved.length).toBeLessThanOrEqual(most);
  });

  test('“published” stands on digits of a print that somebody has seen, never on a range, memory or a sum of ours', () => {
    const printed = new Set(
      rows
        .filter((row) => row.passes && isPublished(row.case) && isPrinted(row.expected))
        .map((row) => `${row.case.calculator}.${row.expected.output}`),
    );
    const said = all.filter(({ legs }) => legs.includes('published')).map(({ result }) => result);
    expect(said.filter((result) => !printed.has(result))).toEqual([]);
    expect(said.length).toBe(printed.size);
  });
});
