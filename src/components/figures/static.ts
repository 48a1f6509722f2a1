import { isFileOf, type FigureModule } from './types.ts';

const files = import.meta.glob<FigureModule>(['./*/*.svelte', '!./parts/*.svelte'], {
  eager: true,
});

/** The ids of all figures, in alphabetical order. */
export const figureIds: readonly string[] = Object.keys(files)
  .map((path) =>
    path
      .replace(/^.*\/(.*)\.svelte$/, '$1')
      .replace(/(?!^)[A-Z]/g, '-$&')
      .toLowerCase(),
  )
  .sort();

/** The figure of an id, for the server, which draws them all and sends none of their code. */
export function figureOf(id: string): FigureModule | undefined {
  return Object.entries(files).find(([path]) => isFileOf(id, path))?.[1];
}
