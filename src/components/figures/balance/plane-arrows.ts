import type { SetId } from '../../../calculators/define.ts';
import { numberOf, numbersOf, setIds } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** An unbalance in one plane as it is drawn. */
export interface PlaneArrow {
  readonly id: string;
  /** [m] Along the crank from its middle. */
  readonly place: number;
  /** [kg·m] */
  readonly size: number;
  /** [rad] Of the heavy spot from throw 1, clockwise seen from the nose; 0 for no unbalance. */
  readonly angle: number;
  /** Names of what it stands for: its size and angle, and its place. */
  readonly arrow: string;
  readonly plane: string;
}

/** The unbalances of a set that are known, and the two that stand for them. */
export interface DrawnPlanes {
  readonly known: readonly PlaneArrow[];
  readonly moved: readonly [PlaneArrow, PlaneArrow];
  /** [m] */
  readonly bearingSpan: number;
}

const inputs = [
  'planeUnbalanceA',
  'planeAngleA',
  'planeA',
  'planeUnbalanceB',
  'planeAngleB',
  'planeB',
  'newPlaneA',
  'newPlaneB',
  'bearingSpan',
] as const;

/** What a set’s drawing needs; `undefined` while a number is missing. */
export function drawnPlanes({ input, output }: FigureSet): DrawnPlanes | undefined {
  const given = numbersOf(input, inputs);
  const made = numbersOf(output, ['movedA', 'movedB']);
  if (given === undefined || made === undefined) return undefined;
  return {
    bearingSpan: given.bearingSpan,
    known: [
      {
        id: 'A',
        place: given.planeA,
        size: given.planeUnbalanceA,
        angle: given.planeAngleA,
        arrow: 'planeUnbalanceA planeAngleA',
        plane: 'planeA',
      },
      {
        id: 'B',
        place: given.planeB,
        size: given.planeUnbalanceB,
        angle: given.planeAngleB,
        arrow: 'planeUnbalanceB planeAngleB',
        plane: 'planeB',
      },
      ...(['third', 'fourth'] as const).flatMap((thing) => oneMore(input, thing)),
    ],
    moved: [
      {
        id: 'A*',
        place: given.newPlaneA,
        size: made.movedA,
        angle: numberOf(output, 'movedAngleA') ?? 0,
        arrow: 'movedA movedAngleA',
        plane: 'newPlaneA',
      },
      {
        id: 'B*',
        place: given.newPlaneB,
        size: made.movedB,
        angle: numberOf(output, 'movedAngleB') ?? 0,
        arrow: 'movedB movedAngleB',
        plane: 'newPlaneB',
      },
    ],
  };
}

function oneMore(input: FigureSet['input'], thing: 'third' | 'fourth'): readonly PlaneArrow[] {
  const names = [`${thing}Unbalance`, `${thing}Angle`, `${thing}Place`] as const;
  const [size, angle, place] = names.map((name) => numberOf(input, name));
  if (size === undefined || angle === undefined || place === undefined) return [];
  const id = thing === 'third' ? '3' : '4';
  return [{ id, size, angle, place, arrow: `${names[0]} ${names[1]}`, plane: names[2] }];
}

/** A plane of one set, or of both where it stands at one place. */
export interface DrawnPlane {
  readonly id: string;
  readonly place: number;
  readonly plane: string;
  readonly sets: readonly SetId[];
  readonly isNew: boolean;
}

/** All planes of both sets, each once where both have it at one place. */
export function planesOf(
  sets: Readonly<Record<SetId, DrawnPlanes | undefined>>,
): readonly DrawnPlane[] {
  const found: DrawnPlane[] = [];
  for (const set of setIds) {
    const drawn = sets[set];
    if (drawn === undefined) continue;
    for (const [list, isNew] of [
      [drawn.known, false],
      [drawn.moved, true],
    ] as const)
      for (const { id, place, plane } of list) {
        const same = found.findIndex((one) => one.id === id && one.place === place);
        const was = found[same];
        if (was === undefined) found.push({ id, place, plane, sets: [set], isNew });
        else found[same] = { ...was, sets: setIds };
      }
  }
  return found;
}

/** The part of the crank [m] that is drawn: all planes and both bearings, with room at the ends. */
export function stretchOf(
  planes: readonly DrawnPlane[],
  bearingSpans: readonly number[],
): readonly [number, number] {
  const places = [
    ...planes.map(({ place }) => place),
    ...bearingSpans.flatMap((span) => [-span / 2, span / 2]),
  ];
  const [from, to] = [Math.min(...places), Math.max(...places)];
  const room = 0.06 * Math.max(to - from, 0.02);
  return [from - room, to + room];
}

/** [kg·m] The largest arrow of both sets; what all are drawn to. */
export function largestOf(sets: Readonly<Record<SetId, DrawnPlanes | undefined>>): number {
  return Math.max(
    0,
    ...setIds.flatMap((set) => {
      const drawn = sets[set];
      return drawn === undefined ? [] : [...drawn.known, ...drawn.moved].map(({ size }) => size);
    }),
  );
}
