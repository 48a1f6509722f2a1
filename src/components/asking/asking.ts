import { namesIn, sameSymbol, symbolText } from './names.ts';

/**
 * Word, symbol and part: what stands for one quantity lights up together, whichever of them is pointed at or has the
 * focus. A row of the form, a result, a number in a sentence, a symbol in a formula, a part of a figure. A tap on a
 * symbol of a working opens its line's list. Formulas hold no roles and no tab stops of their own.
 */
let lit = '';

/** Every element of the page that stands for a quantity. */
function standFor(name: string): readonly Element[] {
  const quoted = CSS.escape(name);
  const named = document.querySelectorAll(
    `[data-q~="${quoted}"], [data-output="${quoted}"], [data-v*=".${quoted}."]`,
  );
  const symbol = symbolText(document, name);
  return [...named, ...(symbol === undefined ? [] : sameSymbol(document, symbol))];
}

function light(names: readonly string[]): void {
  const next = names.join(' ');
  if (next === lit) return;
  lit = next;
  for (const each of document.querySelectorAll('[data-asked]')) each.removeAttribute('data-asked');
  for (const each of names.flatMap(standFor)) each.setAttribute('data-asked', '');
}

function ask({ target }: { readonly target: EventTarget | null }): void {
  light(target instanceof Element ? namesIn(target) : []);
}

document.addEventListener('pointerover', ask);
document.addEventListener('focusin', ask);
document.addEventListener('click', (event) => {
  ask(event);
  const { target } = event;
  if (!(target instanceof Element) || target.closest('math [data-q]') === null) return;
  const list = target.closest('.working-step')?.querySelector('.working-symbols');
  if (list instanceof HTMLDetailsElement) list.open = true;
});
// A field that had the focus before this was here.
ask({ target: document.activeElement });
