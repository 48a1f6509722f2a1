import * as quantities from '../../calculators/quantities.ts';
import { carryInto } from '../../notebook/carrying.svelte.ts';
import type { Work } from '../../notebook/work.svelte.ts';
import type { PartsAbout } from './about.ts';

export { default } from './PartsTable.svelte';

/** What the build told of the rows; it stands once in the page, and in no script. */
export const about = JSON.parse(
  document.querySelector('[data-parts-about]')?.textContent ?? '{"topics":{},"of":{}}',
) as PartsAbout;

/** Lets every row be filled by what other pages make of the reader's numbers. Call inside an effect root. */
export function carryAll(workOf: (id: string) => Promise<Work>): void {
  carryInto({ inputs: { ...quantities } }, workOf);
}
