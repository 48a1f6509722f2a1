import { describe, expect, test } from 'vitest';
import { rehypeTerms } from '../../src/build/rehype-terms.js';

interface Node {
  type: string;
  tagName?: string;
  name?: string;
  value?: string;
  properties?: Record<string, unknown>;
  attributes?: readonly { name: string; value: string }[];
  children?: Node[];
}

const terms = [
  { id: 'journal', term: 'journal', meaning: 'What runs in a bearing.' },
  { id: 'main', term: 'main journal', meaning: 'A journal that the crank turns on.' },
  { id: 'tdc', term: 'TDC', also: 'top dead centre', meaning: 'The upper turning place.' },
  { id: 'job', term: 'job', meaning: 'What is on the bench.', everyday: true as const },
];

const text = (value: string): Node => ({ type: 'text', value });
function element(tagName: string, ...children: (Node | string)[]): Node {
  return {
    type: 'element',
    tagName,
    properties: {},
    children: children.map((child) => (typeof child === 'string' ? text(child) : child)),
  };
}
const component = (name: string, ...children: Node[]): Node => ({
  type: 'mdxJsxFlowElement',
  name,
  attributes: [],
  children,
});

function links(node: Node): readonly Node[] {
  if (node.tagName === 'a') return [node];
  return (node.children ?? []).flatMap(links);
}

/** The words that a page marks, each with the place that it leads to. */
function marks(children: Node[], most = 15, path = 'content/topics/bobweight/index.mdx') {
  const tree = { type: 'root', children };
  rehypeTerms({ terms, most })(tree as never, { path, data: {} } as never);
  return links(tree).map(
    ({ properties, children: [words] = [] }) =>
      `${words?.value ?? ''} ${String(properties?.['href'])}`,
  );
}

describe('marks', () => {
  test('the first place of each term, in either case, singular or plural, by either name', () => {
    expect(
      marks([
        element('p', 'Journals and a journal; at Top\nDead Centre, that is ', element('em', 'TDC')),
        element('ul', element('li', 'a main-journal.')),
      ]),
    ).toEqual([
      'Journals /glossary/#journal',
      'Top\nDead Centre /glossary/#tdc',
      'main-journal /glossary/#main',
    ]);
  });

  test('the longest name, and whole words only', () => {
    expect(marks([element('p', 'A main journal, journalled, a sub-journal, TDCx.')])).toEqual([
      'main journal /glossary/#main',
    ]);
  });

  test('no more than a page has room for, and no everyday word', () => {
    expect(marks([element('p', 'The job: a journal at TDC.')], 1)).toEqual([
      'journal /glossary/#journal',
    ]);
  });

  test('the question that a page opens with, before the text that follows it', () => {
    const asked = {
      ...component('Predict', element('p', 'a journal')),
      attributes: [
        { name: 'id', value: 'x' },
        { name: 'question', value: 'Which journal, at TDC?' },
      ],
    };
    const children = [asked, element('p', 'A journal, and a main journal.')];
    expect(marks(children)).toEqual([
      'journal /glossary/#journal',
      'TDC /glossary/#tdc',
      'main journal /glossary/#main',
    ]);
    const spoken = asked.children?.find(({ properties }) => properties?.['slot'] === 'question');
    expect(spoken?.children?.map(({ value }) => value).filter(Boolean)).toEqual([
      'Which ',
      ', at ',
      '?',
    ]);
  });

  test('nothing in headings, links, code, formulas, tables, summaries and answers', () => {
    const untouched = ['h2', 'code', 'math', 'summary', 'table'].map((name) =>
      element(name, 'a journal'),
    );
    const answer = component('Predict', element('p', 'a journal'));
    expect(marks([...untouched, answer])).toEqual([]);
    expect(marks([component('Aside', element('p', 'a journal'))])).toHaveLength(1);
  });

  test('nothing in other texts', () => {
    expect(marks([element('p', 'a journal')], 15, 'content/other.md')).toEqual([]);
  });
});

test('leaves the words as they were and puts the meaning beside them', () => {
  const paragraph = element('p', 'At TDC it stops.');
  marks([paragraph]);
  expect(paragraph.children).toEqual([
    text('At '),
    {
      type: 'element',
      tagName: 'a',
      properties: { className: ['term'], href: '/glossary/#tdc', ariaDescribedBy: ['term-tdc'] },
      children: [text('TDC')],
    },
    {
      type: 'element',
      tagName: 'span',
      properties: { className: ['term-meaning'], id: 'term-tdc', role: 'tooltip' },
      children: [text('The upper turning place.')],
    },
    text(' it stops.'),
  ]);
});
