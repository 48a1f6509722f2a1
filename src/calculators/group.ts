import type { Kind } from '../units/kinds.ts';
import type { AnyCalculator, Entry } from './define.ts';

/** Where the numbers of a folded group come from, as its heading; in the order of the sheet. */
export const groupWords = {
  scale: 'From the scale',
  drawing: 'Measured, or from the drawing',
  bench: 'From the bench',
  data: 'From a data sheet',
  chosen: 'Chosen',
  assumed: 'Assumed',
  spare: 'May be left empty',
} as const;
export type Group = keyof typeof groupWords;

const byKind: Partial<Readonly<Record<Kind, Group>>> = {
  mass: 'scale',
  length: 'drawing',
  area: 'drawing',
  volume: 'drawing',
  angle: 'drawing',
  density: 'data',
  expansion: 'data',
  specificEnergy: 'data',
};

/** The group of a number that the question does not turn on: by what it is, and where one gets it. */
export function groupOf(entry: Entry): Group {
  // Something is always chosen.
  if (entry.type === 'choice') return 'chosen';
  if (entry.optional === true) return 'spare';
  if (entry.origin === 'assumption') return 'assumed';
  if (entry.origin === 'choice') return 'chosen';
  // A pressure with a metal's units is the strength or the stiffness of one.
  if (entry.metric === 'MPa' || entry.metric === 'GPa') return 'data';
  return byKind[entry.kind] ?? 'bench';
}

/** The inputs that are folded, by group; groups without any are left out. */
export function foldedInputs(
  calculator: AnyCalculator,
): readonly { readonly group: Group; readonly entries: readonly Entry[] }[] {
  const rest = Object.values(calculator.inputs).filter(
    ({ name }) => !calculator.asks.includes(name),
  );
  return (Object.keys(groupWords) as Group[])
    .map((group) => ({ group, entries: rest.filter((entry) => groupOf(entry) === group) }))
    .filter(({ entries }) => entries.length > 0);
}
