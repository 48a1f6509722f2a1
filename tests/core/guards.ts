import { expect, test } from 'vitest';
import { OutOfDomain, type Relation } from '../../src/core/refuse.ts';

/**
 * One guard: the quantity it checks and the limit, as the refusal states it. `instead` is a value that is
 * refused where the guard is no plain limit (half a rod); else the row is tried on both sides of the limit.
 */
export type Row<Q extends string = string> = readonly [
  quantity: Q,
  relation: Relation,
  limit?: number,
  limitName?: string | undefined,
  instead?: unknown,
];

/** A function, what it takes when all is well, and the guards on its way. */
export interface Guarded {
  readonly rows: readonly Row[];
  /** The refusal of the good input with some values changed; undefined where it is taken. */
  refusal(change: Readonly<Record<string, unknown>>): OutOfDomain | undefined;
  readonly good: Readonly<Record<string, unknown>>;
}

/** A part of a table: the rows name members of `good`, with which `work` runs through. */
export function guarded<const T extends object>(
  good: T,
  work: (given: T) => unknown,
  rows: readonly Row<keyof T & string>[],
): Guarded {
  return {
    rows,
    good: good as Readonly<Record<string, unknown>>,
    refusal(change) {
      try {
        work({ ...good, ...change });
      } catch (error) {
        if (error instanceof OutOfDomain) return error;
        throw error;
      }
      return undefined;
    },
  };
}

/** Tests one part of a table: the good input, then each guard at its limit, beyond it, and without a number. */
export function testGuards(part: Guarded): void {
  test('takes the good input', () => expect(part.refusal({})).toBeUndefined());
  for (const row of part.rows) {
    const [quantity, relation, limit, limitName] = row;
    test([quantity, relation, limitName ?? limit].join(' '), () => meet(part, row));
  }
}

function meet({ refusal, good }: Guarded, row: Row): void {
  const [quantity, relation, limit = Number.NaN, limitName, ...instead] = row;
  const own = good[quantity];
  if (instead.length > 0) {
    const stated = { quantity, relation, limit: expect.closeTo(limit, 12), limitName };
    expect(refusal({ [quantity]: instead[0] })).toMatchObject(stated);
    return;
  }
  // Of a list the number tried is one more.
  const refused = (value: number): OutOfDomain | undefined =>
    refusal({ [quantity]: Array.isArray(own) ? [...own, value] : value });
  for (const value of [Number.NaN, Infinity, -Infinity])
    expect(refused(value)).toMatchObject({ quantity, relation: 'a number' });
  if (relation === 'a number') return;

  /** The refusal by this very guard: another may stand in the way of a value that this one lets pass. */
  const met = (value: number): OutOfDomain | undefined => {
    const found = refused(value);
    const same = found?.quantity === quantity && found.relation === relation;
    return same && found.limitName === limitName && near(found.limit, limit) ? found : undefined;
  };
  const outward = relation === 'greater than' || relation === 'at least' ? -1 : 1;
  const size = Math.max(Math.abs(limit), Math.abs(Number(own)) || 0);
  const step = 1e-9 * (size || 1);
  const beyond = limit + outward * step;
  expect(refused(beyond)).toMatchObject({ quantity, relation, value: beyond, limitName });
  const exact = met(beyond)?.limit ?? expect.fail(`its limit is not ${limit}`);
  const open = relation === 'greater than' || relation === 'less than';
  expect(met(exact) !== undefined, `${exact} itself is refused`).toBe(open);
  expect(met(limit - outward * step), 'inside the limit').toBeUndefined();
}

/** Limits are worked out, here and there in another order: the last digits may differ. */
function near(one: number, other: number): boolean {
  return Math.abs(one - other) <= 1e-12 * Math.abs(other);
}

/** The tables of one subject, by the source file from `src/core/` on. */
export type Tables = Readonly<Record<string, readonly Guarded[]>>;
