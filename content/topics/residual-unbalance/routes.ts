import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  everyAngle: {
    kind: 'second route',
    say: 'Both residuals turned to all angles to each other, the loads of both bearings solved from the forces and moments of a stiff rotor: the greatest load, its share of the allowance, and that what the correction planes are permitted just fills the share of one bearing.',
    legs: [
      'residual-unbalance.atBearingA',
      'residual-unbalance.atBearingB',
      'residual-unbalance.residual',
      'residual-unbalance.residualForce',
      'residual-unbalance.correctionA',
      'residual-unbalance.correctionB',
    ],
  },
  thereAndBack: {
    kind: 'closed form',
    say: 'What a grade permits in both planes amounts to that grade again, and uses all of it.',
    legs: ['residual-unbalance.gradeReached', 'residual-unbalance.allowanceUsed'],
  },
  centrifugalForce: {
    kind: 'closed form',
    say: 'Rotor of 10 kg at 100 rad/s with G 10: 0.1 mm, 1000 g·mm, 10 N; with 8 kg of crank and 2 kg of bobweights alike, and 10 g at 100 mm.',
    legs: [
      'residual-unbalance.permissible',
      'residual-unbalance.eccentricity',
      'residual-unbalance.allowedForce',
      'residual-unbalance.rotorMass',
      'residual-unbalance.rimMass',
      'residual-unbalance.floorGrade',
    ],
  },
  sharedLikeTheWeight: {
    kind: 'closed form',
    say: 'A centre of mass at a third of the span leaves two thirds and one third; at a tenth 0.7 and 0.3; a fifth beyond a bearing 0.3 and 1.2.',
    legs: ['residual-unbalance.allowedA', 'residual-unbalance.allowedB'],
  },
  threeParts: {
    kind: 'closed form',
    say: 'Mounting, register and bobweights of 60, 40 and 120 g·mm at the end come to 140 at unknown angles and to 220 at the worst.',
    legs: [
      'unbalance-floor.floor',
      'unbalance-floor.mounting',
      'unbalance-floor.mountingEnd',
      'unbalance-floor.register',
      'unbalance-floor.worst',
    ],
  },
  commonPinsLeave: {
    kind: 'closed form',
    say: 'Common pins at 90° leave nothing that rotates backward.',
    legs: ['bobweight-error.backwardForce', 'bobweight-error.backwardCouple'],
  },
  throwsAdd: {
    kind: 'closed form',
    say: 'The throws of seven layouts add up to sums known in closed form, such as √10 for a cross-plane V8.',
    legs: ['bobweight-error.coupleFactor'],
  },
  twoPlanesTogether: {
    kind: 'property',
    say: 'The unbalances of the two end planes together answer the force and the couple of all throws.',
  },
  lineForwardBackward: {
    kind: 'property',
    say: 'On an in-line engine the parts that turn forward and backward are equally large.',
  },
  stiffCrank: {
    kind: 'second route',
    say: 'Plane unbalances from the reactions of a stiff crank in two bearings; the greatest primary force and couple of every layout by looking at a whole turn, each piston on a real rod.',
    legs: [
      'bobweight-error.planeUnbalance',
      'bobweight-error.pinUnbalance',
      'bobweight-error.unbalanceA',
      'bobweight-error.unbalanceB',
      'bobweight-error.fractionUnbalance',
      'bobweight-error.massFor100',
      'bobweight-error.forceAlong',
      'bobweight-error.forceAcross',
      'bobweight-error.coupleAlong',
      'bobweight-error.coupleAcross',
      'bobweight-error.primaryForce',
      'bobweight-error.primaryCouple',
    ],
  },
});
