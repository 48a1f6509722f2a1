import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import type { AnyCalculator, SetId } from '../../src/calculators/define.ts';
import { numberIn } from '../../src/calculators/evaluate.ts';
import { calculators } from '../../src/calculators/index.ts';
import { calculationsVersion } from '../../src/calculators/version.ts';
import { evaluate } from '../../src/notebook/evaluation.ts';
import { exampleOf } from '../../src/notebook/example.ts';
import { isOther, readThen, writeThen, type Was } from '../../src/notebook/then.ts';
import { homeSet } from '../../src/notebook/values.ts';

const all: readonly AnyCalculator[] = Object.values(calculators);
const at = (path: string): URL => new URL(`../../${path}`, import.meta.url);
const read = (path: string): string => readFileSync(at(path), 'utf8');
const kept = `tests/fixtures/results/${String(calculationsVersion)}.txt`;
const changes = parse(read('content/changes.yaml')) as readonly {
  readonly version: number;
  readonly calculators: readonly string[];
}[];

function headline(calculator: AnyCalculator): Was {
  const output = calculator.answers[0] ?? '';
  const of = (set: SetId): number =>
    numberIn(
      evaluate(calculator, (entry) => exampleOf(homeSet(set, entry), entry)).output?.[output],
    ) ?? Number.NaN;
  return {
    calculator: calculator.id,
    output,
    baseline: of('baseline'),
    candidate: of('candidate'),
  };
}

describe('the page of changes', () => {
  test('has every version once, and ends with the one that results are kept with', () => {
    const versions = changes.map(({ version }) => version);
    expect(versions).toEqual(Array.from({ length: calculationsVersion }, (_, place) => place + 1));
    for (const id of changes.flatMap((change) => change.calculators))
      expect(Object.keys(calculators)).toContain(id);
  });

  // Who changes what a calculator gives for the example raises the version, says why, and keeps the new results:
  // THROWBOOK_KEEP=1 npx vitest run tests/content/changes.test.ts writes them.
  test('the example gives what it gave when this version began', () => {
    const now = all.map(headline);
    if (process.env['THROWBOOK_KEEP'] !== undefined) writeFileSync(at(kept), `${writeThen(now)}\n`);
    const then = readThen(read(kept).trim());
    expect(then?.version).toBe(calculationsVersion);
    const others = now.filter(({ calculator, output, baseline, candidate }) => {
      const was = then?.results.find(
        (one) => one.calculator === calculator && one.output === output,
      );
      // A calculator that is new has no result of then.
      if (was === undefined) return false;
      return isOther(was.baseline, baseline) || isOther(was.candidate, candidate);
    });
    expect(others).toEqual([]);
    const gone = (then?.results ?? []).filter(
      (was) => !now.some((one) => one.calculator === was.calculator),
    );
    expect(gone).toEqual([]);
  });
});
