import type { Kind, System } from '../units/kinds.ts';

/** The units a result is shown in when its declaration does not say otherwise: [metric, inch]. */
const shown: Readonly<Record<Kind, readonly [string, string]>> = {
  length: ['mm', 'in'],
  area: ['mm2', 'in2'],
  volume: ['cm3', 'in3'],
  secondMoment: ['mm4', 'in4'],
  mass: ['g', 'g'],
  density: ['g/cm3', 'lb/in3'],
  unbalance: ['gmm', 'ozin'],
  inertia: ['kgmm2', 'lbin2'],
  angle: ['deg', 'deg'],
  angularSpeed: ['rpm', 'rpm'],
  angularAcceleration: ['rad/s2', 'rad/s2'],
  speed: ['m/s', 'ft/s'],
  acceleration: ['m/s2', 'ft/s2'],
  force: ['kN', 'lbf'],
  torque: ['Nm', 'lbft'],
  energy: ['kJ', 'ftlbf'],
  power: ['kW', 'hp'],
  specificEnergy: ['MJ/kg', 'Btu/lb'],
  pressure: ['bar', 'psi'],
  viscosity: ['cSt', 'cSt'],
  temperature: ['degC', 'degF'],
  expansion: ['ppm/K', 'ppm/degF'],
  torsionalStiffness: ['kNm/rad', 'lbft/deg'],
  frequency: ['Hz', 'Hz'],
  time: ['s', 's'],
  ratio: ['ratio', 'ratio'],
  count: ['count', 'count'],
};

/** The unit id in which an output (or an input) is shown in the given system. */
export function unitFor(
  entry: { readonly kind: Kind; readonly metric?: string; readonly inch?: string },
  system: System,
): string {
  const [metric, inch] = shown[entry.kind];
  return system === 'metric' ? (entry.metric ?? metric) : (entry.inch ?? inch);
}
