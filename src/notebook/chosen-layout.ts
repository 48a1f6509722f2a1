import {
  crankLayout,
  isCrankLayout,
  type CrankLayout,
} from '../calculators/balance/crank-layout.choices.ts';
import type { SetId } from '../calculators/define.ts';
import { notebook } from './notebook.svelte.ts';
import { bothSets } from './values.ts';

/**
 * The layout of the crank that the reader chose for a set; undefined while only the example's stands there. A link names
 * every choice of its page, chosen or not, so that the example's in a link is none that anybody is known to have made.
 */
export function chosenLayout(set: SetId): CrankLayout | undefined {
  if (!notebook.isGiven(set, crankLayout.name) || notebook.isExample(set, crankLayout))
    return undefined;
  const { text } = notebook.value(set, crankLayout);
  return isCrankLayout(text) ? text : undefined;
}

/** The layouts that the reader chose, each once, with the sets that have it. */
export function chosenLayouts(): readonly {
  readonly layout: CrankLayout;
  readonly sets: readonly SetId[];
}[] {
  const layouts = new Set(bothSets.flatMap((set) => chosenLayout(set) ?? []));
  return [...layouts].map((layout) => ({
    layout,
    sets: bothSets.filter((set) => chosenLayout(set) === layout),
  }));
}

/** Chooses the layout of both sets: one engine has one crank until the reader says otherwise. Undefined: not known. */
export function chooseLayout(layout: CrankLayout | undefined): void {
  for (const set of bothSets) {
    if (layout === undefined) notebook.clear(set, crankLayout.name);
    else notebook.put(set, crankLayout.name, { text: layout, unit: '' }, crankLayout);
  }
}
