import { isLink } from '../../notebook/is-link.ts';
import { inXml } from '../site/in-xml.ts';

/** What the line that embeds a part says. */
export interface Embedded {
  /** Of the part's own page. */
  readonly address: string;
  readonly title: string;
  /** As typed: pixels, or a share with its sign. */
  readonly width: string;
  /** Pixels. */
  readonly height: string;
}

/** True for what HTML takes as a width or a height: pixels, or a share of the room there is. */
export function isSize(text: string): boolean {
  return /^[1-9]\d{0,3}%?$/.test(text);
}

/**
 * What the frame may do: run its script, open the topic in a tab of its own, and save a file. It may not read what the
 * page around it holds, nor go elsewhere with it.
 */
export const leave =
  'allow-scripts allow-popups allow-popups-to-escape-sandbox allow-downloads' as const;

/** One line of HTML for the page of another site. */
export function embedLine({ address, title, width, height }: Embedded): string {
  const attributes = [
    ['src', address],
    ['title', `${title}, from Throwbook`],
    ['width', width],
    ['height', height],
    ['loading', 'lazy'],
    ['sandbox', leave],
  ] as const;
  const said = attributes.map(([name, text]) => `${name}="${inXml(text)}"`).join(' ');
  return `<iframe ${said}></iframe>`;
}

/** The fragment of a link with numbers, with its sign; empty where the text holds none, undefined where it is no link. */
export function fragmentOf(link: string): string | undefined {
  const text = link.trim();
  if (text === '') return '';
  const at = text.indexOf('#');
  const fragment = at < 0 ? '' : text.slice(at).replace(/\s/g, '');
  return isLink(fragment) ? fragment : undefined;
}
