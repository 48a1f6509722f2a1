import { optional, type Input } from '../define.ts';
import {
  airFuelLambda,
  ambientPressure,
  ambientTemperature,
  boreExpansion,
  boreTemperature,
  burnDuration,
  burnStart,
  burnedGamma,
  chargeTemperature,
  combustionEfficiency,
  compressionExponent,
  crankcasePressure,
  dischargeCoefficient,
  exhaustOpen,
  exhaustPressure,
  expansionExponent,
  faceFactor,
  flankFactor,
  heatLoss,
  heatingValue,
  intakeClose,
  intakeOpen,
  manifoldPressure,
  residualFraction,
  ringDensity,
  ringExpansion,
  ringFriction,
  stoichRatio,
  topLandClearance,
  topLandHeight,
  wiebeEfficiency,
  wiebeForm,
} from '../quantities.ts';

/** What only shapes the cylinder's pressure, or hardly moves the answer: may be left empty. */
export const spareInputs = {
  faceFactor: optional(faceFactor),
  flankFactor: optional(flankFactor),
  ringFriction: optional(ringFriction),
  dischargeCoefficient: optional(dischargeCoefficient),
  topLandHeight: optional(topLandHeight),
  topLandClearance: optional(topLandClearance),
  ringDensity: optional(ringDensity),
  ringExpansion: optional(ringExpansion),
  boreExpansion: optional(boreExpansion),
  boreTemperature: optional(boreTemperature),
  crankcasePressure: optional(crankcasePressure),
  ambientPressure: optional(ambientPressure),
  ambientTemperature: optional(ambientTemperature),
  chargeTemperature: optional(chargeTemperature),
  residualFraction: optional(residualFraction),
  manifoldPressure: optional(manifoldPressure),
  exhaustPressure: optional(exhaustPressure),
  intakeOpen: optional(intakeOpen),
  intakeClose: optional(intakeClose),
  exhaustOpen: optional(exhaustOpen),
  burnStart: optional(burnStart),
  burnDuration: optional(burnDuration),
  wiebeEfficiency: optional(wiebeEfficiency),
  wiebeForm: optional(wiebeForm),
  compressionExponent: optional(compressionExponent),
  expansionExponent: optional(expansionExponent),
  burnedGamma: optional(burnedGamma),
  heatLoss: optional(heatLoss),
  airFuelLambda: optional(airFuelLambda),
  stoichRatio: optional(stoichRatio),
  heatingValue: optional(heatingValue),
  combustionEfficiency: optional(combustionEfficiency),
};

type Spare = { readonly [K in keyof Required<Input<typeof spareInputs>>]: number };

const degree = Math.PI / 180;

/**
 * What stands in for a field left empty, in SI: an ordinary petrol engine for the road, the invented
 * baseline set of the examples. Assumed; common practice, no source.
 */
export const usual: Spare = {
  faceFactor: 0.5,
  flankFactor: 0.5,
  ringFriction: 0.06,
  dischargeCoefficient: 0.7,
  topLandHeight: 6e-3,
  topLandClearance: 0.56e-3,
  ringDensity: 7300,
  ringExpansion: 11.5e-6,
  boreExpansion: 12e-6,
  boreTemperature: 393.15,
  crankcasePressure: 101e3,
  ambientPressure: 98e3,
  ambientTemperature: 293.15,
  chargeTemperature: 345.15,
  residualFraction: 0.04,
  manifoldPressure: 93e3,
  exhaustPressure: 110e3,
  intakeOpen: 22 * degree,
  intakeClose: 62 * degree,
  exhaustOpen: 64 * degree,
  burnStart: 21 * degree,
  burnDuration: 54 * degree,
  wiebeEfficiency: 5,
  wiebeForm: 2,
  compressionExponent: 1.32,
  expansionExponent: 1.27,
  burnedGamma: 1.28,
  heatLoss: 0.08,
  airFuelLambda: 0.88,
  stoichRatio: 14.6,
  heatingValue: 43e6,
  combustionEfficiency: 0.95,
};

/** The entered values with the usual ones in the place of what was left empty. */
export function withUsual<T extends Input<typeof spareInputs>>(input: T): T & Spare {
  const given = Object.fromEntries(
    Object.entries(input).filter(([, value]) => value !== undefined),
  );
  return { ...usual, ...given } as T & Spare;
}
