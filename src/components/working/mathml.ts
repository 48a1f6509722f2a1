import katex from 'katex';

/** The only links a formula may hold: marks of symbols, which become attributes below. */
const mark = /^#q:[A-Za-z][A-Za-z0-9]*$/u;

/** The room between the name of a function and the bracket behind it. */
export const thinSpace = '<mspace width="0.1em"></mspace>';

/**
 * TeX as one MathML element, at build.
 *
 * A mark `\href{#q:name}{…}` becomes `data-q="name"`: a formula must hold no link that leads nowhere. The
 * repetition of the TeX that the renderer adds for copying is dropped; it doubles the bytes.
 *
 * @throws when the TeX cannot be rendered
 */
export function mathML(tex: string, display: boolean): string {
  const html = katex.renderToString(tex, {
    output: 'mathml',
    displayMode: display,
    strict: 'error',
    throwOnError: true,
    trust: (context) =>
      context.command === '\\href' && 'url' in context && mark.test(String(context.url)),
  });
  const element = /<math[\s\S]*<\/math>/u.exec(html)?.[0];
  if (element === undefined) throw new Error(`No formula came out of ${tex}`);
  return (
    element
      .replace(/<annotation[\s\S]*?<\/annotation>/gu, '')
      .replace(/<\/?semantics>/gu, '')
      // An index that is a word, such as max, brings the sign of a function along, and that is one part too many.
      .replace(/<mo>\u2061<\/mo>(?=<\/m(?:sub|sup|subsup)>)/gu, '')
      // A bracket behind such a word would touch it where an engine leaves no room of its own.
      .replace(/(<mo>\u2061<\/mo>)(?=(?:<mrow>)?<mo\b[^>]*>[([])/gu, `$1${thinSpace}`)
      .replace(/ href="#q:([A-Za-z0-9]+)"/gu, ' data-q="$1"')
  );
}
