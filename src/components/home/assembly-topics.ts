/** Which topic stands at which part of the drawing, and the number it shows. */
export interface PartOfDrawing {
  /** The part in words. */
  readonly part: string;
  /** The calculator whose number it shows, where that has another name than the topic. */
  readonly calculator?: string;
  /** The output of that calculator that is shown, and what it is in few words. */
  readonly out: string;
  readonly words: string;
  /** Its label where the topic's title is too long for one. */
  readonly label?: string;
  readonly side: 'left' | 'right';
  /** Height of the label's line in the drawing. */
  readonly line: number;
}

/** By topic. */
export const partsOfDrawing = {
  'piston-motion': {
    part: 'stroke',
    out: 'accelerationTop',
    words: 'Acceleration at TDC',
    side: 'right',
    line: 30,
  },
  'rod-angularity': {
    part: 'angle of the rod',
    out: 'downLean',
    words: 'Greatest rod angle, down',
    side: 'left',
    line: 294,
  },
  'rod-weighing': {
    part: 'rod on two scales',
    out: 'bigEndMass',
    words: 'Big end, mean',
    side: 'right',
    line: 734,
  },
  bobweight: {
    part: 'counterweight',
    out: 'bobweight',
    words: 'Bobweight of one crankpin',
    side: 'left',
    line: 822,
  },
  'quoted-bobweight': {
    part: 'bobweight that is clamped on a crankpin',
    calculator: 'bobweight-implied',
    out: 'impliedBigEnd',
    words: 'Big end that it implies',
    side: 'right',
    line: 822,
  },
  'residual-unbalance': {
    part: 'main journal on two rollers',
    out: 'permissible',
    words: 'Permitted by the grade',
    side: 'right',
    line: 910,
  },
  'balance-factor': {
    part: 'balance mass opposite the crankpin',
    calculator: 'partial-balance',
    out: 'balanceMass',
    words: 'Balance mass',
    side: 'right',
    line: 646,
  },
  'counterweight-drilling': {
    part: 'hole in the counterweight',
    out: 'depth',
    words: 'Depth of each hole',
    side: 'left',
    line: 734,
  },
  'heavy-metal': {
    part: 'slug in the counterweight',
    out: 'perSlug',
    words: 'One slug gains',
    side: 'left',
    line: 910,
  },
  'two-plane': {
    part: 'two planes of a crank, from the side',
    label: 'In two planes',
    calculator: 'plane-transfer',
    out: 'movedB',
    words: 'In the other plane B',
    side: 'right',
    line: 1086,
  },
  'reversal-load': {
    part: 'rod bolts',
    out: 'partingPull',
    words: 'Pull across the parting line',
    side: 'left',
    line: 382,
  },
  'crank-overlap': {
    part: 'overlap of crankpin and main journal',
    out: 'overlap',
    words: 'Overlap of the journals',
    side: 'left',
    line: 646,
  },
  'cylinder-pressure': {
    part: 'space above the piston',
    out: 'peakPressure',
    words: 'Peak of the mean cycle',
    side: 'left',
    line: 30,
  },
  'rod-shank': {
    part: 'beam of the rod',
    out: 'pullStress',
    words: 'Pull stress at overlap TDC',
    side: 'right',
    line: 294,
  },
  'rod-materials': {
    part: 'section of the beam',
    out: 'marginMass',
    words: 'Beam mass at the margin',
    side: 'right',
    line: 206,
  },
  'ring-tension': {
    part: 'rings',
    out: 'contactPressure',
    words: 'Contact pressure, by spring',
    side: 'left',
    line: 206,
  },
  'gas-port': {
    part: 'gas port',
    out: 'shortfall',
    words: 'Shortfall behind the ring',
    side: 'left',
    line: 118,
  },
  'journal-sizes': {
    part: 'crankpin',
    out: 'pinSpeed',
    words: 'Surface speed of the pin',
    side: 'left',
    line: 558,
  },
  'bearing-clearance': {
    part: 'bearing shells',
    label: 'Bearing clearance',
    out: 'clearance',
    words: 'Clearance in the shop',
    side: 'left',
    line: 470,
  },
  'rotating-inertia': {
    part: 'flywheel, above the axis',
    out: 'totalInertia',
    words: 'All that turns',
    side: 'right',
    line: 382,
  },
  'inertia-through-gears': {
    part: 'shaft to the gears',
    label: 'Through the gears',
    out: 'acceleration',
    words: 'Acceleration in the lowest gear',
    side: 'right',
    line: 470,
  },
  'speed-fluctuation': {
    part: 'flywheel, below the axis',
    calculator: 'speed-ripple',
    out: 'coefficient',
    words: 'Coefficient of fluctuation',
    side: 'right',
    line: 558,
  },
  'inertia-by-swinging': {
    part: 'part on two wires',
    calculator: 'bench-swing',
    out: 'partInertia',
    words: 'Inertia of the part',
    side: 'left',
    line: 998,
  },
  'crank-torsion': {
    part: 'damper on the nose of the crank',
    out: 'firstFrequency',
    words: 'First natural frequency',
    side: 'right',
    line: 998,
  },
  'wrist-pin': {
    part: 'wrist pin',
    out: 'mass',
    words: 'Mass from the dimensions',
    side: 'right',
    line: 118,
  },
} as const satisfies Readonly<Record<string, PartOfDrawing>>;

export type DrawnTopic = keyof typeof partsOfDrawing;
