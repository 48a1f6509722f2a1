import { numberIn } from '../../calculators/evaluate.ts';
import type { Was } from '../../notebook/then.ts';
import type { SetView, WorkView } from '../../notebook/work.svelte.ts';

/** The first result of a calculator [SI], of the sets that have one of the numbers that stand there. */
export function headlineOf({ calculator, sets }: WorkView): Was {
  const output = calculator.answers[0] ?? '';
  const of = ({ stale, output: results }: SetView): number | undefined =>
    stale ? undefined : numberIn(results?.[output]);
  const [baseline, candidate] = [of(sets.baseline), of(sets.candidate)];
  return {
    calculator: calculator.id,
    output,
    ...(baseline === undefined ? {} : { baseline }),
    ...(candidate === undefined ? {} : { candidate }),
  };
}
