/** A topic and what should be read before it. */
export interface Needing {
  readonly id: string;
  readonly needs: readonly string[];
}

/**
 * All that must be read before a topic, each once, whatever stands between.
 *
 * @throws Error for a need that is no topic, and for topics that need each other in a circle, named in their order
 */
export function allBefore(id: string, topics: readonly Needing[]): ReadonlySet<string> {
  const before = new Set<string>();
  const gather = (of: string, way: readonly string[]): void => {
    const topic = topics.find((one) => one.id === of);
    if (topic === undefined) throw new Error(`${way.at(-1) ?? ''} needs ${of}: no such topic.`);
    if (way.includes(of)) throw new Error(`A circle of needs: ${[...way, of].join(' → ')}.`);
    for (const need of topic.needs) {
      gather(need, [...way, of]);
      before.add(need);
    }
  };
  gather(id, []);
  return before;
}

/**
 * The column of each topic on the map: to the right of all that it needs, and no further left of what needs it than
 * that asks for, so that the lines stay short.
 */
export function columnsOf(topics: readonly Needing[]): ReadonlyMap<string, number> {
  const earliest = new Map<string, number>();
  const first = (id: string): number => {
    const known = earliest.get(id);
    if (known !== undefined) return known;
    const needs = topics.find((topic) => topic.id === id)?.needs ?? [];
    const column = needs.length === 0 ? 0 : 1 + Math.max(...needs.map(first));
    earliest.set(id, column);
    return column;
  };
  // Refuses circles, on which the search above would never end.
  for (const { id } of topics) allBefore(id, topics);
  return new Map(
    topics.map(({ id }) => {
      const after = topics
        .filter(({ needs }) => needs.includes(id))
        .map((topic) => first(topic.id));
      // Moving right what others wait for would push them on: only what needs nothing itself may move.
      const needsNothing = first(id) === 0;
      return [id, needsNothing && after.length > 0 ? Math.min(...after) - 1 : first(id)];
    }),
  );
}
