/** What is never folded away. */
const unfolded = new Set(['Caution', 'Moved']);

/**
 * Rehype plugin for topic pages. The first sections stand open; each further one is folded to its heading, so that a
 * page is no longer than what most readers came for. A caution is never folded away, nor the line that says where a part
 * of the page has gone: they stand after their section.
 *
 * @param {{ open?: number }} options how many sections stand open
 * @returns {(tree: import('hast').Root, file: import('vfile').VFile) => void}
 */
export function rehypeSections({ open = 2 } = {}) {
  return (tree, file) => {
    if (!/content[\\/]topics[\\/]/u.test(file.path ?? '')) return;
    /** @type {any[]} */
    const children = [];
    // A page whose first section is long says so.
    const most = /** @type {any} */ (file.data)?.astro?.frontmatter?.openSections ?? open;
    let count = 0;
    /** Where the text of a folded section goes; none while a section stands open. @type {any[] | undefined} */
    let body;
    /** @type {any[]} */
    let kept = [];
    for (const child of /** @type {any[]} */ (tree.children)) {
      if (child.type === 'element' && child.tagName === 'h2') {
        children.push(...kept);
        kept = [];
        count += 1;
        body = count > most ? [] : undefined;
        children.push(body === undefined ? child : folded(child, body));
        continue;
      }
      if (body === undefined || child.type === 'mdxjsEsm') children.push(child);
      else if (unfolded.has(child.name)) kept.push(child);
      else body.push(child);
    }
    children.push(...kept);
    for (const { children: parts, properties } of children) {
      if (properties?.className?.includes('section'))
        parts[1].children = inColumns(parts[1].children);
    }
    tree.children = inColumns(children);
  };
}

/** Elements and components that are plain prose, or stand in it like a paragraph. */
const plain = new Set([
  // A formula on a line of its own.
  'span',
  'p',
  'ul',
  'ol',
  'dl',
  'h3',
  'blockquote',
  'Caution',
  'Aside',
  'Checked',
]);

/**
 * Runs of plain prose, each in a box of its own, so that a wide page can set it in two columns; figures, calculators
 * and tables stand between them over both.
 *
 * @param {readonly any[]} nodes
 * @returns {any[]}
 */
function inColumns(nodes) {
  /** @type {any[]} */
  const out = [];
  /** @type {any[]} */
  let run = [];
  const close = () => {
    // One alone stays in the text column.
    if (run.filter(({ type }) => type !== 'text').length > 1)
      out.push({
        type: 'element',
        tagName: 'div',
        properties: { className: ['columns'] },
        children: run,
      });
    else out.push(...run);
    run = [];
  };
  for (const node of nodes) {
    if (node.type === 'text' || plain.has(node.tagName ?? node.name)) run.push(node);
    else {
      close();
      out.push(node);
    }
  }
  close();
  return out;
}

/**
 * A section folded to its heading. Its text has a box of its own, which all browsers lay out alike.
 *
 * @param {any} heading
 * @param {any[]} body
 */
function folded(heading, body) {
  return {
    type: 'element',
    tagName: 'details',
    properties: { className: ['section'] },
    children: [
      { type: 'element', tagName: 'summary', properties: {}, children: [heading] },
      { type: 'element', tagName: 'div', properties: {}, children: body },
    ],
  };
}
