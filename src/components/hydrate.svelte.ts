import { hydrate, type Component } from 'svelte';
import type { AnyCalculator, Entry } from '../calculators/define.ts';
import { notebook } from '../notebook/notebook.svelte.ts';
import { Work } from '../notebook/work.svelte.ts';
import Calculator from './Calculator.svelte';
import { figureOf } from './figures/index.ts';
import NotebookBar from './NotebookBar.svelte';
import { fillSlots } from './slots.ts';

/**
 * Brings the server's HTML to life in place: calculators, figures, the notebook bar and the numbers in
 * prose, all on one notebook. What is near the viewport comes first, the rest when the page is idle, so
 * that print and link see every part. Only the declarations of this page are fetched.
 */
const declarations = import.meta.glob<Readonly<Record<string, AnyCalculator>>>([
  '../calculators/*.ts',
  '!../calculators/{index,define,quantities,quantity-notes,output-unit}.ts',
  '!../calculators/{uncertainty,solve,sweep,plain-words,csv,exercise}.ts',
]);

const works = new Map<string, Promise<Work>>();

async function make(id: string): Promise<Work> {
  const load = declarations[`../calculators/${id}.ts`];
  if (load === undefined) throw new Error(`There is no calculator “${id}”.`);
  const calculator = Object.values(await load()).find((value) => value.id === id);
  if (calculator === undefined) throw new Error(`The file of “${id}” declares another calculator.`);
  const work = new Work(calculator);
  $effect.root(() => {
    work.sets.baseline.follow();
    work.sets.candidate.follow();
    $effect(() => {
      const { baseline, candidate } = work.sets;
      fillSlots(
        document,
        calculator,
        {
          baseline: { ...baseline.input, ...baseline.output },
          candidate: { ...candidate.input, ...candidate.output },
        },
        notebook.system,
      );
    });
  });
  return work;
}

function workOf(id: string): Promise<Work> {
  const known = works.get(id) ?? make(id);
  works.set(id, known);
  return known;
}

function enliven<Props extends Record<string, unknown>>(
  part: Component<Props>,
  target: Element,
  props: Props,
): void {
  hydrate(part, { target, props });
  target.setAttribute('data-alive', '');
}

async function bringUp(target: HTMLElement): Promise<void> {
  const { calculator, figure } = target.dataset;
  if (calculator !== undefined) {
    enliven(Calculator, target, { work: await workOf(calculator) });
    return;
  }
  const entry = figureOf[figure ?? ''];
  if (entry === undefined) return;
  const [part, work] = await Promise.all([entry.load(), workOf(entry.calculator)]);
  enliven(part, target, { work });
}

/** The quantities of the page's calculators, for the link; each once, in the order of the page. */
async function pageEntries(ids: readonly string[]): Promise<readonly Entry[]> {
  const all = await Promise.all(ids.map(workOf));
  const named = new Map(
    all
      .flatMap((work) => Object.values(work.calculator.inputs))
      .map((entry) => [entry.name, entry]),
  );
  return [...named.values()];
}

function idle(run: () => void): void {
  if ('requestIdleCallback' in window) requestIdleCallback(run, { timeout: 2000 });
  else setTimeout(run, 200);
}

function start(): void {
  const islands = [...document.querySelectorAll<HTMLElement>('[data-calculator], [data-figure]')];
  const waiting = new Set(islands);
  const begin = (target: HTMLElement): void => {
    if (!waiting.delete(target)) return;
    void bringUp(target);
  };
  const watcher = new IntersectionObserver(
    (seen) => {
      for (const { isIntersecting, target } of seen) {
        if (isIntersecting && target instanceof HTMLElement) begin(target);
      }
    },
    { rootMargin: '400px' },
  );
  for (const island of islands) watcher.observe(island);
  idle(() => {
    watcher.disconnect();
    for (const island of islands) begin(island);
    const slotted = [...document.querySelectorAll<HTMLElement>('[data-v]')];
    const ids = new Set(slotted.map((slot) => slot.dataset['v']?.split('.')[0] ?? ''));
    for (const id of ids) if (id !== '') void workOf(id);
  });
  const bar = document.querySelector<HTMLElement>('[data-notebook-bar]');
  if (bar === null) return;
  const ids = (bar.dataset['notebookBar'] ?? '').split(' ').filter((id) => id !== '');
  void pageEntries(ids).then((entries) => {
    enliven(NotebookBar, bar, { entries });
    document.documentElement.removeAttribute('data-pending');
  });
}

start();
