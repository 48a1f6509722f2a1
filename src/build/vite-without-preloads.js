/**
 * A Vite plugin that keeps lists of files to fetch ahead out of the code of browsers. Vite writes one for every
 * part that is fetched when wanted: with each calculator of the site they grow on every page, and their hashed
 * names do not pack. (Astro passes this option of Vite to no browser build, so it is set here.) What Vite would fetch
 * the lists with is then left with nothing to do but to fetch the part itself.
 *
 * @returns {import('vite').Plugin}
 */
export function withoutPreloads() {
  return {
    name: 'throwbook-without-preloads',
    configEnvironment: (name) =>
      name === 'client' ? { build: { modulePreload: false } } : undefined,
    enforce: 'pre',
    load(id) {
      if (this.environment.name !== 'client' || !id.includes('vite/preload-helper')) return null;
      return 'export const __vitePreload = (load) => load();';
    },
  };
}
