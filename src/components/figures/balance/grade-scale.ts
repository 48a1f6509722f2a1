import { numberOf, numbersOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** The grades of the standard [m/s], in its steps. */
const grades = [0.4, 1, 2.5, 6.3, 16, 40, 100, 250, 630, 1600, 4000].map((grade) => grade / 1000);

/** What is marked of one set, each as a distance of the centre of mass from the axis [m]. */
export interface GradeMarks {
  /** [rad/s] */
  readonly speed: number;
  /** [kg] */
  readonly mass: number;
  /** [m/s] The grade that was chosen, and that the reading amounts to. */
  readonly grade: number;
  readonly reached: number | undefined;
  readonly permitted: number;
  readonly read: number | undefined;
  readonly floor: number | undefined;
}

/** The marks of a set; `undefined` while a number is missing. */
export function gradeMarks({ input, output }: FigureSet): GradeMarks | undefined {
  const given = numbersOf(input, ['maxSpeed', 'balanceGrade']);
  const made = numbersOf(output, ['rotorMass', 'eccentricity']);
  if (given === undefined || made === undefined) return undefined;
  const { maxSpeed: speed, balanceGrade: grade } = given;
  const reached = numberOf(output, 'gradeReached');
  const floor = numberOf(output, 'floorGrade');
  return {
    speed,
    mass: made.rotorMass,
    grade,
    reached,
    permitted: made.eccentricity,
    read: reached === undefined ? undefined : reached / speed,
    floor: floor === undefined ? undefined : floor / speed,
  };
}

/** The part of a logarithmic scale from `from` to `to`, drawn from one place to another. */
export interface LogScale {
  readonly from: number;
  readonly to: number;
  /** Round numbers on it: 1, 2 and 5 times powers of ten, those alone that have room. */
  readonly ticks: readonly number[];
  at(value: number): number;
}

/**
 * A scale on which equal ratios are equally long.
 *
 * @param between the least and the greatest number, both above 0
 * @param over their places
 * @param room what a number takes
 */
export function logScale(
  between: readonly [number, number],
  over: readonly [number, number],
  room: number,
): LogScale {
  const [from, to] = between;
  const [start, end] = over;
  const each = (end - start) / Math.log10(to / from);
  const least = Math.floor(Math.log10(from));
  const powers = Array.from(
    { length: Math.ceil(Math.log10(to)) - least + 1 },
    (_, i) => 10 ** (least + i),
  );
  // From 2 to 5 there is most of a third of a decade.
  const factors = Math.abs(each) * Math.log10(2) >= room ? [1, 2, 5] : [1];
  return {
    from,
    to,
    ticks: powers
      .flatMap((power) => factors.map((factor) => Number((factor * power).toPrecision(3))))
      .filter((tick) => tick >= from * 0.999 && tick <= to * 1.001),
    at: (value) => start + Math.log10(value / from) * each,
  };
}

/**
 * What both scales must hold: speeds [rad/s] and distances [m], with room for the words beside the marks, and for the
 * lines of the chosen grades as far as the right edge, where they are named.
 */
export function rangesOf(marks: readonly GradeMarks[]): {
  readonly speeds: readonly [number, number];
  readonly distances: readonly [number, number];
} {
  const speeds = marks.map(({ speed }) => speed);
  const [slowest, fastest] = [Math.min(...speeds), Math.max(...speeds)];
  // Words on the outer sides need a third of the width each: the farther apart the speeds, the more beyond them.
  const beyond = Math.min(12, Math.max(2.8, (fastest / slowest) ** 2));
  const distances = marks
    .flatMap(({ permitted, read, floor }) => [permitted, read, floor])
    .filter((each): each is number => each !== undefined && each > 0);
  const ends = marks.map(({ grade }) => grade / (fastest * beyond));
  return {
    speeds: [slowest / beyond, fastest * beyond],
    distances: [Math.min(Math.min(...distances) / 3, ...ends) / 1.1, Math.max(...distances) * 2.5],
  };
}

/** The grades [m/s] whose lines reach the right edge, where they are named. */
export function gradesShown(speeds: LogScale, distances: LogScale): readonly number[] {
  return grades.filter((grade) => {
    const end = grade / speeds.to;
    return end >= distances.from && end <= distances.to;
  });
}

/** `16` for 0.016 m/s, as the grade is named. */
export function gradeName(grade: number): string {
  return String(Number((grade * 1000).toPrecision(3)));
}

/**
 * Places for words of which none stands nearer to the next than `room`, each as near to its own as that lets it; in
 * the order given, from the top down.
 *
 * @param places sorted, from the top down
 * @param over the highest and the lowest that may be
 */
export function apart(
  places: readonly number[],
  room: number,
  [top, bottom]: readonly [number, number],
): readonly number[] {
  const down = places.reduce<readonly number[]>(
    (set, place) => [...set, Math.max(place, (set.at(-1) ?? top - room) + room)],
    [],
  );
  return down.reduceRight<readonly number[]>(
    (set, place) => [Math.min(place, (set[0] ?? bottom + room) - room), ...set],
    [],
  );
}
