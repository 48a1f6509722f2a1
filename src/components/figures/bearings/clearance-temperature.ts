import {
  bearingState,
  type BearingState,
  journalTemperature,
  type RunningFit,
} from '../../../core/bearings/bearing-clearance.ts';
import { looseTemperature } from '../../../core/bearings/bearing-fit.ts';
import { numberOf, numbersOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

const names = [
  'rodHousing',
  'housingOutside',
  'youngsModulus',
  'housingPoisson',
  'rodShellWall',
  'shellModulus',
  'crushHeight',
  'rodExpansion',
  'shellExpansion',
  'assemblyTemperature',
  'crankpinDiameter',
  'crankExpansion',
  'coldStartTemperature',
  'rodTemperature',
  'crankpinTemperature',
] as const;

/** One set's bearing with its named temperatures [K]. */
export interface WarmBearing {
  readonly fit: RunningFit;
  readonly clearance: number;
  readonly cold: number;
  readonly shop: number;
  readonly hot: number;
  readonly journalHot: number;
  readonly loose: number | undefined;
}

/** The bearing of one set; `undefined` while a number is missing. */
export function bearingOf({ input, output }: FigureSet): WarmBearing | undefined {
  const clearance = numberOf(output, 'clearance');
  const given = numbersOf(input, names);
  if (clearance === undefined || given === undefined) return undefined;
  return {
    fit: given,
    clearance,
    cold: given.coldStartTemperature,
    shop: given.assemblyTemperature,
    hot: given.rodTemperature,
    journalHot: given.crankpinTemperature,
    loose: looseTemperature(given),
  };
}

/** Clearance [m], gap behind the shells [m] and their pressure [Pa] at a rod temperature [K]. */
export function stateAt(bearing: WarmBearing, rod: number): BearingState {
  const running = { rod: bearing.hot, journal: bearing.journalHot };
  return bearingState(bearing.fit, bearing.clearance, {
    rod,
    journal: journalTemperature(rod, bearing.shop, running),
  });
}

/** Where the axis runs for both sets [K]: from the coldest start to past running, or past loose shells. */
export function temperatureRange(bearings: readonly WarmBearing[]): readonly [number, number] {
  const hottest = Math.max(...bearings.map(({ hot, shop }) => Math.max(hot, shop)));
  const loosened = bearings.flatMap(({ loose }) =>
    loose !== undefined && loose < hottest + 60 ? [loose] : [],
  );
  return [
    Math.min(...bearings.map(({ cold, shop }) => Math.min(cold, shop))),
    Math.max(hottest, ...loosened) + 20,
  ];
}
