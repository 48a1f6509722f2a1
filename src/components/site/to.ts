/**
 * Address of a page or file of this site, whatever path the site is served under.
 *
 * @param path path from the site's root, without a leading slash: `bobweight/`, `sources/#iso-21940`, or `` for home.
 */
export function to(path: string): string {
  return `${import.meta.env.BASE_URL.replace(/\/+$/, '')}/${path}`;
}
