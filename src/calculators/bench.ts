import type { Entry, ListEntry } from './define.ts';
import type * as quantities from './quantities.ts';

/** The name of a quantity or choice of the dictionary. */
export type QuantityName = keyof typeof quantities;

/** A group of rows of the parts table. */
export interface BenchGroup {
  /** Part of addresses, so it must last. */
  readonly id: string;
  readonly title: string;
  /** The quantity that stands for the group where it is folded to a line. */
  readonly first: QuantityName;
  /** In the order of work. */
  readonly names: readonly QuantityName[];
}

/**
 * Every quantity that belongs to the engine or one of its parts, in the order of work at the bench: what the parts
 * weigh and measure, what data sheets say of them, what is chosen for them. A test holds that each quantity of the
 * dictionary stands here once, or in `leftOut`.
 */
export const benchGroups: readonly BenchGroup[] = [
  {
    id: 'layout',
    title: 'Layout and speeds',
    first: 'stroke',
    names: [
      'crankLayout',
      'cylinders',
      'bankAngle',
      'cylinderSpacing',
      'rodsPerPin',
      'reciprocatingFraction',
      'firingOrder',
      'cylinderNumbering',
      'bore',
      'stroke',
      'rodLength',
      'maxSpeed',
      'missedShiftSpeed',
      'torqueSpeed',
    ],
  },
  {
    id: 'pistons',
    title: 'Pistons',
    first: 'pistonMass',
    names: [
      'pistonMasses',
      'pistonMass',
      'pinOffset',
      'bossGap',
      'topLandHeight',
      'topLandClearance',
      'secondLandHeight',
      'secondLandClearance',
      'portKind',
      'portCount',
      'portDiameter',
    ],
  },
  {
    id: 'pins',
    title: 'Wrist pins',
    first: 'pinMass',
    names: [
      'pinMasses',
      'pinMass',
      'pinDiameter',
      'pinBore',
      'pinLength',
      'pinTaperBore',
      'pinTaperLength',
      'pinDensity',
      'pinModulus',
    ],
  },
  {
    id: 'rings',
    title: 'Rings',
    first: 'ringMass',
    names: [
      'ringMasses',
      'ringMass',
      'ring1Height',
      'ring1Radial',
      'ring1Gap',
      'ring1FreeGap',
      'ring1Tension',
      'ringSideClearance',
      'ringBackClearance',
      'ring2Height',
      'ring2Radial',
      'ring2Gap',
      'ring2FreeGap',
      'ring2Tension',
      'oilRingTension',
      'packDrag',
      'ring1Modulus',
      'ring2Modulus',
      'ringDensity',
      'ringExpansion',
    ],
  },
  {
    id: 'locks',
    title: 'Locks and other small parts',
    first: 'lockMass',
    names: ['lockMass', 'batchMass', 'batchCount'],
  },
  {
    id: 'rods',
    title: 'Rods, both ends',
    first: 'bigEndMass',
    names: [
      'rodMass',
      'smallEndMasses',
      'smallEndReadings',
      'smallEndMass',
      'bigEndMasses',
      'bigEndReadings',
      'bigEndMass',
      'partnerRotating',
      'partnerReciprocating',
      'smallEndWidth',
      'rodMaterial',
      'shankShape',
      'shankHeight',
      'shankWidth',
      'flangeThickness',
      'webThickness',
      'shankArea',
      'shankLength',
      'shankSection',
      'rodMassAbove',
      'rodDensity',
      'youngsModulus',
      'yieldStrength',
      'rodExpansion',
    ],
  },
  {
    id: 'bolts',
    title: 'Rod bolts and caps',
    first: 'capMass',
    names: ['capMass'],
  },
  {
    id: 'shells',
    title: 'Bearing shells and housings',
    first: 'shellMass',
    names: [
      'shellMass',
      'oilMass',
      'rodHousing',
      'housingOutside',
      'rodShellWall',
      'rodShellWidth',
      'rodClearance',
      'crushHeight',
      'shellModulus',
      'shellExpansion',
      'housingPoisson',
    ],
  },
  {
    id: 'crank',
    title: 'Crank',
    first: 'crankpinDiameter',
    names: [
      'crankpinDiameter',
      'journalTaper',
      'journalOutOfRound',
      'mainDiameter',
      'crankMass',
      'bearingSpan',
      'cgToBearingA',
      'balanceRadius',
      'planeA',
      'planeB',
      'counterweightRadius',
      'counterweightWidth',
      'counterweightAngle',
      'steelDensity',
      'counterweightModulus',
      'crankInertia',
      'crankExpansion',
      'mainLength',
      'mainBore',
      'crankpinLength',
      'crankpinBore',
      'crankWebThickness',
      'crankWebWidth',
      'crankShearModulus',
      'noseStiffness',
      'flangeStiffness',
    ],
  },
  {
    id: 'flywheel',
    title: 'Flywheel, clutch and damper',
    first: 'flywheelInertia',
    names: [
      'flywheelMass',
      'flywheelClearance',
      'flywheelFrom',
      'flywheelInertia',
      'flywheelDiameter',
      'flywheelInside',
      'flywheelThickness',
      'flywheelDensity',
      'clutchInertia',
      'damperInertia',
      'hubInertia',
      'ringStiffness',
    ],
  },
  {
    id: 'dimensions',
    title: 'Bores, heights, valve timing and pressures',
    first: 'compressionRatio',
    names: [
      'assemblyTemperature',
      'boreOffset',
      'boreExpansion',
      'compressionRatio',
      'pistonToHead',
      'intakeOpen',
      'intakeClose',
      'exhaustOpen',
      'manifoldPressure',
      'volumetricEfficiency',
      'peakPressure',
      'frictionMep',
    ],
  },
];

/** The lists with one weight a cylinder. */
export const weighedEach = [
  'pistonMasses',
  'pinMasses',
  'ringMasses',
  'smallEndMasses',
  'bigEndMasses',
] as const satisfies readonly QuantityName[];

/** True for a list with one weight a cylinder; another list is of repeated readings. */
export function isWeighedEach(entry: Entry): entry is ListEntry {
  return entry.type === 'list' && weighedEach.some((name) => name === entry.name);
}

/** A list as it is spoken of in few words: `Wrist pins`. */
export function shortLabel({ label }: ListEntry): string {
  return label.split(',')[0] ?? label;
}
