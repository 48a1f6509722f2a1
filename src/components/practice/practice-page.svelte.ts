import { mount } from 'svelte';
import { practiceShelf } from '../../notebook/practice/progress.ts';
import { loadCalculators } from './load.ts';
import Practice from './Practice.svelte';
import { Session } from './session.svelte.ts';
import type { Sheet } from './sheet.ts';

/** Brings a page of practice to life: its calculators are fetched, and then nothing more is. */
const target = document.querySelector<HTMLElement>('[data-practice]');
const source = document.querySelector('[data-practice-sheet]')?.textContent;
if (target !== null && source !== undefined) {
  const sheet = JSON.parse(source) as Sheet;
  try {
    const hasCurves = sheet.plans.some(({ kind }) => kind === 'read');
    const [calculators, curve] = await Promise.all([
      loadCalculators([...new Set(sheet.plans.map(({ calculator }) => calculator))]),
      hasCurves ? import('./Curve.svelte') : undefined,
    ]);
    const seeds = new Uint32Array(1);
    const draw = (): number => (crypto.getRandomValues(seeds)[0] ?? 0) % 1_000_000;
    const shelf = practiceShelf(() => window.localStorage);
    const session = new Session(sheet, calculators, shelf, draw);
    session.begin(location.hash, Date.now());
    target.replaceChildren();
    mount(Practice, { target, props: { session, calculators, Curve: curve?.default } });
    target.setAttribute('data-alive', '');
  } catch (error) {
    target.textContent =
      'The exercises could not be fetched. Load the page again when the connection is back; the ones below can be worked on paper.';
    reportError(error);
  }
}
