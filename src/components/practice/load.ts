import type { AnyCalculator } from '../../calculators/define.ts';
import { loadCalculator } from '../site/load-calculator.ts';

/** The calculators of a page, fetched together, so that nothing more is wanted once it has begun. */
export async function loadCalculators(
  ids: readonly string[],
): Promise<Readonly<Record<string, AnyCalculator>>> {
  const all = await Promise.all(ids.map(async (id) => [id, await loadCalculator(id)] as const));
  return Object.fromEntries(all);
}
