/** The drawing of the first page as files of their own, for places that show pictures and follow no links in them. */
import { drawAssembly } from './assembly-drawing.ts';
import { round, sheet, write } from './assembly-pen.ts';
import type { Sizes } from './assembly.ts';
import { partsOfDrawing, type DrawnTopic, type PartOfDrawing } from './assembly-topics.ts';
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
  const margin = 20;
  const view = [-margin, -margin, sheet.width + 2 * margin, sheet.height + 2 * margin] as const;
  const name = 'One throw and one cylinder in section, each part with the name of its topic';
  return file(view, name, colours, [picture.replaceAll('/><', '/>\n<'), ...labels]);
}

/** The drawing without its labels, and in it the part that a topic is about. */
export function placeFile(sizes: Sizes, topic: DrawnTopic, colours: Colours): string {
  const { picture, targets } = drawAssembly(sizes);
  const view = [sheet.left - 4, 0, sheet.right - sheet.left + 8, sheet.height] as const;
  const { part } = partsOfDrawing[topic];
  return file(view, `One throw and one cylinder in section; drawn full: ${part}`, colours, [
    picture,
    `<style>.here{fill:var(--ink);fill-opacity:.3;stroke:var(--ink);stroke-width:6}</style>`,
    `<path class="here" d="${targets[topic].shape}"/>`,
  ]);
}

/** @param view left, top, width and height in drawing units */
function file(
  view: readonly [number, number, number, number],
  name: string,
  colours: Colours,
  content: readonly string[],
): string {
  const set = (time: 'day' | 'night'): string =>
    `svg{${(['ink', 'paper'] as const).map((each) => `--${each}:${colours[each][time]}`).join(';')}}`;
  const patterns = hatches.map(
    ({ id, step, turn }) =>
      `<pattern id="${id}" width="${String(step)}" height="${String(step)}" patternUnits="userSpaceOnUse" patternTransform="rotate(${String(turn)})"><path d="M0 0V${String(step)}"/></pattern>`,
  );
  const [left, top, width, height] = view.map(String);
  const size = `width="${width ?? ''}" height="${height ?? ''}"`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${view.join(' ')}" ${size} role="img" aria-label="${escaped(name)}">`,
    `<style>${set('day')}\n@media (prefers-color-scheme:dark){${set('night')}}\n${style}</style>`,
    `<defs>${patterns.join('')}</defs>`,
    `<rect class="sheet" x="${left ?? ''}" y="${top ?? ''}" ${size}/>`,
    ...content,
    '</svg>\n',
  ].join('\n');
}
