import type { Result } from '../../../calculators/define.ts';
import { numberOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** The three ways of porting that the figure can show, and the curves each one has. */
export const variants = [
  {
    id: 'entered',
    label: 'ports as entered',
    behind: 'behindCurve',
    land: 'landCurve',
    lift: 'liftCurve',
  },
  {
    id: 'unported',
    label: 'no ports',
    behind: 'behindUnportedCurve',
    land: 'landUnportedCurve',
    lift: 'liftUnportedCurve',
  },
  {
    id: 'plugged',
    label: 'share plugged',
    behind: 'behindPluggedCurve',
    land: 'landPluggedCurve',
    lift: 'liftPluggedCurve',
  },
] as const;
export type Variant = (typeof variants)[number]['id'];

/** Named places of the cycle, crank degrees from firing TDC. */
export const strokePlaces = [
  { label: 'Compression', at: -60 },
  { label: 'Firing TDC', at: 0 },
  { label: 'Peak', at: 15 },
  { label: 'Power', at: 60 },
  { label: 'Exhaust', at: 270 },
  { label: 'Overlap TDC', at: 360 },
  { label: 'Intake', at: 440 },
] as const;

/** The stroke that an angle [°] from −180 to 540 belongs to. */
export function strokeAt(degrees: number): string {
  return ['compression', 'power', 'exhaust', 'intake'][
    Math.min(3, Math.max(0, Math.floor((degrees + 180) / 180)))
  ] as string;
}

/** Brings any angle [°] into one cycle, −180 to 540. */
export function withinCycle(degrees: number): number {
  return degrees === 540 ? 540 : ((((degrees + 180) % 720) + 720) % 720) - 180;
}

/** Ring and gas of one set at one crank angle. Pressures in Pa absolute, `gas` net on the bore. */
export interface Moment {
  readonly cylinder: number;
  readonly behind: number;
  readonly land: number;
  readonly lift: number;
  readonly gas: number;
  readonly tension: number;
  readonly place: 'on its lower flank' | 'between its flanks' | 'on its upper flank';
}

/** A curve read at an angle [°], straight between its points; they stand at equal steps from −180° to 540°. */
function readAt(series: Result | undefined, degrees: number): number | undefined {
  if (typeof series !== 'object' || !('y' in series)) return undefined;
  const cells = series.y.length - 1;
  const place = Math.min(Math.max(((degrees + 180) / 720) * cells, 0), cells);
  const i = Math.min(Math.floor(place), cells - 1);
  const [a, b] = [series.y[i], series.y[i + 1]];
  return a === undefined || b === undefined ? undefined : a + (place - i) * (b - a);
}

/** What a set's results say at an angle; `undefined` while there is no result. */
export function momentAt(set: FigureSet, variant: Variant, degrees: number): Moment | undefined {
  const names = variants.find(({ id }) => id === variant) ?? variants[0];
  const at = (name: string): number => readAt(set.output?.[name], degrees) ?? Number.NaN;
  const cylinder = at('cylinderCurve');
  const behind = at(names.behind);
  const land = at(names.land);
  const lift = at(names.lift);
  const clearance = numberOf(set.input, 'ringSideClearance') ?? Number.NaN;
  const tension = numberOf(set.output, 'tensionPressure') ?? Number.NaN;
  const face = numberOf(set.input, 'faceFactor') ?? 0.5;
  if ([cylinder, behind, land, lift, clearance, tension].some(Number.isNaN)) return undefined;
  return {
    cylinder,
    behind,
    land,
    lift,
    gas: behind - (1 - face) * cylinder - face * land,
    tension,
    place:
      lift <= 0.02 * clearance
        ? 'on its lower flank'
        : lift >= 0.98 * clearance
          ? 'on its upper flank'
          : 'between its flanks',
  };
}

/** Sizes [mm] that the section is drawn from; `undefined` while a number is missing. */
export interface Section {
  readonly height: number;
  readonly radial: number;
  readonly side: number;
  readonly back: number;
  /** Radial clearance of the lands. */
  readonly topGap: number;
  readonly secondGap: number;
  readonly topLand: number;
  readonly secondLand: number;
  readonly ports: number;
  readonly hole: number;
  readonly lateral: boolean;
  readonly face: number;
  readonly shut: boolean;
}

export function sectionOf(set: FigureSet): Section | undefined {
  const mm = (name: string, usual = Number.NaN): number =>
    1000 * (numberOf(set.input, name) ?? usual / 1000);
  const section = {
    height: mm('ring1Height'),
    radial: mm('ring1Radial'),
    side: mm('ringSideClearance'),
    back: mm('ringBackClearance'),
    topGap: mm('topLandClearance', 0.56) / 2,
    secondGap: mm('secondLandClearance') / 2,
    topLand: mm('topLandHeight', 6),
    secondLand: mm('secondLandHeight'),
    hole: mm('portDiameter'),
  };
  if (Object.values(section).some(Number.isNaN)) return undefined;
  return {
    ...section,
    ports: numberOf(set.input, 'portCount') ?? 0,
    lateral: set.input?.['portKind'] === 'lateral',
    face: numberOf(set.input, 'faceFactor') ?? 0.5,
    shut: set.input?.['ringSeat'] === 'shut',
  };
}

/** How much higher than the rest the side clearance and the ring's lift are drawn. */
export const magnified = 10;
