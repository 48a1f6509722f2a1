import { is, type Working } from '../step.ts';

/** Units of a line about unbalances that are told in g·mm. */
export const arrowUnits = { length: 'mm', unbalance: 'gmm', mass: 'g' } as const;

/** The line that works a length out from two components, which are names of earlier lines. */
export function sizeOf(along: string, across: string, say: string): Working {
  return is(`sqrt((${along})^2 + (${across})^2)`, say, { units: arrowUnits });
}

/** The line that works the angle of an arrow out, from 0 to a whole turn, from the names of its two components. */
export function turnOf(along: string, across: string, say: string): Working {
  return is(
    `when(${along} < 0, pi + atan(${across} / ${along}), when(${across} < 0, 2 * pi + atan(${across} / ${along}), atan(${across} / ${along})))`,
    say,
    { units: arrowUnits },
  );
}
