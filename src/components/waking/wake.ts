import { remember, wideDrawingOf } from './replay.ts';

/*
 * The only code that every page with calculators begins with. As long as nobody has written anything, the
 * server's HTML already shows the right numbers, so a calculator is fetched and brought to life when it is seen, a
 * figure and the notebook bar when they are touched. The reader's own numbers, from this device or a link, concern
 * all parts at once; the first number written on the page does too, and then the rest follows when the browser is
 * idle.
 */
const alive = () => import('./alive.svelte.ts');

const parts = [
  ...document.querySelectorAll<HTMLElement>(
    '[data-calculator], [data-figure], [data-notebook-bar]',
  ),
];
const asleep = new Set(parts);

/** A part, and the server's wide drawing of it where there is one. */
function drawingsOf(part: HTMLElement): readonly Element[] {
  const wide = wideDrawingOf(part);
  return wide === undefined ? [part] : [part, wide];
}

const deeds = ['click', 'input', 'change'] as const;
const touches = ['pointerover', 'pointerdown', 'focusin'] as const;

/** What the numbers in prose and the strips belong to, though the page may have no part of that calculator. */
const numbered = new Set(
  [...document.querySelectorAll<HTMLElement>('[data-v], [data-strip]')].map(
    ({ dataset }) => (dataset['v'] ?? dataset['strip'] ?? '').split('.')[0] ?? '',
  ),
);
const isReaders = document.documentElement.hasAttribute('data-pending');

function idle(run: () => void): void {
  if ('requestIdleCallback' in window) requestIdleCallback(run, { timeout: 2000 });
  else setTimeout(run, 200);
}

const screen = new IntersectionObserver((entries) => {
  for (const { isIntersecting, target } of entries)
    if (isIntersecting && target instanceof HTMLElement) void wake(target);
});

function partOf({ currentTarget }: Event): HTMLElement | undefined {
  return parts.find((part) => drawingsOf(part).some((drawing) => drawing === currentTarget));
}
function note(event: Event): void {
  const part = partOf(event);
  if (part !== undefined) remember(part, event);
}
function touch(event: Event): void {
  const part = partOf(event);
  if (part !== undefined) void wake(part);
}

let told = false;
/** A browser does not fetch the same code twice for one page, so only loading the page again helps. */
function tellUnfetched(part: HTMLElement): void {
  if (told) return;
  told = true;
  const words = document.createElement('p');
  words.className = 'stale-note';
  words.setAttribute('role', 'alert');
  words.textContent =
    'A part of this page could not be fetched, so its numbers stay as they are. Check the connection and load the page again.';
  part.before(words);
}

let followed = false;
async function wake(part: HTMLElement): Promise<void> {
  if (!asleep.delete(part)) return;
  try {
    const { atFirstChange, bringUp } = await alive();
    if (!followed) atFirstChange(numbered, isReaders, () => idle(wakeAll));
    followed = true;
    await bringUp(part);
  } catch {
    tellUnfetched(part);
  }
  screen.unobserve(part);
  for (const kind of deeds) part.removeEventListener(kind, note);
  for (const kind of touches) part.removeEventListener(kind, touch);
}

let woken = false;
function wakeAll(): void {
  if (woken) return;
  woken = true;
  // What can be seen comes first.
  const here = [...asleep].filter((part) => {
    const { top, bottom } = part.getBoundingClientRect();
    return bottom > 0 && top < innerHeight;
  });
  for (const part of here) void wake(part);
  idle(() => {
    for (const part of asleep) void wake(part);
  });
}

for (const part of parts) {
  for (const drawing of drawingsOf(part)) {
    for (const kind of deeds) drawing.addEventListener(kind, note);
    for (const kind of touches) drawing.addEventListener(kind, touch);
  }
  // A form is there to be written in; a figure and the bar are looked at, and most readers leave them at that.
  if (part.dataset['calculator'] !== undefined) screen.observe(part);
}
if (isReaders) wakeAll();
window.addEventListener('storage', wakeAll);
window.addEventListener('pageshow', ({ persisted }) => {
  if (persisted) wakeAll();
});
window.addEventListener('hashchange', () => {
  if (location.hash.includes('=')) wakeAll();
});
