import { crankLayout, isLayout, throwsOf } from '../../calculators/balance/crank-layout.choices.ts';
import type { SetId } from '../../calculators/define.ts';
import { notebook } from '../../notebook/notebook.svelte.ts';

/** How many cylinders the crank layout of a set has; undefined for a layout that is not known. */
export function cylindersOf(set: SetId): number | undefined {
  const chosen = notebook.value(set, crankLayout).text;
  return isLayout(chosen)
    ? throwsOf(chosen).reduce((sum, { banks }) => sum + banks.length, 0)
    : undefined;
}
