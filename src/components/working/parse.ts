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
    // The whole number below: of turns, say.
    floor: { tex: '\\operatorname{floor}', text: 'floor' },
    exp: { tex: '\\exp', text: 'exp' },
    ln: { tex: '\\ln', text: 'ln' },
    mean: { tex: '\\operatorname{mean}', text: 'mean' },
    sum: { tex: '\\operatorname{sum}', text: 'sum' },
    // How many readings a list has, and the squares of what each is from a number, added up.
    count: { tex: '\\operatorname{count}', text: 'count' },
    squares: { tex: '\\sum', text: 'Σ' },
  };

export type Binary = 'add' | 'subtract' | 'multiply' | 'divide' | 'power';

/**
 * What decides between two cases: which option was chosen (`shape == "i"`), whether the reader gave what may be
 * left out (`given(clearance)`), or a comparison (`slenderness < transition`, `<=`).
 */
export type Condition =
  | { readonly is: 'option'; readonly name: string; readonly option: string }
  | { readonly is: 'given'; readonly name: string }
  | { readonly is: 'below' | 'atMost'; readonly left: Expression; readonly right: Expression };

/** A formula as a tree; brackets are kept as they were written. */
export type Expression =
  | { readonly is: 'number'; readonly text: string; readonly value: number }
  | { readonly is: 'name'; readonly name: string }
  | { readonly is: 'group'; readonly of: Expression }
  | { readonly is: 'negate'; readonly of: Expression }
  | { readonly is: Binary; readonly left: Expression; readonly right: Expression }
  | { readonly is: 'call'; readonly name: string; readonly of: readonly Expression[] }
  | {
      readonly is: 'when';
      readonly condition: Condition;
      readonly then: Expression;
      readonly otherwise: Expression;
    };

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

/** The node seen as what is read of it. */
function seen(node: MathNode): Read {
  return node as unknown as Read;
}

/** The name of the function that a node calls. */
function calledBy({ fn }: Read): string {
  return String((fn as { readonly name?: unknown }).name);
}

function conditionOf(node: MathNode, formula: string): Condition {
  const read = seen(node);
  const [left, right] = read.args ?? [];
  const name = left === undefined ? undefined : seen(left).name;
  if (read.type === 'FunctionNode' && calledBy(read) === 'given' && typeof name === 'string')
    return { is: 'given', name };
  if (read.type === 'OperatorNode' && left !== undefined && right !== undefined) {
    const option = seen(right).value;
    if (read.fn === 'equal' && typeof name === 'string' && typeof option === 'string')
      return { is: 'option', name, option };
    const is = read.fn === 'smaller' ? 'below' : read.fn === 'smallerEq' ? 'atMost' : undefined;
    if (is !== undefined)
      return { is, left: convert(left, formula), right: convert(right, formula) };
  }
  throw new Error(
    `"${formula}" decides by "${node.toString()}"; a working decides by choice == "option", given(input), a < b, a <= b`,
  );
}

function numberOf(value: number, formula: string): Expression {
  const text = String(value);
  if (text.includes('e'))
    throw new Error(`"${formula}" holds ${text}, which would be printed as a product with e`);
  return { is: 'number', text, value };
}

function convert(node: MathNode, formula: string): Expression {
  const { type, name, value, fn, content, args = [] } = seen(node);
  const [first, second, third] = args;
  if (type === 'ConstantNode' && typeof value === 'number') return numberOf(value, formula);
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
    const called = calledBy(seen(node));
    if (called === 'when' && first !== undefined && second !== undefined && third !== undefined)
      return {
        is: 'when',
        condition: conditionOf(first, formula),
        then: convert(second, formula),
        otherwise: convert(third, formula),
      };
    if (Object.hasOwn(functions, called))
      return { is: 'call', name: called, of: args.map((arg) => convert(arg, formula)) };
    const known = ['when(…, …, …)', ...Object.keys(functions)].join(', ');
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
    case 'when':
      return [...decidersOf(expression.condition), expression.then, expression.otherwise];
    default:
      return [expression.left, expression.right];
  }
}

function decidersOf(condition: Condition): readonly Expression[] {
  return 'name' in condition
    ? [{ is: 'name', name: condition.name }]
    : [condition.left, condition.right];
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
