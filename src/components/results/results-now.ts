import type { SetId } from '../../calculators/define.ts';
import { numberIn } from '../../calculators/evaluate.ts';
import type { Was } from '../../notebook/then.ts';
import type { WorkView } from '../../notebook/work.svelte.ts';

/** A result of a set [SI]; undefined where the numbers that stand there give none. */
export function resultNow({ sets }: WorkView, set: SetId, output: string): number | undefined {
  const { stale, output: results } = sets[set];
  return stale ? undefined : numberIn(results?.[output]);
}

/**
 * A result of both sets as it is kept with a link or a file.
 *
 * @param resultOf which result of a set counts
 */
export function resultToKeep(work: WorkView, output: string, resultOf = resultNow): Was {
  const baseline = resultOf(work, 'baseline', output);
  const candidate = resultOf(work, 'candidate', output);
  return {
    calculator: work.calculator.id,
    output,
    ...(baseline === undefined ? {} : { baseline }),
    ...(candidate === undefined ? {} : { candidate }),
  };
}

/** The first result of a calculator, as it is kept. */
export function headlineOf(work: WorkView): Was {
  return resultToKeep(work, work.calculator.answers[0] ?? '');
}
