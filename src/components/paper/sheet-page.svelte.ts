import { mount } from 'svelte';
import { loadCalculators } from '../practice/load.ts';
import SheetMaker from './SheetMaker.svelte';
import { Sheets, type SheetsOfTopic } from './sheets.svelte.ts';

/** Brings a page of exercise sheets to life: its calculators are fetched, and then nothing more is. */
const target = document.querySelector<HTMLElement>('[data-sheets]');
const source = document.querySelector('[data-sheets-of]')?.textContent;
if (target !== null && source !== undefined) {
  const topic = JSON.parse(source) as SheetsOfTopic;
  try {
    const calculators = await loadCalculators([
      ...new Set(topic.plans.map(({ calculator }) => calculator)),
    ]);
    const drawn = new Uint32Array(1);
    // Four digits: it is read off a sheet and typed.
    const seed = 1000 + ((crypto.getRandomValues(drawn)[0] ?? 0) % 9000);
    const sheets = new Sheets(topic, calculators, seed);
    target.replaceChildren();
    mount(SheetMaker, { target, props: { sheets } });
    await sheets.follow(location.hash);
    target.setAttribute('data-alive', '');
  } catch (error) {
    target.textContent =
      'The exercises could not be fetched. Load the page again when the connection is back; the handout has exercises on paper.';
    reportError(error);
  }
}
