import { mount } from 'svelte';
import Demonstrations from './Demonstrations.svelte';

/** Shows the list that this device keeps; none of it stands in the HTML. */
const target = document.querySelector<HTMLElement>('[data-demonstrations]');
if (target !== null) {
  target.replaceChildren();
  mount(Demonstrations, { target });
  target.setAttribute('data-alive', '');
}
