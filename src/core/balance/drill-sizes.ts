import { above } from '../refuse.ts';

/** A drill of a list: what it is called, and its diameter [m]. */
export interface ListedDrill {
  readonly name: string;
  readonly diameter: number;
}

/**
 * The drill of a list that is nearest to a diameter [m]; of two that are as near, the thinner one, which takes less.
 *
 * @param list from thin to thick, at least one
 * @throws OutOfDomain for a diameter that is not above 0; RangeError for an empty list
 */
export function nearestDrill(
  list: readonly ListedDrill[],
  wanted: { readonly holeDiameter: number },
): ListedDrill {
  const diameter = above(wanted, 'holeDiameter');
  const [first, ...others] = list;
  if (first === undefined) throw new RangeError('a list without drills');
  const off = (drill: ListedDrill): number => Math.abs(drill.diameter - diameter);
  // What rounding alone makes a difference of is as near.
  return others.reduce((best, drill) => (off(drill) < off(best) - 1e-12 ? drill : best), first);
}

/** The drills of a rule: every `step` [m] from the first multiple to the last. */
export function drillsByStep(
  step: number,
  from: number,
  to: number,
  nameOf: (multiple: number) => string,
): readonly ListedDrill[] {
  return Array.from({ length: to - from + 1 }, (_, i) => ({
    name: nameOf(from + i),
    diameter: (from + i) * step,
  }));
}
