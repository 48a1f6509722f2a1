import type { Condition, Expression } from './parse.ts';

const signs = { add: '+', subtract: '-', multiply: '*', divide: '/', power: '^' } as const;
const whole = new Set(['mean', 'sum', 'max', 'min', 'count', 'squares']);

/**
 * An expression in the postfix order that the page can work; see src/calculators/postfix.ts.
 *
 * @param isOptional whether the reader may leave a name out; it then counts as nothing
 */
export function toPostfix(expression: Expression, isOptional: (name: string) => boolean): string {
  function write(part: Expression): string {
    switch (part.is) {
      case 'number':
        return String(part.value);
      case 'name':
        return `=${part.name}${isOptional(part.name) ? ' 0 or' : ''}`;
      case 'group':
        return write(part.of);
      case 'negate':
        return `${write(part.of)} neg`;
      case 'call': {
        const { name, of } = part;
        const operator = whole.has(name) ? `${name}:${of.length}` : name;
        return [...of.map(write), operator].join(' ');
      }
      case 'when':
        return `${decide(part.condition)} ${write(part.then)} ${write(part.otherwise)} when`;
      default:
        return `${write(part.left)} ${write(part.right)} ${signs[part.is]}`;
    }
  }
  function decide(condition: Condition): string {
    switch (condition.is) {
      case 'option':
        return `${condition.name}=${condition.option}`;
      case 'given':
        return `=${condition.name} given`;
      default:
        return `${write(condition.left)} ${write(condition.right)} ${condition.is}`;
    }
  }
  return write(expression);
}
