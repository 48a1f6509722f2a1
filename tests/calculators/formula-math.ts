import { all, create, type EvalFunction, type MathNode } from 'mathjs';

/**
 * The library that works the formulas of the working, with what their grammar adds to it. It knows nothing of the
 * page's own evaluator, so that each checks the other.
 */
const math = create(all ?? {});

const compiled = new WeakMap<MathNode, EvalFunction>();

/** In a scope, the names of the inputs that the reader left out: those that are not `given(…)`. */
export const leftOut = 'left out';

/** A scope as the library hands it to a function that sees its arguments before they are worked. */
interface Scope {
  get(name: string): unknown;
}

function evaluated(node: MathNode, scope: object): unknown {
  const code = compiled.get(node) ?? node.compile();
  compiled.set(node, code);
  return code.evaluate(scope);
}

/** Works the branch that is taken and no other: the other may have no value. */
function when(args: readonly MathNode[], _: unknown, scope: object): unknown {
  const [condition, then, otherwise] = args;
  if (condition === undefined || then === undefined || otherwise === undefined)
    throw new Error('when(…) takes a condition and two formulas');
  return evaluated(evaluated(condition, scope) === true ? then : otherwise, scope);
}

function given([input]: readonly MathNode[], _: unknown, scope: Scope): boolean {
  const names = scope.get(leftOut);
  return input !== undefined && names instanceof Set && !names.has(input.toString());
}

math.import({
  given: Object.assign(given, { rawArgs: true }),
  when: Object.assign(when, { rawArgs: true }),
  ln: Math.log,
  equal: math.typed('equal', {
    'string, string': (one: string, other: string) => one === other,
  }),
  squares: (list: readonly number[], mean: number) =>
    list.reduce((sum, reading) => sum + (reading - mean) ** 2, 0),
});

/** A formula ready to be worked: its value in SI among the values of a scope. */
export function workable(formula: string): (scope: Readonly<Record<string, unknown>>) => number {
  const code = math.compile(formula);
  return (scope) => Number(code.evaluate(scope));
}
