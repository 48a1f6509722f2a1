import type { AnyCalculator, SetId } from '../../calculators/define.ts';
import { demoWork } from '../calculator/demo-work.ts';
import { isShown, present } from '../results/present.ts';
import { partsOfDrawing, type DrawnTopic, type PartOfDrawing } from './assembly-topics.ts';

/** The number that stands for a topic, of both sets of the example, as the page prints it. */
export interface Headline extends Readonly<Record<SetId, string>> {
  readonly words: string;
}

/** True for topics that have a part in the drawing. */
export function isDrawn(topic: string): topic is DrawnTopic {
  return Object.hasOwn(partsOfDrawing, topic);
}

/**
 * The number of a topic, from the calculator that has its name or that its part of the drawing names.
 *
 * @param calculators every calculator by its id
 * @throws if the calculator has no such number
 */
export function headline(
  calculators: Readonly<Record<string, AnyCalculator>>,
  topic: DrawnTopic,
): Headline {
  const { out, words, calculator: named = topic }: PartOfDrawing = partsOfDrawing[topic];
  const calculator = calculators[named];
  const output = calculator?.outputs[out];
  if (calculator === undefined || output === undefined || !isShown(output))
    throw new Error(`“${topic}” has no number “${out}” to show at its part.`);
  const { baseline, candidate } = demoWork(calculator).sets;
  const of = (set: typeof baseline): string =>
    present(output, set.output?.[out], 'metric', set.uncertainty?.[out]?.plusMinus);
  return { words, baseline: of(baseline), candidate: of(candidate) };
}
