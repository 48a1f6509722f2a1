import { edited, type Selected } from './edit.ts';
import { answering } from './parts.ts';

/** Something that the reader did in a part of the page whose code was not there yet. */
export interface Deed {
  /** Undoes what the browser did about it at once, so that the code finds the part as the server made it. */
  readonly back: () => void;
  /** Does it again, where the code hears it. */
  readonly again: () => void;
  /** True when the code may answer it by changing what stands in a field. */
  readonly steps: boolean;
  /** The number that it changes, as `set/name`; undefined when it changes none that the notebook keeps. */
  readonly number: string | undefined;
  /** What stands in that number's field now, and the unit beside it. */
  readonly value?: () => { readonly text: string; readonly unit: string };
}

type Typed = HTMLInputElement | HTMLTextAreaElement;

const nothing = (): void => undefined;

/** What stood in a field before the browser does what it was told. */
let stood: (Selected & { readonly field: Element }) | undefined;
/** The field in which an input method composes: rewritten, it would get what is composed a second time. */
let composing: Element | undefined;

function isTyped(field: Element): field is Typed {
  return (
    field instanceof HTMLTextAreaElement ||
    (field instanceof HTMLInputElement && field.type === 'text')
  );
}

function isSlider(field: Element): field is HTMLInputElement {
  return field instanceof HTMLInputElement && field.type === 'range';
}

/** What is written in a field and selected there; a slider has no selection. */
export function selectedIn(field: Typed): Selected {
  const { value, selectionStart, selectionEnd } = field;
  return { text: value, start: selectionStart ?? 0, end: selectionEnd ?? value.length };
}

function say(field: Element, ...types: readonly string[]): void {
  for (const type of types) field.dispatchEvent(new Event(type, { bubbles: true }));
}

function choose(list: HTMLSelectElement, value: string): void {
  list.value = value;
  say(list, 'input', 'change');
}

/** A press of a button, of a box to tick or of the line that opens a fold. */
function press(seen: Element, own: Element): Pick<Deed, 'back' | 'again'> | undefined {
  if (own instanceof HTMLButtonElement) return { back: nothing, again: () => own.click() };
  const [fold, ownFold] = [seen.closest('details'), own.closest('details')];
  if (seen.matches('summary') && fold !== null && ownFold !== null) {
    const { open } = fold;
    return { back: () => (ownFold.open = open), again: () => (ownFold.open = !open) };
  }
  if (!(seen instanceof HTMLInputElement && own instanceof HTMLInputElement)) return undefined;
  if (!/^(?:checkbox|radio)$/.test(seen.type)) return undefined;
  // The browser turns it before it tells of the press. Of several radio buttons the server chose one.
  const before = seen.type === 'radio' ? seen.defaultChecked : !seen.checked;
  return { back: () => (own.checked = before), again: () => own.click() };
}

/** A key that the browser does nothing fitting with: of those that step a number, or the one that enters it. */
function strike(event: KeyboardEvent, seen: Element, own: Element): Deed['again'] | undefined {
  const { key, altKey, ctrlKey, metaKey, isComposing } = event;
  if (ctrlKey || metaKey || isComposing || !isTyped(seen)) return undefined;
  const isLine = seen instanceof HTMLInputElement;
  const steps = /^(?:Arrow|Page)(?:Up|Down)$/.test(key) && isLine;
  if (!steps && key !== 'Enter') return undefined;
  // In several lines the browser goes on to the next one, as it will with the code there.
  if (isLine) event.preventDefault();
  // As it will stand behind a number that was stepped, so that what is typed next goes there.
  if (steps) seen.setSelectionRange(seen.value.length, seen.value.length);
  return () => {
    own.dispatchEvent(
      new KeyboardEvent('keydown', { key, altKey, bubbles: true, cancelable: true }),
    );
  };
}

/**
 * What was written in a field, or where a slider was moved to. After a step it is written into what the step left;
 * else it stands for itself, whatever has come into the field from elsewhere.
 */
function write(seen: Typed, own: Typed, stepped: boolean): Pick<Deed, 'back' | 'again'> {
  const before = stood?.field === seen ? stood : undefined;
  const after = selectedIn(seen);
  const unit = own.closest('.row')?.querySelector<HTMLSelectElement>('select.row-unit');
  const unitSeen = unit?.value;
  stood = undefined;

  function text(): string {
    if (!stepped || before === undefined || own.value === before.text) return after.text;
    if (!isSlider(own)) return edited(own.value, before, after);
    // A slider moved by keys goes on from where it stands, unless a key brought it to its end.
    const isEnd = after.text === own.min || after.text === own.max;
    const way = Number(after.text) - Number(before.text);
    return isEnd ? after.text : String(Number(own.value) + way);
  }
  return {
    back: () => {
      if (own !== composing) own.value = before?.text ?? own.defaultValue;
    },
    again: () => {
      // The number was typed in the unit that stood beside it.
      if (unit && unitSeen !== undefined && unit.value !== unitSeen) choose(unit, unitSeen);
      if (own !== composing) own.value = text();
      say(own, 'input');
    },
  };
}

/** The number that a field of a form belongs to, as `set/name`. */
function numberOf(field: Element): string | undefined {
  const named = (field.closest('.cell') ?? field.closest('.row'))?.querySelector<HTMLElement>(
    '[data-name]',
  );
  return named ? `${named.dataset['set'] ?? ''}/${named.dataset['name'] ?? ''}` : undefined;
}

/** What stands in the field of a number, and the unit beside it; empty for its usual one. */
function standing(field: Element): { readonly text: string; readonly unit: string } {
  const cell = field.closest('.cell');
  const box = cell?.querySelector<Typed | HTMLSelectElement>('[data-name]');
  const unit = cell?.querySelector<HTMLSelectElement>('.cell-unit');
  return { text: box?.value ?? '', unit: unit?.value ?? '' };
}

/**
 * The deed that an event tells of; undefined when it tells of none that the code would hear.
 *
 * @param ownOf the element of the part itself for one that may stand in another drawing of it
 * @param stepped true when a deed before it may have stepped a number
 */
export function deedOf(
  event: Event,
  ownOf: <Kind extends Element>(element: Kind) => Kind,
  stepped: boolean,
): Deed | undefined {
  const { type, target } = event;
  const seen = target instanceof Element ? target.closest(answering) : null;
  if (seen === null) return undefined;
  const own = ownOf(seen);
  const number = numberOf(own);

  if (type === 'focusin' || type === 'focusout') {
    const again = (): void => {
      own.dispatchEvent(new FocusEvent(type === 'focusin' ? 'focus' : 'blur'));
    };
    return { back: nothing, again, steps: false, number: undefined };
  }
  if (type === 'click') {
    const pressed = press(seen, own);
    return pressed && { ...pressed, steps: true, number };
  }
  if (type === 'change') {
    if (!(seen instanceof HTMLSelectElement && own instanceof HTMLSelectElement)) return undefined;
    const { value } = seen;
    const again = (): void => choose(own, value);
    return { back: nothing, again, steps: true, number, value: () => standing(own) };
  }
  if (!isTyped(seen) && !isSlider(seen)) return undefined;
  if (type.startsWith('composition')) {
    composing = type === 'compositionstart' ? own : undefined;
    return undefined;
  }
  if (type === 'input')
    return {
      ...write(seen, ownOf(seen), stepped),
      steps: isSlider(seen),
      number,
      value: () => standing(own),
    };
  stood = { ...selectedIn(seen), field: seen };
  const again = event instanceof KeyboardEvent ? strike(event, seen, own) : undefined;
  return again && { back: nothing, again, steps: true, number };
}
