import { pairAtTwiceSpeed, shaftAgainstCrank } from '../../../src/core/balance/balance-shafts.ts';
import { impliedEnds, pinBobweight, wholeRods } from '../../../src/core/balance/bobweight.ts';
import { crankBobweights } from '../../../src/core/balance/crank-bobweights.ts';
import { primaryLeft } from '../../../src/core/balance/crank-pins.ts';
import { layoutParts, planeUnbalance, throwSums } from '../../../src/core/balance/crank-throws.ts';
import { carriedWeights, perfectWeights } from '../../../src/core/balance/crank-weights.ts';
import { cylindersOf, mostCylinders } from '../../../src/core/balance/cylinders.ts';
import { checkParts } from '../../../src/core/balance/matching-parts.ts';
import { matchParts } from '../../../src/core/balance/part-matching.ts';
import { partialBalance } from '../../../src/core/balance/partial-balance.ts';
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
  'balance/crank-pins.ts': [
    guarded({ reciprocatingFraction: 0.4 }, (balance) => primaryLeft(single, balance), [
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
};
