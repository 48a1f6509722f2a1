import type { NumberEntry, SetId, Value } from '../../calculators/define.ts';
import { numberIn, outputsOrNone } from '../../calculators/evaluate.ts';
import type { SetView, WorkView } from '../../notebook/work.svelte.ts';

/** One number in which the sets differ, and what the first result is when it alone is changed [SI]. */
export interface Factor {
  readonly entry: NumberEntry;
  readonly before: number;
  readonly after: number;
  /** Undefined where the model refuses the mixture of both sets. */
  readonly result: number | undefined;
}

/** Both sets worked through a calculator, as far as it is asked for here. */
export interface Worked {
  readonly calculator: WorkView['calculator'];
  readonly sets: Readonly<Record<SetId, Pick<SetView, 'input' | 'output'>>>;
}

/** What stands in both sets, where both have numbers. */
function inputsOf({ sets }: Worked): readonly Readonly<Record<string, Value>>[] | undefined {
  const { input: before } = sets.baseline;
  const { input: after } = sets.candidate;
  return before === undefined || after === undefined ? undefined : [before, after];
}

/**
 * The numbers that a calculator turns on and in which the two sets differ, each with what the first result comes to
 * when it alone is that of the candidate and all else is the baseline: one engine twice, one part different.
 */
export function factorsOf(work: Worked): readonly Factor[] {
  const [before, after] = inputsOf(work) ?? [];
  if (before === undefined || after === undefined) return [];
  const { calculator } = work;
  return calculator.asks.flatMap((name) => {
    const entry = calculator.inputs[name];
    const [one, other] = [before[name], after[name]];
    if (entry?.type !== 'number' || typeof one !== 'number' || typeof other !== 'number') return [];
    if (one === other) return [];
    const output = outputsOrNone(calculator, { ...before, [name]: other });
    const result = numberIn(output?.[calculator.answers[0] ?? '']);
    return [{ entry, before: one, after: other, result }];
  });
}
