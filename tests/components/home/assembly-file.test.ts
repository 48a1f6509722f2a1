import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { parse } from 'yaml';
import { calculators } from '../../../src/calculators/index.ts';
import { assemblyFile, type Colours } from '../../../src/components/home/assembly-file.ts';
import { exampleSizes } from '../../../src/components/home/example-sizes.ts';

const tokens = readFileSync('src/styles/tokens.css', 'utf8');

function colour(name: keyof Colours): Colours['ink'] {
  const [, day, night] =
    new RegExp(`--${name}: light-dark\\((#\\w+), (#\\w+)\\)`, 'u').exec(tokens) ?? [];
  if (day === undefined || night === undefined) throw new Error(`No token --${name}.`);
  return { day, night };
}

const topics = readdirSync('content/topics')
  .map((id) => {
    const [, front = ''] = readFileSync(`content/topics/${id}/index.mdx`, 'utf8').split(/^---$/mu);
    const { title, order } = parse(front) as { title: string; order: number };
    return { id, title, order };
  })
  .toSorted((a, b) => a.order - b.order);

it('is the picture that the README shows; after a change of the drawing `npx vitest -u` writes it anew', async () => {
  const drawn = assemblyFile(exampleSizes(Object.values(calculators), 'candidate'), topics, {
    ink: colour('ink'),
    paper: colour('paper'),
  });
  await expect(drawn).toMatchFileSnapshot('../../../assembly.svg');
  expect(readFileSync('README.md', 'utf8')).toContain('](assembly.svg)');
});
