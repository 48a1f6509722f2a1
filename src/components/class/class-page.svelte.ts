import { hydrate } from 'svelte';
import { isLink } from '../../notebook/is-link.ts';
import {
  askedBy,
  moved,
  placeText,
  readPlace,
  screensOf,
  show,
  within,
  type Asked,
  type Place,
} from './deck.ts';
import { DemonstrationShelf } from './demonstrations.ts';
import { showFigure } from './fit-figure.ts';
import { tellRight, wireHands } from './hands.ts';
import { showingOf } from './showing.ts';
import type OneFactorType from './OneFactor.svelte';

/*
 * Makes screens of the page and goes through them by a presenter's keys. Where one stands is in the address, and in the
 * link of the page with its numbers and the angle of its figures.
 */
const root = document.querySelector<HTMLElement>('[data-class]');
if (root !== null) present(root);

function present(deck: HTMLElement): void {
  for (const fold of deck.querySelectorAll('details.section'))
    if (fold instanceof HTMLDetailsElement) fold.open = true;
  const screens = screensOf(deck);
  const desk = document.querySelector<HTMLElement>('[data-desk]');
  const count = document.querySelector<HTMLElement>('[data-screen-count]');
  const blank = document.querySelector<HTMLElement>('[data-blank]');
  const isLinked = isLink(location.hash);
  let place: Place = { screen: 0, step: 0 };
  const showing = showingOf(new DemonstrationShelf());
  let tellView: (text: string) => void = () => undefined;
  let stepFactor: (step: number) => void = () => undefined;

  for (const question of deck.querySelectorAll<HTMLElement>('.class-question')) wireHands(question);

  function go(to: Place): void {
    place = within(screens, to);
    const screen = screens[place.screen];
    if (screen === undefined) return;
    show(deck, screen.parts);
    const [first] = screen.parts;
    if (first?.matches('.class-question') === true) tellRight(first, place.step > 0);
    if (first?.matches('.class-factor') === true) stepFactor(place.step);
    if (first?.matches('.class-figure') === true) showFigure(first);
    if (count !== null)
      count.textContent = `${String(place.screen + 1)} of ${String(screens.length)}: ${screen.name}`;
    const text = placeText(place);
    tellView(text);
    // A link in the address stays as it is; the screen of a link goes with its figures' views.
    if (!isLink(location.hash)) history.replaceState(history.state, '', `#screen-${text}`);
    scrollTo({ top: 0, behavior: 'instant' });
  }
  function toggleBlank(): void {
    if (blank !== null) blank.hidden = !blank.hidden;
  }
  /** Steps within a screen first; then the next screen, or the next that was kept where the list is shown. */
  function move(way: 1 | -1): void {
    // How high a figure will be is not known before it is fitted: until then it is passed over.
    const [first] = screens[place.screen]?.parts ?? [];
    if (first?.matches('.class-figure:not([data-fitted])') !== true && scrolls(way)) return;
    const next = moved(screens, place, way);
    const isStep = next.screen === place.screen && next.step !== place.step;
    if (isStep || !showing.isOn) go(next);
    else showing.go(way);
  }
  const acts: Readonly<Record<Asked, () => void>> = {
    next: () => move(1),
    back: () => move(-1),
    first: () => go({ screen: 0, step: 0 }),
    last: () => go({ screen: screens.length - 1, step: 0 }),
    blank: toggleBlank,
    full: () => void toggleFull(),
    keys: () => toggleDesk(desk),
  };

  // Before what has the focus hears of it: a slider would take the keys of a clicker for its own.
  document.addEventListener(
    'keydown',
    (event) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const asked = askedBy(event.key, document.activeElement);
      if (asked === undefined) return;
      event.preventDefault();
      event.stopPropagation();
      // Any key brings a blanked screen back, and does nothing else.
      if (blank?.hidden === false) toggleBlank();
      else acts[asked]();
    },
    { capture: true },
  );
  document.addEventListener('click', ({ target }) => {
    const button = target instanceof Element ? target.closest<HTMLElement>('[data-do]') : null;
    const asked = button?.dataset['do'];
    if (asked !== undefined && asked in acts) acts[asked as Asked]();
  });
  blank?.addEventListener('click', toggleBlank);
  window.addEventListener('hashchange', () => {
    const text = screenInAddress();
    if (text !== undefined) go(readPlace(text));
  });

  document.documentElement.setAttribute('data-presenting', '');
  go(readPlace(screenInAddress() ?? ''));
  void bring();

  /** What needs the notebook: the place that a link names, and the part that is changed alone. */
  async function bring(): Promise<void> {
    const [{ shownViews }, { opened }, { workOf }, { wireKeeping }, { default: OneFactor }] =
      await Promise.all([
        import('../../notebook/shown-views.svelte.ts'),
        import('../../notebook/notebook.svelte.ts'),
        import('../waking/alive.svelte.ts'),
        import('./keeping.ts'),
        import('./OneFactor.svelte'),
      ]);
    await opened;
    tellView = (text) => shownViews.tell('class', text === '1' ? {} : { at: text });
    if (desk !== null)
      wireKeeping(desk, () => {
        const step = place.step === 0 ? '' : `, step ${String(place.step)}`;
        return `${document.querySelector('h1')?.textContent ?? ''}: ${screens[place.screen]?.name ?? ''}${step}`;
      });
    const factor = deck.querySelector<HTMLElement>('[data-factor]');
    if (factor !== null) await bringFactor(factor, OneFactor, workOf);
    // A visit goes on from page to page, but the screen that its link names is one of this page alone.
    const at = isLinked ? shownViews.opened['class']?.['at'] : undefined;
    go(at === undefined ? place : readPlace(at));
    document.documentElement.setAttribute('data-presented', '');
  }
  async function bringFactor(
    target: HTMLElement,
    OneFactor: typeof OneFactorType,
    workOf: (id: string) => Promise<Parameters<typeof OneFactorType>[1]['work']>,
  ): Promise<void> {
    const work = await workOf(target.dataset['factor'] ?? '');
    const props = $state({
      work,
      step: place.step,
      goTo: (step: number) => go({ screen: place.screen, step }),
    });
    hydrate(OneFactor, { target, props });
    stepFactor = (step) => (props.step = step);
  }
}

/** The screen that the address names by itself, and not as part of a link. */
function screenInAddress(): string | undefined {
  return /^#screen-(.*)$/.exec(location.hash)?.[1];
}

/** What is higher than the window is gone through before the next screen; true where there was something left. */
function scrolls(way: 1 | -1): boolean {
  const { scrollHeight } = document.documentElement;
  const left = way === 1 ? scrollHeight - innerHeight - scrollY : scrollY;
  if (left < 60) return false;
  scrollBy({ top: way * 0.8 * innerHeight, behavior: 'instant' });
  return true;
}

function toggleDesk(desk: HTMLElement | null): void {
  if (!(desk instanceof HTMLDetailsElement)) return;
  desk.open = !desk.open;
  if (desk.open) desk.querySelector<HTMLElement>('button')?.focus();
  else desk.querySelector('summary')?.blur();
}

async function toggleFull(): Promise<void> {
  // Refused without a press, and in some frames: the view is the same in a window.
  await (
    document.fullscreenElement === null
      ? document.documentElement.requestFullscreen()
      : document.exitFullscreen()
  ).catch(() => undefined);
}
