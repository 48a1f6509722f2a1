import { practiceFormat } from '../../calculators/practice/make.ts';

/** What the end of an address asks of a page of practice. */
export type Asks =
  | { readonly is: 'nothing' }
  /** One exercise, with numbers of its own. */
  | { readonly is: 'exercise'; readonly id: string; readonly say?: string }
  /** One exercise with the numbers of a seed. */
  | { readonly is: 'question'; readonly id: string; readonly seed: number }
  | { readonly is: 'unknown'; readonly say: string };

/** The end of an address that names an exercise and its numbers. */
export function hashOf(id: string, seed: number): string {
  return `#${id}/${String(practiceFormat)}/${String(seed)}`;
}

/**
 * Reads the end of an address: `#bobweight.bobweight` or `#bobweight.bobweight/1/4821`. The number in the middle is
 * the format of the exercises: numbers of another one cannot be made again.
 */
export function readHash(hash: string, ids: readonly string[]): Asks {
  const [id = '', format, seed, more] = decoded(hash.replace(/^#/u, '')).split('/');
  // Anchors of the page itself.
  if (id === '' || !id.includes('.')) return { is: 'nothing' };
  if (!ids.includes(id))
    return {
      is: 'unknown',
      say: `The link names an exercise, “${id.slice(0, 60)}”, that this page does not have. Here is one that it has.`,
    };
  if (format === undefined) return { is: 'exercise', id };
  if (format !== String(practiceFormat))
    return {
      is: 'exercise',
      id,
      say: `The link is of another version of the exercises (${format.slice(0, 12)}; this page has ${String(practiceFormat)}), so its numbers cannot be made again. Here is the same exercise with other numbers.`,
    };
  if (more !== undefined || seed === undefined || !/^\d{1,9}$/u.test(seed))
    return {
      is: 'exercise',
      id,
      say: 'The link is cut or changed: its numbers cannot be made again. Here is the same exercise with other numbers.',
    };
  return { is: 'question', id, seed: Number(seed) };
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
