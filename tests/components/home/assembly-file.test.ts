import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { parse } from 'yaml';
import { calculators } from '../../../src/calculators/index.ts';
import { assemblyFile, placeFile } from '../../../src/components/home/assembly-file.ts';
import { partsOfDrawing, type DrawnTopic } from '../../../src/components/home/assembly-topics.ts';
import { coloursOf } from '../../../src/components/home/colours.ts';
import { exampleSizes } from '../../../src/components/home/example-sizes.ts';

const topics = readdirSync('content/topics')
  .map((id) => {
    const [, front = ''] = readFileSync(`content/topics/${id}/index.mdx`, 'utf8').split(/^---$/mu);
    const { title, order } = parse(front) as { title: string; order: number };
    return { id, title, order };
  })
  .toSorted((a, b) => a.order - b.order);

const colours = coloursOf(readFileSync('src/styles/tokens.css', 'utf8'));
const sizes = exampleSizes(Object.values(calculators), 'candidate');

it('is the picture that the README shows; after a change of the drawing `npx vitest -u` writes it anew', async () => {
  const drawn = assemblyFile(sizes, topics, colours);
  await expect(drawn).toMatchFileSnapshot('../../../assembly.svg');
  expect(readFileSync('README.md', 'utf8')).toContain('](assembly.svg)');
});

it('shows each topic’s own part in it, and no other’s', () => {
  const shapes = (Object.keys(partsOfDrawing) as DrawnTopic[]).map(
    (topic) => /class="here" d="([^"]+)"/u.exec(placeFile(sizes, topic, colours))?.[1],
  );
  expect(shapes).not.toContain(undefined);
  expect(new Set(shapes).size).toBe(shapes.length);
});
