import { type MathNode, parse } from 'mathjs';

/** Functions a formula may call, with what TeX and a line of text call them. */
export const functions: Readonly<Record<string, { readonly tex: string; readonly text: string }>> =
  {
    sin: { tex: '\\sin', text: 'sin' },
    cos: { tex: '\\cos', text: 'cos' },
    tan: { tex: '\\tan', text: 'tan' },
    asin: { tex: '\\arcsin', text: 'arcsin' },
    acos: { tex: '\\arccos', text: 'arccos' },
    atan: { tex: '\\arctan', text: 'arctan' },
    sqrt: { tex: '\\sqrt', text: '√' },
    abs: { tex: '\\operatorname{abs}', text: 'abs' },
    max: { tex: '\\max', text: 'max' },
    min: { tex: '\\min', text: 'min' },
    mean: { tex: '\\operatorname{mean}', text: 'mean' },
    sum: { tex: '\\operatorname{sum}', text: 'sum' },
  };

export type Binary = 'add' | 'subtract' | 'multiply' | 'divide' | 'power';

/** A formula as a tree; brackets are kept as they were written. */
export type Expression =
  | { readonly is: 'number'; readonly text: string; readonly value: number }
  | { readonly is: 'name'; readonly name: string }
  | { readonly is: 'group'; readonly of: Expression }
  | { readonly is: 'negate'; readonly of: Expression }
  | { readonly is: Binary; readonly left: Expression; readonly right: Expression }
  | { readonly is: 'call'; readonly name: string; readonly of: readonly Expression[] };

const binaries: Readonly<Record<string, Binary>> = {
  add: 'add',
  subtract: 'subtract',
  multiply: 'multiply',
  divide: 'divide',
  pow: 'power',
};

/** What a node of the library carries, as far as it is read here. */
interface Read {
  readonly type: string;
  readonly name?: unknown;
  readonly value?: unknown;
  readonly fn?: unknown;
  readonly content?: MathNode;
  readonly args?: readonly MathNode[];
}

function convert(node: MathNode, formula: string): Expression {
  const { type, name, value, fn, content, args = [] } = node as unknown as Read;
  const [first, second] = args;
  if (type === 'ConstantNode' && typeof value === 'number')
    return { is: 'number', text: String(value), value };
  if (type === 'SymbolNode' && name === 'pi') return { is: 'number', text: 'π', value: Math.PI };
  if (type === 'SymbolNode' && typeof name === 'string') return { is: 'name', name };
  if (type === 'ParenthesisNode' && content !== undefined)
    return { is: 'group', of: convert(content, formula) };
  if (type === 'OperatorNode' && first !== undefined) {
    if (fn === 'unaryMinus') return { is: 'negate', of: convert(first, formula) };
    const is = typeof fn === 'string' ? binaries[fn] : undefined;
    if (is !== undefined && second !== undefined)
      return { is, left: convert(first, formula), right: convert(second, formula) };
  }
  if (type === 'FunctionNode') {
    const called = String((fn as { readonly name?: unknown }).name);
    if (Object.hasOwn(functions, called))
      return { is: 'call', name: called, of: args.map((arg) => convert(arg, formula)) };
    const known = Object.keys(functions).join(', ');
    throw new Error(`"${formula}" calls ${called}; a working can print ${known}`);
  }
  throw new Error(`"${formula}" holds "${node.toString()}", which a working cannot print`);
}

/**
 * Reads a step's formula. Build and tests only: the library behind it never reaches a reader.
 *
 * @throws Error naming the formula when it holds anything a working cannot print
 */
export function parseFormula(formula: string): Expression {
  return convert(parse(formula), formula);
}

/** The parts of an expression. */
export function partsOf(expression: Expression): readonly Expression[] {
  switch (expression.is) {
    case 'number':
    case 'name':
      return [];
    case 'group':
    case 'negate':
      return [expression.of];
    case 'call':
      return expression.of;
    default:
      return [expression.left, expression.right];
  }
}

/** The names an expression uses, each once, in the order of first use. */
export function namesIn(expression: Expression): readonly string[] {
  if (expression.is === 'name') return [expression.name];
  return [...new Set(partsOf(expression).flatMap(namesIn))];
}

/** Without its outermost brackets. */
export function ungrouped(expression: Expression): Expression {
  return expression.is === 'group' ? ungrouped(expression.of) : expression;
}
