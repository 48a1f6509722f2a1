/** One tab of a profile of its own, in whichever engine. */
export interface Tab {
  goto(address: string): Promise<void>;
  reload(): Promise<void>;
  /** Runs the body of a function in the page and gives what it returns, a promise's value too. */
  run<Result>(body: string): Promise<Result>;
  /** Types over what stands in a field, by keys. */
  type(selector: string, text: string): Promise<void>;
  /** Makes the window this wide, 900 px high. */
  widen(width: number): Promise<void>;
  close(): Promise<void>;
}

/** An engine at work. */
export interface Running {
  /** A tab in a fresh profile: its own storage, its own cache. */
  tab(): Promise<Tab>;
  close(): Promise<void>;
}

/** What is asked of each engine, and of no more than that: all else is told to it as a script. */
export interface Engine {
  readonly name: 'Chromium' | 'Firefox' | 'WebKitGTK';
  start(): Promise<Running>;
}

/** A script that selects all that stands in a field and has the focus there. */
export function selectAll(selector: string): string {
  return `const box = document.querySelector(${JSON.stringify(selector)}); box.focus(); box.select();`;
}
