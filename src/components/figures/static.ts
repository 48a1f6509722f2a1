import type { AnyCalculator } from '../../calculators/define.ts';
import { calculators } from '../../calculators/index.ts';
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

/** Ids of the figures that draw a calculator's numbers. */
export function figuresOf(calculator: string): readonly string[] {
  return figureIds.filter((id) => figureOf(id)?.calculator === calculator);
}

/**
 * A figure with the calculator whose numbers it draws.
 *
 * @throws Error for an id that no figure has, naming those that there are
 */
export function drawable(id: string): {
  readonly figure: FigureModule;
  readonly calculator: AnyCalculator;
} {
  const figure = figureOf(id);
  const all: Readonly<Record<string, AnyCalculator>> = calculators;
  const calculator = all[figure?.calculator ?? ''];
  if (figure === undefined || calculator === undefined)
    throw new Error(`There is no figure “${id}”. There are: ${figureIds.join(', ')}.`);
  return { figure, calculator };
}
