import { above, refusal } from '../refuse.ts';

/** Masses of one kind of part, one for each cylinder [kg]. */
export type Masses = readonly number[];

/** The kinds of part that may be put together anew, by their names in the dictionary. */
export const partNames = ['pistonMasses', 'pinMasses', 'smallEndMasses', 'ringMasses'] as const;
export type PartName = (typeof partNames)[number];

/** The lists that are as long as that of the pistons. */
const others = ['pinMasses', 'smallEndMasses', 'ringMasses', 'bigEndMasses'] as const;

/** What was weighed: the pistons, and of other parts what there is. A big end goes with its own small end. */
export type Parts = { readonly pistonMasses: Masses } & {
  readonly [N in (typeof others)[number]]?: Masses | undefined;
};

/** For some kinds of part the bank that each part fits; a kind left out fits every cylinder. */
export type Banks = { readonly [N in PartName]?: readonly number[] };

/** As many cylinders as the search is made for. */
const mostParts = 16;

/**
 * Refuses lists of unlike length.
 *
 * @throws OutOfDomain for a mass that is not above 0, no piston or more than 16, or a list that is not as long as
 * that of the pistons
 */
export function checkParts(parts: Parts): void {
  for (const name of ['pistonMasses', ...others] as const)
    for (const mass of parts[name] ?? [])
      above({ [name]: mass } as Record<typeof name, number>, name);
  const count = { pistonMasses: parts.pistonMasses.length };
  if (count.pistonMasses < 1) throw refusal(count, 'pistonMasses', 'at least', 1, 'one');
  if (count.pistonMasses > mostParts)
    throw refusal(count, 'pistonMasses', 'at most', mostParts, 'sixteen');
  for (const name of others) {
    const length = parts[name]?.length ?? count.pistonMasses;
    if (length === count.pistonMasses) continue;
    throw refusal(
      { [name]: length } as Record<typeof name, number>,
      name,
      length < count.pistonMasses ? 'at least' : 'at most',
      count.pistonMasses,
      `as many as the pistons, ${count.pistonMasses}`,
    );
  }
}
