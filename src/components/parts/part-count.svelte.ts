import type { Entry } from '../../calculators/define.ts';
import { setsOf } from '../../notebook/values.ts';
import { partStanding, type PartStanding } from './part-standing.ts';

/** Whose numbers stand in a row. Derived by itself, so that a key in one row asks nothing of the others. */
export class RowStanding {
  readonly #entry: Entry;
  readonly cells: readonly PartStanding[] = $derived.by(() =>
    setsOf(this.#entry).map((set) => partStanding(set, this.#entry)),
  );

  constructor(entry: Entry) {
    this.#entry = entry;
  }
}

/** How many cells of some rows are the reader's, how many are worked from other numbers, and how many still lack a number that a result needs. */
export interface PartCount {
  readonly own: number;
  readonly worked: number;
  readonly missing: number;
  readonly example: number;
}

export function countParts(rows: readonly RowStanding[]): PartCount {
  const standings = rows.flatMap(({ cells }) => cells);
  const count = (of: readonly PartStanding[]): number =>
    standings.filter((standing) => of.includes(standing)).length;
  return {
    own: count(['own', 'same']),
    worked: count(['carried']),
    missing: count(['missing']),
    example: count(['example']),
  };
}
