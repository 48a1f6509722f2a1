/** The kinds of quantity the site knows. A unit belongs to exactly one kind. */
export const kindWords = {
  length: 'a length',
  area: 'an area',
  volume: 'a volume',
  secondMoment: 'a second moment of area',
  mass: 'a mass',
  density: 'a density',
  unbalance: 'an unbalance (mass times radius)',
  inertia: 'a moment of inertia',
  angle: 'an angle',
  angularSpeed: 'a crank speed or angular speed',
  angularAcceleration: 'an angular acceleration',
  speed: 'a speed',
  acceleration: 'an acceleration',
  force: 'a force',
  torque: 'a torque',
  energy: 'an energy',
  power: 'a power',
  specificEnergy: 'an energy for each kilogram',
  pressure: 'a pressure',
  viscosity: 'a viscosity',
  temperature: 'a temperature',
  expansion: 'a thermal expansion',
  torsionalStiffness: 'a torsional stiffness',
  frequency: 'a frequency',
  time: 'a time',
  ratio: 'a plain number',
  count: 'a whole number',
} as const;

export type Kind = keyof typeof kindWords;
export type System = 'metric' | 'inch';
