import type { Result, SetId, Value } from '../../calculators/define.ts';
import { fromSI } from '../../units/units.ts';
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

/** The remark under a figure whose numbers are older than what stands in the fields. */
export function staleNote(work: FigureWork): string {
  const old = setIds.filter((id) => work.sets[id].stale);
  if (old.length === 0) return '';
  return `Drawn for the last readable numbers of the ${old.join(' and the ')}.`;
}
