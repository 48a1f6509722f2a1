import { numbersOf } from './replay.ts';

/*
 * A part whose code could not be fetched. What is typed in it is kept where the notebook will look for it, a line
 * says how it stands, and fetching is tried again until it succeeds.
 */

/** Where the notebook keeps its values, and how it marks that a link is being visited. */
const prefix = 'throwbook/1/';
/** In the tab's own storage: the address of a page that was loaded again for its code. */
const againKey = 'throwbook/again';

const notes = new Map<HTMLElement, HTMLElement>();
/** One of the notes was read out; the others say the same. */
let isTold = false;
const whenBack: (() => void)[] = [];
/** What was kept in the storage for a part, by key, and what had stood there. */
const kept = new Map<HTMLElement, Map<string, { readonly was: string | null; now: string }>>();

const cut =
  'This part of the page could not be fetched: the connection is lost. Until it is back, the example stands here and no button answers. What you type is kept, and it goes on by itself.';
const stuck =
  'This part of the page could not be fetched. Load the page again; what you typed is kept on this device.';

export function isLost(part: HTMLElement): boolean {
  return notes.has(part);
}

/** Runs `change` on the storage; where that is forbidden or full, what was typed stays in its field. */
function inStorage(change: () => void): void {
  try {
    change();
  } catch {
    // It is done again when the code is there, as long as the page stays open.
  }
}

function isVisit(): boolean {
  return location.hash.includes('=') || sessionStorage.getItem(`${prefix}visit`) !== null;
}

/** Where the values of the job that is open in this tab stand. */
function roomOfJob(): string {
  const open = `${prefix}open`;
  const id = sessionStorage.getItem(open) ?? localStorage.getItem(open) ?? '';
  return id === '' ? prefix : `${prefix}jobs/${id}/`;
}

/** True where other sets stand in the columns than those under whose names they are kept. */
function isRearranged(): boolean {
  const { shown } = JSON.parse(localStorage.getItem(`${roomOfJob()}sets`) ?? '{}') as {
    readonly shown?: Readonly<Record<string, string>>;
  };
  return Object.entries(shown ?? {}).some(([column, set]) => column !== set);
}

/**
 * Keeps the numbers typed in a part in the browser's storage, unless they belong to a link that is only visited, or to
 * a set that stands in another's column.
 */
export function keepTyped(part: HTMLElement): void {
  inStorage(() => {
    if (isVisit() || isRearranged()) return;
    const keys = kept.get(part) ?? new Map<string, { readonly was: string | null; now: string }>();
    kept.set(part, keys);
    for (const [number, value] of numbersOf(part)) {
      const key = roomOfJob() + number;
      const now = JSON.stringify(value);
      const was = keys.has(key) ? (keys.get(key)?.was ?? null) : localStorage.getItem(key);
      keys.set(key, { was, now });
      localStorage.setItem(key, now);
    }
  });
}

/**
 * Before a lost part is woken: puts the storage back, since what was done is done again on what had stood there.
 * What another tab has written meanwhile stays.
 */
export function putBack(part: HTMLElement): void {
  inStorage(() => {
    for (const [key, { was, now }] of kept.get(part) ?? []) {
      if (localStorage.getItem(key) !== now) continue;
      if (was === null) localStorage.removeItem(key);
      else localStorage.setItem(key, was);
    }
  });
  kept.delete(part);
}

function say(part: HTMLElement, words: string): void {
  const known = notes.get(part);
  const note = known ?? document.createElement('p');
  note.className = 'stale-note';
  // In a fold that is closed nobody would hear of it.
  if (!isTold && part.checkVisibility()) {
    note.setAttribute('role', 'alert');
    isTold = true;
  }
  if (note.textContent !== words) note.textContent = words;
  if (known === undefined) part.before(note);
  notes.set(part, note);
}

let pause = 4000;
let timer: ReturnType<typeof setTimeout> | undefined;

function tryAgain(): void {
  clearTimeout(timer);
  timer = undefined;
  for (const again of whenBack.splice(0)) again();
}
for (const kind of ['online', 'pageshow']) window.addEventListener(kind, tryAgain);
navigator.serviceWorker?.addEventListener('controllerchange', tryAgain);

/** Calls `again` when fetching is worth another try: as the browser says that it is online, and now and then. */
export function later(again: () => void): void {
  whenBack.push(again);
  if (timer !== undefined) return;
  timer = setTimeout(tryAgain, pause);
  pause = Math.min(2 * pause, 60_000);
}

/** True when the site answers; then only a browser that keeps a failure for as long as the page lives is in the way. */
async function answers(): Promise<boolean> {
  try {
    return (await fetch(location.pathname, { method: 'HEAD', cache: 'no-store' })).ok;
  } catch {
    return false;
  }
}

/** A part could not be fetched; `again` wakes it. */
export async function lose(part: HTMLElement, again: () => void): Promise<void> {
  const isSecond = isLost(part);
  keepTyped(part);
  if (!isSecond) say(part, cut);
  later(again);
  if (!isSecond || !(await answers()) || !isLost(part)) return;
  say(part, stuck);
  inStorage(() => {
    // Once only: what is missing on the server itself would be missing for ever.
    if (sessionStorage.getItem(againKey) === location.pathname) return;
    sessionStorage.setItem(againKey, location.pathname);
    location.reload();
  });
}

/** A part is there after all. */
export function regain(part: HTMLElement): void {
  notes.get(part)?.remove();
  notes.delete(part);
  if (notes.size > 0) return;
  isTold = false;
  pause = 4000;
  inStorage(() => {
    sessionStorage.removeItem(againKey);
  });
}
