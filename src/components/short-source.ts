/**
 * A source in the form running text uses: family names and year, "Beer, Johnston 2009".
 *
 * Authors in a source file are separated by commas, semicolons or "and"; initials are dropped, more than two authors
 * become "and others". An organisation keeps its name.
 */
export function shortSource(source: { readonly authors: string; readonly year: string }): string {
  const names = source.authors
    .split(/\s*(?:;|,(?!\s*(?:[A-Z]\.|Jr))|&|\band\b)\s*/)
    .map(familyName)
    .filter((name) => name !== '');
  const [first = source.authors, second] = names;
  const others = names.includes('others') || names.length > 2;
  const who = others
    ? `${first} and others`
    : second === undefined
      ? first
      : `${first} and ${second}`;
  return `${who} ${source.year}`;
}

function familyName(author: string): string {
  return author
    .replace(/\bet al\.?/i, 'others')
    .replace(/\b[A-Z]\.(?:[-\s]*)/g, '')
    .replace(/,\s*$/, '')
    .trim();
}
