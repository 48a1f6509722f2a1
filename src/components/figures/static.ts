import { isFileOf, type FigureModule, type FigureProps } from './types.ts';

const files = import.meta.glob<FigureModule>('./*/*.svelte', { eager: true });

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

/** A figure as an .astro file sees it: a function of its props. */
export function drawn({ default: part }: FigureModule): (props: FigureProps) => unknown {
  return part as unknown as (props: FigureProps) => unknown;
}
