/**
 * Writes any text with letters, digits and `. / - $` alone, which programs that find links in plain text
 * leave whole. Letters, digits, point and slash stand for themselves, a hyphen is a space, `$-` a hyphen,
 * `$$` a dollar sign and `$e9.` the character with that hexadecimal number: `No. 17 V8-hill` becomes
 * `No.-17-V8$-hill`. {@link unescapeText} takes it back without loss.
 */
export function escapeText(text: string): string {
  return Array.from(text, (character) => {
    if (/^[A-Za-z0-9./]$/.test(character)) return character;
    if (character === ' ') return '-';
    if (character === '-' || character === '$') return `$${character}`;
    return `$${(character.codePointAt(0) ?? 0).toString(16)}.`;
  }).join('');
}

/** The text that {@link escapeText} wrote; undefined when it is damaged. */
export function unescapeText(escaped: string): string | undefined {
  if (!/^(?:[A-Za-z0-9./-]|\$[$-]|\$[0-9a-f]{1,6}\.)*$/.test(escaped)) return undefined;
  try {
    return escaped.replace(/\$([$-])|\$([0-9a-f]+)\.|-/g, (_, sign?: string, code?: string) =>
      code === undefined ? (sign ?? ' ') : String.fromCodePoint(Number.parseInt(code, 16)),
    );
  } catch {
    // A number that belongs to no character.
    return undefined;
  }
}
