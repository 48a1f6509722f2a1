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

/** Returns `value`; throws {@link OutOfDomain} unless it is finite. */
export function finite(quantity: string, value: number): number {
  if (!Number.isFinite(value)) throw new OutOfDomain(quantity, value, 'a number', Number.NaN);
  return value;
}

/** Returns `value`; throws {@link OutOfDomain} unless it is finite and greater than `limit` (default 0). */
export function above(quantity: string, value: number, limit = 0, limitName?: string): number {
  if (finite(quantity, value) <= limit)
    throw new OutOfDomain(quantity, value, 'greater than', limit, limitName);
  return value;
}

/** Returns `value`; throws {@link OutOfDomain} unless it is finite and at least `limit` (default 0). */
export function atLeast(quantity: string, value: number, limit = 0, limitName?: string): number {
  if (finite(quantity, value) < limit)
    throw new OutOfDomain(quantity, value, 'at least', limit, limitName);
  return value;
}

/** Returns `value`; throws {@link OutOfDomain} unless it is finite and less than `limit`. */
export function below(quantity: string, value: number, limit: number, limitName?: string): number {
  if (finite(quantity, value) >= limit)
    throw new OutOfDomain(quantity, value, 'less than', limit, limitName);
  return value;
}

/** Returns `value`; throws {@link OutOfDomain} unless it is finite and at most `limit`. */
export function atMost(quantity: string, value: number, limit: number, limitName?: string): number {
  if (finite(quantity, value) > limit)
    throw new OutOfDomain(quantity, value, 'at most', limit, limitName);
  return value;
}
