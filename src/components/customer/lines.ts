/** One line of the customer's table: a result, or a number that was chosen for the engine. */
export interface Line {
  readonly id: LineId;
  readonly calculator: string;
  /** The output, or the input, of that name. */
  readonly name: string;
  /** In the customer's words. */
  readonly label: string;
}

export type LineId =
  | 'reciprocating'
  | 'bobweight'
  | 'pull'
  | 'speed'
  | 'pistonSpeed'
  | 'compression'
  | 'peak'
  | 'ring'
  | 'clearance'
  | 'inertia';

/** No customer reads more. */
export const mostLines = 8;

/** All lines in the order of telling; the first eight that there are numbers for are shown. */
export const lines: readonly Line[] = [
  {
    id: 'reciprocating',
    calculator: 'bobweight',
    name: 'reciprocatingPerCylinder',
    label: 'Piston, pin, rings and small end of one cylinder',
  },
  { id: 'bobweight', calculator: 'bobweight', name: 'bobweight', label: 'Bobweight of a crankpin' },
  {
    id: 'pull',
    calculator: 'reversal-load',
    name: 'partingPull',
    label: 'Pull on the bolts of one rod, at its highest speed',
  },
  { id: 'speed', calculator: 'reversal-load', name: 'maxSpeed', label: 'Highest speed' },
  {
    id: 'pistonSpeed',
    calculator: 'piston-motion',
    name: 'meanSpeed',
    label: 'Mean piston speed at it',
  },
  {
    id: 'inertia',
    calculator: 'rotating-inertia',
    name: 'equivalentMass',
    label: 'What turns in the engine, as mass of the car',
  },
  {
    id: 'clearance',
    calculator: 'bearing-clearance',
    name: 'clearance',
    label: 'Oil clearance of the rod bearing',
  },
  {
    id: 'ring',
    calculator: 'ring-tension',
    name: 'contactPressure',
    label: 'Top ring on the wall, by its own spring',
  },
  {
    id: 'compression',
    calculator: 'cylinder-pressure',
    name: 'compressionRatio',
    label: 'Compression ratio',
  },
  {
    id: 'peak',
    calculator: 'cylinder-pressure',
    name: 'peakPressure',
    label: 'Peak pressure in the cylinder',
  },
];

/**
 * A number without which a calculator has nothing to tell, by calculator: it is fetched only where the job has one. A
 * test holds that each is an input that only the reader can have, or that another page fills.
 */
export const askedBy: Readonly<Record<string, string>> = {
  bobweight: 'pistonMass',
  'reversal-load': 'maxSpeed',
  'piston-motion': 'rodLength',
  'rotating-inertia': 'flywheelInertia',
  'bearing-clearance': 'crankpinDiameter',
  'ring-tension': 'ring1Radial',
  'cylinder-pressure': 'compressionRatio',
};
