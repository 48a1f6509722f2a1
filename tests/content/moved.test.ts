import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import type { AnyCalculator } from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';
import { movedFrom } from '../../src/notebook/moved.ts';

const declared: Readonly<Record<string, AnyCalculator>> = calculators;
const topics = readdirSync('content/topics');
const parts = topics.flatMap(movedFrom);

/** The names of all quantities that a topic's page asks for. */
function asked(topic: string): readonly string[] {
  const [, front = ''] = readFileSync(`content/topics/${topic}/index.mdx`, 'utf8').split(/^---$/mu);
  const own = (parse(front) as { calculators: readonly string[] }).calculators;
  return own.flatMap((id) => Object.keys(declared[id]?.inputs ?? {}));
}

test('parts that became topics are told by a quantity that no other topic asks for', () => {
  expect(parts.length).toBeGreaterThan(0);
  for (const { to, sign } of parts)
    expect(
      topics.filter((topic) => asked(topic).includes(sign)),
      sign,
    ).toEqual([to]);
});

test('the page that a part stood on says where it stands now', () => {
  for (const { from, to } of parts)
    expect(readFileSync(`content/topics/${from}/index.mdx`, 'utf8')).toContain(`<Moved to="${to}"`);
});
