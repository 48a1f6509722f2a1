/**
 * Questioning a symbol: pointing at one in a formula, or pressing its button in the list below, lights up
 * every element of the page that stands for the same quantity, parts of figures included (`data-q`), and
 * opens the line's list of symbols on a tap. Formulas hold no roles and no tab stops of their own.
 */
function light(name: string | undefined): void {
  for (const lit of document.querySelectorAll('[data-asked]')) lit.removeAttribute('data-asked');
  if (name === undefined) return;
  for (const same of document.querySelectorAll(`[data-q="${CSS.escape(name)}"]`))
    same.setAttribute('data-asked', '');
}

function symbolAt(event: Event): Element | undefined {
  const { target } = event;
  return target instanceof Element
    ? (target.closest('[data-q], [data-ask]') ?? undefined)
    : undefined;
}

function nameOf(element: Element | undefined): string | undefined {
  return element?.getAttribute('data-ask') ?? element?.getAttribute('data-q') ?? undefined;
}

document.addEventListener('pointerover', (event) => light(nameOf(symbolAt(event))));
document.addEventListener('focusin', (event) => light(nameOf(symbolAt(event))));
document.addEventListener('click', (event) => {
  const symbol = symbolAt(event);
  if (symbol === undefined) return;
  light(nameOf(symbol));
  if (symbol.closest('math') === null) return;
  const list = symbol.closest('.working-step')?.querySelector('.working-symbols');
  if (list instanceof HTMLDetailsElement) list.open = true;
});
