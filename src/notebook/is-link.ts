/**
 * True for a fragment of an address that may be a link, and false for an anchor of the page. Some programs write
 * the sign as `%3D`. `public/early.js`, the waking of a page and the lines of moved parts ask the same without
 * fetching code for it.
 */
export function isLink(hash: string): boolean {
  return /=|%3D/i.test(hash);
}
