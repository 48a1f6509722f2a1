import { clickCell, moveByKeys } from '../form/keys.ts';
import type * as Lost from './lost.ts';
import { partOf, partSelector } from './parts.ts';
import { overtake, remember, replay, telling } from './replay.ts';

/*
 * The only code that every page with calculators begins with. As long as nobody has written anything, the
 * server's HTML already shows the right numbers, so a part is fetched and brought to life when it is touched: by a
 * pointer that moves over it, a finger or the focus. The reader's own numbers, from this device or a link, concern
 * all parts at once; the first number written on the page does too, and then the rest follows when the browser is
 * idle.
 */
const alive = () => import('./alive.svelte.ts');

const parts = [...document.querySelectorAll<HTMLElement>(partSelector)];
/** Those whose code nobody has asked for. */
const asleep = new Set(parts);
/** Those that do not answer yet. */
const mute = new Set(parts);

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

/** What is done where fetching fails; fetched once the page has loaded, to be there when the connection is not. */
let lost: typeof Lost | undefined;
/** What failed before that was here: tried again then, and said if it fails again. */
const unsaid: (() => void)[] = [];
async function fetchLost(): Promise<void> {
  try {
    lost = await import('./lost.ts');
  } catch {
    window.addEventListener('online', () => void fetchLost(), { once: true });
  }
  for (const again of unsaid.splice(0)) again();
}
if (document.readyState === 'complete') idle(() => void fetchLost());
else window.addEventListener('load', () => idle(() => void fetchLost()));

/** Calls `again` when fetching is worth another try. */
function later(again: () => void): void {
  if (lost === undefined) unsaid.push(again);
  else lost.later(again);
}

/** Says before a part why it does not answer. */
function tell(part: Element, sentence: string): void {
  const words = document.createElement('p');
  words.className = 'stale-note';
  words.setAttribute('role', 'alert');
  words.textContent = sentence;
  part.before(words);
}

let followed = false;
async function wake(part: HTMLElement): Promise<void> {
  if (!asleep.delete(part)) return;
  lost?.putBack(part);
  let ready;
  try {
    const { atFirstChange, flushSync, prepare } = await alive();
    if (!followed) atFirstChange(numbered, isReaders, () => idle(wakeAll), later);
    followed = true;
    ready = { bring: await prepare(part), flushSync };
  } catch {
    asleep.add(part);
    const again = (): void => void wake(part);
    if (lost === undefined) later(again);
    else void lost.lose(part, again);
    return;
  }
  lost?.regain(part);
  mute.delete(part);
  try {
    replay(part, ready.bring, ready.flushSync);
  } catch (error) {
    // Its code is here: no connection is to blame, and fetching it again would not help.
    tell(part, 'This part of the page does not work with these numbers. The other parts do.');
    reportError(error);
  }
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
    // One that could not be fetched just now is tried again later, and not at once.
    for (const part of asleep) if (lost?.isLost(part) !== true) void wake(part);
  });
}

// Most readers look at most parts, and leave them at that: one that scrolls past under a resting pointer sleeps on.
for (const kind of ['pointermove', 'pointerdown', 'focusin']) {
  document.addEventListener(kind, ({ target }) => {
    const part = partOf(target);
    if (part !== undefined && lost?.isLost(part) !== true) void wake(part);
  });
}
for (const kind of telling) {
  // Before anything else hears of it: a key that has to wait is held back here.
  document.addEventListener(
    kind,
    (event) => {
      const part = partOf(event.target);
      if (part === undefined || !mute.has(part)) return;
      remember(part, event);
      if (lost?.isLost(part) === true) lost.keepTyped(part);
    },
    { capture: true },
  );
}
document.addEventListener('keydown', moveByKeys);
document.addEventListener('click', clickCell);
// What had the focus before this code was here.
document.activeElement?.dispatchEvent(new FocusEvent('focusin', { bubbles: true }));

if (isReaders) wakeAll();
window.addEventListener('storage', ({ key }) => {
  overtake(key);
  wakeAll();
});
window.addEventListener('pageshow', ({ persisted }) => {
  if (persisted) wakeAll();
});
window.addEventListener('hashchange', () => {
  if (!/=|%3D/i.test(location.hash)) return;
  overtake(null);
  wakeAll();
});
