import { expect, test } from 'vitest';
import { rehypeSections } from '../../src/build/rehype-sections.js';

const element = (tagName: string, text: string) => ({
  type: 'element',
  tagName,
  properties: {},
  children: [{ type: 'text', value: text }],
});
const caution = { type: 'mdxJsxFlowElement', name: 'Caution', children: [] };
const moved = { type: 'mdxJsxFlowElement', name: 'Moved', children: [] };

function run(path: string) {
  const tree = {
    type: 'root',
    children: [
      element('p', 'lead'),
      element('h2', 'one'),
      element('p', 'first'),
      element('h2', 'two'),
      element('p', 'second'),
      caution,
      element('p', 'more'),
      moved,
    ],
  };
  rehypeSections({ open: 1 })(tree as never, { path, data: {} } as never);
  return tree.children.map((child) => ('tagName' in child ? child.tagName : child.name));
}

test('folds what comes after the open sections, but no caution and no line that leads on', () => {
  expect(run('content/topics/bobweight/index.mdx')).toEqual([
    'p',
    'h2',
    'p',
    'details',
    'Caution',
    'Moved',
  ]);
});

test('leaves other texts alone', () => {
  expect(run('content/other.md')).toHaveLength(8);
});

test('sets runs of plain prose in a box of their own, between what takes the whole width', () => {
  const figure = { type: 'mdxJsxFlowElement', name: 'Figure', children: [] };
  const tree = {
    type: 'root',
    children: [
      element('p', 'one'),
      element('ul', 'two'),
      figure,
      element('p', 'alone'),
      element('h2', 'first'),
      element('p', 'three'),
      caution,
      element('h2', 'folded'),
      element('p', 'four'),
      element('p', 'five'),
    ],
  };
  rehypeSections({ open: 1 })(
    tree as never,
    { path: 'content/topics/a/index.mdx', data: {} } as never,
  );
  const names = (nodes: readonly object[]): readonly string[] =>
    nodes.map((each) => String('tagName' in each ? each.tagName : 'name' in each && each.name));
  expect(names(tree.children)).toEqual(['div', 'Figure', 'p', 'h2', 'div', 'details']);
  const boxes = JSON.stringify(tree).match(/"columns"/gu);
  expect(boxes).toHaveLength(3);
});
