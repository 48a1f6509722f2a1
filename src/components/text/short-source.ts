/**
 * A source in the form running text uses, family names and year: "Beer and Johnston 2009".
 *
 * Authors in a source file stand as "F. P. Beer, E. R. Johnston et al."; initials are dropped and more than two
 * names become "and others". A name without initials is an organisation's and is kept whole.
 */
export function shortSource(source: { readonly authors: string; readonly year: string }): string {
  return `${familyNames(source.authors)} ${source.year}`;
}

const initials = /\b\p{Lu}\.[-\s]*/gu;

function familyNames(authors: string): string {
  if (authors.search(initials) < 0) return authors;
  const [listed = authors, more] = authors.split(/,?\s*\bet al\.?/i);
  const names = listed
    .split(/\s*(?:;|,|&|\band\b)\s*/)
    .map((name) => name.replace(initials, '').trim());
  const [first = authors, second] = names.filter((name) => name !== '');
  if (more !== undefined || names.length > 2) return `${first} and others`;
  return second === undefined ? first : `${first} and ${second}`;
}
