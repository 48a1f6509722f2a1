import { calculators } from '../../calculators/index.ts';
import type { AnyCalculator, SetId } from '../../calculators/define.ts';
import { demoWork } from '../calculator/demo-work.ts';
import { isShown, present } from '../results/present.ts';
import { partsOfDrawing, type DrawnTopic, type PartOfDrawing } from './assembly-topics.ts';

/** The number that stands for a topic, of both sets of the example, as the page prints it. */
export interface Headline extends Readonly<Record<SetId, string>> {
  readonly words: string;
}

const all: Readonly<Record<string, AnyCalculator>> = calculators;

/** True for topics that have a part in the drawing. */
export function isDrawn(topic: string): topic is DrawnTopic {
  return Object.hasOwn(partsOfDrawing, topic);
}

/**
 * The number of a topic, from the calculator that has its name.
 *
 * @throws if the calculator has no such number, or the drawing no part for the topic
 */
export function headline(topic: string): Headline {
  if (!isDrawn(topic)) throw new Error(`The drawing on the first page has no part for “${topic}”.`);
  const { out, words }: PartOfDrawing = partsOfDrawing[topic];
  const calculator = all[topic];
  const output = calculator?.outputs[out];
  if (calculator === undefined || output === undefined || !isShown(output))
    throw new Error(`“${topic}” has no number “${out}” to show at its part.`);
  const { baseline, candidate } = demoWork(calculator).sets;
  const of = (set: typeof baseline): string =>
    present(output, set.output?.[out], 'metric', set.uncertainty?.[out]?.plusMinus);
  return { words, baseline: of(baseline), candidate: of(candidate) };
}
