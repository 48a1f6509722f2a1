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
  if (math.properties.display === 'block') {
    math.properties.className = ['formula'];
    if (source.length > FITS_A_PHONE) math.properties.tabIndex = 0;
  }
}

function prefixLink(link, prefix) {
  const href = link.properties.href;
  if (prefix !== '' && typeof href === 'string' && href.startsWith('/') && !href.startsWith('//')) {
    link.properties.href = prefix + href;
  }
}
