import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  exactPistons: {
    kind: 'second route',
    say: 'Every ready layout from the exact motion of its pistons: their pulls and the counterweights added up at 360 angles of a turn, and split by a Fourier sum into what rotates with and against the crank, once and twice a turn.',
    legs: [
      'shaking-forces.primaryForce',
      'shaking-forces.primaryForceLeast',
      'shaking-forces.primaryCouple',
      'shaking-forces.primaryCoupleLeast',
      'shaking-forces.secondaryForce',
      'shaking-forces.secondaryCouple',
      'shaking-forces.heldForce',
      'shaking-forces.heldCouple',
      'shaking-forces.inertiaForce',
      'shaking-forces.secondaryOne',
      'shaking-forces.forwardForce',
      'shaking-forces.backwardForce',
      'shaking-forces.forwardCouple',
      'shaking-forces.backwardCouple',
      'shaking-forces.secondForce',
      'shaking-forces.secondCouple',
    ],
  },
  atOneAngle: {
    kind: 'second route',
    say: 'Force and couple at one crank angle from the two-term motion of each piston along its bore and a counterweight opposite each throw, added up as arrows.',
    legs: ['shaking-forces.forceNow', 'shaking-forces.coupleNow'],
  },
  classical: {
    kind: 'closed form',
    say: 'The classical results to the last digits of a double: nothing from an in-line six or a V12, 4 m r ω² λ of an in-line four, F₁ |cos γ| backward on a V-twin, a couple of √10 on a cross-plane V8 that rotates with the crank, a sideways 4√2 F₂ on a flat-plane one, 1½ F₂ rotating backward on a radial of three.',
    legs: [
      'shaking-forces.forwardForce',
      'shaking-forces.backwardForce',
      'shaking-forces.forwardCouple',
      'shaking-forces.backwardCouple',
      'shaking-forces.secondForce',
      'shaking-forces.secondCouple',
    ],
  },
  evenlyFiringSix: {
    kind: 'closed form',
    say: 'An evenly firing V6 at 90°: (√3 − 1)/2 in the counterweights brings the couple into one plane, one half makes it a circle of half that size.',
    legs: ['shaking-forces.primaryCouple', 'shaking-forces.primaryCoupleLeast'],
  },
  shaftsByHand: {
    kind: 'closed form',
    say: 'Balance shafts by hand: ½ m r of a single, √3/2 m r of an in-line three, m r λ/2 on each shaft of an in-line four; and what is left with them is the rest alone.',
    legs: [
      'shaking-forces.shaftForce',
      'shaking-forces.shaftCouple',
      'shaking-forces.pairForce',
      'shaking-forces.pairCouple',
    ],
  },
  weighedByHand: {
    kind: 'closed form',
    say: 'Bobweight, rods on a pin and number of bobweights of every layout, against the page of the crank layout and a sum by hand.',
    legs: ['shaking-forces.pinBobweight', 'shaking-forces.rods', 'shaking-forces.bobweights'],
  },
  planeMoved: {
    kind: 'property',
    say: 'Moving the plane of reference takes the force times the distance off the couple, for engines of unlike cylinders at any place.',
  },
  perfectWeights: {
    kind: 'property',
    say: 'With its two perfect counterweights any crank has nothing left that rotates with it, and all else as before.',
  },
  mirrored: {
    kind: 'property',
    say: 'A mirror image shakes in mirror image, a turned engine in turned directions and the same sizes, and an engine as its parts do together.',
  },
});
