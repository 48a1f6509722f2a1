/** A result of one page that is a number other pages ask for: typed once where it is worked, it stands in all of them. */
export interface Source {
  readonly calculator: string;
  readonly output: string;
  /** The output that is its ±, where the calculator works that out itself. */
  readonly plusMinus?: string;
  /** The result is the reader's own once these are: the numbers that it turns on. None is common to both sets. */
  readonly needs: readonly string[];
  /** Where it is worked: the topic, and its title. */
  readonly page: string;
  readonly title: string;
}

const ofPressure = {
  calculator: 'cylinder-pressure',
  needs: ['bore', 'stroke', 'compressionRatio', 'volumetricEfficiency'],
  page: 'cylinder-pressure',
  title: 'Cylinder pressure',
} as const;
const ofWeighing = {
  calculator: 'rod-weighing',
  page: 'rod-weighing',
  title: 'Weighing the parts',
} as const;
const ofBobweight = { calculator: 'bobweight', page: 'bobweight', title: 'Bobweight' } as const;

const ofResidual = { page: 'residual-unbalance', title: 'Residual unbalance' } as const;

const ofTorsion = {
  calculator: 'crank-torsion',
  needs: ['throwInertia', 'throwStiffness', 'flywheelInertia'],
  page: 'crank-torsion',
  title: 'Torsional vibration',
} as const;

const ofLayout = {
  calculator: 'crank-layout',
  needs: ['crankLayout'],
  page: 'crank-layout',
  title: 'Crank layout',
} as const;

/**
 * By the quantity that is filled. A page must know them without fetching the declarations of all others; a test holds
 * that these are the results which those declare as carried, and that they run in no circle.
 */
export const sources: Readonly<Record<string, Source>> = {
  bigEndMass: {
    ...ofWeighing,
    output: 'bigEndMass',
    plusMinus: 'bigEndPlusMinus',
    needs: ['bigEndReadings'],
  },
  smallEndMass: {
    ...ofWeighing,
    output: 'smallEndMass',
    plusMinus: 'smallEndPlusMinus',
    needs: ['smallEndReadings'],
  },
  rodsPerPin: { ...ofLayout, output: 'rodsPerPin' },
  reciprocatingFraction: { ...ofLayout, output: 'reciprocatingFraction' },
  cylinders: { ...ofLayout, output: 'cylinders' },
  bankAngle: { ...ofLayout, output: 'bankAngle' },
  reciprocatingMass: {
    ...ofBobweight,
    output: 'reciprocatingPerCylinder',
    needs: ['pistonMass', 'pinMass', 'ringMass', 'smallEndMass'],
  },
  rotatingMass: { ...ofBobweight, output: 'rotating', needs: ['bigEndMass', 'shellMass'] },
  newBobweight: {
    ...ofBobweight,
    output: 'bobweight',
    needs: ['pistonMass', 'pinMass', 'ringMass', 'smallEndMass', 'bigEndMass', 'shellMass'],
  },
  bobweightUnbalance: {
    calculator: 'bobweight-error',
    output: 'planeUnbalance',
    needs: ['bobweightError'],
    ...ofResidual,
  },
  unbalanceFloor: {
    calculator: 'unbalance-floor',
    output: 'floor',
    needs: ['crankMass', 'flywheelMass', 'flywheelClearance'],
    ...ofResidual,
  },
  heavyAngle: {
    calculator: 'unbalance-reading',
    output: 'heavySpot',
    needs: ['unbalanceAngle'],
    page: 'counterweight-drilling',
    title: 'Drilling for balance',
  },
  peakPressure: { ...ofPressure, output: 'peakPressure' },
  peakAngle: { ...ofPressure, output: 'peakAngle' },
  pinMass: {
    calculator: 'wrist-pin',
    output: 'mass',
    needs: ['pinDiameter', 'pinBore', 'pinLength'],
    page: 'wrist-pin',
    title: 'Wrist pin',
  },
  bearingLoad: {
    calculator: 'reversal-load',
    output: 'crankpinPull',
    needs: [
      'maxSpeed',
      'stroke',
      'rodLength',
      'pistonMass',
      'pinMass',
      'bigEndMass',
      'smallEndMass',
    ],
    page: 'reversal-load',
    title: 'Reversal load',
  },
  throwInertia: {
    calculator: 'rotating-inertia',
    output: 'throwInertia',
    needs: ['crankInertia', 'stroke', 'pistonMass', 'bigEndMass'],
    page: 'rotating-inertia',
    title: 'Rotating inertia',
  },
  mainInertia: { ...ofTorsion, output: 'seenInertia' },
  mainFrequency: { ...ofTorsion, output: 'bareFrequency' },
  throwStiffness: {
    calculator: 'throw-stiffness',
    output: 'mean',
    plusMinus: 'apart',
    needs: ['mainDiameter', 'crankpinDiameter', 'crankWebThickness', 'crankWebWidth'],
    page: 'crank-torsion',
    title: 'Torsional vibration',
  },
  engineInertia: {
    calculator: 'rotating-inertia',
    output: 'totalInertia',
    needs: ['crankInertia', 'flywheelInertia', 'clutchInertia', 'damperInertia'],
    page: 'rotating-inertia',
    title: 'Rotating inertia',
  },
};

/**
 * Quantities that stand for every part of a kind, by the list in which each of those is weighed: the mean of the list
 * fills the quantity, before what any page works. Rings have none: with them their list weighs the locks.
 */
export const means: Readonly<Record<string, string>> = {
  pistonMass: 'pistonMasses',
  pinMass: 'pinMasses',
  smallEndMass: 'smallEndMasses',
  bigEndMass: 'bigEndMasses',
};
