/**
 * Rehype plugin for topic pages. The first sections stand open; each further one is folded to its heading, so that a
 * page is no longer than what most readers came for. A caution is never folded away: it stands after its section.
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
    /** @type {any} */
    let fold;
    /** @type {any[]} */
    let cautions = [];
    for (const child of /** @type {any[]} */ (tree.children)) {
      if (child.type === 'element' && child.tagName === 'h2') {
        children.push(...cautions);
        cautions = [];
        count += 1;
        fold = count > most ? folded(child) : undefined;
        children.push(fold ?? child);
        continue;
      }
      if (fold === undefined || child.type === 'mdxjsEsm') children.push(child);
      else if (child.name === 'Caution') cautions.push(child);
      // In a box of its own, which all browsers lay out alike.
      else fold.children[1].children.push(child);
    }
    children.push(...cautions);
    tree.children = children;
  };
}

/** @param {any} heading */
function folded(heading) {
  return {
    type: 'element',
    tagName: 'details',
    properties: { className: ['section'] },
    children: [
      { type: 'element', tagName: 'summary', properties: {}, children: [heading] },
      { type: 'element', tagName: 'div', properties: {}, children: [] },
    ],
  };
}
