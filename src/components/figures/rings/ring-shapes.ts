import { endAngle, freeShape, ringHalf, type RingPoint } from '../../../core/rings/ring-shape.ts';
import { isRefusal } from '../../../calculators/evaluate.ts';
import { numberOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** One ring as the drawing needs it: sizes in m, and half of its middle line closed and relaxed. */
export interface DrawnRing {
  readonly bore: number;
  readonly height: number;
  readonly radial: number;
  readonly freeGap: number;
  readonly gap: number;
  /** What it presses on the bore with by its own spring [Pa], and the force along it [N]. */
  readonly pressure: number;
  readonly force: number;
  readonly closed: readonly RingPoint[];
  readonly relaxed: readonly RingPoint[];
}

/** The top ring of a set, or `undefined` while it has none, or none that can be drawn. */
export function drawnRing(set: FigureSet): DrawnRing | undefined {
  const size = (name: string): number | undefined => numberOf(set.input, name);
  const [bore, height, radial, freeGap, gap, modulus] = [
    size('bore'),
    size('ring1Height'),
    size('ring1Radial'),
    size('ring1FreeGap'),
    size('ring1Gap'),
    size('ring1Modulus'),
  ];
  const pressure = numberOf(set.output, 'contactPressure');
  const force = numberOf(set.output, 'tangentialForce');
  if (
    pressure === undefined ||
    force === undefined ||
    bore === undefined ||
    height === undefined ||
    radial === undefined ||
    freeGap === undefined ||
    gap === undefined ||
    modulus === undefined
  )
    return undefined;
  const radius = (bore - radial) / 2;
  const ring = {
    bore,
    ring1Height: height,
    ring1Radial: radial,
    ring1Modulus: modulus,
    ring1FreeGap: freeGap,
    ring1Gap: gap,
  };
  try {
    const closed = ringHalf(radius, 0, endAngle(radius, gap), 41);
    return {
      bore,
      height,
      radial,
      freeGap,
      gap,
      pressure,
      force,
      closed,
      relaxed: freeShape(ring, 'ring1'),
    };
  } catch (error) {
    // A ring may be worked that no shape can be found for: one that opens wider than it is long.
    if (isRefusal(error)) return undefined;
    throw error;
  }
}

/** Path of a ring's outline from half of its middle line; x to the right, the gap at the top (y upward is minus). */
export function outline(half: readonly RingPoint[], radial: number, scale: number): string {
  const side = half.map((point, i) => {
    const [before, after] = [half[i - 1] ?? point, half[i + 1] ?? point];
    const along = [after.x - before.x, after.y - before.y] as const;
    const long = Math.hypot(...along) || 1;
    // Outward is to the right hand of the way from the back up to the end.
    return { point, out: { x: along[1] / long, y: -along[0] / long } };
  });
  const put = (x: number, y: number): string =>
    `${(x * scale).toFixed(1)} ${(-y * scale).toFixed(1)}`;
  const edge = (to: number, mirror: 1 | -1): string[] =>
    side.map(({ point, out }) => put(mirror * (point.x + to * out.x), point.y + to * out.y));
  const [outer, inner] = [radial / 2, -radial / 2];
  const all = [
    ...edge(outer, -1).reverse(),
    ...edge(outer, 1).slice(1),
    ...edge(inner, 1).reverse(),
    ...edge(inner, -1).slice(1),
  ];
  return `M${all.join('L')}z`;
}

/** Extent of a ring [m]: half its greatest width and its height above the back face. */
export function extent({ relaxed, closed, radial }: DrawnRing): { side: number; up: number } {
  const all = [...relaxed, ...closed];
  return {
    side: Math.max(...all.map(({ x }) => x)) + radial / 2,
    up: Math.max(...all.map(({ y }) => y)) + radial,
  };
}

/** An arrow that a pressure of `long` drawing units presses with, from 0 along x. */
export function push(long: number): string {
  if (long < 1) return '';
  const head = Math.min(5, long);
  const n = (value: number): string => String(Math.round(value * 10) / 10);
  return `M0 0H${n(long)}M${n(long - head)} ${n(-head / 2)}L${n(long)} 0L${n(long - head)} ${n(head / 2)}`;
}

/** Angles [degrees from the top] of the arrows round a ring, none in its gap. */
export const roundRing: readonly number[] = Array.from({ length: 15 }, (_, i) => 22.5 + 22.5 * i);

/** Places of arrows along a face of `tall` drawing units, `apart` from each other and even about its middle. */
export function alongFace(tall: number, apart: number): readonly number[] {
  const count = Math.max(1, Math.round(tall / apart));
  return Array.from({ length: count }, (_, i) => (tall * (i + 0.5)) / count);
}

/** A number out of 1, 2, 5 times a power of ten, the greatest not above `most`. */
export function roundScale(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most));
  return ([5, 2, 1].find((step) => step * power <= most) ?? 1) * power;
}
