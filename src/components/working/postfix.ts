import type { Expression } from './parse.ts';

const signs = { add: '+', subtract: '-', multiply: '*', divide: '/', power: '^' } as const;
const whole = new Set(['mean', 'sum', 'max', 'min']);

/** An expression in the postfix order that the page can work; see src/components/slots/postfix.ts. */
export function toPostfix(expression: Expression): string {
  switch (expression.is) {
    case 'number':
      return String(expression.value);
    case 'name':
      return `=${expression.name}`;
    case 'group':
      return toPostfix(expression.of);
    case 'negate':
      return `${toPostfix(expression.of)} neg`;
    case 'call': {
      const { name, of } = expression;
      const operator = whole.has(name) ? `${name}:${of.length}` : name;
      return [...of.map(toPostfix), operator].join(' ');
    }
    default:
      return `${toPostfix(expression.left)} ${toPostfix(expression.right)} ${signs[expression.is]}`;
  }
}
