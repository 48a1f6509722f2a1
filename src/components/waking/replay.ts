import { deedOf, selectedIn, type Deed } from './deeds.ts';
import { samePlace } from './edit.ts';
import { ownOf, wideDrawingOf } from './parts.ts';

const deeds = new Map<Element, Deed[]>();
/** What newer numbers have overtaken. */
const overtaken = new WeakSet<Deed>();

/** The events that tell of deeds. */
export const telling = [
  'beforeinput',
  'change',
  'click',
  'compositionend',
  'compositionstart',
  'focusin',
  'focusout',
  'input',
  'keydown',
] as const;

/**
 * Remembers what an event of {@link telling} says the reader did in a part of the page that has no code yet, or in
 * the server's wide drawing of it.
 */
export function remember(part: Element, event: Event): void {
  const known = deeds.get(part) ?? [];
  const deed = deedOf(
    event,
    (element) => ownOf(part, element),
    known.some(({ steps }) => steps),
  );
  if (deed !== undefined) deeds.set(part, [...known, deed]);
}

/** The numbers that were changed in a part which has no code yet, as `set/name`, as they stand now. */
export function numbersOf(
  part: Element,
): readonly (readonly [number: string, value: { readonly text: string; readonly unit: string }])[] {
  return (deeds.get(part) ?? []).flatMap((deed) => {
    const { number, value } = deed;
    return number === undefined || value === undefined || overtaken.has(deed)
      ? []
      : [[number, value()] as const];
  });
}

/**
 * Numbers have come from elsewhere: what was done to the same ones before is older, and must not be said after them.
 *
 * @param key the key of the number in the browser's storage; null for all numbers
 */
export function overtake(key: string | null): void {
  for (const deed of [...deeds.values()].flat()) {
    if (deed.number !== undefined && (key === null || key.endsWith(`/${deed.number}`)))
      overtaken.add(deed);
  }
}

/** Notes what is selected in the field that has the focus, and gives a function that selects it again. */
function holdSelection(part: Element): () => void {
  const field = document.activeElement;
  const isText =
    (field instanceof HTMLInputElement && field.type === 'text') ||
    field instanceof HTMLTextAreaElement;
  if (!isText || !(part.contains(field) || wideDrawingOf(part)?.contains(field) === true))
    return () => undefined;
  const own = ownOf(part, field);
  const { text, start, end } = selectedIn(field);
  return () => {
    own.setSelectionRange(samePlace(start, text, own.value), samePlace(end, text, own.value));
  };
}

/** The server's wide drawing of a part leaves. What is open in it or has the focus is so in the part. */
function dismissWideDrawing(part: Element): void {
  const wide = wideDrawingOf(part);
  if (wide === undefined) return;
  for (const summary of wide.querySelectorAll('details[open] > summary'))
    ownOf(part, summary).closest('details')?.setAttribute('open', '');
  const focus = wide.querySelector<HTMLElement>(':focus');
  if (focus !== null) ownOf(part, focus).focus({ preventScroll: true });
  wide.remove();
}

/**
 * Brings a part to life and does all that was remembered of it again, one after the other: each deed meets what the
 * one before has left. Nothing of it is done twice, since what the browser did at once is undone first.
 *
 * @param bring hands the part, as the server made it, over to its code
 * @param settle lets the code show what a deed has changed
 */
export function replay(part: Element, bring: () => void, settle: () => void): void {
  const known = deeds.get(part) ?? [];
  deeds.delete(part);
  const select = holdSelection(part);
  for (const { back } of [...known].reverse()) back();
  bring();
  dismissWideDrawing(part);
  for (const deed of known) {
    if (overtaken.has(deed)) continue;
    deed.again();
    settle();
  }
  select();
}
