import { whipShape } from '../../../core/rods/rod-shank.ts';
import type { Result, Value } from '../../../calculators/define.ts';
import { numberOf } from '../read.ts';

/** A shank as it is drawn: lengths in m. */
export interface DrawnShank {
  readonly shape: 'i' | 'h';
  readonly height: number;
  readonly width: number;
  readonly flange: number;
  readonly web: number;
  readonly rodLength: number;
  readonly shankLength: number;
  /** From the pin. */
  readonly whipPlace: number;
}

/** The shank of one set, or nothing while one of its numbers is missing. */
export function shankOf(set: {
  readonly input: Readonly<Record<string, Value>> | undefined;
  readonly output: Readonly<Record<string, Result>> | undefined;
}): DrawnShank | undefined {
  const read = (name: string): number | undefined => numberOf(set.input, name);
  const height = read('shankHeight');
  const width = read('shankWidth');
  const flange = read('flangeThickness');
  const web = read('webThickness');
  const rodLength = read('rodLength');
  const shankLength = read('shankLength');
  const whipPlace = numberOf(set.output, 'whipPlace');
  if (
    height === undefined ||
    width === undefined ||
    flange === undefined ||
    web === undefined ||
    rodLength === undefined ||
    shankLength === undefined ||
    whipPlace === undefined
  )
    return undefined;
  const shape = set.input?.['shankShape'] === 'h' ? 'h' : 'i';
  return { shape, height, width, flange, web, rodLength, shankLength, whipPlace };
}

/**
 * The twelve corners of the section [m], the middle at 0, x across the plane of motion and y along it, once
 * round.
 */
export function corners(shank: DrawnShank): readonly (readonly [number, number])[] {
  const upright = shank.shape === 'i';
  const [d, b] = upright ? [shank.height, shank.width] : [shank.width, shank.height];
  const [y, x] = [d / 2, b / 2];
  const [inner, web] = [y - shank.flange, shank.web / 2];
  const quarter: readonly (readonly [number, number])[] = [
    [x, y],
    [x, inner],
    [web, inner],
  ];
  const half = [
    ...quarter,
    ...quarter.toReversed().map(([px, py]): readonly [number, number] => [px, -py]),
  ];
  const all = [
    ...half,
    ...half.toReversed().map(([px, py]): readonly [number, number] => [-px, py]),
  ];
  return upright ? all : all.map(([px, py]): readonly [number, number] => [py, px]);
}

/**
 * Radii of the two eyes [m] of the sketch: they share what the shank leaves between the centres, two parts for
 * the small end and three for the big end. The page does not ask for the eyes, so they are no drawing of them.
 */
export function eyes({ rodLength, shankLength }: DrawnShank): { small: number; big: number } {
  const rest = Math.max(rodLength - shankLength, 0.1 * rodLength);
  return { small: 0.4 * rest, big: 0.6 * rest };
}

/** What the beam carries, one after the other. */
export const cases = [
  { id: 'pull', label: 'pull at overlap TDC', load: 'pull', stress: 'pullStress' },
  {
    id: 'push',
    label: 'push of the gas at low speed',
    load: 'lowSpeedPush',
    stress: 'lowSpeedStress',
  },
  { id: 'whip', label: 'whip, crank and rod square', load: 'whipMoment', stress: 'whipStress' },
] as const;
export type Case = (typeof cases)[number];

/**
 * How the stress is spread over the height of the cut, as an outline beside it [drawing units]: x is the stress, a
 * pull to the right, y upward is minus; even for pull and push, from a pull on one side to a push on the other for
 * the whip. `reach` stands for the stress, `half` for half the height.
 */
export function spreadPath(id: Case['id'], reach: number, half: number): string {
  const n = (value: number): string => String(Math.round(value * 10) / 10);
  const [r, h] = [n(reach), n(half)];
  if (id === 'whip') return `M0 -${h}H-${r}L${r} ${h}H0Z`;
  return `M0 -${h}H${id === 'pull' ? '' : '-'}${r}V${h}H0Z`;
}

/** The line that a rod of `length` drawing units bends to when it whips by `bend` of them, downward. */
export function whipPath(length: number, bend: number): string {
  const points = Array.from({ length: 25 }, (_, i) => {
    const along = i / 24;
    return `${(along * length).toFixed(1)} ${(bend * whipShape(along)).toFixed(1)}`;
  });
  return `M${points.join('L')}`;
}

/** An arrow along a line, from one place to another [drawing units]. */
export function arrow(from: readonly [number, number], to: readonly [number, number]): string {
  const [x, y] = [to[0] - from[0], to[1] - from[1]];
  const long = Math.hypot(x, y);
  if (long < 2) return '';
  const head = Math.min(8, long) / long;
  const n = (value: number): string => value.toFixed(1);
  const foot = [to[0] - x * head, to[1] - y * head] as const;
  const side = [(-y * head) / 2, (x * head) / 2] as const;
  return (
    `M${n(from[0])} ${n(from[1])}L${n(to[0])} ${n(to[1])}` +
    `M${n(foot[0] + side[0])} ${n(foot[1] + side[1])}L${n(to[0])} ${n(to[1])}L${n(foot[0] - side[0])} ${n(foot[1] - side[1])}`
  );
}
