import { reversalLoad } from '../../../src/calculators/loads/reversal-load.ts';
import type { AnyCalculator } from '../../../src/calculators/define.ts';
import { makeQuestion } from '../../../src/calculators/practice/make.ts';
import { plansOf } from '../../../src/calculators/practice/plan.ts';
import { linesOf } from '../../../src/components/practice/lines-of.ts';
import { fromSI } from '../../../src/units/units.ts';
import { must } from '../../calculators/must.ts';

/** An exercise of the reversal load by its seed: the address of its page, and its answer as a reader writes it. */
export function pullExercise(seed: number): { readonly path: string; readonly answer: string } {
  const calculator: AnyCalculator = reversalLoad;
  const plan = must(
    plansOf(calculator, linesOf(calculator)).find(({ id }) => id === 'reversal-load.partingPull'),
  );
  const question = makeQuestion(calculator, plan, seed);
  if (question.kind !== 'number') throw new Error('It asks for a number.');
  return {
    path: `reversal-load/practice/#${plan.id}/1/${String(seed)}`,
    answer: `${fromSI(question.answer, 'kN').toFixed(4)} kN`,
  };
}
