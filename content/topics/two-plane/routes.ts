import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  solvedAsEquations: {
    kind: 'second route',
    say: 'Force and moment of all unbalances about one end of the shaft, set equal to those of two unknown ones, and the four equations solved by elimination.',
    legs: [
      'plane-transfer.movedA',
      'plane-transfer.movedB',
      'plane-transfer.movedAngleA',
      'plane-transfer.movedAngleB',
      'plane-transfer.lightA',
      'plane-transfer.lightB',
      'plane-transfer.bearingA',
      'plane-transfer.bearingB',
    ],
  },
  shaftInSlices: {
    kind: 'second route',
    say: 'What the planes hold, spun with the unbalances they stand for in a shaft of a thousand slices: every bending moment outside of all of them is nothing.',
    legs: ['outside-masses.madeA', 'outside-masses.madeB'],
  },
  partsAdded: {
    kind: 'second route',
    say: 'The static part put halfway and the couple put in the two planes again, as arrows: the two planes as they were.',
    legs: [
      'plane-transfer.staticUnbalance',
      'plane-transfer.staticAngle',
      'plane-transfer.coupleUnbalance',
      'plane-transfer.coupleAngle',
    ],
  },
  crossPlaneByHand: {
    kind: 'closed form',
    say: 'A cross-plane V8 by hand: Δm r √10 a over the distance of the planes, 18.43° from the line of throws 1 and 4 towards 2 and 3; half of √2 pulls on the second main, nothing on the middle one.',
    legs: [
      'bobweight-change.change',
      'bobweight-change.endUnbalance',
      'bobweight-change.unbalanceA',
      'bobweight-change.unbalanceB',
      'bobweight-change.endAngleA',
      'bobweight-change.endAngleB',
      'bobweight-change.pinPull',
      'bobweight-change.perWeight',
      'bobweight-change.mainPull',
      'bobweight-change.mainShare',
      'bobweight-change.pinUnbalance',
      'bobweight-change.weights',
      'bobweight-change.forceAlong',
      'bobweight-change.forceAcross',
      'bobweight-change.coupleAlong',
      'bobweight-change.coupleAcross',
    ],
  },
  beamBySlices: {
    kind: 'second route',
    say: 'The free crank walked along in ten thousand steps, shear added up to bending: its greatest value.',
    legs: ['bobweight-change.bending', 'bobweight-change.bendingArm'],
  },
  swappedByHand: {
    kind: 'closed form',
    say: 'A flywheel outside the end plane by hand: more than its own unbalance in the near plane, the rest with the other sign in the far one.',
    legs: [
      'outside-masses.leftA',
      'outside-masses.leftB',
      'outside-masses.leftAngleA',
      'outside-masses.leftAngleB',
      'outside-masses.swapPull',
      'outside-masses.madeAngleA',
      'outside-masses.madeAngleB',
    ],
  },
  turnAndMirror: {
    kind: 'property',
    say: 'The crank turned turns every arrow and changes no size; seen in a mirror every angle changes its sign.',
  },
  superposition: {
    kind: 'property',
    say: 'Two lists of unbalances moved together are the two moved apart and added.',
  },
  movedReference: {
    kind: 'property',
    say: 'A couple taken about another place differs by the force times the distance.',
  },
  perfectlyCorrected: {
    kind: 'property',
    say: 'With the opposite weights in the two planes nothing is left, in any other two planes.',
  },
});
