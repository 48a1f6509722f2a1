import type { GasPortInput } from '../../../src/core/rings/gas-port.ts';
import { ringPack, type RingPack, type RingPackInput } from '../../../src/core/rings/ring-pack.ts';

export const degree = Math.PI / 180;
export const rpm = Math.PI / 30;

/** The invented V8 hill set of the examples, in SI. */
export const hill: GasPortInput = {
  bore: 0.0905,
  stroke: 0.073,
  rodLength: 0.146,
  compressionRatio: 12.13,
  volumetricEfficiency: 1.05,
  ambientPressure: 98e3,
  ambientTemperature: 293.15,
  residualFraction: 0.04,
  airFuelLambda: 0.88,
  stoichRatio: 14.6,
  heatingValue: 43e6,
  combustionEfficiency: 0.95,
  wiebeEfficiency: 5,
  wiebeForm: 2,
  burnStart: 19 * degree,
  burnDuration: 52 * degree,
  chargeTemperature: 345.15,
  manifoldPressure: 95e3,
  exhaustPressure: 110e3,
  intakeOpen: 40 * degree,
  intakeClose: 76 * degree,
  exhaustOpen: 80 * degree,
  compressionExponent: 1.32,
  expansionExponent: 1.27,
  burnedGamma: 1.28,
  heatLoss: 0.1,
  maxSpeed: 8400 * rpm,
  crankcasePressure: 98e3,
  ring1Height: 0.9e-3,
  ring1Radial: 2.9e-3,
  ring1Tension: 5.3,
  ringDensity: 7850,
  ringSideClearance: 22e-6,
  ringBackClearance: 0.35e-3,
  topLandHeight: 4e-3,
  topLandClearance: 0.62e-3,
  secondLandHeight: 3.2e-3,
  secondLandClearance: 0.52e-3,
  ring1Gap: 0.42e-3,
  ring2Gap: 0.5e-3,
  portCount: 10,
  portDiameter: 1.1e-3,
  portKind: 'crown',
  portPlugged: 0.5,
  dischargeCoefficient: 0.7,
  faceFactor: 0.5,
  flankFactor: 0.5,
  ringFriction: 0.06,
  ringTemperature: 488.15,
  ringExpansion: 11.5e-6,
  boreExpansion: 12e-6,
  boreTemperature: 398.15,
  ringSeat: 'free',
};

/** Its ring pack with hot gaps and no port plugged, and what a test changes of it. */
export function packOf(change: Partial<RingPackInput> = {}): RingPack {
  return ringPack({ ...hill, ring1Gap: 0.141e-3, ring2Gap: 0.3e-3, portPlugged: 0, ...change });
}
