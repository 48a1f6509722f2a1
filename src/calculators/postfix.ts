/** What a postfix line works on: numbers, lists that `mean` and its like take whole, the option of a choice. */
export type Operand = number | readonly number[] | string;

/** 1 where it is so and 0 where not; no number where there was none to compare. */
function decided(isSo: boolean, left: number, right: number): number {
  return Number.isNaN(left + right) ? Number.NaN : Number(isSo);
}

const two: Readonly<Record<string, (left: number, right: number) => number>> = {
  '+': (left, right) => left + right,
  '-': (left, right) => left - right,
  '*': (left, right) => left * right,
  '/': (left, right) => left / right,
  '^': (left, right) => left ** right,
  below: (left, right) => decided(left < right, left, right),
  atMost: (left, right) => decided(left <= right, left, right),
  or: (left, right) => (Number.isNaN(left) ? right : left),
};

function sum(values: readonly number[]): number {
  return values.reduce((all, value) => all + value, 0);
}

const whole: Readonly<Record<string, (values: readonly number[]) => number>> = {
  sum,
  mean: (values) => sum(values) / values.length,
  max: (values) => Math.max(...values),
  min: (values) => Math.min(...values),
  count: (values) => (values.some(Number.isNaN) ? Number.NaN : values.length),
  // What each is from the last of them, which is from itself by nothing.
  squares: (values) => sum(values.map((value) => (value - (values.at(-1) ?? 0)) ** 2)),
};

const one: Readonly<Record<string, (value: number) => number>> = {
  neg: (value) => -value,
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  asin: Math.asin,
  acos: Math.acos,
  atan: Math.atan,
  sqrt: Math.sqrt,
  abs: Math.abs,
  floor: Math.floor,
  exp: Math.exp,
  ln: Math.log,
  given: (value) => Number(!Number.isNaN(value)),
};

function number(operand: Operand | undefined): number {
  return typeof operand === 'number' ? operand : Number.NaN;
}

/**
 * Works a formula in postfix order: `m 2 ^ r *`. So a page can follow the reader's numbers through values
 * on the way to a result without carrying a formula parser.
 *
 * `c a b when` is a where c is 1 and b where c is 0; the one not taken may be no number. `a b below`, `a b atMost`,
 * `=x given` and `x=option` (the choice x stands at that option) make such a c.
 *
 * @param line operands and operators separated by spaces; `max:2` takes two operands, `=x` is a value's name,
 *   `=x 0 or` one that counts as nothing where it has none
 * @param valueOf the value of a name, in SI; undefined when it has none
 * @returns the number in SI; undefined when a value is missing or the answer is not finite
 */
export function workPostfix(
  line: string,
  valueOf: (name: string) => Operand | undefined,
): number | undefined {
  const stack: Operand[] = [];
  function taken(): number {
    return number(stack.pop());
  }
  for (const token of line.split(' ')) {
    const [name = '', count = '1'] = token.split(':');
    const [choice = '', option] = token.split('=');
    const binary = two[token];
    const unary = one[name];
    const many = whole[name];
    if (choice === '') stack.push(valueOf(token.slice(1)) ?? Number.NaN);
    else if (option !== undefined) {
      const chosen = valueOf(choice);
      stack.push(chosen === undefined ? Number.NaN : Number(chosen === option));
    } else if (binary !== undefined) {
      const right = taken();
      stack.push(binary(taken(), right));
    } else if (unary !== undefined) stack.push(unary(taken()));
    else if (many !== undefined) stack.push(many(stack.splice(-Number(count)).flat().map(number)));
    else if (token === 'when') {
      const [condition, then, otherwise] = stack.splice(-3).map(number);
      stack.push((condition === 1 ? then : condition === 0 ? otherwise : undefined) ?? Number.NaN);
    } else stack.push(Number(token));
  }
  const answer = taken();
  return Number.isFinite(answer) ? answer : undefined;
}
