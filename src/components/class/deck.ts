/** A screen of the class view: one or more elements of the page that are shown together, and how many steps it has. */
export interface Screen {
  readonly parts: readonly HTMLElement[];
  readonly name: string;
  /** Steps after the first; 0 where it shows all at once. */
  readonly steps: number;
}

/** Where one stands: the screen, and its step, both from 0. */
export interface Place {
  readonly screen: number;
  readonly step: number;
}

/** The first paragraph behind a heading, before the next one: the idea of its section. */
function ideaOf(heading: HTMLElement, all: readonly HTMLElement[]): HTMLElement | undefined {
  const at = all.indexOf(heading);
  for (const element of all.slice(at + 1)) {
    if (element.matches('h2, [data-screen]')) return undefined;
    if (element.matches('p') && element.closest('[data-screen], table, .caution') === null)
      return element;
  }
  return undefined;
}

/** Sections that lead a reader on, or tell how a page is used. */
const notForClass = new Set(['Read on', 'Your numbers', 'The working']);

/** All screens of a page in its order: those that are marked, and each section as its heading with its first paragraph. */
export function screensOf(root: HTMLElement): readonly Screen[] {
  const all = [...root.querySelectorAll<HTMLElement>('[data-screen], h2, p')];
  return all.flatMap((element): readonly Screen[] => {
    if (element.matches('[data-screen]'))
      return [
        {
          parts: [element],
          name: element.dataset['screen'] ?? '',
          steps: Number(element.dataset['steps'] ?? 0),
        },
      ];
    if (!element.matches('h2') || element.closest('[data-screen]') !== null) return [];
    const idea = ideaOf(element, all);
    const name = element.textContent.trim();
    return idea === undefined || notForClass.has(name)
      ? []
      : [{ parts: [element, idea], name, steps: 0 }];
  });
}

/** The place one step on or back; the same at either end. */
export function moved(screens: readonly Screen[], { screen, step }: Place, way: 1 | -1): Place {
  const here = screens[screen]?.steps ?? 0;
  if (way === 1) {
    if (step < here) return { screen, step: step + 1 };
    return screen + 1 < screens.length ? { screen: screen + 1, step: 0 } : { screen, step };
  }
  if (step > 0) return { screen, step: step - 1 };
  const before = screens[screen - 1];
  return before === undefined ? { screen, step } : { screen: screen - 1, step: before.steps };
}

/** A place within what there is: a link of an older page may name more. */
export function within(screens: readonly Screen[], { screen, step }: Place): Place {
  const last = Math.max(0, screens.length - 1);
  const at = Number.isInteger(screen) ? Math.min(last, Math.max(0, screen)) : 0;
  const most = screens[at]?.steps ?? 0;
  return { screen: at, step: Number.isInteger(step) ? Math.min(most, Math.max(0, step)) : 0 };
}

/** `4.1` for the second step of the fourth screen; `4` for its first. */
export function placeText({ screen, step }: Place): string {
  return step === 0 ? String(screen + 1) : `${String(screen + 1)}.${String(step)}`;
}
/** The place that a text names; the first where it names none. */
export function readPlace(text: string): Place {
  const [, screen, step] = /^(\d{1,3})(?:\.(\d{1,3}))?$/.exec(text) ?? [];
  return screen === undefined
    ? { screen: 0, step: 0 }
    : { screen: Number(screen) - 1, step: Number(step ?? 0) };
}

/** Shows the parts of one screen and what they stand in; all else of the page is hidden by the style sheet. */
export function show(root: HTMLElement, parts: readonly HTMLElement[]): void {
  for (const marked of root.querySelectorAll('[data-now], [data-on]')) {
    marked.removeAttribute('data-now');
    marked.removeAttribute('data-on');
  }
  root.setAttribute('data-on', '');
  for (const part of parts) {
    part.setAttribute('data-now', '');
    for (let at = part.parentElement; at !== null && at !== root; at = at.parentElement)
      at.setAttribute('data-on', '');
  }
}

/** What a key of a presenter asks for: those of a clicker, and those at hand on a keyboard. */
export type Asked = 'next' | 'back' | 'first' | 'last' | 'blank' | 'full' | 'keys';
const keys: Readonly<Record<string, Asked>> = {
  PageDown: 'next',
  ArrowRight: 'next',
  ' ': 'next',
  n: 'next',
  PageUp: 'back',
  ArrowLeft: 'back',
  Backspace: 'back',
  p: 'back',
  Home: 'first',
  End: 'last',
  b: 'blank',
  '.': 'blank',
  f: 'full',
  '?': 'keys',
};

/**
 * What a key asks for; undefined where it belongs to what has the focus: a field all its keys, a slider or a choice
 * all but those that a clicker sends, a button the space bar.
 */
export function askedBy(key: string, focus: Element | null): Asked | undefined {
  const asked = keys[key];
  if (asked === undefined || focus === null) return asked;
  if (focus.matches('textarea, input[type="text"]')) return undefined;
  const isClicker = key === 'PageDown' || key === 'PageUp';
  if (focus.matches('input, select')) return isClicker ? asked : undefined;
  return key === ' ' && focus.closest('button, summary, a') !== null ? undefined : asked;
}
