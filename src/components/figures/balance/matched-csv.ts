import { csvText } from '../../../calculators/csv.ts';
import type { SetId } from '../../../calculators/define.ts';
import { fromSI, unitOf } from '../../../units/units.ts';
import { kindWords, partName, type Matched } from './matched-sets.ts';

/** The matched sets of one column of the notebook. */
export interface MatchedEngine {
  readonly set: SetId;
  readonly matched: Matched;
}

/**
 * The matched sets as a file of separated values, a set a line: what its parts are called, what each weighs, what the
 * set weighs, is above the lightest, is to lose, and weighed as listed. All masses in `unit`, with all their digits
 * but what the binary writing of a decimal adds.
 */
export function matchedCsv(engines: readonly MatchedEngine[], unit: string): string {
  const kinds = [...new Set(engines.flatMap(({ matched }) => matched.kinds))];
  const { symbol } = unitOf(unit);
  const mass = (si: number | undefined): number | undefined =>
    si === undefined ? undefined : Number(fromSI(si, unit).toPrecision(9));
  const head = [
    'Set of parts',
    'Cylinder set',
    ...kinds.flatMap((kind) => [kindWords[kind], `${kindWords[kind]} (${symbol})`]),
    ...['matched', 'above the lightest', 'to take off', 'as listed'].map(
      (words) => `${words} (${symbol})`,
    ),
  ];
  const rows = engines.flatMap(({ set, matched }) =>
    matched.sets.map(({ parts, total, off, listed }, row) => [
      set,
      row + 1,
      ...kinds.flatMap((kind) => {
        const part = parts[matched.kinds.indexOf(kind)];
        return part === undefined
          ? [undefined, undefined]
          : [partName(matched, kind, part), mass(matched.masses[kind]?.[part - 1])];
      }),
      mass(total),
      mass(total - matched.lightest),
      mass(off),
      mass(listed),
    ]),
  );
  return csvText([head, ...rows]);
}
