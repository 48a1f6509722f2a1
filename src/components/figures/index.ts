import { isFileOf, type FigureModule } from './types.ts';

const files = import.meta.glob<FigureModule>(['./*/*.svelte', '!./parts/*.svelte']);

/** Fetches the code of one figure alone. Throws Error for an id that no figure has. */
export async function loadFigure(id: string): Promise<FigureModule> {
  const [, load] = Object.entries(files).find(([path]) => isFileOf(id, path)) ?? [];
  if (load === undefined) throw new Error(`There is no figure “${id}”.`);
  return load();
}

/** In what every figure comes to life, fetched with the list. */
export { default as Drawn } from './Drawn.svelte';
