import type { NumberEntry, SetId } from '../../calculators/define.ts';
import { numberIn, outputsOrNone } from '../../calculators/evaluate.ts';
import type { SetView, WorkView } from '../../notebook/work.svelte.ts';

/** One number in which the sets differ [SI]. */
export interface Factor {
  readonly entry: NumberEntry;
  readonly before: number;
  readonly after: number;
}

/** Both sets worked through a calculator, as far as it is asked for here. */
export interface Worked {
  readonly calculator: WorkView['calculator'];
  readonly sets: Readonly<Record<SetId, Pick<SetView, 'input' | 'output'>>>;
}

/** The numbers that a calculator turns on and in which the two sets differ; none while a set has no numbers. */
export function factorsOf({ calculator, sets }: Worked): readonly Factor[] {
  const { input: before } = sets.baseline;
  const { input: after } = sets.candidate;
  if (before === undefined || after === undefined) return [];
  return calculator.asks.flatMap((name) => {
    const entry = calculator.inputs[name];
    const [one, other] = [before[name], after[name]];
    if (entry?.type !== 'number' || typeof one !== 'number' || typeof other !== 'number') return [];
    return one === other ? [] : [{ entry, before: one, after: other }];
  });
}

/**
 * What the first result comes to [SI] when one number alone is the candidate's and all else the baseline's: one engine
 * twice, one part different. Undefined where the model refuses that mixture.
 */
export function aloneWith(
  { calculator, sets }: Worked,
  { entry, after }: Factor,
): number | undefined {
  const output = outputsOrNone(calculator, { ...sets.baseline.input, [entry.name]: after });
  return numberIn(output?.[calculator.answers[0] ?? '']);
}
