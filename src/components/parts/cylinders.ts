import {
  crankLayout,
  crankLayouts,
  throwsOf,
} from '../../calculators/balance/crank-layout.choices.ts';
import type { SetId } from '../../calculators/define.ts';
import { notebook } from '../../notebook/notebook.svelte.ts';

/** How many cylinders the crank layout of a set has; undefined for a layout that is not known. */
export function cylindersOf(set: SetId): number | undefined {
  const chosen = notebook.value(set, crankLayout).text;
  const layout = crankLayouts.find((id) => id === chosen);
  return layout === undefined
    ? undefined
    : throwsOf(layout).reduce((sum, { banks }) => sum + banks.length, 0);
}
