import type { AnyCalculator } from '../calculators/define.ts';
import { isPrinted } from './case.ts';
import { isPublished } from './coverage.ts';
import type { Route } from './route.ts';
import type { Row } from './run.ts';

/** What a result can stand on, strongest first. A law that must hold (a property) carries none by itself. */
const legs = ['published', 'derived', 'second route', 'closed form', 'practice', 'memory'] as const;
export type Leg = (typeof legs)[number];

/** One result and what it stands on, in the order of {@link legs}; empty when nothing outside reaches it. */
export interface Proof {
  /** `calculator.output`. */
  readonly result: string;
  readonly legs: readonly Leg[];
}

/** The names of a calculator's numbers, `calculator.output`: its outputs but curves, and its comparisons. */
function resultsOf(calculator: AnyCalculator): readonly string[] {
  const numbers = Object.entries(calculator.outputs).filter(([, { type }]) => type !== 'series');
  const names = [...numbers.map(([name]) => name), ...Object.keys(calculator.comparisons ?? {})];
  return names.map((name) => `${calculator.id}.${name}`);
}

/** A range that a source or the trade gives holds no digits: it is practice, whoever printed it. */
function legOf({ case: entry, expected }: Row): Leg {
  if (!('published' in expected)) return 'practice';
  if (isPublished(entry)) return isPrinted(expected) ? 'published' : 'derived';
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

/** How a result is known: by the strongest thing that it stands on, in words. */
export const knownWords = {
  published: 'by a published value',
  derived: 'by what follows from a print',
  'second route': 'by another route',
  'closed form': 'by a closed form',
  practice: 'by practice',
  nothing: 'by nothing outside this site',
} as const;
export type Known = keyof typeof knownWords;

/** What each way of knowing means, for who reads it beside a result. */
export const knownMeaning: Readonly<Record<Known, string>> = {
  published: 'It reproduces a value that somebody else published, to the digits printed.',
  derived: 'It agrees with what is worked out from numbers that somebody else printed.',
  'second route': 'A method that shares nothing with the formula comes to the same value.',
  'closed form': 'It meets an exact answer in a case that has one.',
  practice: 'It lies in the range that a source or the trade gives. No value stands beside it.',
  nothing:
    'Nothing outside this site reaches it yet. Its formula is printed, and tests hold the code to it.',
};

/** The strongest thing that a result stands on. What somebody only remembers is nothing. */
export function knownBy({ legs: own }: Proof): Known {
  return own.find((leg) => leg !== 'memory') ?? 'nothing';
}

/** How many of the results are known in which way, strongest first; ways that none is known in are left out. */
export function countKnown(all: readonly Proof[]): readonly (readonly [Known, number])[] {
  const ways = Object.keys(knownWords) as Known[];
  return ways
    .map((way) => [way, all.filter((proof) => knownBy(proof) === way).length] as const)
    .filter(([, count]) => count > 0);
}

/** The counts as the pages print them: “5 by a published value, 2 by another route”. */
export function sayKnown(all: readonly Proof[]): string {
  return countKnown(all)
    .map(([way, count]) => `${count} ${knownWords[way]}`)
    .join(', ');
}
