import { calculators } from '../calculators/index.ts';
import { runAll } from './coverage.ts';
import { loadChecks } from './files.ts';
import { proofs, type Proof } from './proof.ts';
import { allRoutes } from './routes.ts';
import type { Row } from './run.ts';

/** Every value that the formulas are held to, computed; worked once for a build. */
export const allRows: readonly Row[] = runAll(loadChecks(), calculators);

/** What every result of the site stands on. */
export const known: readonly Proof[] = proofs(Object.values(calculators), allRows, allRoutes);

/** What the results of one calculator stand on. */
export function knownOf(calculator: string): readonly Proof[] {
  return known.filter(({ result }) => result.startsWith(`${calculator}.`));
}
