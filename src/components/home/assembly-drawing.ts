/** The drawing on the first page as SVG: what is drawn, and for each topic the shape that leads to it. */
import type { Sizes } from './assembly.ts';
import { path, type Target } from './assembly-pen.ts';
import type { DrawnTopic } from './assembly-topics.ts';
import { crank, flywheel } from './draw-crank.ts';
import { cylinder } from './draw-cylinder.ts';
import { rod } from './draw-rod.ts';
import { clamp, damper, planes, rollers, scales, swing } from './draw-bench.ts';

/**
 * Draws the assembly of one set.
 *
 * @returns `picture`, the SVG of all that is drawn, and for each topic its target
 */
export function drawAssembly(sizes: Sizes): {
  readonly picture: string;
  readonly targets: Readonly<Record<DrawnTopic, Target>>;
} {
  const parts = [
    crank(sizes),
    rod(sizes),
    cylinder(sizes),
    flywheel(sizes),
    scales(sizes),
    clamp(sizes),
    swing(),
    rollers(sizes),
    damper(),
    planes(sizes),
  ];
  const targets = Object.assign({}, ...parts.map((part) => part.targets)) as Record<
    DrawnTopic,
    Target
  >;
  // The main journal lies behind; what the crankpin shares with it shows through the cut.
  const overlap = path('hidden', targets['crank-overlap'].shape);
  return { picture: parts.map(({ picture }) => picture).join('') + overlap, targets };
}
