/** How many sentences or names of one sort are listed before the others are only counted. */
const most = 8;

/** The sentences, the first few of them in full and of the others how many there are. */
export function few(sentences: readonly string[]): readonly string[] {
  const others = sentences.length - most;
  // Counting a single one would take as long as saying it.
  if (others < 2) return sentences;
  return [...sentences.slice(0, most), `And ${String(others)} more of this kind.`];
}

/** Names in quotation marks, for a sentence: “a”, “b” and 19 998 others. */
export function fewNames(names: readonly string[]): string {
  const others = names.length - most;
  const said = names.slice(0, others < 2 ? undefined : most).map((name) => `“${name}”`);
  if (others >= 2) said.push(`${String(others)} others`);
  return said.length < 2
    ? said.join('')
    : `${said.slice(0, -1).join(', ')} and ${said.at(-1) ?? ''}`;
}
