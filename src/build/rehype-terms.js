import { readFileSync } from 'node:fs';
import { parse } from 'yaml';

/**
 * Rehype plugin for topic pages and lessons. Where a term of the glossary first stands in the running text, it becomes a link to
 * its place there, with its meaning behind it for those who only point at it. So it is in the question that a page opens
 * with; headings, links, code, formulas, tables and the answers of questions stay as they are.
 *
 * @param {{ terms?: readonly Term[], most?: number }} options `terms` are those of the glossary; `most` is how many
 *   a page marks at most, the first ones
 * @returns {(tree: import('hast').Root, file: import('vfile').VFile) => void}
 */
export function rehypeTerms({ terms = readGlossary(), most = 30 } = {}) {
  const find = finder(terms);
  return (tree, file) => {
    if (!/content[\\/](?:topics|lessons)[\\/]/u.test(file.path ?? '')) return;
    mark(tree, { find, left: most, done: new Set() });
  };
}

/**
 * @typedef {{ id: string, term: string, also?: string, meaning: string, everyday?: boolean }} Term
 * @typedef {(text: string) => Iterable<{ at: number, words: string, term: Term }>} Find
 * @typedef {{ find: Find, left: number, done: Set<string> }} Page
 */

/** @returns {Term[]} */
function readGlossary() {
  return parse(readFileSync('content/glossary.yaml', 'utf8'));
}

/**
 * Finds whole words, in either case, singular or plural, with a space or a hyphen between them; the longest name wins.
 *
 * @param {readonly Term[]} terms
 * @returns {Find}
 */
function finder(terms) {
  const names = new Map(
    terms
      .filter(({ everyday }) => everyday !== true)
      .flatMap((term) =>
        [term.term, term.also].flatMap((name) =>
          name === undefined ? [] : [/** @type {const} */ ([plain(name), term])],
        ),
      ),
  );
  const longestFirst = [...names.keys()].sort((one, other) => other.length - one.length);
  const parts = longestFirst.map((name) => name.replaceAll(' ', String.raw`[\s-]+`));
  const pattern = String.raw`(?<![\p{L}\p{N}-])(${parts.join('|')})(?:e?s)?(?![\p{L}\p{N}-])`;
  return function* (text) {
    if (parts.length === 0) return;
    for (const found of text.matchAll(new RegExp(pattern, 'giu'))) {
      const term = names.get(plain(found[1] ?? ''));
      if (term !== undefined) yield { at: found.index, words: found[0], term };
    }
  };
}

/** @param {string} name */
function plain(name) {
  return name.toLowerCase().replaceAll(/[\s-]+/g, ' ');
}

const untouched = /^(?:h[1-6]|a|code|pre|math|svg|summary|table)$/;

/**
 * Parts written as components come with text of their own. An aside alone is running text.
 *
 * @param {any} node
 */
function isRunningText(node) {
  if (node.type === 'element') return !untouched.test(node.tagName);
  return node.name === 'Aside';
}

/**
 * @param {any} node
 * @param {Page} page
 */
function mark(node, page) {
  node.children = node.children.flatMap((/** @type {any} */ child) => {
    if (child.type === 'text') return marked(child.value, page);
    if (child.name === 'Predict') markQuestion(child, page);
    if (child.children !== undefined && isRunningText(child)) mark(child, page);
    return [child];
  });
}

/**
 * The question of a component, as a part of it that can hold links.
 *
 * @param {any} node
 * @param {Page} page
 */
function markQuestion(node, page) {
  const question = node.attributes.find((/** @type {any} */ { name }) => name === 'question');
  if (typeof question?.value !== 'string') return;
  const children = marked(question.value, page);
  if (children.length < 2) return;
  node.children.push({
    type: 'element',
    tagName: 'span',
    properties: { slot: 'question' },
    children,
  });
}

/**
 * A text with its terms marked that the page has not marked yet.
 *
 * @param {string} text
 * @param {Page} page
 */
function marked(text, page) {
  const nodes = [];
  let from = 0;
  for (const { at, words, term } of page.find(text)) {
    if (page.left === 0) break;
    if (page.done.has(term.id)) continue;
    page.done.add(term.id);
    page.left -= 1;
    nodes.push({ type: 'text', value: text.slice(from, at) }, ...link(words, term));
    from = at + words.length;
  }
  nodes.push({ type: 'text', value: text.slice(from) });
  return nodes.filter((node) => node.value !== '');
}

/**
 * @param {string} words
 * @param {Term} term
 */
function link(words, { id, meaning }) {
  const place = `term-${id}`;
  return [
    {
      type: 'element',
      tagName: 'a',
      properties: { className: ['term'], href: `/glossary/#${id}`, ariaDescribedBy: [place] },
      children: [{ type: 'text', value: words }],
    },
    {
      type: 'element',
      tagName: 'span',
      properties: { className: ['term-meaning'], id: place, role: 'tooltip' },
      children: [{ type: 'text', value: meaning }],
    },
  ];
}
