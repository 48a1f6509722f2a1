import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  closureVirtualWork: {
    kind: 'second route',
    say: 'The closure of the gap against the virtual work of the bending moments, summed over 2000 sections.',
    legs: [
      'ring-tension.tangentialForce',
      'ring-tension.closure',
      'ring-second.tangentialForce',
      'ring-second.closure',
    ],
  },
  momentEvenPressure: {
    kind: 'second route',
    say: 'The moment at a section against the even pressure beyond it, summed in 20 000 pieces.',
    legs: ['ring-tension.placeStress', 'ring-second.placeStress'],
  },
  freeGapEnds: {
    kind: 'property',
    say: 'Followed along their real way, the ends of a ring tend to the linear law as the bend grows small.',
  },
  thickCurvedBar: {
    kind: 'closed form',
    say: 'The thick curved bar has 3 % more stress at the back of an ordinary ring and 3 % less at its face.',
  },
  heightCancelsPressure: {
    kind: 'property',
    say: 'Axial height changes the force and leaves pressure, stress and conformability alone.',
  },
  placeFittingStress: {
    kind: 'property',
    say: 'Stress in place and stress on fitting add up to the same, whatever the free gap.',
  },
  lobeFollowedUntil: {
    kind: 'closed form',
    say: 'A waviness is followed until the pressure just vanishes in its hollows.',
    legs: [
      'ring-tension.followedOval',
      'ring-tension.followedFour',
      'ring-second.followedOval',
      'ring-second.followedFour',
      'ring-tension.conformability',
      'ring-second.conformability',
    ],
  },
  dragPackD: {
    kind: 'closed form',
    say: 'The pull of a pack against the textbook’s π D t n p μ.',
    legs: ['ring-pack.pull', 'ring-pack.wallForce'],
  },
});
