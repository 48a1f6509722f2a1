import type { SetId } from '../../calculators/define.ts';
import { notebook } from '../../notebook/notebook.svelte.ts';
import { isOther, readThen } from '../../notebook/then.ts';
import { bothSets } from '../../notebook/values.ts';
import type { WorkView } from '../../notebook/work.svelte.ts';
import { isShown, present } from './present.ts';

/** A result that the same numbers gave otherwise before. */
export interface ChangedResult {
  readonly key: string;
  readonly label: string;
  readonly then: string;
  readonly now: string;
}

/**
 * The results of some calculators that are others than a link or a file says they were.
 *
 * @param was what it says, as `writeThen` wrote it
 * @param resultOf a result as it is now [SI]
 */
export function changedSince(
  was: string | undefined,
  works: readonly WorkView[],
  resultOf: (work: WorkView, set: SetId, output: string) => number | undefined,
): readonly ChangedResult[] {
  return (readThen(was)?.results ?? []).flatMap((result) => {
    const work = works.find(({ calculator }) => calculator.id === result.calculator);
    const output = work?.calculator.outputs[result.output];
    if (work === undefined || output === undefined || !isShown(output)) return [];
    return bothSets.flatMap((set) => {
      const before = result[set];
      const now = resultOf(work, set, result.output);
      if (!isOther(before, now)) return [];
      return [
        {
          key: `${result.calculator}.${result.output}.${set}`,
          label: `${output.label}, ${notebook.setName(set)}`,
          then: present(output, before, notebook.system),
          now: now === undefined ? 'no result' : present(output, now, notebook.system),
        },
      ];
    });
  });
}
