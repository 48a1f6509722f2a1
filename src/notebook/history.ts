import type { Shelf } from './storage.ts';

/** What stood under one key before a step and after it; undefined for nothing. */
export interface Change {
  readonly key: string;
  readonly before?: string | undefined;
  readonly after?: string | undefined;
}
/** What is taken back at once. */
export type Step = readonly Change[];

/** More steps are not kept. */
const most = 200;
/** Keys typed into one field with shorter pauses are one step (ms). */
const pause = 1500;

/** The steps that were taken, and those that were taken back. */
export class History {
  #past: Step[] = [];
  #future: Step[] = [];
  #open: Map<string, Change> | undefined;
  #last = Number.NEGATIVE_INFINITY;
  readonly #now: () => number;

  /** @param now the time [ms] */
  constructor(now: () => number = () => performance.now()) {
    this.#now = now;
  }

  get canUndo(): boolean {
    return this.#past.length > 0;
  }
  get canRedo(): boolean {
    return this.#future.length > 0;
  }

  /** Notes a change. One of the same key soon after the last belongs to the same step. */
  note(change: Change): void {
    if (change.before === change.after) return;
    if (this.#open !== undefined) {
      const first = this.#open.get(change.key);
      this.#open.set(change.key, { ...change, before: first ? first.before : change.before });
      return;
    }
    const now = this.#now();
    const last = this.#past.at(-1);
    const [before] = last ?? [];
    const goesOn = last?.length === 1 && before?.key === change.key && now - this.#last < pause;
    this.#last = now;
    if (goesOn) this.#past.pop();
    this.#add([goesOn ? { ...change, before: before?.before } : change]);
  }

  /** Makes one step of all that `act` changes. */
  together(act: () => void): void {
    if (this.#open !== undefined) {
      act();
      return;
    }
    this.#open = new Map();
    try {
      act();
    } finally {
      const step = [...this.#open.values()].filter(({ before, after }) => before !== after);
      this.#open = undefined;
      // What is typed next is a step of its own.
      this.#last = Number.NEGATIVE_INFINITY;
      if (step.length > 0) this.#add(step);
    }
  }

  /** Takes the last step from the past; undefined where there is none. */
  back(): Step | undefined {
    return this.#move(this.#past, this.#future);
  }
  /** Takes the step back that was undone last. */
  forth(): Step | undefined {
    return this.#move(this.#future, this.#past);
  }

  /** All steps as text. */
  written(): string {
    return JSON.stringify([this.#past, this.#future]);
  }
  /** Begins with the steps of a text; with none where it is damaged. */
  read(text: string | undefined): void {
    const [past, future] = asSteps(text);
    this.#past = past;
    this.#future = future;
    this.#last = Number.NEGATIVE_INFINITY;
  }

  #add(step: Step): void {
    this.#past.push(step);
    this.#past.splice(0, this.#past.length - most);
    this.#future = [];
  }
  #move(from: Step[], to: Step[]): Step | undefined {
    const step = from.pop();
    if (step !== undefined) to.push(step);
    this.#last = Number.NEGATIVE_INFINITY;
    return step;
  }
}

function asSteps(text: string | undefined): readonly [past: Step[], future: Step[]] {
  try {
    const [past, future] = JSON.parse(text ?? '') as readonly [unknown, unknown];
    return [past, future].map(asStack) as [Step[], Step[]];
  } catch {
    return [[], []];
  }
}
function asStack(something: unknown): Step[] {
  if (!Array.isArray(something)) throw new RangeError('no steps');
  return (something as readonly unknown[]).map((step) => {
    if (!Array.isArray(step)) throw new RangeError('no step');
    return (step as readonly unknown[]).map(asChange);
  });
}
function asChange(something: unknown): Change {
  const { key, before, after } = something as Readonly<Record<string, unknown>>;
  if (typeof key !== 'string') throw new RangeError('no key');
  return { key, before: asText(before), after: asText(after) };
}
function asText(something: unknown): string | undefined {
  return typeof something === 'string' ? something : undefined;
}

/** A shelf whose changes are noted as steps. */
export function noting(shelf: Shelf, history: History): Shelf {
  return {
    get: (key) => shelf.get(key),
    set(key, text) {
      history.note({ key, before: shelf.get(key), after: text });
      shelf.set(key, text);
    },
    remove(key) {
      history.note({ key, before: shelf.get(key), after: undefined });
      shelf.remove(key);
    },
    keys: () => shelf.keys(),
    forget(key) {
      shelf.forget(key);
    },
    get notice() {
      return shelf.notice;
    },
  };
}
