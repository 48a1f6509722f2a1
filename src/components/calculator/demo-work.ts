import type { AnyCalculator } from '../../calculators/define.ts';
import { Work } from '../../notebook/work.svelte.ts';

const worked = new Map<string, Work>();

/**
 * The invented example worked through one calculator, for the build: worked once, however many numbers of
 * a page come from it. On the server a notebook never changes, so that all pages can share it.
 */
export function demoWork(calculator: AnyCalculator): Work {
  const known = worked.get(calculator.id) ?? new Work(calculator);
  worked.set(calculator.id, known);
  return known;
}
