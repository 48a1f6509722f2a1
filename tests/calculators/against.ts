import { expect } from 'vitest';
import type { AnyCalculator, Result, Value } from '../../src/calculators/define.ts';
import type { Route } from '../../src/checks/route.ts';
import { must } from './must.ts';

type Inputs = Readonly<Record<string, Value>>;
/** What a reference found, in SI; null where no answer exists. */
type Found = Readonly<Record<string, number | null>>;

/** One calculator's part of a `reference.json`: engines, what its generator found, and pairs of them compared. */
interface Reference {
  readonly cases: readonly { readonly input: Inputs; readonly output: Found }[];
  readonly pairs?: readonly { readonly sets: readonly number[]; readonly output: Found }[];
}

/** How near: `share` of the reference's number, and for results that may be a small difference of large numbers `size`. */
interface Near {
  readonly share: number;
  readonly size?: Readonly<Record<string, number>>;
}

/** How far a result may lie from what was found. */
function toleranceOf(name: string, found: number, { share, size }: Near): number {
  return share * Math.abs(found) + (size?.[name] ?? 0);
}

/** One size for several results, for {@link Near}. */
export function within(size: number, names: readonly string[]): Readonly<Record<string, number>> {
  return Object.fromEntries(names.map((name) => [name, size]));
}

function compare(name: string, ours: Result | undefined, found: number | null, near: Near): void {
  if (found === null) {
    expect(ours, `${name}: the reference finds no answer`).toHaveProperty('absent');
    return;
  }
  const value = typeof ours === 'number' ? ours : Number.NaN;
  const off = Math.abs(value - found);
  expect(off <= toleranceOf(name, found, near), `${name}: ${value} against ${found}`).toBe(true);
}

/**
 * Holds a calculator against its reference in every result that the route names. Fails as well for a result that
 * the reference never finds so large, beside its tolerance, that one per cent more would be seen.
 */
export function expectReference(
  route: Route,
  calculator: AnyCalculator,
  reference: Reference,
  near: Near,
): void {
  const legs = route.kind === 'property' ? [] : (route.legs ?? []);
  const own = legs.flatMap((leg) => {
    const [id, name] = leg.split('.');
    return id === calculator.id ? [must(name)] : [];
  });
  expect(own, 'the route names no result of this calculator').not.toEqual([]);
  const sets = reference.cases.map(({ input }) => ({ input, output: calculator.compute(input) }));
  const seen = new Set<string>();
  const hold = (ours: Readonly<Record<string, Result>>, output: Found): void => {
    for (const name of own.filter((one) => output[one] !== undefined)) {
      const found = must(output[name]);
      compare(name, ours[name], found, near);
      if (found !== null && toleranceOf(name, found, near) < 0.01 * Math.abs(found)) seen.add(name);
    }
  };
  sets.forEach(({ output }, i) => hold(output, must(reference.cases[i]).output));
  for (const { sets: pair, output } of reference.pairs ?? []) {
    const [baseline, candidate] = pair.map((i) => must(sets[i]));
    const both = { baseline: must(baseline), candidate: must(candidate) };
    hold(must(calculator.compare?.(both)), output);
  }
  const blind = own.filter((name) => !seen.has(name));
  expect(blind, 'nothing would show an error of one per cent in these').toEqual([]);
}
