import { readersOwnInputs } from '../../calculators/readers-own.ts';
import type { AnyCalculator } from '../../calculators/define.ts';
import { calculators } from '../../calculators/index.ts';

/** A calculator of the spec sheet, told by the build so that the browser fetches those alone that have numbers. */
export interface SpecCalculator {
  readonly id: string;
  readonly title: string;
  /** Address of its sheet. */
  readonly at: string;
  /** Without these it has no result that is the builder's own. */
  readonly needs: readonly string[];
}

const declared: Readonly<Record<string, AnyCalculator>> = calculators;

/**
 * The calculators of some topics, each once, in their order. Runs when the page is built.
 *
 * @param to the address of a path of the site
 */
export function specCalculators(
  topics: readonly { readonly id: string; readonly calculators: readonly string[] }[],
  to: (path: string) => string,
): readonly SpecCalculator[] {
  const seen = new Set<string>();
  return topics.flatMap(({ id: topic, calculators: ids }) =>
    ids.flatMap((id): readonly SpecCalculator[] => {
      const calculator = declared[id];
      if (calculator === undefined || seen.has(id)) return [];
      seen.add(id);
      const needs = readersOwnInputs(calculator).map(({ name }) => name);
      // One that asks for nothing of the builder's has nothing to say of the job.
      return needs.length === 0
        ? []
        : [{ id, title: calculator.title, at: to(`${topic}/#calculator-${id}`), needs }];
    }),
  );
}

/** True for a result that the sheet has: the main ones of its calculator. */
export function isHeadline({ answers, outputs }: AnyCalculator, name: string): boolean {
  const output = outputs[name];
  return name === answers[0] || (output?.type !== 'series' && output?.main === true);
}

/** A calculator with more numbers missing than this is not near enough to be spoken of. */
export const nearly = 6;
