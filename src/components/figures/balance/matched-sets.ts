import type { Value } from '../../../calculators/define.ts';
import { matchingOf, pinsOf, type OnPin } from '../../../calculators/balance/matched.ts';
import { partNames, type Masses, type PartName } from '../../../core/balance/matching-parts.ts';
import { takeOff } from '../../../core/balance/take-off.ts';
import { isRefusal } from '../../../calculators/evaluate.ts';
import { marksOf } from '../../../notebook/marks-of.ts';
import { nameOfPart, type Marks } from '../../../units/marks.ts';
import { numberOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** What goes to one cylinder. */
export interface MatchedSet {
  /** The parts by their places in the lists, from 1, in the order of {@link Matched.kinds}. */
  readonly parts: readonly number[];
  /** [kg] */
  readonly total: number;
  /** What this piston and the others of its place weigh as they were listed [kg]. */
  readonly listed: number;
  /** What is to come off for the spread wanted [kg]. */
  readonly off: number;
}

/** All sets of one engine. */
export interface Matched {
  readonly kinds: readonly PartName[];
  /** The parts as they were weighed [kg], and what stands on them, by their kind. */
  readonly masses: Readonly<Partial<Record<PartName, Masses>>>;
  readonly marks: Readonly<Partial<Record<PartName, Marks>>>;
  readonly sets: readonly MatchedSet[];
  readonly lightest: number;
  readonly targetSpread: number;
  readonly isLeast: boolean;
  /** What the spread is above the least possible by, at most [kg]. */
  readonly unproved: number;
  readonly spread: number;
  readonly listedSpread: number;
  /** The rods that share a pin; none where there is nothing to choose. */
  readonly pins: readonly OnPin[];
}

/** What a kind of part is called over its column. */
export const kindWords: Readonly<Record<PartName, string>> = {
  pistonMasses: 'piston',
  pinMasses: 'pin',
  smallEndMasses: 'rod',
  ringMasses: 'rings',
};

function listOf(input: Readonly<Record<string, Value>>, name: string): Masses | undefined {
  const value = input[name];
  return Array.isArray(value) ? (value as Masses) : undefined;
}

/** The sets that the parts of one engine are put together to; undefined while a number is missing or has no sense. */
export function matchedSets({ input, typed }: FigureSet): Matched | undefined {
  if (input === undefined) return undefined;
  const pistonMasses = listOf(input, 'pistonMasses');
  const scaleResolution = numberOf(input, 'scaleResolution');
  const targetSpread = numberOf(input, 'targetSpread');
  const rodsPerPin = numberOf(input, 'rodsPerPin');
  if (
    pistonMasses === undefined ||
    scaleResolution === undefined ||
    targetSpread === undefined ||
    rodsPerPin === undefined
  )
    return undefined;
  const given = {
    pistonMasses,
    pinMasses: listOf(input, 'pinMasses'),
    smallEndMasses: listOf(input, 'smallEndMasses'),
    ringMasses: listOf(input, 'ringMasses'),
    bigEndMasses: listOf(input, 'bigEndMasses'),
    scaleResolution,
    partBanks: input['partBanks'] === 'halves' ? 'halves' : 'any',
    rodsPerPin,
  } as const;
  try {
    const { orders, totals, listed, spread, bound, isLeast } = matchingOf(given);
    const off = takeOff(totals, { targetSpread });
    const kinds = partNames.filter((name) => given[name] !== undefined);
    const pins = pinsOf(given, { orders, totals, listed, spread, bound, isLeast });
    return {
      kinds,
      masses: Object.fromEntries(kinds.map((name) => [name, given[name]])),
      marks: Object.fromEntries(
        kinds.flatMap((name) => {
          const marks = marksOf(typed, name);
          return marks === undefined ? [] : [[name, marks]];
        }),
      ),
      sets: totals.map((total, set) => ({
        parts: kinds.map((name) => (orders[name]?.[set] ?? 0) + 1),
        total,
        listed: listed[set] ?? Number.NaN,
        off: off[set] ?? 0,
      })),
      lightest: Math.min(...totals),
      targetSpread,
      isLeast,
      unproved: spread - bound,
      spread,
      listedSpread: Math.max(...listed) - Math.min(...listed),
      pins: 'absent' in pins || rodsPerPin < 2 ? [] : pins,
    };
  } catch (error) {
    if (isRefusal(error)) return undefined;
    throw error;
  }
}

/** The least and the greatest mark of both engines, above their own lightest matched set [kg]. */
export function reachOf(engines: readonly Matched[]): readonly [number, number] {
  const marks = engines.flatMap(({ sets, lightest, targetSpread }) => [
    targetSpread,
    ...sets.flatMap(({ total, listed }) => [total - lightest, listed - lightest]),
  ]);
  return [Math.min(0, ...marks), Math.max(0, ...marks)];
}

/** Whether all sets weigh whole tenths of a gram, but for what the binary writing of a decimal adds. */
export function isInTenths({ sets }: Matched): boolean {
  const tenth = 1e-4;
  return sets.every(({ total }) => Math.abs(total / tenth - Math.round(total / tenth)) < 1e-6);
}

/** Places behind the point: tenths of a gram where the parts were weighed to tenths, else a digit more. */
export function massDecimals(engines: readonly Matched[], unit: string): number {
  return (unit === 'g' ? 1 : 3) + (engines.every(isInTenths) ? 0 : 1);
}

/** What a part of one kind is called, its place counted from 1: by its mark, else by its place. */
export function partName({ marks }: Matched, kind: PartName, place: number): string {
  return nameOfPart(marks[kind], place - 1);
}

/** Rods that share a pin, as they are read: “1 + 4”, or by their marks. */
export function pinWords(matched: Matched, { rods }: OnPin): string {
  return rods.map((rod) => partName(matched, 'smallEndMasses', rod + 1)).join(' + ');
}

/** Whether a drawing has room for what the parts are called; else it has their places, and a table the marks. */
export function hasShortNames({ kinds, sets, marks }: Matched): boolean {
  const most = 4;
  return kinds.every((kind) =>
    sets.every((_, place) => [...nameOfPart(marks[kind], place)].length <= most),
  );
}
