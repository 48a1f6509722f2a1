import { calculators } from '../calculators/index.ts';
import { runAll } from './coverage.ts';
import { loadChecks } from './files.ts';
import { proofs, type Proof } from './proof.ts';
import { allRoutes } from './routes.ts';

/** What every result of the site stands on; worked once for a build. */
export const known: readonly Proof[] = proofs(
  Object.values(calculators),
  runAll(loadChecks(), calculators),
  allRoutes,
);

/** What the results of one calculator stand on. */
export function knownOf(calculator: string): readonly Proof[] {
  return known.filter(({ result }) => result.startsWith(`${calculator}.`));
}
