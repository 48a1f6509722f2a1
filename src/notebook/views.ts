/** What figures are set to: of each figure by its id, of each choice or reading of it by name, a word or a number. */
export type Views = Readonly<Record<string, Readonly<Record<string, string>>>>;

const word = /^[\w.-]{1,40}$/;
/** A longer text is none of ours; the fullest page makes a tenth of it. */
const longest = 1_000;

/** Writes views for a link: `load-speed/at/7464/section/eye;pressure-curve/show/firing`. Empty for none. */
export function encodeViews(views: Views): string {
  return Object.entries(views)
    .map(([figure, parts]) => [figure, ...Object.entries(parts).flat()])
    .filter((words) => words.length > 1 && words.every((each) => word.test(each)))
    .map((words) => words.join('/'))
    .join(';');
}

/** Reads what {@link encodeViews} wrote. What is damaged is left out: it changes how a page looks, and no number. */
export function decodeViews(text: string): Views {
  if (text.length > longest) return {};
  const views: Record<string, Record<string, string>> = Object.create(null) as Record<
    string,
    Record<string, string>
  >;
  for (const part of text.split(';')) {
    const [figure = '', ...words] = part.split('/');
    if (!word.test(figure) || words.length % 2 !== 0 || !words.every((each) => word.test(each)))
      continue;
    const own: Record<string, string> = {};
    for (let i = 0; i < words.length; i += 2) own[words[i] ?? ''] = words[i + 1] ?? '';
    views[figure] = own;
  }
  return views;
}
