/**
 * Rehype plugin for everything written in Markdown. It leaves nothing that the site's
 * Content-Security-Policy would refuse, and nothing a screen reader would hear twice:
 *
 * - table alignment becomes a class (`right`, `centre`); MDX would turn it into a style attribute;
 * - MathML loses KaTeX's `<semantics>` wrapper and the TeX source inside it;
 * - a formula too long for a phone can be reached and scrolled from the keyboard;
 * - a link that starts at the root gets the path the site is served under.
 *
 * @param {{ base?: string }} options `base` is the path the site is served under, `/` by default.
 * @returns {(tree: import('hast').Root) => void}
 */
export function rehypePlain({ base = '/' } = {}) {
  const prefix = base.replace(/\/+$/, '');
  return (tree) => walk(tree, prefix);
}

/** Longest TeX, in characters, that is sure to fit a 320 px screen on one line. */
const FITS_A_PHONE = 36;

const alignmentClass = { left: 'left', right: 'right', center: 'centre' };

function walk(node, prefix) {
  if (node.type === 'element') {
    if (node.tagName === 'th' || node.tagName === 'td') setAlignment(node);
    if (node.tagName === 'math') unwrapMath(node);
    if (node.tagName === 'a') prefixLink(node, prefix);
    delete node.properties.style;
  }
  for (const child of node.children ?? []) walk(child, prefix);
}

function setAlignment(cell) {
  const align = cell.properties.align;
  if (align === undefined || align === null) return;
  delete cell.properties.align;
  cell.properties.className = [...(cell.properties.className ?? []), alignmentClass[align]];
}

function unwrapMath(math) {
  const semantics = math.children.find((child) => child.tagName === 'semantics');
  if (semantics === undefined) return;
  const tex = semantics.children.find((child) => child.tagName === 'annotation');
  const source = tex?.children[0]?.value ?? '';
  math.children = semantics.children.filter((child) => child.tagName !== 'annotation');
  roomForBrackets(math);
  if (math.properties.display === 'block') {
    math.properties.className = ['formula'];
    if (source.length > FITS_A_PHONE) math.properties.tabIndex = 0;
  }
}

/** The sign that KaTeX puts behind the name of a function. */
const application = '\u2061';

/** @param {{ tagName?: string, children?: readonly any[] } | undefined} node */
function textOf(node) {
  return node?.children?.map((child) => child.value ?? textOf(child)).join('') ?? '';
}

/**
 * Where a function's name is an index, the sign behind it is one part too many; elsewhere a bracket behind it would
 * touch the name in engines that leave no room of their own.
 */
function roomForBrackets(node) {
  const isScript = /^m(?:sub|sup|subsup)$/.test(node.tagName);
  node.children = (node.children ?? []).flatMap((child, at, all) => {
    if (child.type !== 'element') return [child];
    roomForBrackets(child);
    if (child.tagName !== 'mo' || textOf(child) !== application) return [child];
    if (isScript) return [];
    const space = {
      type: 'element',
      tagName: 'mspace',
      properties: { width: '0.1em' },
      children: [],
    };
    return /^[([]/.test(textOf(all[at + 1])) ? [child, space] : [child];
  });
}

function prefixLink(link, prefix) {
  const href = link.properties.href;
  if (prefix !== '' && typeof href === 'string' && href.startsWith('/') && !href.startsWith('//')) {
    link.properties.href = prefix + href;
  }
}
