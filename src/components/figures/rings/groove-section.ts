import { netGas } from '../../../core/rings/ring-forces.ts';
import { usual } from '../../../calculators/rings/gas-port.engine.ts';
import type { Result } from '../../../calculators/define.ts';
import { numberOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

/**
 * The states of the groove that stand side by side, and the curves each one has; shut, the ring lies still. With them
 * what the pressure behind the ring falls short by, and what the holes of a state stand for.
 */
export const states = [
  {
    id: 'clean',
    label: 'clean, no holes',
    behind: 'behindUnportedCurve',
    shortfall: 'shortfallUnported',
    land: 'landUnportedCurve',
    lift: 'liftUnportedCurve',
    holes: undefined,
  },
  {
    id: 'shut',
    label: 'shut, no holes',
    behind: 'behindShutUnportedCurve',
    shortfall: 'shutShortfallUnported',
    land: 'landShutUnportedCurve',
    lift: undefined,
    holes: undefined,
  },
  {
    id: 'holes',
    label: 'shut, with holes',
    behind: 'behindShutCurve',
    shortfall: 'shutShortfall',
    land: 'landShutCurve',
    lift: undefined,
    holes: 'portCount portDiameter',
  },
  {
    id: 'plugged',
    label: 'shut, share plugged',
    behind: 'behindShutPluggedCurve',
    shortfall: 'shutShortfallPlugged',
    land: 'landShutPluggedCurve',
    lift: undefined,
    holes: 'portCount portDiameter portPlugged',
  },
] as const;
export type State = (typeof states)[number];

/** The holes that the third state can have. */
export const holeOptions = [
  { id: 'holes', label: 'as entered' },
  { id: 'plugged', label: 'share plugged' },
] as const;
export type Holes = (typeof holeOptions)[number]['id'];

/** The three that are shown: the first with no holes as the ring moves, the others with the upper clearance shut. */
export function shownStates(holes: Holes): readonly State[] {
  return states.filter(({ id }) => id === 'clean' || id === 'shut' || id === holes);
}

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
  /** Gas and tension together outweigh what pushes the ring off its bore. */
  readonly holds: boolean;
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
export function momentAt(set: FigureSet, state: State, degrees: number): Moment | undefined {
  const at = (name: string): number => readAt(set.output?.[name], degrees) ?? Number.NaN;
  const cylinder = at('cylinderCurve');
  const behind = at(state.behind);
  const land = at(state.land);
  const lift = state.lift === undefined ? 0 : at(state.lift);
  const clearance = numberOf(set.input, 'ringSideClearance') ?? Number.NaN;
  const tension = numberOf(set.output, 'tensionPressure') ?? Number.NaN;
  const faceFactor = numberOf(set.input, 'faceFactor') ?? usual.faceFactor;
  if ([cylinder, behind, land, lift, clearance, tension].some(Number.isNaN)) return undefined;
  const gas = netGas({ faceFactor }, cylinder, behind, land);
  return {
    cylinder,
    behind,
    land,
    lift,
    gas,
    tension,
    holds: gas + tension >= 0,
    place:
      lift <= 0.02 * clearance
        ? 'on its lower flank'
        : lift >= 0.98 * clearance
          ? 'on its upper flank'
          : 'between its flanks',
  };
}
