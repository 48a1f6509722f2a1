import { mount } from 'svelte';
import type { Entry } from '../../calculators/define.ts';
import { dictionary, loadDictionary } from '../../notebook/dictionary.ts';
import { carryInto } from '../../notebook/carrying.svelte.ts';
import { clickCell, moveByKeys } from '../form/keys.ts';
import { notebook, opened } from '../../notebook/notebook.svelte.ts';
import { workOf } from '../waking/alive.svelte.ts';
import Customer from './Customer.svelte';
import { askedBy } from './lines.ts';

/** Brings the customer's page to life: nothing of it stands in the HTML, since no example is ever shown there. */
const target = document.querySelector<HTMLElement>('[data-customer]');
if (target !== null) {
  await Promise.all([opened, loadDictionary()]);
  const asked: Record<string, Entry> = {};
  for (const [calculator, name] of Object.entries(askedBy)) {
    const entry = dictionary().get(name);
    if (entry !== undefined) asked[calculator] = entry;
  }
  const address = location.href.replace(/[?#].*$/, '');
  target.replaceChildren();
  // What other numbers give counts as given: a mean of the weighed parts, what the layout settles.
  $effect.root(() => {
    carryInto({ inputs: Object.fromEntries(dictionary()) }, workOf);
  });
  // Whoever came by a link reads what was sent, and nothing of how it is made.
  if (notebook.visiting !== undefined)
    for (const part of document.querySelectorAll('[data-no-visit]')) part.remove();
  mount(Customer, {
    target,
    props: { workOf, asked, metalOfRods: dictionary().get('rodMaterial'), address },
  });
  document.addEventListener('keydown', moveByKeys);
  document.addEventListener('click', clickCell);
  target.setAttribute('data-alive', '');
  document.documentElement.removeAttribute('data-pending');
}
