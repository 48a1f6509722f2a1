import type { Entry, SetId } from '../../calculators/define.ts';
import { notebook } from '../../notebook/notebook.svelte.ts';
import { setWords } from '../../notebook/values.ts';

/**
 * Whose number stands in a cell: the reader's own, that of the set which has the same part, one that another page gives,
 * the example's, or none.
 */
export type PartStanding = 'own' | 'same' | 'carried' | 'example' | 'missing' | 'empty';

export function partStanding(set: SetId, entry: Entry): PartStanding {
  if (notebook.isMissing(set, entry)) return 'missing';
  if (notebook.sameAs(set, entry) !== undefined) return 'same';
  if (notebook.carriedFor(set, entry)?.stands === true) return 'carried';
  if (notebook.value(set, entry).text.trim() === '') return 'empty';
  return notebook.isExample(set, entry) ? 'example' : 'own';
}

/** What a set is called within a sentence: `candidate`, or the reader's own word as it is. */
export function nameInText(set: SetId): string {
  const name = notebook.setName(set);
  return Object.values<string>(setWords).includes(name) ? name.toLowerCase() : name;
}
