import type { AnyCalculator } from '../../calculators/define.ts';
import type { Line } from '../../calculators/practice/way.ts';
import { know } from '../working/know.ts';
import { namesIn, parseFormula } from '../working/parse.ts';
import { toPostfix } from '../working/postfix.ts';

/** The lines of a calculator's working that have a formula, ready to be worked. Build and tests only. */
export function linesOf(calculator: AnyCalculator): readonly Line[] {
  return calculator.steps.flatMap(({ of, formula }) => {
    if (formula === undefined) return [];
    const expression = parseFormula(formula);
    const postfix = toPostfix(expression, (name) => know(calculator, name).isOptional);
    return [{ of, postfix, uses: namesIn(expression) }];
  });
}
