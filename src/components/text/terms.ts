/**
 * What the style alone cannot do for the meanings of terms: a tap shows one, and a second tap follows the link; Escape
 * and a tap elsewhere hide it.
 */
const termAt = '.term:is(:hover, :focus, [data-meaning]), .term:has(+ .term-meaning:hover)';
let byMouse = true;

/** Forgets what taps and Escape did to the terms, but for one of them. */
function forget(but?: Element | null): void {
  for (const term of document.querySelectorAll('.term[data-meaning]'))
    if (term !== but) term.removeAttribute('data-meaning');
}

/** The term that a place of the page belongs to, by its link or its meaning. */
function termOf({ target }: Event): Element | null {
  if (!(target instanceof Element)) return null;
  const part = target.closest('.term, .term-meaning');
  return part?.matches('.term-meaning') === true ? part.previousElementSibling : part;
}

for (const what of ['pointerover', 'focusin'])
  document.addEventListener(what, (event) => {
    forget(termOf(event));
  });

document.addEventListener('pointerdown', (event) => {
  byMouse = event.pointerType === 'mouse';
  forget(termOf(event));
});

document.addEventListener('click', (event) => {
  const term = event.target instanceof Element ? event.target.closest('.term') : null;
  // A key's click has no count: it follows the link, whose meaning the focus has shown.
  if (term === null || byMouse || event.detail === 0) return;
  if (term.getAttribute('data-meaning') === 'shown') return;
  event.preventDefault();
  term.setAttribute('data-meaning', 'shown');
});

document.addEventListener('keydown', (event) => {
  if (event.key !== 'Escape') return;
  for (const term of document.querySelectorAll(termAt)) term.setAttribute('data-meaning', 'hidden');
});
