import { mount } from 'svelte';
import * as quantities from '../../calculators/quantities.ts';
import { carryInto } from '../../notebook/carrying.svelte.ts';
import { opened } from '../../notebook/notebook.svelte.ts';
import { workOf } from '../waking/alive.svelte.ts';
import type { SpecCalculator } from './results.ts';
import SpecSheet from './SpecSheet.svelte';

/** Brings the spec sheet to life: it holds the reader's numbers alone, so that none of it stands in the HTML. */
const target = document.querySelector<HTMLElement>('[data-spec]');
const told = document.querySelector('[data-spec-about]')?.textContent;
if (target !== null && told !== undefined && told !== null) {
  await opened;
  const calculators = JSON.parse(told) as readonly SpecCalculator[];
  target.replaceChildren();
  // What other numbers give counts as given: a mean of the weighed parts, what the layout settles.
  $effect.root(() => {
    carryInto({ inputs: { ...quantities } }, workOf);
  });
  mount(SpecSheet, { target, props: { calculators, workOf } });
  target.setAttribute('data-alive', '');
  document.documentElement.removeAttribute('data-pending');
}
