import {
  senseOf,
  type AngleSense,
  type CrankTurns,
  type ReadingNames,
} from '../../../core/balance/unbalance-reading.ts';
import type { SetId } from '../../../calculators/define.ts';
import { short } from '../parts/short.ts';
import { numbersOf, setIds } from '../read.ts';
import type { FigureSet } from '../types.ts';
import { spotAt, spreadRound } from './counter-turning.ts';

/** A reading as it is drawn; angles [rad] from throw 1, clockwise seen from the nose. */
export interface DrawnReading {
  readonly sets: readonly SetId[];
  readonly size: number;
  /** As the machine shows it. */
  readonly read: number;
  readonly zero: number;
  /** From the zero to what the reading points at; positive clockwise. */
  readonly sweep: number;
  readonly heavy: number;
  readonly light: number;
  readonly names: ReadingNames;
  readonly sense: AngleSense;
  readonly turns: CrankTurns;
}

/** From where the crank is looked at. */
export type End = 'nose' | 'flywheel';
export const ends: readonly End[] = ['nose', 'flywheel'];

function readingOf({ input, output }: FigureSet): Omit<DrawnReading, 'sets'> | undefined {
  const given = numbersOf(input, ['unbalanceRead', 'unbalanceAngle', 'angleOrigin']);
  const made = numbersOf(output, ['heavySpot', 'lightSpot']);
  if (given === undefined || made === undefined) return undefined;
  const { unbalanceRead: size, unbalanceAngle: read, angleOrigin: zero } = given;
  const { heavySpot: heavy, lightSpot: light } = made;
  const names = input?.['readingNames'] === 'light' ? 'light' : 'heavy';
  const sense = input?.['angleSense'] === 'against' ? 'against' : 'with';
  const turns = input?.['crankTurns'] === 'anticlockwise' ? 'anticlockwise' : 'clockwise';
  const sweep = senseOf({ angleSense: sense, crankTurns: turns }) * read;
  return { size, read, zero, sweep, heavy, light, names, sense, turns };
}

/** The readings of both sets, each once. */
export function drawnReadings(sets: Readonly<Record<SetId, FigureSet>>): readonly DrawnReading[] {
  const [one, other] = setIds.map((set) => readingOf(sets[set]));
  if (one !== undefined && other !== undefined && JSON.stringify(one) === JSON.stringify(other))
    return [{ ...one, sets: setIds }];
  return [
    ...(one === undefined ? [] : [{ ...one, sets: setIds.slice(0, 1) }]),
    ...(other === undefined ? [] : [{ ...other, sets: setIds.slice(1) }]),
  ];
}

/** An angle as it is seen from an end: from the flywheel everything runs the other way round. */
export function seenFrom(end: End, angle: number): number {
  return end === 'nose' ? angle : -angle;
}

/** Where words stand round a circle so that none covers another, in the order of the angles [rad]. */
export function wordsRound(angles: readonly number[], radius: number) {
  return spreadRound(angles, 0.75).map((angle) => ({
    ...spotAt(radius, angle),
    anchor: Math.sin(angle) < 0 ? ('end' as const) : ('start' as const),
  }));
}

/** The path of an arc about the origin from one angle by another, clockwise from straight up. */
export function arcPath(radius: number, from: number, by: number): string {
  // A whole turn has no arc of its own, and a path of two halves is the same for all others.
  const places = [from, from + by / 2, from + by].map((angle) => spotAt(radius, angle));
  const sweep = by < 0 ? 0 : 1;
  return places
    .map(({ x, y }, i) =>
      i === 0
        ? `M${short(x)} ${short(y)}`
        : `A${short(radius)} ${short(radius)} 0 0 ${sweep} ${short(x)} ${short(y)}`,
    )
    .join('');
}

/** The head of an arrow at the end of {@link arcPath}, as an open line. */
export function arcHead(radius: number, from: number, by: number, size = 7): string {
  if (Math.abs(by) * radius < size) return '';
  const end = from + by;
  const back = end - (Math.sign(by) * size) / radius;
  const [tip, inner, outer] = [
    spotAt(radius, end),
    spotAt(radius - 0.4 * size, back),
    spotAt(radius + 0.4 * size, back),
  ];
  return `M${short(inner.x)} ${short(inner.y)}L${short(tip.x)} ${short(tip.y)}L${short(outer.x)} ${short(outer.y)}`;
}
