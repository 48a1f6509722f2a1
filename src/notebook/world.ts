/** What the notebook needs of a browser; a test gives its own. */
export interface World {
  /** May throw where storage is forbidden. */
  local(): Storage | undefined;
  /** The tab's own storage; may throw likewise. */
  session(): Storage | undefined;
  /** The fragment of the address, with its `#`; empty when there is none. */
  hash(): string;
  /** The address of the page without fragment. */
  address(): string;
  /** Takes the fragment out of the address without loading anything. */
  dropHash(): void;
  /** True when the page was reloaded or come back to, so that a visit goes on where it was. */
  readonly revisited: boolean;
  /** Runs something once the page has shown what it answers a key with, and before it is left; at once without it. */
  soon?(run: () => void): void;
}

/** [ms] Frames come to no page that is not seen. */
const patience = 250;
const due = new Set<() => void>();
function runAll(): void {
  const runs = [...due];
  due.clear();
  for (const run of runs) run();
}
/** Storing takes a good part of what a reader waits for at a key: it comes behind the frame. */
function afterFrame(run: () => void): void {
  if (due.size === 0) {
    requestAnimationFrame(() => setTimeout(runAll));
    setTimeout(runAll, patience);
  }
  due.add(run);
}

/** The world of a real browser. */
export function browserWorld(): World {
  const [entry] = performance.getEntriesByType('navigation');
  const type = entry !== undefined && 'type' in entry ? entry.type : 'navigate';
  window.addEventListener('pagehide', runAll);
  // A field that is left, or a tab, may be followed by a look at another tab.
  for (const kind of ['visibilitychange', 'focusout']) document.addEventListener(kind, runAll);
  return {
    local: () => window.localStorage,
    session: () => window.sessionStorage,
    hash: () => location.hash,
    address: () => location.href.replace(/[?#].*$/, ''),
    dropHash: () => {
      history.replaceState(history.state, '', location.pathname + location.search);
    },
    revisited: type === 'reload' || type === 'back_forward',
    soon: afterFrame,
  };
}

/** True for the storage that all tabs share. */
export function isShared(area: Storage | null): boolean {
  try {
    return area === null || area === window.localStorage;
  } catch {
    return false;
  }
}
