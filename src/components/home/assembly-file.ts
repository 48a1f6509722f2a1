/** The drawing of the first page as a file of its own, for places that show pictures and follow no links in them. */
import { drawAssembly } from './assembly-drawing.ts';
import { round, sheet, write } from './assembly-pen.ts';
import type { Sizes } from './assembly.ts';
import { partsOfDrawing, type PartOfDrawing } from './assembly-topics.ts';
import { isDrawn } from './headlines.ts';

/** What the file needs of the site's colours, by day and by night. */
export type Colours = Readonly<
  Record<'ink' | 'paper', { readonly day: string; readonly night: string }>
>;

/** The lines of ISO 128 as in `styles/assembly.css`. */
const style = `path,circle{fill:none}
pattern path{stroke:var(--ink);stroke-width:.9}
.part{fill:var(--paper);stroke:var(--ink);stroke-width:2.2;stroke-linejoin:round;fill-rule:evenodd}
.part.double{stroke-width:4.4}
.sheet,.paper,.port{fill:var(--paper)}
.cut{fill:url(#assembly-hatch);fill-rule:evenodd}
.cut.back{fill:url(#assembly-hatch-back)}
.thick,.behind{stroke:var(--ink);stroke-width:2.2}
.hidden{stroke:var(--ink);stroke-width:1.1;stroke-dasharray:9 4}
.chain,.dimension,.extension,.port,.leader{stroke:var(--ink);stroke-width:1.1}
.chain{stroke-dasharray:22 4 3 4}
.solid,.shell,.ring{fill:var(--ink);fill-rule:evenodd}
text{fill:var(--ink);font:650 19.5px system-ui,sans-serif}`;

/** The two patterns that fill what is cut. */
export const hatches = [
  { id: 'assembly-hatch', step: 7, turn: 45 },
  { id: 'assembly-hatch-back', step: 6, turn: -45 },
] as const;

const escaped = (text: string): string => text.replace(/&/gu, '&amp;').replace(/</gu, '&lt;');

/**
 * The drawing with its labels.
 *
 * @param topics id and title of every topic, in learning order
 */
export function assemblyFile(
  sizes: Sizes,
  topics: readonly { readonly id: string; readonly title: string }[],
  colours: Colours,
): string {
  const { picture, targets } = drawAssembly(sizes);
  const set = (time: 'day' | 'night'): string =>
    `svg{--ink:${colours.ink[time]};--paper:${colours.paper[time]}}`;
  const labels = topics.flatMap(({ id, title }, at) => {
    if (!isDrawn(id)) return [];
    const { side, line, label }: PartOfDrawing = partsOfDrawing[id];
    const [elbow, end, text] =
      side === 'left' ? [sheet.left, 0, 0] : [sheet.right, sheet.width, sheet.right + 12];
    const { at: foot } = targets[id];
    return (
      `<path class="leader" d="M${write(foot)}L${String(elbow)} ${String(line)}H${String(end)}"/>` +
      `<circle class="solid" cx="${round(foot.x)}" cy="${round(foot.y)}" r="3.5"/>` +
      `<text x="${String(text)}" y="${String(line - 7)}">${String(at + 1)} ${escaped(label ?? title)}</text>`
    );
  });
  const patterns = hatches.map(
    ({ id, step, turn }) =>
      `<pattern id="${id}" width="${String(step)}" height="${String(step)}" patternUnits="userSpaceOnUse" patternTransform="rotate(${String(turn)})"><path d="M0 0V${String(step)}"/></pattern>`,
  );
  const margin = 20;
  const [width, height] = [sheet.width + 2 * margin, sheet.height + 2 * margin];
  const from = String(-margin);
  const size = `width="${String(width)}" height="${String(height)}"`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${from} ${from} ${String(width)} ${String(height)}" ${size} role="img" aria-label="One throw and one cylinder in section, each part with the name of its topic">`,
    `<style>${set('day')}\n@media (prefers-color-scheme:dark){${set('night')}}\n${style}</style>`,
    `<defs>${patterns.join('')}</defs>`,
    `<rect class="sheet" x="${from}" y="${from}" ${size}/>`,
    picture.replaceAll('/><', '/>\n<'),
    ...labels,
    '</svg>\n',
  ].join('\n');
}
