import { hydrate } from 'svelte';
import * as quantities from '../../calculators/quantities.ts';
import { carryInto } from '../../notebook/carrying.svelte.ts';
import { opened } from '../../notebook/notebook.svelte.ts';
import { workOf } from '../waking/alive.svelte.ts';
import type { PartsAbout } from './about.ts';
import PartsTable from './PartsTable.svelte';

/** Brings the parts table to life in the server's HTML. */
const target = document.querySelector<HTMLElement>('[data-parts]');
const told = document.querySelector('[data-parts-about]')?.textContent;
if (target !== null && told !== undefined) {
  const about = JSON.parse(told) as PartsAbout;
  await opened;
  $effect.root(() => {
    carryInto({ inputs: { ...quantities } }, workOf);
  });
  hydrate(PartsTable, { target, props: { about } });
  target.setAttribute('data-alive', '');
}
