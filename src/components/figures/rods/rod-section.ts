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
