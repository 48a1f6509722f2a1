import type { Colours } from './assembly-file.ts';

/**
 * What a drawing is drawn in that stands in a file of its own, where no style sheet of the site reaches.
 *
 * @param tokens the text of `styles/tokens.css`
 * @throws Error when it lacks one of the colours
 */
export function coloursOf(tokens: string): Colours {
  function colour(name: string): Colours['ink'] {
    const [, day, night] =
      new RegExp(`--${name}: light-dark\\((#\\w+), (#\\w+)\\)`, 'u').exec(tokens) ?? [];
    if (day === undefined || night === undefined) throw new Error(`tokens.css has no --${name}.`);
    return { day, night };
  }
  return { ink: colour('ink'), paper: colour('paper') };
}
