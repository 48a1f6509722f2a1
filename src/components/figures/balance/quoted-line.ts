import { commonShares } from '../../../calculators/balance/bobweight-implied.ts';
import { pinBobweight, type PinParts } from '../../../core/balance/bobweight.ts';
import { numberOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** A quoted bobweight beside those that its parts give with one split of the rod or another [kg]. */
export interface QuotedLine {
  readonly quoted: number;
  /** Of the rod at its big end, as the quoted bobweight implies it. */
  readonly share: number;
  /** With none of the rod at the big end, and with all of it: beyond, no rod gives the quoted bobweight. */
  readonly possible: readonly [number, number];
  /** With the shares that rods commonly have. */
  readonly common: readonly [number, number];
  /** What all masses that were not stated move it by, if each is a third out. */
  readonly unsaid: number;
}

const names = [
  'pistonMass',
  'pinMass',
  'ringMass',
  'lockMass',
  'shellMass',
  'oilMass',
  'rodsPerPin',
  'reciprocatingFraction',
] as const;

/** The line of one set; `undefined` while a number is missing. */
export function quotedLine({ input, output }: FigureSet): QuotedLine | undefined {
  const quoted = numberOf(input, 'bobweight');
  const rod = numberOf(input, 'rodMass');
  const share = numberOf(output, 'impliedShare');
  const swing = numberOf(output, 'unsaidSwing');
  const given = Object.fromEntries(names.map((name) => [name, numberOf(input, name)]));
  if (
    quoted === undefined ||
    rod === undefined ||
    share === undefined ||
    swing === undefined ||
    Object.values(given).includes(undefined)
  )
    return undefined;
  const parts = given as Omit<PinParts, 'bigEndMass' | 'smallEndMass'>;
  const [low, high] = commonShares;
  const at = (part: number): number =>
    pinBobweight({ ...parts, bigEndMass: part * rod, smallEndMass: (1 - part) * rod }).bobweight;
  const [from, to] = [at(low), at(high)];
  // The bobweight goes straight up with the share.
  const slope = (to - from) / (high - low);
  return {
    quoted,
    share,
    possible: [from - low * slope, to + (1 - high) * slope],
    common: [from, to],
    unsaid: swing * slope,
  };
}

/** The bobweights that a scale for both sets must hold [kg]. */
export function lineDomain(lines: readonly QuotedLine[]): readonly [number, number] {
  const ends = lines.flatMap(({ quoted, possible, common, unsaid }) => [
    quoted,
    ...possible,
    common[0] - unsaid,
    common[1] + unsaid,
  ]);
  return ends.length === 0 ? [0, 1] : [Math.max(0, Math.min(...ends)), Math.max(...ends)];
}

/** Whether the quoted bobweight can belong to the parts, by the split that it implies. */
export function standingOf({ share }: QuotedLine): 'impossible' | 'outside' | 'inside' {
  if (!(share > 0 && share < 1)) return 'impossible';
  return share >= commonShares[0] && share <= commonShares[1] ? 'inside' : 'outside';
}
