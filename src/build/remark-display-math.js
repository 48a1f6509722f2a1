/**
 * Remark plugin: a paragraph that is nothing but `$$…$$` is a formula on a line of its own, even when the
 * dollar signs stand on the formula's own line. Markdown's math syntax would set it in the text.
 *
 * @returns {(tree: import('mdast').Root, file: import('vfile').VFile) => void}
 */
export function remarkDisplayMath() {
  return (tree, file) => walk(tree, String(file.value));
}

function walk(node, text) {
  for (const child of node.children ?? []) {
    const [only, ...rest] = child.children ?? [];
    const alone = child.type === 'paragraph' && rest.length === 0 && only?.type === 'inlineMath';
    const start = only?.position?.start.offset;
    if (alone && start !== undefined && text.startsWith('$$', start)) {
      only.data.hProperties.className = ['language-math', 'math-display'];
    }
    walk(child, text);
  }
}
