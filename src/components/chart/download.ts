import { saveText } from '../site/save-text.ts';

/** What a stylesheet decides of a drawing; a file that leaves the page must carry it itself. */
const drawn = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'opacity',
  'font-family',
  'font-size',
  'font-style',
  'font-weight',
  'text-anchor',
  'dominant-baseline',
  'paint-order',
] as const;

/**
 * The drawing as a file of its own, with the colours it has on the screen now written into it and the page's
 * ground behind it.
 */
function svgText(node: SVGSVGElement): string {
  const copy = node.cloneNode(true) as SVGSVGElement;
  const from = [node, ...node.querySelectorAll('*')];
  const into = [copy, ...copy.querySelectorAll('*')];
  for (const [i, source] of from.entries()) {
    const target = into[i];
    if (target === undefined) continue;
    const style = getComputedStyle(source);
    for (const name of drawn) target.setAttribute(name, style.getPropertyValue(name));
    target.removeAttribute('class');
  }
  const box = node.viewBox.baseVal;
  const ground = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
  ground.setAttribute('x', String(box.x));
  ground.setAttribute('y', String(box.y));
  ground.setAttribute('width', String(box.width));
  ground.setAttribute('height', String(box.height));
  ground.setAttribute('fill', getComputedStyle(document.body).backgroundColor);
  copy.prepend(ground);
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  copy.setAttribute('width', String(box.width));
  copy.setAttribute('height', String(box.height));
  return new XMLSerializer().serializeToString(copy);
}

/** A table as comma-separated values (RFC 4180): a cell with a comma, quote or line break is quoted. */
export function csvText(rows: readonly (readonly string[])[]): string {
  const cell = (text: string): string =>
    /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
  return rows.map((row) => row.map(cell).join(',')).join('\r\n') + '\r\n';
}

/** Saves the drawing `node` as `name`.svg. */
export function downloadSvg(node: SVGSVGElement, name: string): void {
  saveText(`${name}.svg`, 'image/svg+xml', svgText(node));
}

/** Saves the rows as `name`.csv. */
export function downloadCsv(rows: readonly (readonly string[])[], name: string): void {
  // The mark at the start lets spreadsheet programs see that the text is UTF-8.
  saveText(`${name}.csv`, 'text/csv', `\uFEFF${csvText(rows)}`);
}
