import { isLayout, type Layout } from '../../../calculators/balance/crank-layout.choices.ts';
import type { SetId } from '../../../calculators/define.ts';
import { placesOf, type Throw } from '../../../core/balance/crank-throws.ts';
import { setIds } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** A layout, and whose it is: one set's, or that of both. */
export interface DrawnLayout {
  readonly layout: Layout;
  readonly sets: readonly SetId[];
}

/** The layouts of both sets, each once. */
export function drawnLayouts(sets: Readonly<Record<SetId, FigureSet>>): readonly DrawnLayout[] {
  const drawn: DrawnLayout[] = [];
  for (const set of setIds) {
    const layout = sets[set].input?.['crankLayout'];
    if (typeof layout !== 'string' || !isLayout(layout)) continue;
    const same = drawn.findIndex((one) => one.layout === layout);
    if (same < 0) drawn.push({ layout, sets: [set] });
    else drawn[same] = { layout, sets: [...(drawn[same]?.sets ?? []), set] };
  }
  return drawn;
}

/** Throws that stand behind one another from the nose, under the numbers that they have from the nose on. */
export interface Spoke {
  /** [rad] Clockwise from straight up. */
  readonly angle: number;
  readonly numbers: readonly number[];
}

/** The throws as they are seen from the nose, each direction once. */
export function spokesOf(throws: readonly Throw[]): readonly Spoke[] {
  const spokes: { readonly angle: number; readonly numbers: number[] }[] = [];
  for (const [at, { angle }] of throws.entries()) {
    const same = spokes.find((one) => Math.abs(Math.sin((one.angle - angle) / 2)) < 1e-9);
    if (same === undefined) spokes.push({ angle, numbers: [at + 1] });
    else same.numbers.push(at + 1);
  }
  return spokes;
}

/** A crankpin along the crank: its one throw, or those of its halves. */
export interface Station {
  /** Along the crank from its middle, in pin spacings. */
  readonly position: number;
  readonly spokes: readonly Spoke[];
}

/** The crankpins from the nose on, the halves of a split pin together. */
export function stationsOf(throws: readonly Throw[]): readonly Station[] {
  return placesOf(throws).map((position) => ({
    position,
    spokes: throws.flatMap((one, at) =>
      one.position === position ? [{ angle: one.angle, numbers: [at + 1] }] : [],
    ),
  }));
}
