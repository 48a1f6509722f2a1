import type { BearingState } from '../../../core/bearings/bearing-clearance.ts';
import { roundScale } from '../rings/ring-shapes.ts';
import { stateAt, type WarmBearing } from './clearance-temperature.ts';

/** Radii of a section through shell and journal [drawing units]. */
export interface BearingRadii {
  readonly journal: number;
  /** The shells, inside and outside. */
  readonly bore: number;
  readonly back: number;
  readonly housing: number;
  readonly outside: number;
  /** Of the arrows that press on the shells' backs. */
  readonly push: number;
}

/** The room in which both sections are drawn: the greatest radius of a housing, and of a gap. */
const outermost = 82;
const widest = 13;
const longestPush = 17;

/** What both sections share: drawing units to a metre, how often the gaps are magnified, the greatest pressure. */
export interface SectionScale {
  readonly length: number;
  readonly times: number;
  readonly pressure: number;
}

/** The scale in which every state between two rod temperatures [K] can be drawn. */
export function sectionScale(
  bearings: readonly WarmBearing[],
  [from, to]: readonly [number, number],
): SectionScale {
  const length = outermost / Math.max(1e-6, ...bearings.map(({ fit }) => fit.housingOutside / 2));
  const states = bearings.flatMap((bearing) =>
    [from, bearing.shop, bearing.hot, bearing.loose ?? to, to]
      .filter((kelvin) => kelvin >= from && kelvin <= to)
      .map((kelvin) => stateAt(bearing, kelvin)),
  );
  const gap = Math.max(
    1e-9,
    ...states.map(({ clearance, gap: behind }) => Math.max(clearance, behind) / 2),
  );
  return {
    length,
    times: roundScale(widest / (gap * length)),
    pressure: Math.max(1, ...states.map(({ pressure }) => pressure)),
  };
}

/**
 * The radii of one state. Housing and shells are to scale; the gap behind the shells and the clearance are drawn
 * `times` as wide, and the journal as much thinner. A clearance of less than nothing is drawn as none.
 */
export function radiiOf(
  { fit }: WarmBearing,
  { clearance, gap, pressure }: BearingState,
  { length, times, pressure: greatest }: SectionScale,
): BearingRadii {
  const housing = (fit.rodHousing / 2) * length;
  const back = housing - (Math.max(0, gap) / 2) * length * times;
  const bore = back - fit.rodShellWall * length;
  return {
    journal: Math.max(1, bore - (Math.max(0, clearance) / 2) * length * times),
    bore,
    back,
    housing,
    outside: (fit.housingOutside / 2) * length,
    push: (longestPush * pressure) / greatest,
  };
}
