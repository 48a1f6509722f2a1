/** How a value stands to the limit it breaks. */
export type Relation = 'greater than' | 'at least' | 'less than' | 'at most' | 'a number';

/**
 * A value with no physical meaning, refused at the door of `core`.
 *
 * `quantity` is the argument's name, `value` and `limit` are in SI units. `limitName` says in words what
 * the limit is when it is not a plain number ("half the stroke plus the offset"). The page turns these into
 * a sentence in the reader's own units; the message alone serves a reader of the code.
 */
export class OutOfDomain extends RangeError {
  readonly quantity: string;
  readonly value: number;
  readonly relation: Relation;
  readonly limit: number;
  readonly limitName: string | undefined;

  constructor(
    quantity: string,
    value: number,
    relation: Relation,
    limit: number,
    limitName?: string,
  ) {
    const bound = limitName === undefined ? String(limit) : `${limitName} (${limit})`;
    super(
      relation === 'a number'
        ? `${quantity} must be a finite number; it is ${value}`
        : `${quantity} must be ${relation} ${bound}; it is ${value}`,
    );
    this.name = 'OutOfDomain';
    this.quantity = quantity;
    this.value = value;
    this.relation = relation;
    this.limit = limit;
    this.limitName = limitName;
  }
}

/** Numbers by their names in the dictionary, of which a guard checks one. */
type Numbers<Q extends string> = { readonly [K in Q]: number };

/**
 * The refusal of one of the numbers given. Like the guards below it takes the record and the key, never name
 * and value apart, so that a misspelt name does not compile. A number that is no member of an argument gets
 * a record of its own: `above({ maxSpeed: crankSpeed }, 'maxSpeed')`.
 */
export function refusal<Q extends string>(
  given: Numbers<Q>,
  quantity: Q,
  relation: Relation,
  limit: number,
  limitName?: string,
): OutOfDomain {
  return new OutOfDomain(quantity, given[quantity], relation, limit, limitName);
}

/** Returns the number; throws {@link OutOfDomain} unless it is finite. */
export function finite<Q extends string>(given: Numbers<Q>, quantity: Q): number {
  const value = given[quantity];
  if (!Number.isFinite(value)) throw refusal(given, quantity, 'a number', Number.NaN);
  return value;
}

/** Returns the number; throws {@link OutOfDomain} unless it is finite and greater than `limit` (default 0). */
export function above<Q extends string>(
  given: Numbers<Q>,
  quantity: Q,
  limit = 0,
  limitName?: string,
): number {
  if (finite(given, quantity) > limit) return given[quantity];
  throw refusal(given, quantity, 'greater than', limit, limitName);
}

/** Returns the number; throws {@link OutOfDomain} unless it is finite and at least `limit` (default 0). */
export function atLeast<Q extends string>(
  given: Numbers<Q>,
  quantity: Q,
  limit = 0,
  limitName?: string,
): number {
  if (finite(given, quantity) >= limit) return given[quantity];
  throw refusal(given, quantity, 'at least', limit, limitName);
}

/** Returns the number; throws {@link OutOfDomain} unless it is finite and less than `limit`. */
export function below<Q extends string>(
  given: Numbers<Q>,
  quantity: Q,
  limit: number,
  limitName?: string,
): number {
  if (finite(given, quantity) < limit) return given[quantity];
  throw refusal(given, quantity, 'less than', limit, limitName);
}

/** Returns the number; throws {@link OutOfDomain} unless it is finite and at most `limit`. */
export function atMost<Q extends string>(
  given: Numbers<Q>,
  quantity: Q,
  limit: number,
  limitName?: string,
): number {
  if (finite(given, quantity) <= limit) return given[quantity];
  throw refusal(given, quantity, 'at most', limit, limitName);
}

/** Returns the number; throws {@link OutOfDomain} unless it is a share of a whole: at least 0 and at most 1. */
export function fraction<Q extends string>(given: Numbers<Q>, quantity: Q): number {
  atLeast(given, quantity);
  return atMost(given, quantity, 1);
}
