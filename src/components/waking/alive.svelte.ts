import { flushSync, hydrate, type Component } from 'svelte';
import type { AnyCalculator, Entry } from '../../calculators/define.ts';
import { carryInto } from '../../notebook/carrying.svelte.ts';
import { notebook, opened } from '../../notebook/notebook.svelte.ts';
import { catchUpAll, Pace, PacedWork } from '../../notebook/paced.svelte.ts';
import { lastGoodMark } from '../../notebook/standing.ts';
import { Work, type SetView, type WorkView } from '../../notebook/work.svelte.ts';
import type { SlotSet, SlotSets } from '../slots/slots.ts';
import type { System } from '../../units/kinds.ts';
import '../asking/asking.ts';
import { loadCalculator } from '../site/load-calculator.ts';
import { watchScreen } from './on-screen.ts';

export { flushSync };

/**
 * Brings parts of the server's HTML to life in place: calculators, figures, the notebook bar and the numbers in
 * prose, all on one notebook. Each part follows it at its own pace ({@link Pace}). Only the declarations of this
 * page are fetched.
 */
/** Calls what it is given when fetching is worth another try. */
type Later = (again: () => void) => void;

/** The calculators whose numbers in prose could not be fetched yet. */
const unfilled = new Set<string>();
const works = new Map<string, Promise<Work>>();
let fillProse = (): void => undefined;

// Whoever prints sees the numbers of now on every sheet.
window.addEventListener('beforeprint', () => {
  catchUpAll();
  flushSync();
  fillProse();
});

/**
 * A work at a pace of its own, kept in the background; whoever asks for it says when its part is seen. At a key the
 * reader waits for results, so drawings and prose are late: they follow in the frame after.
 */
function pacedOf(work: WorkView, late: boolean): readonly [PacedWork, Pace] {
  const pace = new Pace({ late });
  $effect.root(() => {
    pace.follow();
  });
  return [new PacedWork(work, pace), pace];
}

async function make(id: string): Promise<Work> {
  await opened;
  const calculator = await loadCalculator(id);
  const work = new Work(calculator);
  $effect.root(() => {
    work.sets.baseline.follow();
    work.sets.candidate.follow();
    carryInto(calculator, workOf);
  });
  return work;
}

/** What the numbers in prose show of one set. */
function slotSet({ input, output, standing, uncertainty }: SetView, system: System): SlotSet {
  if (output === undefined) return { values: {} };
  const shown = { values: { ...input, ...output }, plusMinus: uncertainty };
  return standing === undefined ? shown : { ...shown, stale: lastGoodMark(standing, system) };
}

/** What they show of both, and of what compares them. */
function slotSets({ sets, comparison, system }: WorkView): SlotSets {
  const baseline = slotSet(sets.baseline, system);
  const candidate = slotSet(sets.candidate, system);
  const both = { values: comparison ?? {}, stale: baseline.stale ?? candidate.stale };
  return { baseline, candidate, both };
}

/** Lets the numbers in prose and the validity strips of one calculator follow it. */
async function fill(id: string): Promise<void> {
  const [{ fillWaiting, Slots }, work, way] = await Promise.all([
    import('../slots/slots.ts'),
    workOf(id),
    document.querySelector('[data-postfix], [data-if]') === null
      ? undefined
      : import('../slots/on-the-way.ts'),
  ]);
  fillProse = fillWaiting;
  const [paced, pace] = pacedOf(work, true);
  const tell = (seen: boolean): void => {
    pace.seen = seen;
  };
  const slots = new Slots(document, work.calculator, tell, way?.valueOnTheWay);
  $effect.root(() => {
    $effect(() => {
      slots.fill(slotSets(paced), notebook.system);
    });
  });
}

/** The same, tried again as often as it must be; until then the page marks its numbers as not the reader's. */
async function fillOrLater(id: string, later: Later): Promise<void> {
  try {
    await fill(id);
    unfilled.delete(id);
  } catch {
    unfilled.add(id);
    later(() => void fillOrLater(id, later));
  }
  document.documentElement.toggleAttribute('data-unfollowed', unfilled.size > 0);
}

/** One calculator with both sets, shared by all parts of the page. */
export function workOf(id: string): Promise<Work> {
  const known = works.get(id) ?? make(id);
  works.set(id, known);
  // What could not be fetched is asked for anew.
  known.catch(() => works.delete(id));
  return known;
}

/** The same at the pace of one part of the page. */
async function pacedWorkOf(id: string, part: Element, late: boolean): Promise<PacedWork> {
  const [paced, pace] = pacedOf(await workOf(id), late);
  watchScreen(part, (seen) => {
    pace.seen = seen;
  });
  return paced;
}

/** The numbers of its sentences can be changed in their place; where the code for that is lost, on the sheet alone. */
function letChange(calculator: AnyCalculator): void {
  import('../slots/in-sentence.ts').then(
    ({ changeInSentences }) => {
      changeInSentences(calculator);
    },
    () => undefined,
  );
}

function bring<Props extends Record<string, unknown>>(
  part: Component<Props>,
  target: Element,
  props: Props,
): void {
  hydrate(part, { target, props });
  flushSync();
  target.setAttribute('data-alive', '');
}

/** The quantities of some calculators, for the link; each once, in the order of the page. */
export function entriesOf(works: readonly Work[]): readonly Entry[] {
  const named = new Map(
    works
      .flatMap((work) => Object.values(work.calculator.inputs))
      .map((entry) => [entry.name, entry]),
  );
  return [...named.values()];
}

/**
 * Fetches all that one calculator, figure, notebook bar or the parts table needs, and gives what then brings it to life
 * at once. Throws Error for a part that is none of them.
 */
export async function prepare(target: HTMLElement): Promise<() => void> {
  await opened;
  const { calculator, figure, of, notebookBar, parts } = target.dataset;
  if (calculator !== undefined) {
    const [{ default: part }, work] = await Promise.all([
      import('../calculator/Calculator.svelte'),
      pacedWorkOf(calculator, target, false),
    ]);
    return () => {
      bring(part, target, { work });
      letChange(work.calculator);
    };
  }
  if (figure !== undefined) {
    const { Drawn, loadFigure } = await import('../figures/index.ts');
    const [{ default: Part }, work] = await Promise.all([
      loadFigure(figure),
      pacedWorkOf(of ?? '', target, true),
    ]);
    return () => {
      bring(Drawn, target, { Part, work });
      letChange(work.calculator);
    };
  }
  if (parts !== undefined) {
    const { default: part, carryAll, about } = await import('../parts/parts-page.svelte.ts');
    $effect.root(() => {
      carryAll(workOf);
    });
    return () => {
      bring(part, target, { about });
    };
  }
  const ids = (notebookBar ?? '').split(' ').filter((id) => id !== '');
  const [{ default: part }, ...works] = await Promise.all([
    import('../bar/NotebookBar.svelte'),
    ...ids.map(workOf),
  ]);
  return () => {
    bring(part, target, { entries: entriesOf(works), works });
    document.documentElement.removeAttribute('data-pending');
  };
}

/**
 * Waits for the reader's first change. From then on all numbers in prose follow, and `then` is called.
 *
 * @param ids the calculators that the page has numbers of in its prose or strips
 * @param already true when the numbers on the page are not the reader's from the start
 * @param later calls what it is given when fetching what failed is worth another try
 */
export function atFirstChange(
  ids: Iterable<string>,
  already: boolean,
  then: () => void,
  later: Later,
): void {
  const before = notebook.revision;
  const stop = $effect.root(() => {
    $effect(() => {
      if (!already && notebook.revision === before) return;
      for (const id of ids) void fillOrLater(id, later);
      then();
      queueMicrotask(stop);
    });
  });
}
