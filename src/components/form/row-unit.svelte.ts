import type { Entry, SetId } from '../../calculators/define.ts';
import { notebook } from '../../notebook/notebook.svelte.ts';
import { setsOf } from '../../notebook/values.ts';
import { unitsOfKind, type Unit } from '../../units/units.ts';

/** The unit that stands in the row of a quantity, and what else it can be read in. */
export class RowUnit {
  readonly #entry: () => Entry;
  /** A unit that the reader has chosen for this row, for as long as the system stays. */
  #chosen: { readonly unit: string; readonly system: string } | undefined = $state.raw();

  constructor(entry: () => Entry) {
    this.#entry = entry;
  }

  /** Its id; empty for a choice. */
  get id(): string {
    const entry = this.#entry();
    if (entry.type === 'choice') return '';
    if (this.#chosen?.system === notebook.system) return this.#chosen.unit;
    return notebook.system === 'metric' ? entry.metric : entry.inch;
  }

  /** A share of a length, as of a clearance, is a unit of results; no ratio that is entered is one. */
  get choices(): readonly Unit[] {
    const entry = this.#entry();
    if (entry.type === 'choice') return [];
    return unitsOfKind(entry.kind).filter(({ id }) => entry.kind !== 'ratio' || !id.includes('/'));
  }

  /** Another unit beside the same digits: the reader's numbers are read anew in it, and not rewritten. */
  reread(next: string): void {
    const entry = this.#entry();
    const before = this.id;
    const sets: readonly SetId[] = entry.type === 'choice' ? [] : setsOf(entry);
    for (const set of sets) {
      if (notebook.isExample(set, entry)) continue;
      const { text, unit } = notebook.value(set, entry);
      if (unit === before && text !== '')
        notebook.put(set, entry.name, { text, unit: next }, entry);
    }
    this.#chosen = { unit: next, system: notebook.system };
  }
}
