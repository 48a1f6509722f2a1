/**
 * Rehype plugin for topic pages. At the end of each section whose text or sheet has numbers stands a line that leads to
 * the exercise belonging to it: a `<Practise topic numbers sheets />`, which the page gives its meaning. A section without
 * numbers may name its exercise itself, `<Practise of="rod-angularity.thrust" />`. It runs before the sections are
 * folded, so that the line is folded with its section.
 *
 * @returns {(tree: import('hast').Root, file: import('vfile').VFile) => void}
 */
export function rehypePractise() {
  return (tree, file) => {
    const [, topic] = /content[\\/]topics[\\/]([^\\/]+)[\\/]/u.exec(file.path ?? '') ?? [];
    if (topic === undefined) return;
    /** @type {any[]} */
    const children = [];
    /** The section that is being read; none before the first heading. @type {any[] | undefined} */
    let section;
    const close = () => {
      if (section === undefined) return;
      children.push(...section);
      const line = practise(topic, section);
      if (line !== undefined) children.push(line);
    };
    for (const child of /** @type {any[]} */ (tree.children)) {
      if (child.type === 'element' && child.tagName === 'h2') {
        close();
        section = [child];
      } else (section ?? children).push(child);
    }
    close();
    tree.children = children;
  };
}

/**
 * The line at the end of a section; none where the section has no numbers, or a line of its own.
 *
 * @param {string} topic
 * @param {readonly any[]} section
 */
function practise(topic, section) {
  const written = section.find(({ name }) => name === 'Practise');
  if (written !== undefined) {
    written.attributes.push({ type: 'mdxJsxAttribute', name: 'topic', value: topic });
    return undefined;
  }
  const found = section.flatMap(named);
  const of = (/** @type {string} */ kind) =>
    found.flatMap((each) => (each.kind === kind ? [each.name] : [])).join(' ');
  if (found.length === 0) return undefined;
  const attributes = { topic, numbers: of('V'), sheets: of('Calculator') };
  return {
    type: 'mdxJsxFlowElement',
    name: 'Practise',
    attributes: Object.entries(attributes).map(([name, value]) => ({
      type: 'mdxJsxAttribute',
      name,
      value,
    })),
    children: [],
  };
}

/**
 * The numbers and sheets in a part of a text, in their order.
 *
 * @param {any} node
 * @returns {{ kind: string, name: string }[]}
 */
function named(node) {
  const value = (/** @type {string} */ name) =>
    node.attributes?.find((/** @type {any} */ one) => one.name === name)?.value;
  const inside = (node.children ?? []).flatMap(named);
  if (node.name === 'V') return [{ kind: 'V', name: `${value('of')}.${value('out')}` }];
  if (node.name === 'Calculator') return [{ kind: 'Calculator', name: value('id') }, ...inside];
  return inside;
}
