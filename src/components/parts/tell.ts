import { benchGroups } from '../../calculators/bench.ts';
import type { AnyCalculator } from '../../calculators/define.ts';
import { calculators } from '../../calculators/index.ts';
import { quantityNotes } from '../../calculators/quantity-notes.ts';
import type { PartAbout, PartsAbout } from './about.ts';

/** A topic's page, and the calculators on it. */
export interface TopicOfParts {
  readonly id: string;
  readonly title: string;
  readonly calculators: readonly string[];
}

const declared: Readonly<Record<string, AnyCalculator>> = calculators;

/**
 * What each row of the parts table is needed for and how it is measured, from the declarations. Runs when the page is
 * built.
 *
 * @param topics in learning order
 * @param to the address of a path of the site
 */
export function tellOfParts(
  topics: readonly TopicOfParts[],
  to: (path: string) => string,
): PartsAbout {
  const used = new Set<string>();
  const of: Record<string, PartAbout> = {};
  for (const name of benchGroups.flatMap(({ names }) => names)) {
    const takers = topics.flatMap(({ id, calculators: ids }) =>
      ids
        .map((calculator) => ({ topic: id, calculator: declared[calculator] }))
        .filter(({ calculator }) => calculator?.inputs[name] !== undefined),
    );
    const asks = ({ calculator }: (typeof takers)[number]): boolean =>
      calculator?.asks.includes(name) === true;
    const inOrder = [...takers.filter(asks), ...takers.filter((taker) => !asks(taker))];
    const [first] = inOrder;
    if (first === undefined) throw new Error(`No topic takes “${name}” of the parts table.`);
    const wanted = [...new Set(inOrder.map(({ topic }) => topic))];
    for (const topic of wanted) used.add(topic);
    of[name] = {
      ...quantityNotes[name],
      at: to(`${first.topic}/#calculator-${first.calculator?.id ?? ''}`),
      for: wanted,
      isOptional: takers.every(({ calculator }) => calculator?.inputs[name]?.optional === true),
    };
  }
  return {
    topics: Object.fromEntries(
      topics
        .filter(({ id }) => used.has(id))
        .map(({ id, title }) => [id, { title, href: to(`${id}/`) }]),
    ),
    of,
  };
}
