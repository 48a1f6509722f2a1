import { bothSets } from '../../notebook/values.ts';
import type { WorkView } from '../../notebook/work.svelte.ts';
import type { System } from '../../units/kinds.ts';
import type { TypedField } from '../form/typing.svelte.ts';
import { isShown, present } from './present.ts';

/**
 * What a calculator says aloud: the problem of one field, else the main result of both sets. Undefined where there is
 * nothing to say yet, since the number at fault is still being written.
 */
export function sentenceOf(
  work: WorkView,
  writing: TypedField | undefined,
  system: System,
): string | undefined {
  for (const set of bothSets) {
    const { fields, fault } = work.sets[set].evaluation;
    for (const [name, { problem }] of Object.entries(fields)) {
      if (problem === undefined) continue;
      const isBeingWritten = writing?.set === set && writing.name === name;
      return isBeingWritten ? undefined : problem;
    }
    if (fault !== undefined) return `The ${set} has no result. ${fault}`;
  }
  const [name, output] =
    Object.entries(work.calculator.outputs).find(
      ([, each]) => isShown(each) && each.main === true,
    ) ?? [];
  if (name === undefined || output === undefined || !isShown(output)) return undefined;
  const results = bothSets.map(
    (set) => `${set} ${present(output, work.sets[set].output?.[name], system)}`,
  );
  return `${output.label}: ${results.join(', ')}.`;
}
