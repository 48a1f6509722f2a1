import type { AnyCalculator } from '../calculators/define.ts';
import { isPrinted } from './case.ts';
import { isPublished } from './coverage.ts';
import type { Route } from './route.ts';
import type { Row } from './run.ts';

/** What a result can stand on. A law that must hold (a property) carries none by itself. */
export const legs = [
  'published',
  'derived',
  'memory',
  'second route',
  'closed form',
  'practice',
] as const;
export type Leg = (typeof legs)[number];

/** One result and what it stands on, in the order of {@link legs}; empty when nothing outside reaches it. */
export interface Proof {
  /** `calculator.output`. */
  readonly result: string;
  readonly legs: readonly Leg[];
}

/** The names of a calculator's numbers, `calculator.output`: its outputs but curves, and its comparisons. */
export function resultsOf(calculator: AnyCalculator): readonly string[] {
  const numbers = Object.entries(calculator.outputs).filter(([, { type }]) => type !== 'series');
  const names = [...numbers.map(([name]) => name), ...Object.keys(calculator.comparisons ?? {})];
  return names.map((name) => `${calculator.id}.${name}`);
}

function legOf({ case: entry, expected }: Row): Leg {
  if (isPublished(entry))
    return 'published' in expected && !isPrinted(expected) ? 'derived' : 'published';
  return entry.evidence === 'memory' ? 'memory' : 'practice';
}

/** What every result of the calculators stands on: the rows that pass, and the routes that tests take. */
export function proofs(
  calculators: readonly AnyCalculator[],
  rows: readonly Row[],
  routes: readonly Route[],
): readonly Proof[] {
  const found = new Map<string, Set<Leg>>();
  const add = (result: string, leg: Leg): void => {
    found.set(result, (found.get(result) ?? new Set()).add(leg));
  };
  for (const row of rows)
    if (row.passes) add(`${row.case.calculator}.${row.expected.output}`, legOf(row));
  for (const route of routes)
    if (route.kind !== 'property') for (const result of route.legs ?? []) add(result, route.kind);
  return calculators.flatMap(resultsOf).map((result) => ({
    result,
    legs: legs.filter((leg) => found.get(result)?.has(leg)),
  }));
}
