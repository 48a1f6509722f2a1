import type { NotesOf } from '../quantity-notes.ts';
import type * as quantities from './quantities.ts';

/** How the quantities of this subject are measured. */
export const notes: NotesOf<typeof quantities> = {
  torqueSpeed: { measure: 'From the dynamometer.' },
  peakPressure: {
    measure:
      'Pressure transducer in the cylinder, mean of many cycles, or the model of the cylinder pressure.',
    note: 'Single cycles go higher: the spread is 4 to 12 % of the peak.',
  },
  peakAngle: { measure: 'From the pressure trace, or from the model of the cylinder pressure.' },
  crankcasePressure: { measure: 'Absolute pressure sensor in the crankcase.' },
  overrunPressure: {
    measure:
      'Absolute pressure sensor in the cylinder or, near enough, in the manifold with the throttle shut.',
  },
  shankSection: { measure: 'Caliper from the centre of the small end along the beam.' },
  rodMassAbove: {
    measure:
      'From a model of the rod, or dip the small end in water up to the section and multiply the volume it displaces by the density of the rod.',
  },
  ambientPressure: { measure: 'Barometer in the shop or on the hill, not corrected to sea level.' },
  ambientTemperature: { measure: 'Thermometer in the air the engine breathes.' },
  volumetricEfficiency: {
    measure: 'From an air meter, or set so that the torque agrees.',
    note: 'Fresh charge, air with its fuel, over the swept volume full of air at ambient state. An air meter counts the air alone: multiply by 1 + 1/(λ·AFR), about 1.08 for a rich petrol charge.',
  },
  manifoldPressure: { measure: 'Absolute pressure sensor in the manifold or the port, its mean.' },
  exhaustPressure: { measure: 'Absolute pressure sensor in the exhaust port, its mean.' },
  intakeOpen: {
    measure: 'Degree disc, at the lift stated on the cam card.',
    note: 'With lash and ramps the flow begins and ends some degrees nearer the dead centre than the first movement.',
  },
  intakeClose: { measure: 'Degree disc, at the lift stated on the cam card.' },
  exhaustOpen: { measure: 'Degree disc, at the lift stated on the cam card.' },
  burnStart: { measure: 'Assumed: the spark advance less 8 to 15 degrees.' },
  burnDuration: { measure: 'Fitted to a measured trace, or assumed.' },
  wiebeEfficiency: { measure: 'A convention: 5 burns 99.3 % by the end, 6.91 burns 99.9 %.' },
  wiebeForm: { measure: 'Fitted to a measured trace; 2 is the usual assumption.' },
  compressionExponent: { measure: 'The slope of log pressure over log volume on a motored trace.' },
  expansionExponent: {
    measure: 'The slope of log pressure over log volume late in the expansion of a measured trace.',
  },
  burnedGamma: { measure: 'Gas tables at about 2000 K.' },
  heatLoss: { measure: 'Assumed; set so that the torque agrees with the dynamometer.' },
  airFuelLambda: { measure: 'Lambda probe.', note: 'Below one is rich.' },
  stoichRatio: { measure: 'Data of the fuel.' },
  heatingValue: { measure: 'Data of the fuel.' },
  combustionEfficiency: {
    measure: 'Assumed.',
    note: 'In a rich charge only the fuel for which there is air counts as burnable.',
  },
  residualFraction: { measure: 'Assumed: a few hundredths at full throttle.' },
  chargeTemperature: {
    measure: 'Assumed; warmer than the port by what walls and residual gas give.',
  },
  peakVariation: {
    measure: 'Standard deviation over mean of the peaks of a hundred cycles or more.',
  },
  frictionMep: {
    measure: 'Motoring the warm engine, or what is missing between indicated and measured torque.',
  },
};
