import { expect, test } from 'vitest';
import { rehypePractise } from '../../src/build/rehype-practise.js';

const element = (tagName: string, ...children: readonly unknown[]) => ({
  type: 'element',
  tagName,
  properties: {},
  children,
});
const attribute = (name: string, value: string) => ({ type: 'mdxJsxAttribute', name, value });
const number = (of: string, out: string) => ({
  type: 'mdxJsxTextElement',
  name: 'V',
  attributes: [attribute('of', of), attribute('out', out)],
  children: [],
});
const sheet = (id: string) => ({
  type: 'mdxJsxFlowElement',
  name: 'Calculator',
  attributes: [attribute('id', id)],
  children: [],
});

interface Node {
  readonly tagName?: string;
  readonly name?: string;
  readonly attributes?: readonly { readonly name: string; readonly value: string }[];
}
function run(path: string): readonly Node[] {
  const tree = {
    type: 'root',
    children: [
      element('p', number('bobweight', 'before')),
      element('h2', 'one'),
      element('p', number('bobweight', 'bobweight'), element('b', number('bobweight', 'rotating'))),
      element('h2', 'two'),
      element('p'),
      element('h2', 'three'),
      sheet('bobweight-error'),
    ],
  };
  rehypePractise()(tree as never, { path } as never);
  return tree.children as readonly Node[];
}

test('leads to an exercise from the end of each section that has numbers, and from no other', () => {
  const nodes = run('content/topics/bobweight/index.mdx');
  expect(nodes.map((node) => node.tagName ?? node.name)).toEqual([
    'p',
    'h2',
    'p',
    'Practise',
    'h2',
    'p',
    'h2',
    'Calculator',
    'Practise',
  ]);
  const lines = nodes.filter(({ name }) => name === 'Practise');
  expect(
    lines.map(({ attributes = [] }) =>
      Object.fromEntries(attributes.map(({ name, value }) => [name, value])),
    ),
  ).toEqual([
    { topic: 'bobweight', numbers: 'bobweight.bobweight bobweight.rotating', sheets: '' },
    { topic: 'bobweight', numbers: '', sheets: 'bobweight-error' },
  ]);
});

test('a section that names its exercise keeps its own line, and gets no other', () => {
  const own = {
    type: 'mdxJsxFlowElement',
    name: 'Practise',
    attributes: [attribute('of', 'rod-angularity.thrust')],
    children: [],
  };
  const tree = { type: 'root', children: [element('h2', 'one'), sheet('rod-angularity'), own] };
  const path = 'content/topics/rod-angularity/index.mdx';
  rehypePractise()(tree as never, { path } as never);
  expect(tree.children).toHaveLength(3);
  expect(own.attributes).toEqual([
    attribute('of', 'rod-angularity.thrust'),
    attribute('topic', 'rod-angularity'),
  ]);
});

test('leaves other pages as they are', () => {
  expect(run('src/pages/index.astro')).toHaveLength(7);
});
