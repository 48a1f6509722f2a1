/** What says by itself which quantity it stands for. */
const marked = '[data-ask], [data-q], [data-output], [data-v]';
/** A letter of a formula, with its index where it has one. */
const letters = 'math :is(msub, mi)';

/** The quantities that an element stands for, or what it stands in; none where it stands for nothing. */
export function namesIn(element: Element): readonly string[] {
  const own = element.closest(marked);
  if (own !== null) return namesOf(own);
  const letter = element.closest('math msub') ?? element.closest('math mi');
  return letter === null ? [] : namesOfSymbol(element.ownerDocument, textOf(letter));
}

function namesOf(mark: Element): readonly string[] {
  const asked = mark.getAttribute('data-ask') ?? mark.getAttribute('data-output');
  if (asked !== null) return [asked];
  const several = mark.getAttribute('data-q')?.split(' ');
  if (several !== undefined) return several;
  const [, name = ''] = mark.getAttribute('data-v')?.split('.') ?? [];
  return name === '' ? [] : [name];
}

/** Without the signs and thin spaces that a formula is set with. */
function textOf(element: Element): string {
  return (element.textContent ?? '').replace(/[\s\u2061\u200b]/gu, '');
}

/** Rows of the page that give a quantity's symbol: of a form, of results, of a list of symbols. */
function rowsOf(page: Document): readonly Element[] {
  return [...page.querySelectorAll(':is(.row[data-q], tr[data-q], [data-output]):has(var)')];
}

/** How a quantity's symbol is written on this page, its index behind its letter; undefined where no row gives it. */
export function symbolText(page: Document, name: string): string | undefined {
  const row = rowsOf(page).find((each) => namesOf(each).includes(name));
  const symbol = row?.querySelector('var');
  return symbol === null || symbol === undefined ? undefined : textOf(symbol);
}

/** The quantity whose symbol is written like this; of two calculators that share a letter, the first of the page. */
function namesOfSymbol(page: Document, text: string): readonly string[] {
  const row = rowsOf(page).find((each) => textOf(each.querySelector('var') ?? each) === text);
  return row === undefined ? [] : namesOf(row);
}

/** The letters in formulas that are written like this and carry no mark of their own. */
export function sameSymbol(page: Document, text: string): readonly Element[] {
  return [...page.querySelectorAll(letters)].filter(
    (letter) =>
      textOf(letter) === text &&
      letter.closest('[data-q]') === null &&
      letter.parentElement?.closest('math msub') === null,
  );
}
