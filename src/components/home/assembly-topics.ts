/** Which topic stands at which part of the drawing, and the number it shows. */
export interface PartOfDrawing {
  /** The part in words. */
  readonly part: string;
  /** The output of the topic's first calculator that is shown, and what it is in few words. */
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
    line: 309,
  },
  'rod-weighing': {
    part: 'rod on two scales',
    out: 'bigEndMass',
    words: 'Big end, mean',
    side: 'right',
    line: 742,
  },
  bobweight: {
    part: 'counterweight',
    out: 'bobweight',
    words: 'Bobweight of one crankpin',
    side: 'right',
    line: 650,
  },
  'reversal-load': {
    part: 'rod bolts',
    out: 'partingPull',
    words: 'Pull across the parting line',
    side: 'left',
    line: 402,
  },
  'crank-overlap': {
    part: 'overlap of crankpin and main journal',
    out: 'overlap',
    words: 'Overlap of the journals',
    side: 'left',
    line: 681,
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
    line: 216,
  },
  'gas-port': {
    part: 'gas port',
    out: 'shortfall',
    words: 'Shortfall behind the ring',
    side: 'left',
    line: 123,
  },
  'journal-sizes': {
    part: 'crankpin',
    out: 'pinSpeed',
    words: 'Surface speed of the pin',
    side: 'left',
    line: 588,
  },
  'bearing-clearance': {
    part: 'bearing shells',
    label: 'Bearing clearance',
    out: 'clearance',
    words: 'Clearance in the shop',
    side: 'left',
    line: 495,
  },
  'rotating-inertia': {
    part: 'flywheel',
    out: 'totalInertia',
    words: 'All that turns',
    side: 'right',
    line: 430,
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
