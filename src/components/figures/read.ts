import type { Result, SetId, Value } from '../../calculators/define.ts';
import { fromSI } from '../../units/units.ts';
import { lastForWords, reasonWords } from '../../notebook/standing.ts';
import type { Points } from '../chart/curve.ts';
import type { FigureWork } from './types.ts';

export const setIds: readonly SetId[] = ['baseline', 'candidate'];
/** Both sets as a list to choose one of them from. */
export const setOptions = setIds.map((id) => ({ id, label: id }));

/** The number behind a name, or `undefined` when there is none (absent, a series, a choice). */
export function numberOf(
  from: Readonly<Record<string, Result | Value>> | undefined,
  name: string,
): number | undefined {
  const value = from?.[name];
  return typeof value === 'number' && Number.isFinite(value) ? value : undefined;
}

/** The numbers behind several names, or `undefined` where one of them is missing. */
export function numbersOf<Name extends string>(
  from: Parameters<typeof numberOf>[0],
  names: readonly Name[],
): Readonly<Record<Name, number>> | undefined {
  const found: Partial<Record<Name, number>> = {};
  for (const name of names) {
    const value = numberOf(from, name);
    if (value === undefined) return undefined;
    found[name] = value;
  }
  return found as Record<Name, number>;
}

/** A curve of the results, brought from SI into the units shown; empty when there is none. */
export function pointsOf(
  from: Readonly<Record<string, Result>> | undefined,
  name: string,
  xUnit: string,
  yUnit: string,
): Points {
  const value = from?.[name];
  if (typeof value !== 'object' || !('x' in value)) return { x: [], y: [] };
  return {
    x: Array.from(value.x, (x) => fromSI(x, xUnit)),
    y: Array.from(value.y, (y) => fromSI(y, yUnit)),
  };
}

/** The remark above a figure whose numbers are older than what stands in the fields; empty for any other. */
export function staleNote({ sets, system }: FigureWork): string {
  const old = setIds.filter((id) => sets[id].stale);
  if (old.length === 0) return '';
  const named = old.map((id) => {
    const { standing } = sets[id];
    const last = standing === undefined ? '' : lastForWords(standing, system);
    return last === '' ? `the ${id}` : `the ${id} (${last})`;
  });
  return `Drawn for the last good numbers of ${named.join(' and ')}, not for those in the fields.`;
}

/** Why there is nothing to draw; empty where both sets have a result, if only the last good one. */
export function nothingNote({ sets }: FigureWork): string {
  const without = setIds.filter((id) => sets[id].output === undefined);
  if (without.length === 0) return '';
  const reasons = without.map((id) => {
    const { standing } = sets[id];
    return standing === undefined ? '' : reasonWords(standing);
  });
  const alike = new Set(reasons).size === 1;
  const said = alike
    ? reasons.slice(0, 1)
    : without.map((id, at) => `For the ${id}: ${reasons[at] ?? ''}`);
  return `There is nothing to draw: the ${without.join(' and the ')} ${without.length === 1 ? 'has' : 'have'} no result. ${said.join(' ')}`.trim();
}

/**
 * What a table says of each set: of what is drawn for it, or that there is no result.
 *
 * @param parts what is drawn; asked anew each time
 */
export function cellsOf<Part>(
  parts: () => Readonly<Record<SetId, Part | undefined>>,
): (of: (part: Part) => string) => (set: SetId) => string {
  return (of) => (set) => {
    const part = parts()[set];
    return part === undefined ? 'no result' : of(part);
  };
}
