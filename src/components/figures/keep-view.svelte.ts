import { untrack } from 'svelte';
import { shownViews } from '../../notebook/shown-views.svelte.ts';

/** A choice or a reading of a figure. */
interface ViewPart {
  /** As a word or number; undefined while it is what the figure begins with. */
  readonly get: () => string | undefined;
  /** Takes what a link says; what it does not know it leaves. */
  readonly set: (text: string) => void;
}

/**
 * Lets the link of the page carry what a figure is set to, and a link that was opened set it. Called once as the
 * figure comes to life; the server draws what it begins with.
 */
export function keepView(figure: string, parts: Readonly<Record<string, ViewPart>>): void {
  $effect(() => {
    const wanted = shownViews.opened[figure];
    if (wanted === undefined) return;
    untrack(() => {
      for (const [name, text] of Object.entries(wanted)) parts[name]?.set(text);
    });
  });
  $effect(() => {
    const now: Record<string, string> = {};
    for (const [name, { get }] of Object.entries(parts)) {
      const text = get();
      if (text !== undefined) now[name] = text;
    }
    untrack(() => {
      shownViews.tell(figure, now);
    });
  });
}

/** One of a list of choices, by its id; the figure begins with `first`. */
export function choicePart<Id extends string>(
  options: readonly { readonly id: Id }[],
  first: Id,
  get: () => Id,
  set: (id: Id) => void,
): ViewPart {
  return {
    get: () => (get() === first ? undefined : get()),
    set: (text) => {
      const option = options.find(({ id }) => id === text);
      if (option !== undefined) set(option.id);
    },
  };
}

/** A number that is read at, undefined until it is moved. It travels in the unit that it is held in. */
export function readingPart(get: () => number | undefined, set: (value: number) => void): ViewPart {
  return {
    get: () => {
      const value = get();
      return value === undefined ? undefined : String(Number(value.toPrecision(6)));
    },
    set: (text) => {
      const value = Number(text);
      if (Number.isFinite(value)) set(value);
    },
  };
}
