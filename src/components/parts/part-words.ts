import type { Entry, SetId } from '../../calculators/define.ts';
import { notebook } from '../../notebook/notebook.svelte.ts';
import { typedWords } from '../../notebook/standing.ts';
import { bothSets, homeSet } from '../../notebook/values.ts';
import { fromWords } from '../../units/field.ts';
import { partStanding } from './part-standing.ts';

/** The number of a row as it is read on paper, with the ± that the reader gave. */
export function valueWords(entry: Entry, set: SetId): string {
  const value = notebook.value(set, entry);
  if (value.text.trim() === '') return '–';
  const words = typedWords(entry, value, notebook.system);
  const plusMinus = notebook.display(set, entry).plusMinus;
  const isOwn = partStanding(set, entry) === 'own';
  return isOwn && plusMinus !== '' ? `${words} ± ${plusMinus}` : words;
}

/** A note is the reader's own, or says how the number of another page came. */
function isTold(set: SetId, entry: Entry): boolean {
  return ['own', 'carried'].includes(partStanding(set, entry));
}

/** Where the numbers of a row are from, and what is noted about them; once where both sets say the same. */
export function saidWords(entry: Entry): string {
  const said = bothSets
    .filter((set) => homeSet(set, entry) === set && isTold(set, entry))
    .map((set) => {
      const { from, note } = notebook.value(set, entry);
      const words = [from === undefined ? '' : fromWords[from], note ?? ''].filter(Boolean);
      return { set, words: words.join(', ') };
    })
    .filter(({ words }) => words !== '');
  const isOne = said.length === 2 && said[0]?.words === said[1]?.words;
  if (isOne) return said[0]?.words ?? '';
  return said.map(({ set, words }) => `${notebook.setName(set)}: ${words}`).join('; ');
}
