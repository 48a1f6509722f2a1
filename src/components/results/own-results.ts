import type { Entry, SetId } from '../../calculators/define.ts';
import { readersOwnInputs } from '../../calculators/readers-own.ts';
import { notebook } from '../../notebook/notebook.svelte.ts';
import { bothSets } from '../../notebook/values.ts';
import type { WorkView } from '../../notebook/work.svelte.ts';
import { resultNow } from './results-now.ts';

/** What a set lacks before its result is one of the builder's numbers alone. */
export function lackedBy({ calculator }: WorkView, set: SetId): readonly Entry[] {
  return readersOwnInputs(calculator).filter((entry) => !notebook.has(set, entry));
}

/** The numbers that stand for the builder's in a result, since they are assumed, looked up or decided by custom. */
export function assumedBy(work: WorkView): readonly Entry[] {
  return Object.values(work.calculator.inputs).filter(
    (entry) => entry.optional !== true && bothSets.some((set) => notebook.isExample(set, entry)),
  );
}

/** A result of a set [SI]; undefined as long as an example has a part in it. */
export function ownResult(work: WorkView, set: SetId, output: string): number | undefined {
  return lackedBy(work, set).length > 0 ? undefined : resultNow(work, set, output);
}
