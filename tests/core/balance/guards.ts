import { pairAtTwiceSpeed, shaftAgainstCrank } from '../../../src/core/balance/balance-shafts.ts';
import {
  atSpeed,
  changeOnPin,
  changeOnThrows,
} from '../../../src/core/balance/bobweight-change.ts';
import { impliedEnds, pinBobweight, wholeRods } from '../../../src/core/balance/bobweight.ts';
import { crankBobweights } from '../../../src/core/balance/crank-bobweights.ts';
import { layoutParts, planeUnbalance, throwSums } from '../../../src/core/balance/crank-throws.ts';
import { carriedWeights, perfectWeights } from '../../../src/core/balance/crank-weights.ts';
import { cylindersOf, heavierBy, mostCylinders } from '../../../src/core/balance/cylinders.ts';
import { partsLeft } from '../../../src/core/balance/factor-left.ts';
import { checkParts } from '../../../src/core/balance/matching-parts.ts';
import { matchParts } from '../../../src/core/balance/part-matching.ts';
import { partialBalance } from '../../../src/core/balance/partial-balance.ts';
import {
  atPlanes,
  knownUnbalances,
  movedToPlanes,
} from '../../../src/core/balance/moved-planes.ts';
import { weightedParts } from '../../../src/core/balance/outside-masses.ts';
import { pairOnPins } from '../../../src/core/balance/pin-partners.ts';
import {
  balancedMass,
  bearingShares,
  gradeOf,
  permissible,
  reach,
  residualOf,
} from '../../../src/core/balance/residual-unbalance.ts';
import { shakingAt, shakingForces } from '../../../src/core/balance/shaking-forces.ts';
import { depthOfCut, takeOff } from '../../../src/core/balance/take-off.ts';
import { unbalanceFloor } from '../../../src/core/balance/unbalance-floor.ts';
import { counterweightDrilling } from '../../../src/core/balance/counterweight-drilling.ts';
import {
  axialDepth,
  axialHole,
  fullDiameterFrom,
  pointLength,
  radialDepth,
  radialHole,
} from '../../../src/core/balance/drilled-hole.ts';
import { nearestDrill } from '../../../src/core/balance/drill-sizes.ts';
import {
  ligamentStress,
  slugGain,
  slugPull,
  slugSum,
  slugWalls,
} from '../../../src/core/balance/heavy-metal.ts';
import { placeFan, radialSpacing, spreadFactor } from '../../../src/core/balance/hole-fan.ts';
import { fitPressure, interferenceLost, looseAt } from '../../../src/core/balance/press-fit.ts';
import { checkSpins } from '../../../src/core/balance/second-spin.ts';
import { settleReading } from '../../../src/core/balance/unbalance-reading.ts';
import { guarded, type Row, type Tables } from '../guards.ts';
import { pinParts } from './pin-parts.ts';

const parts = { ...pinParts, partnerRotating: 0, partnerReciprocating: 0 };
const lists = {
  pistonMasses: [0.428, 0.427],
  pinMasses: [0.12, 0.121],
  smallEndMasses: [0.17, 0.171],
  ringMasses: [0.038, 0.0381],
  bigEndMasses: [0.42, 0.421],
};
/** A list that must be as long as that of the pistons. */
function asLong<Q extends keyof typeof lists>(name: Q): readonly Row<Q>[] {
  return [
    [name, 'greater than', 0],
    [name, 'at least', 2, 'as many as the pistons, 2', [0.1]],
    [name, 'at most', 2, 'as many as the pistons, 2', [0.1, 0.1, 0.1]],
  ];
}
const rotor = { crankMass: 18, bobweightsMass: 5, maxSpeed: 880 };
const bearings = { bearingSpan: 0.4, cgToBearingA: 0.2 };
const planes = { planeA: -0.19, planeB: 0.19 };
const changed = { newBobweight: 1.2, balancedBobweight: 1.7, stroke: 0.07, cylinderSpacing: 0.1 };
const known = {
  planeUnbalanceA: 0.004,
  planeAngleA: 1,
  planeA: -0.19,
  planeUnbalanceB: 0.003,
  planeAngleB: 2,
  planeB: 0.19,
  thirdUnbalance: 0.002,
  thirdAngle: 3,
  thirdPlace: 0.2,
  fourthUnbalance: 0.001,
  fourthAngle: 4,
  fourthPlace: -0.2,
};
const weighted = {
  damperUnbalance: 0.008,
  damperAngle: 3,
  damperPlace: -0.25,
  flywheelUnbalance: 0.01,
  flywheelAngle: 0.3,
  flywheelPlace: 0.24,
};
const drill = { holeDiameter: 0.014, pointAngle: 2 };
const fan = { holeCount: 3, holeSpacing: 0.4, counterweightAngle: 3.1, holeAngleLimit: 0.9 };
const drilling = {
  ...drill,
  ...fan,
  holeKind: 'radial' as 'radial' | 'axial',
  unbalanceRead: 4e-3,
  heavyAngle: 3.2,
  counterweightRadius: 0.074,
  counterweightWidth: 0.02,
  steelDensity: 7850,
  depthLimit: 0.025,
  keepOutRadius: 0.04,
  holeWall: 0.002,
  axialHoleRadius: 0.062,
};
const slugs = {
  slugDiameter: 0.019,
  slugLength: 0.018,
  slugRadius: 0.06,
  slugDensity: 17e3,
  steelDensity: 7850,
  slugCount: 2,
  slugSpacing: 0.42,
  counterweightRadius: 0.074,
  counterweightWidth: 0.019,
  keepOutRadius: 0.036,
  addedUnbalance: 5e-3,
  maxSpeed: 800,
  missedShiftSpeed: 850,
};
const pressed = {
  slugDiameter: 0.019,
  slugInterference: 45e-6,
  slugModulus: 280e9,
  counterweightModulus: 207e9,
  slugExpansion: 5e-6,
  crankExpansion: 12e-6,
  assemblyTemperature: 293,
};
const drillPoint = pointLength(drill);
/** What just fits is taken. */
const hair = 1e-9;
const single = [{ angle: 0, position: 0, banks: [0] }];
const cylinder = { angle: 0, bank: 0, position: 0 };
const sizes = { reciprocatingMass: 0.7, stroke: 0.08, rodLength: 0.15 };
const engine = [{ ...cylinder, ...sizes }];
const shaking = shakingForces(engine, { maxSpeed: 600 });

export const balance: Tables = {
  'balance/balance-shafts.ts': [
    ...[shaftAgainstCrank, pairAtTwiceSpeed].map((shafts) =>
      guarded({ maxSpeed: 600 }, (run) => shafts(shaking, run), [['maxSpeed', 'greater than', 0]]),
    ),
  ],
  'balance/bobweight-change.ts': [
    guarded(changed, changeOnPin, [
      ['newBobweight', 'at least', 0],
      ['balancedBobweight', 'at least', 0],
      ['stroke', 'greater than', 0],
    ]),
    guarded(changed, (crank) => changeOnThrows(single, crank), [
      ['cylinderSpacing', 'greater than', 0],
    ]),
    guarded({ maxSpeed: 600 }, (running) => atSpeed(0.01, running), [['maxSpeed', 'at least', 0]]),
  ],
  'balance/moved-planes.ts': [
    guarded(planes, (at) => atPlanes([], at), [
      ['planeA', 'less than', 0.19, 'the place of plane B'],
      ['planeB', 'a number'],
    ]),
    guarded({ newPlaneA: -0.1, newPlaneB: 0.2 }, (at) => movedToPlanes([], at), [
      ['newPlaneA', 'less than', 0.2, 'the new place of plane B'],
      ['newPlaneB', 'a number'],
    ]),
    guarded(known, knownUnbalances, [
      ['planeUnbalanceA', 'at least', 0],
      ['planeAngleA', 'a number'],
      ['planeA', 'a number'],
      ['planeUnbalanceB', 'at least', 0],
      ['planeAngleB', 'a number'],
      ['planeB', 'a number'],
      ['thirdUnbalance', 'at least', 0],
      ['thirdAngle', 'a number'],
      ['thirdPlace', 'a number'],
      ['fourthUnbalance', 'at least', 0],
      ['fourthAngle', 'a number'],
      ['fourthPlace', 'a number'],
    ]),
  ],
  'balance/outside-masses.ts': [
    guarded(weighted, weightedParts, [
      ['damperUnbalance', 'at least', 0],
      ['damperAngle', 'a number'],
      ['damperPlace', 'a number'],
      ['flywheelUnbalance', 'at least', 0],
      ['flywheelAngle', 'a number'],
      ['flywheelPlace', 'a number'],
    ]),
  ],
  'balance/bobweight.ts': [
    guarded({ rodsPerPin: 2 }, (pin) => wholeRods(pin, 3), [
      ['rodsPerPin', 'at least', 1],
      ['rodsPerPin', 'at most', 3],
      ['rodsPerPin', 'at most', 1, 'a whole number of rods', 1.5],
    ]),
    guarded(parts, pinBobweight, [
      ['reciprocatingFraction', 'at least', 0],
      ['reciprocatingFraction', 'at most', 1],
      ['bigEndMass', 'greater than', 0],
      ['shellMass', 'at least', 0],
      ['smallEndMass', 'greater than', 0],
      ['pinMass', 'at least', 0],
      ['lockMass', 'at least', 0],
      ['pistonMass', 'greater than', 0],
      ['ringMass', 'at least', 0],
      ['oilMass', 'at least', 0],
      ['partnerRotating', 'greater than', -0.46, "minus the first rod's rotating parts"],
      ['partnerReciprocating', 'greater than', -0.732, "minus the first rod's reciprocating parts"],
    ]),
    guarded({ ...parts, bobweight: 1.7, rodMass: 0.59 }, impliedEnds, [
      ['reciprocatingFraction', 'at least', 0],
      [
        'reciprocatingFraction',
        'less than',
        1,
        'one, where the split of the rod no longer shows in the bobweight',
      ],
      ['rodMass', 'greater than', 0],
      ['pistonMass', 'greater than', 0],
      ['pinMass', 'at least', 0],
      ['ringMass', 'at least', 0],
      ['lockMass', 'at least', 0],
      ['bobweight', 'greater than', 0],
      ['oilMass', 'at least', 0],
      ['shellMass', 'at least', 0],
    ]),
  ],
  'balance/crank-bobweights.ts': [
    guarded(
      { rotatingMass: 0.9, reciprocatingMass: 0.7, stroke: 0.08, reciprocatingFraction: 0.5 },
      ({ reciprocatingMass, reciprocatingFraction, ...pin }) =>
        crankBobweights(
          [{ ...pin, angle: 0, position: 0, reciprocatingMasses: [reciprocatingMass] }],
          { reciprocatingFraction },
        ),
      [
        ['rotatingMass', 'at least', 0],
        ['reciprocatingMass', 'greater than', 0],
        ['stroke', 'greater than', 0],
        ['reciprocatingFraction', 'at least', 0],
        ['reciprocatingFraction', 'at most', 1],
      ],
    ),
  ],
  'balance/crank-weights.ts': [
    guarded({ reciprocatingFraction: 0.5 }, (given) => carriedWeights(engine, given), [
      ['reciprocatingFraction', 'at least', 0],
      ['reciprocatingFraction', 'at most', 1],
    ]),
    guarded({ planeA: -0.2, planeB: 0.2 }, (planes) => perfectWeights(engine, planes), [
      ['planeA', 'a number'],
      ['planeB', 'greater than', -0.2, 'the place of plane A'],
    ]),
  ],
  'balance/factor-left.ts': [
    guarded({ reciprocatingFraction: 0.4 }, (balance) => partsLeft(single, balance), [
      ['reciprocatingFraction', 'at least', 0],
      ['reciprocatingFraction', 'at most', 1],
    ]),
  ],
  'balance/crank-throws.ts': [
    ...[throwSums, (throws: typeof single) => layoutParts(throws, 2)].map((sums) =>
      guarded({ crankLayout: single }, ({ crankLayout }) => sums(crankLayout), [
        ['crankLayout', 'at least', 1, 'one throw', []],
      ]),
    ),
    guarded(
      { bobweightError: 0.004, stroke: 0.08, cylinderSpacing: 0.1, planeA: -0.2, planeB: 0.2 },
      (crank) => planeUnbalance(single, crank),
      [
        ['bobweightError', 'a number'],
        ['stroke', 'greater than', 0],
        ['cylinderSpacing', 'greater than', 0],
        ['planeA', 'less than', 0.2, 'the place of plane B'],
        ['planeB', 'a number'],
      ],
    ),
  ],
  'balance/cylinders.ts': [
    guarded(
      { ...sizes, cylinderSpacing: 0.1 },
      (alike) => shakingForces(cylindersOf(single, alike), { maxSpeed: 600 }),
      [['cylinderSpacing', 'greater than', 0]],
    ),
    guarded({ reciprocatingMass: 0.7, partnerReciprocating: 0.02 }, heavierBy, [
      ['reciprocatingMass', 'greater than', 0],
      ['partnerReciprocating', 'greater than', -0.7, 'all that reciprocates in the first bank'],
    ]),
    guarded(
      { cylinders: 1 },
      ({ cylinders }) =>
        shakingForces(
          Array.from({ length: cylinders }, (_, position) => ({ ...cylinder, ...sizes, position })),
          { maxSpeed: 600 },
        ),
      [
        ['cylinders', 'at least', 1, 'one cylinder', 0],
        ['cylinders', 'at most', mostCylinders, undefined, mostCylinders + 1],
      ],
    ),
  ],
  'balance/shaking-forces.ts': [
    guarded(
      { ...sizes, maxSpeed: 600 },
      ({ maxSpeed, ...own }) => shakingForces([{ ...cylinder, ...own }], { maxSpeed }),
      [
        ['reciprocatingMass', 'greater than', 0],
        ['stroke', 'greater than', 0],
        ['rodLength', 'greater than', 0.04, 'half the stroke'],
        ['maxSpeed', 'at least', 0],
      ],
    ),
    guarded({ crankAngle: 0.3 }, (crank) => shakingAt(shaking, crank), [
      ['crankAngle', 'a number'],
    ]),
  ],
  'balance/matching-parts.ts': [
    guarded(lists, checkParts, [
      ['pistonMasses', 'greater than', 0],
      ['pistonMasses', 'at least', 1, 'one', []],
      ['pistonMasses', 'at most', 16, 'sixteen', Array(17).fill(0.4)],
      ...asLong('pinMasses'),
      ...asLong('smallEndMasses'),
      ...asLong('ringMasses'),
      ...asLong('bigEndMasses'),
    ]),
  ],
  'balance/part-matching.ts': [
    guarded({ scaleResolution: 1e-4 }, (scale) => matchParts(lists, scale), [
      ['scaleResolution', 'at least', 0],
    ]),
  ],
  'balance/pin-partners.ts': [
    guarded(
      { bigEndMasses: [0.42] },
      ({ bigEndMasses }) => {
        pairOnPins({ bigEndMasses: [...bigEndMasses, ...bigEndMasses] });
      },
      [['bigEndMasses', 'greater than', 0]],
    ),
  ],
  'balance/residual-unbalance.ts': [
    guarded(rotor, balancedMass, [
      ['crankMass', 'greater than', 0],
      ['bobweightsMass', 'at least', 0],
    ]),
    guarded({ ...rotor, balanceGrade: 0.0063 }, (given) => permissible(given, given), [
      ['balanceGrade', 'greater than', 0],
      ['crankMass', 'greater than', 0],
      ['bobweightsMass', 'at least', 0],
      ['maxSpeed', 'greater than', 0],
    ]),
    guarded(bearings, bearingShares, [
      ['bearingSpan', 'greater than', 0],
      ['cgToBearingA', 'at most', 0.52, '1.3 of the bearing span'],
      ['cgToBearingA', 'at least', -0.12, 'minus 0.3 of the bearing span'],
    ]),
    guarded({ ...bearings, ...planes }, (given) => reach(given, given), [
      ['bearingSpan', 'greater than', 0],
      ['planeB', 'a number'],
      ['planeA', 'less than', 0.19, 'the place of plane B'],
    ]),
    guarded({ residualA: 1e-4, residualB: 1e-4 }, (read) => residualOf(read, bearings, planes), [
      ['residualA', 'at least', 0],
      ['residualB', 'at least', 0],
    ]),
    guarded(rotor, (given) => gradeOf(2e-4, given), [
      ['maxSpeed', 'greater than', 0],
      ['crankMass', 'greater than', 0],
      ['bobweightsMass', 'at least', 0],
    ]),
  ],
  'balance/unbalance-floor.ts': [
    guarded(
      {
        ...rotor,
        mountingOffset: 1e-5,
        flywheelMass: 5,
        flywheelClearance: 4e-5,
        bobweightUnbalance: 1e-4,
      },
      unbalanceFloor,
      [
        ['mountingOffset', 'at least', 0],
        ['flywheelMass', 'at least', 0],
        ['flywheelClearance', 'at least', 0],
        ['bobweightUnbalance', 'at least', 0],
      ],
    ),
  ],
  'balance/take-off.ts': [
    guarded({ targetSpread: 1e-3 }, (wanted) => takeOff([0.5, 0.51], wanted), [
      ['targetSpread', 'at least', 0],
    ]),
    guarded({ cutArea: 1e-4, cutDensity: 2700 }, (cut) => depthOfCut(0.001, cut), [
      ['cutArea', 'greater than', 0],
      ['cutDensity', 'greater than', 0],
    ]),
  ],
  'balance/partial-balance.ts': [
    guarded(
      {
        reciprocatingMass: 0.7,
        rotatingMass: 0.9,
        reciprocatingFraction: 0.5,
        stroke: 0.08,
        maxSpeed: 600,
        crankAngle: 0.3,
        bankAngle: 1.5,
        rodsPerPin: 2,
        balanceRadius: 0.07,
      },
      partialBalance,
      [
        ['reciprocatingFraction', 'at least', 0],
        ['reciprocatingFraction', 'at most', 1],
        ['reciprocatingMass', 'greater than', 0],
        ['stroke', 'greater than', 0],
        ['maxSpeed', 'at least', 0],
        ['crankAngle', 'a number'],
        ['bankAngle', 'a number'],
        ['rotatingMass', 'at least', 0],
        ['balanceRadius', 'greater than', 0],
      ],
    ),
  ],
  'balance/drill-sizes.ts': [
    guarded({ holeDiameter: 0.01 }, (wanted) => nearestDrill([{ name: '', diameter: 1 }], wanted), [
      ['holeDiameter', 'greater than', 0],
    ]),
  ],
  'balance/drilled-hole.ts': [
    guarded(drill, pointLength, [
      ['pointAngle', 'greater than', 0],
      ['pointAngle', 'at most', Math.PI],
      ['holeDiameter', 'greater than', 0],
    ]),
    guarded(
      { ...drill, counterweightRadius: 0.07 },
      (all) => fullDiameterFrom(all, { ...all, steelDensity: 1 }),
      [
        ['counterweightRadius', 'greater than', 0],
        ['holeDiameter', 'less than', 0.14, 'the diameter of the rim'],
      ],
    ),
    guarded(
      { ...drill, counterweightRadius: 0.07, steelDensity: 7850 },
      (all) => radialDepth(all, all, 1e-3),
      [
        ['counterweightRadius', 'greater than', 0],
        ['steelDensity', 'greater than', 0],
      ],
    ),
    ...[axialHole, axialDepth].map((work) =>
      guarded(
        { ...drill, axialHoleRadius: 0.06, steelDensity: 7850 },
        (all) => work(all, all, 0.01),
        [['axialHoleRadius', 'greater than', 0]],
      ),
    ),
  ],
  'balance/hole-fan.ts': [
    guarded({ holeCount: 3, holeSpacing: 0.4 }, spreadFactor, [
      ['holeCount', 'at least', 1],
      ['holeCount', 'at most', 12],
      ['holeCount', 'at most', 2, 'a whole number of holes', 2.5],
      ['holeSpacing', 'greater than', 0],
    ]),
    guarded({ ...fan, heavyAngle: 3.2 }, (all) => placeFan(all, all), [
      ['holeAngleLimit', 'at least', 0],
      ['holeSpacing', 'at most', 0.9, 'what the allowed angle has room for'],
      ['heavyAngle', 'a number'],
      ['counterweightAngle', 'a number'],
      [
        'heavyAngle',
        'greater than',
        3.1 - Math.PI / 2,
        'the middle of the counterweight less a quarter turn; drill the one on the heavy side, and give its middle',
      ],
      [
        'heavyAngle',
        'less than',
        3.1 + Math.PI / 2,
        'the middle of the counterweight and a quarter turn; drill the one on the heavy side, and give its middle',
      ],
    ]),
  ],
  'balance/counterweight-drilling.ts': [
    guarded(drilling, counterweightDrilling, [
      ['counterweightRadius', 'greater than', 0],
      ['counterweightWidth', 'greater than', 0.004, 'the metal to be left on both sides'],
      ['holeWall', 'at least', 0],
      ['keepOutRadius', 'at least', 0],
      ['unbalanceRead', 'greater than', 0],
      [
        'unbalanceRead',
        'at least',
        3 *
          spreadFactor(fan) *
          radialHole(drill, drilling, fullDiameterFrom(drill, drilling)).unbalance,
        'what these holes take as soon as they are round',
      ],
      [
        'holeDiameter',
        'at most',
        0.016 + hair,
        'the width of the counterweight less the metal to be left on both sides',
      ],
      [
        'depthLimit',
        'at least',
        fullDiameterFrom(drill, drilling),
        'the depth at which the hole is round',
      ],
      [
        'depthLimit',
        'at most',
        0.074 - drillPoint - 0.04 + hair,
        'the depth at which the point reaches the radius that no hole may reach',
      ],
    ]),
    // So much that the holes go to the limit, whatever their spacing.
    guarded({ ...drilling, unbalanceRead: 9e-3 }, counterweightDrilling, [
      [
        'holeSpacing',
        'at least',
        radialSpacing({ shoulder: 0.049, tip: 0.049 - drillPoint, half: 0.007 }, 0.002),
        'the spacing that leaves the metal wanted between holes of this depth',
      ],
    ]),
    guarded({ ...drilling, holeKind: 'axial' as const }, counterweightDrilling, [
      ['holeWall', 'at least', 0],
      ['keepOutRadius', 'at least', 0],
      ['depthLimit', 'at least', 0],
      ['counterweightRadius', 'greater than', 0],
      [
        'axialHoleRadius',
        'at least',
        0.047 - hair,
        'the radius that no hole may reach, and half the drill',
      ],
      [
        'axialHoleRadius',
        'at most',
        0.065 + hair,
        'the rim’s radius less half the drill and the metal to be left',
      ],
      ['counterweightWidth', 'greater than', drillPoint, 'the length of the drill’s point'],
    ]),
  ],
  'balance/second-spin.ts': [
    guarded(
      {
        unbalanceRead: 4e-3,
        secondUnbalance: 1e-3,
        secondAngle: 1,
        askedUnbalance: 3e-3,
        askedAngle: 2,
      },
      checkSpins,
      [
        ['unbalanceRead', 'greater than', 0],
        ['secondUnbalance', 'at least', 0],
        ['secondAngle', 'a number'],
        ['askedUnbalance', 'greater than', 0],
        ['askedAngle', 'a number'],
      ],
    ),
  ],
  'balance/unbalance-reading.ts': [
    guarded(
      {
        unbalanceRead: 4e-3,
        unbalanceAngle: 1,
        angleOrigin: 0.5,
        readingNames: 'heavy' as const,
        angleSense: 'with' as const,
        crankTurns: 'clockwise' as const,
      },
      settleReading,
      [
        ['unbalanceRead', 'at least', 0],
        ['unbalanceAngle', 'a number'],
        ['angleOrigin', 'a number'],
      ],
    ),
  ],
  'balance/heavy-metal.ts': [
    guarded(slugs, (all) => slugGain(all, all), [
      ['slugDiameter', 'greater than', 0],
      ['slugLength', 'greater than', 0],
      ['steelDensity', 'greater than', 0],
      ['slugDensity', 'greater than', 7850, 'the density of the steel it replaces'],
      ['slugRadius', 'greater than', 0],
    ]),
    guarded(slugs, (all) => slugPull(all, 0.08, all, 'maxSpeed'), [
      ['slugRadius', 'greater than', 0],
      ['maxSpeed', 'greater than', 0],
    ]),
    guarded(slugs, (all) => slugPull(all, 0.08, all, 'missedShiftSpeed'), [
      ['missedShiftSpeed', 'greater than', 0],
    ]),
    guarded(slugs, (all) => slugWalls(all, all, all), [
      ['slugDiameter', 'greater than', 0],
      ['keepOutRadius', 'at least', 0],
      ['counterweightRadius', 'greater than', 0],
      ['counterweightWidth', 'greater than', 0],
      [
        'slugRadius',
        'at least',
        0.0455 - hair,
        'the radius that none may reach, and half the slug',
      ],
      [
        'slugRadius',
        'less than',
        0.0645,
        'the rim’s radius less half the slug: no metal would be left outside it',
      ],
      ['slugLength', 'at most', 0.019 + hair, 'the width of the counterweight'],
      [
        'slugSpacing',
        'greater than',
        2 * Math.asin(0.0095 / 0.06),
        'the spacing at which slugs of this size meet',
      ],
    ]),
    guarded({ ...slugs, keepOutRadius: 0 }, (all) => slugWalls(all, all, all), [
      ['slugRadius', 'greater than', 0.0095, 'half the slug, which would reach the axis', 0.0095],
    ]),
    guarded(slugs, (all) => slugSum(all, 2.8e-3, all), [
      ['addedUnbalance', 'greater than', 0],
      ['slugCount', 'at least', 1],
      ['slugCount', 'at most', 12, undefined, 13],
      ['slugCount', 'at most', 2, 'a whole number of slugs', 2.5],
      ['slugSpacing', 'greater than', 0],
      ['slugSpacing', 'at most', Math.PI, 'the spacing at which they stand over half a turn'],
    ]),
    guarded(slugs, (all) => ligamentStress(all, 3e3, 4e-3), [['slugLength', 'greater than', 0]]),
  ],
  'balance/press-fit.ts': [
    guarded(pressed, (all) => fitPressure(all, 0.03, 40e-6), [
      ['slugDiameter', 'greater than', 0, undefined, 0],
      ['counterweightModulus', 'greater than', 0],
      ['slugModulus', 'greater than', 0],
    ]),
    guarded(pressed, (all) => interferenceLost(all, 380), [
      ['slugDiameter', 'greater than', 0],
      ['crankExpansion', 'a number'],
      ['slugExpansion', 'a number'],
      ['assemblyTemperature', 'a number'],
    ]),
    guarded(pressed, looseAt, [
      ['slugDiameter', 'greater than', 0],
      ['slugInterference', 'at least', 0],
      ['crankExpansion', 'a number'],
      ['slugExpansion', 'a number'],
      ['assemblyTemperature', 'a number'],
    ]),
  ],
};
