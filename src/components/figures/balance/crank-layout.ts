import {
  isCrankLayout,
  type CrankLayout,
} from '../../../calculators/balance/crank-layout.choices.ts';
import type { SetId } from '../../../calculators/define.ts';
import type { Throw } from '../../../core/balance/crank-throws.ts';
import { setIds } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** A layout, and whose it is: one set's, or that of both. */
export interface DrawnLayout {
  readonly layout: CrankLayout;
  readonly sets: readonly SetId[];
}

/** The layouts of both sets, each once. */
export function drawnLayouts(sets: Readonly<Record<SetId, FigureSet>>): readonly DrawnLayout[] {
  const drawn: DrawnLayout[] = [];
  for (const set of setIds) {
    const layout = sets[set].input?.['crankLayout'];
    if (typeof layout !== 'string' || !isCrankLayout(layout)) continue;
    const same = drawn.findIndex((one) => one.layout === layout);
    if (same < 0) drawn.push({ layout, sets: [set] });
    else drawn[same] = { layout, sets: [...(drawn[same]?.sets ?? []), set] };
  }
  return drawn;
}

/** A place in a drawing: x to the right, y down. */
export interface Spot {
  readonly x: number;
  readonly y: number;
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

/** Of what is nearer to the viewer, how far it is drawn to the left and down. */
const depth = 0.4;

/** One throw of a crank that is seen from the side. */
export interface SidePin {
  readonly number: number;
  /** The middle of its pin, or of its half. */
  readonly spot: Spot;
  /** Half of its length. */
  readonly half: number;
}

/**
 * A crank from the side, its nose at the left, as one bent wire; in units of the pin spacing, the first main bearing's
 * axis through the origin. What points to the right from the nose comes towards the viewer, and stands left and down.
 *
 * @param reach length of a throw, in pin spacings
 */
export function sideView(
  throws: readonly Throw[],
  reach: number,
): { readonly wire: readonly Spot[]; readonly pins: readonly SidePin[]; readonly end: number } {
  const first = Math.min(...throws.map(({ position }) => position));
  const last = Math.max(...throws.map(({ position }) => position));
  const end = last - first + 1.1;
  const off = (angle: number): Spot => ({
    x: -depth * reach * Math.sin(angle),
    y: reach * (depth * Math.sin(angle) - Math.cos(angle)),
  });
  const pins = throws.map(({ angle, position }, at) => {
    const halves = throws.filter((one) => one.position === position).length;
    const before = throws.slice(0, at).filter((one) => one.position === position).length;
    const half = 0.26 / halves;
    const { x, y } = off(angle);
    const middle = position - first + 0.55 - 0.26 + half * (1 + 2 * before);
    return { number: at + 1, spot: { x: middle + x, y }, half, middle };
  });
  const wire: Spot[] = [{ x: 0, y: 0 }];
  for (const [at, { spot, half, middle }] of pins.entries()) {
    const { position } = throws[at] ?? { position: 0 };
    if (throws[at - 1]?.position !== position) wire.push({ x: middle - half, y: 0 });
    wire.push({ x: spot.x - half, y: spot.y }, { x: spot.x + half, y: spot.y });
    if (throws[at + 1]?.position !== position) wire.push({ x: middle + half, y: 0 });
  }
  wire.push({ x: end, y: 0 });
  return {
    wire,
    pins: pins.map(({ number, spot, half }) => ({ number, spot, half })),
    end,
  };
}
