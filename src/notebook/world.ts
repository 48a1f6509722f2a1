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
}

/** The world of a real browser. */
export function browserWorld(): World {
  const [entry] = performance.getEntriesByType('navigation');
  const type = entry !== undefined && 'type' in entry ? entry.type : 'navigate';
  return {
    local: () => window.localStorage,
    session: () => window.sessionStorage,
    hash: () => location.hash,
    address: () => location.href.replace(/[?#].*$/, ''),
    dropHash: () => {
      history.replaceState(history.state, '', location.pathname + location.search);
    },
    revisited: type === 'reload' || type === 'back_forward',
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
