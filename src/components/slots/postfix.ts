/** What a postfix line works on: numbers, and lists that `mean`, `sum`, `max` and `min` take whole. */
export type Operand = number | readonly number[];

const two: Readonly<Record<string, (left: number, right: number) => number>> = {
  '+': (left, right) => left + right,
  '-': (left, right) => left - right,
  '*': (left, right) => left * right,
  '/': (left, right) => left / right,
  '^': (left, right) => left ** right,
};

const whole: Readonly<Record<string, (values: readonly number[]) => number>> = {
  mean: (values) => values.reduce((sum, value) => sum + value, 0) / values.length,
  sum: (values) => values.reduce((sum, value) => sum + value, 0),
  max: (values) => Math.max(...values),
  min: (values) => Math.min(...values),
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
};

/**
 * Works a formula in postfix order: `m 2 ^ r *`. So a page can follow the reader's numbers through values
 * on the way to a result without carrying a formula parser.
 *
 * @param line operands and operators separated by spaces; `max:2` takes two operands, `=x` is a value's name
 * @param valueOf the value of a name, in SI; undefined when it has none
 * @returns the number in SI; undefined when a value is missing or the answer is not finite
 */
export function workPostfix(
  line: string,
  valueOf: (name: string) => Operand | undefined,
): number | undefined {
  const stack: Operand[] = [];
  function taken(): number {
    const operand = stack.pop();
    return typeof operand === 'number' ? operand : Number.NaN;
  }
  for (const token of line.split(' ')) {
    const [name = '', count = '1'] = token.split(':');
    const binary = two[token];
    const unary = one[name];
    const many = whole[name];
    if (token.startsWith('=')) stack.push(valueOf(token.slice(1)) ?? Number.NaN);
    else if (binary !== undefined) {
      const right = taken();
      stack.push(binary(taken(), right));
    } else if (unary !== undefined) stack.push(unary(taken()));
    else if (many !== undefined) stack.push(many(stack.splice(-Number(count)).flat()));
    else stack.push(Number(token));
  }
  const answer = taken();
  return Number.isFinite(answer) ? answer : undefined;
}
