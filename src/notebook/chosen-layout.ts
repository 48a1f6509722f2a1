import { crankLayout, isLayout, type Layout } from '../calculators/balance/crank-layout.choices.ts';
import type { SetId } from '../calculators/define.ts';
import { notebook } from './notebook.svelte.ts';
import { bothSets } from './values.ts';

/**
 * The layout of the crank that the reader chose for a set; undefined while only the example's stands there. A link names
 * every choice of its page, chosen or not, so that the example's in a link is none that anybody is known to have made.
 */
export function chosenLayout(set: SetId): Layout | undefined {
  if (!notebook.isGiven(set, crankLayout.name) || notebook.isExample(set, crankLayout))
    return undefined;
  const { text } = notebook.value(set, crankLayout);
  return isLayout(text) ? text : undefined;
}

/** The layouts that the reader chose, each once, with the sets that have it. */
export function chosenLayouts(): readonly {
  readonly layout: Layout;
  readonly sets: readonly SetId[];
}[] {
  const layouts = new Set(bothSets.flatMap((set) => chosenLayout(set) ?? []));
  return [...layouts].map((layout) => ({
    layout,
    sets: bothSets.filter((set) => chosenLayout(set) === layout),
  }));
}

/**
 * Chooses the layout of the engine, for all sets of the open job in one step back: one engine has one crank until the
 * reader says otherwise. Undefined: not known. Nothing of a link that is visited.
 */
export function chooseLayout(layout: Layout | undefined): void {
  notebook.together(() => {
    for (const set of notebook.sets.kept) {
      const { [crankLayout.name]: before, ...others } = notebook.ownOf(set);
      // The others have the baseline's, but for the candidate where an example of its own would stand.
      const isHeld = set === 'baseline' || (set === 'candidate' && !notebook.isBare);
      if (layout !== undefined && isHeld)
        notebook.refill(set, { ...others, [crankLayout.name]: { text: layout, unit: '' } });
      else if (before !== undefined) notebook.refill(set, others);
    }
  });
}
