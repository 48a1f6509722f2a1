import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { parse } from 'yaml';
import { pathMap } from '../../../src/components/path/map.ts';
import { allBefore, columnsOf, type Needing } from '../../../src/components/path/needs.ts';

interface Topic extends Needing {
  readonly order: number;
}
const topics: readonly Topic[] = readdirSync('content/topics')
  .map((id) => {
    const page = readFileSync(`content/topics/${id}/index.mdx`, 'utf8');
    const front = parse(/^---\n([\s\S]*?)\n---/u.exec(page)?.[1] ?? '') as Partial<Topic>;
    return { id, order: front.order ?? Number.NaN, needs: front.needs ?? [] };
  })
  .sort((one, other) => one.order - other.order);
const orderOf = new Map(topics.map(({ id, order }) => [id, order]));

describe('what a topic needs', () => {
  it.each(topics)('$id: topics that come before it in the learning order', ({ id, needs }) => {
    for (const need of needs)
      expect(orderOf.get(need), `${id} needs ${need}`).toBeLessThan(orderOf.get(id) ?? 0);
  });

  it.each(topics)('$id: none that another of them needs anyway', ({ needs }) => {
    const further = needs.flatMap((need) => [...allBefore(need, topics)]);
    expect(needs.filter((need) => further.includes(need))).toEqual([]);
  });

  it('leaves no topic alone: each needs one or is needed', () => {
    const needed = new Set(topics.flatMap(({ needs }) => needs));
    const alone = topics.filter(({ id, needs }) => needs.length === 0 && !needed.has(id));
    expect(alone).toEqual([]);
  });

  test('is all that stands before it', () => {
    const chain = [
      { id: 'a', needs: [] },
      { id: 'b', needs: ['a'] },
      { id: 'c', needs: ['b'] },
    ];
    expect([...allBefore('c', chain)]).toEqual(['a', 'b']);
    expect(allBefore('a', chain).size).toBe(0);
  });

  test('may be no circle, and no topic that is not there', () => {
    const circle = [
      { id: 'a', needs: ['c'] },
      { id: 'b', needs: ['a'] },
      { id: 'c', needs: ['b'] },
    ];
    expect(() => columnsOf(circle)).toThrow('a → c → b → a');
    expect(() => columnsOf([{ id: 'a', needs: ['a'] }])).toThrow('a → a');
    expect(() => columnsOf([{ id: 'a', needs: ['b'] }])).toThrow('a needs b: no such topic');
  });
});

describe('the map', () => {
  const map = pathMap(topics);
  const columns = columnsOf(topics);

  it('shows every topic once, to the right of all that it needs', () => {
    const shown = map.columns.flatMap((places) => places.flatMap(({ id }) => id ?? []));
    expect([...shown].sort()).toEqual(topics.map(({ id }) => id).sort());
    for (const { id, needs } of topics)
      for (const need of needs)
        expect(columns.get(need), `${need} before ${id}`).toBeLessThan(columns.get(id) ?? 0);
  });

  it('leads a line of steps of one column from each need to its topic', () => {
    const long = topics.flatMap(({ id, needs }) =>
      needs.map((need) => (columns.get(id) ?? 0) - (columns.get(need) ?? 0)),
    );
    expect(map.lines).toHaveLength(long.reduce((sum, steps) => sum + steps, 0));
    for (const { column, from, to } of map.lines) {
      expect(column).toBeGreaterThanOrEqual(0);
      expect(column).toBeLessThan(map.columns.length - 1);
      for (const row of [from, to]) {
        expect(row).toBeGreaterThan(0);
        expect(row).toBeLessThan(map.rows);
      }
    }
  });

  it('moves what needs nothing up to what first needs it', () => {
    const moved = columnsOf([
      { id: 'a', needs: [] },
      { id: 'b', needs: ['a'] },
      { id: 'late', needs: [] },
      { id: 'c', needs: ['b', 'late'] },
      { id: 'alone', needs: [] },
    ]);
    expect([...moved.values()]).toEqual([0, 1, 1, 2, 0]);
  });

  it('keeps lines from crossing where they need not', () => {
    const crossed = pathMap([
      { id: 'a', needs: [] },
      { id: 'b', needs: [] },
      { id: 'of-b', needs: ['b'] },
      { id: 'of-a', needs: ['a'] },
    ]);
    expect(crossed.columns.map((places) => places.map(({ id }) => id))).toEqual([
      ['a', 'b'],
      ['of-a', 'of-b'],
    ]);
    expect(crossed.lines.every(({ from, to }) => from === to)).toBe(true);
  });
});
