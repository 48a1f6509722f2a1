import { pullFactors, type PullFactors } from '../../../core/loads/reversal-load.ts';
import type { CutId } from './rod-cuts.ts';
import { numberOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** The sections a reader can look at, from the crown down. */
export const sections: readonly {
  readonly id: CutId;
  readonly label: string;
  /** "The pull" of the description goes on with this. */
  readonly place: string;
}[] = [
  { id: 'boss', label: 'piston bosses', place: 'on the piston bosses' },
  { id: 'eye', label: 'small-end eye', place: 'on the small-end eye' },
  { id: 'shank', label: 'beam section', place: 'through the beam section' },
  { id: 'parting', label: 'parting line', place: 'across the parting line' },
  { id: 'crankpin', label: 'crankpin', place: 'on the crankpin' },
];

const masses = [
  'pistonMass',
  'ringMass',
  'lockMass',
  'pinMass',
  'smallEndMass',
  'bigEndMass',
  'shellMass',
  'capMass',
  'shankSection',
  'rodMassAbove',
] as const;

/** What one set pulls with: force over the square of crank speed [kg·m], and its speeds [rad/s]. */
export interface Pull {
  readonly factor: number;
  readonly highest: number;
  readonly missed: number;
}

/**
 * The pull of one set through one section; `undefined` while a number is missing.
 * Throws OutOfDomain as `pullFactors` does, for numbers that no calculator would have let through.
 */
export function pullOf(set: FigureSet, section: keyof PullFactors): Pull | undefined {
  const read = (name: string): number => numberOf(set.input, name) ?? Number.NaN;
  const geometry = { stroke: read('stroke'), rodLength: read('rodLength') };
  const hanging = Object.fromEntries(masses.map((name) => [name, read(name)])) as Record<
    (typeof masses)[number],
    number
  >;
  const highest = read('maxSpeed');
  const missed = read('missedShiftSpeed');
  const all = [...Object.values(geometry), ...Object.values(hanging), highest, missed];
  if (all.some(Number.isNaN)) return undefined;
  return { factor: pullFactors(geometry, hanging)[section], highest, missed };
}

/**
 * What the parts of the chart stand for while a section is chosen: names of the calculator, which has a curve and the
 * pulls at the other two speeds for the parting line alone.
 */
export function chartQuantities(section: CutId): {
  readonly curve: string;
  readonly highest: string;
  readonly common: string;
  readonly missed: string;
} {
  const own = `${section}Pull`;
  return section === 'parting'
    ? {
        curve: `${own} pullCurve`,
        highest: `${own} maxSpeed`,
        common: 'commonPull commonSpeed',
        missed: 'missedShiftPull missedShiftSpeed',
      }
    : {
        curve: own,
        highest: `${own} maxSpeed`,
        common: 'commonSpeed',
        missed: 'missedShiftSpeed',
      };
}

/** Points of the square law from standstill to `last` [rad/s]; force in N. */
export function squareLaw(
  factor: number,
  last: number,
  points = 241,
): { x: number[]; y: number[] } {
  const x = Array.from({ length: points }, (_, i) => (last * i) / (points - 1));
  return { x, y: x.map((speed) => factor * speed * speed) };
}
