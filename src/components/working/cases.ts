import { type Condition, type Expression, partsOf } from './parse.ts';

/** One line behind the brace: what is worked, and on what condition; the last is for all that is left. */
export interface Case {
  readonly of: Expression;
  readonly on?: Condition;
}

/** The cases of a formula in their order; a formula without a choice has none. */
export function casesOf(expression: Expression): readonly Case[] {
  if (expression.is !== 'when') return [];
  const { condition, then, otherwise } = expression;
  const rest = otherwise.is === 'when' ? casesOf(otherwise) : [{ of: otherwise }];
  return [{ of: then, on: condition }, ...rest];
}

/** The expression that is 1 where the case at this place applies, and 0 elsewhere. */
export function applies(expression: Expression, place: number): Expression {
  const own: Expression = { is: 'number', ...(place === 0 ? yes : no) };
  if (expression.is !== 'when') return own;
  return { ...expression, then: own, otherwise: applies(expression.otherwise, place - 1) };
}
const yes = { text: '1', value: 1 } as const;
const no = { text: '0', value: 0 } as const;

/** What the words of a condition are made of. */
export interface CaseWords {
  /** An expression as a line of symbols in TeX. */
  tex(expression: Expression): string;
  /** The options of a choice with their labels; throws for a name that is no choice. */
  optionsOf(choice: string): Readonly<Record<string, string>>;
  /** Words in TeX. */
  text(words: string): string;
}

/**
 * The cases behind a brace, each with the condition on which it holds, in TeX. Fractions keep their size.
 *
 * @throws Error when a choice has no such option
 */
export function casesTex(expression: Expression, { tex, optionsOf, text }: CaseWords): string {
  const cases = casesOf(expression);
  const conditions = cases.flatMap(({ on }) => (on === undefined ? [] : [on]));

  function words(choice: string, option: string): string {
    const label = optionsOf(choice)[option];
    if (label !== undefined) return text(label);
    throw new Error(
      `${choice} has no option "${option}"; it has ${Object.keys(optionsOf(choice)).join(', ')}`,
    );
  }
  function on(condition: Condition): string {
    switch (condition.is) {
      case 'option':
        return words(condition.name, condition.option);
      case 'given':
        return `${tex({ is: 'name', name: condition.name })}${text(' given')}`;
      default:
        return `${tex(condition.left)}${condition.is === 'below' ? '<' : '\\le '}${tex(condition.right)}`;
    }
  }
  function otherwise(): string {
    const [first, second] = conditions;
    if (first?.is === 'option') {
      const taken = conditions.map((each) => (each.is === 'option' ? each.option : ''));
      const [left, more] = Object.keys(optionsOf(first.name)).filter((key) => !taken.includes(key));
      const isOneChoice = conditions.every(
        (each) => each.is === 'option' && each.name === first.name,
      );
      if (isOneChoice && left !== undefined && more === undefined) return words(first.name, left);
    } else if (first !== undefined && second === undefined) {
      if (first.is === 'given')
        return `${tex({ is: 'name', name: first.name })}${text(' not given')}`;
      return `${tex(first.left)}${first.is === 'below' ? '\\ge ' : '>'}${tex(first.right)}`;
    }
    return text('otherwise');
  }
  const rows = cases.map((each) => {
    const [formula, condition] = [tex(each.of), each.on === undefined ? otherwise() : on(each.on)];
    return `${formula}&${condition}`;
  });
  return `\\begin{dcases}${rows.join('\\\\')}\\end{dcases}`;
}

/** The names that stand in a formula as symbols: all but choices, which stand there as words. */
export function symbolsIn(expression: Expression): readonly string[] {
  if (expression.is === 'name') return [expression.name];
  const parts =
    expression.is === 'when' && expression.condition.is === 'option'
      ? [expression.then, expression.otherwise]
      : partsOf(expression);
  return [...new Set(parts.flatMap(symbolsIn))];
}
