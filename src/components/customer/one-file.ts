/** What stands in a line for one set, and what it is more or less than in the other. */
export interface Cell {
  readonly value: string;
  readonly change?: string | undefined;
}

/** What the customer's page says, as text. */
export interface Told {
  readonly title: string;
  /** Whom it is from, and the date. */
  readonly from: string;
  readonly message: string;
  readonly sentences: readonly string[];
  /** The heads of the columns, and the lines under them. */
  readonly heads: readonly string[];
  readonly rows: readonly (readonly [label: string, ...values: Cell[]])[];
  /** What it does not say. */
  readonly limits: string;
  /** The address that opens the page with the same numbers. */
  readonly href: string;
}

/** A text as HTML has it. */
export function escapeHtml(text: string): string {
  return text.replace(
    /[&<>"']/g,
    (sign) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign] ?? '&#39;',
  );
}

const style = `
body{font:1rem/1.5 system-ui,sans-serif;color:#1c1a17;background:#fbf7ef;max-width:42rem;margin:0 auto;padding:1rem}
h1{font-size:1.4rem;line-height:1.25;margin:0 0 .3rem}
table{width:100%;border-collapse:collapse;margin:1rem 0}
th,td{text-align:right;padding:.35rem .3rem;border-top:1px solid #b9b09f;overflow-wrap:anywhere}
th:first-child{text-align:left;font-weight:400}
blockquote{margin:1rem 0;padding-left:.8rem;border-left:4px solid #1c1a17;white-space:pre-line}
small{color:#5d564b}
@media(prefers-color-scheme:dark){body{color:#efe9dc;background:#17181a}small{color:#b5ad9d}}
`;

/**
 * The page as one HTML file that needs no network: text, without a script. Whatever was written in it is shown as it
 * was written.
 */
export function oneFile({
  title,
  from,
  message,
  sentences,
  heads,
  rows,
  limits,
  href,
}: Told): string {
  const e = escapeHtml;
  const lines = [
    ...(message === '' ? [] : [`<blockquote>${e(message)}</blockquote>`]),
    ...sentences.map((sentence) => `<p>${e(sentence)}</p>`),
  ];
  const cell = ({ value, change }: Cell): string =>
    `<td>${e(value)}${change === undefined ? '' : `<br><small>${e(change)}</small>`}</td>`;
  const head = heads.map((word) => `<th scope="col">${e(word)}</th>`).join('');
  const body = rows.map(
    ([label, ...values]) => `<tr><th scope="row">${e(label)}</th>${values.map(cell).join('')}</tr>`,
  );
  return `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${e(title)}</title>
<style>${style}</style>
<h1>${e(title)}</h1>
${from === '' ? '' : `<p><small>${e(from)}</small></p>\n`}${lines.join('\n')}
<table>
<thead><tr><th></th>${head}</tr></thead>
<tbody>
${body.join('\n')}
</tbody>
</table>
<p><small>${e(limits)}</small></p>
<p><small><a href="${e(href)}">The same numbers, with the working</a></small></p>
</html>
`;
}
