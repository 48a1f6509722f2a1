import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  weighsStackThin: {
    kind: 'second route',
    say: 'The mass of a tapered pin against a stack of 4000 thin rings.',
    legs: ['wrist-pin.mass'],
  },
  bendsSumSmall: {
    kind: 'second route',
    say: 'Bending against the sum of many small boss pressures that fall to nothing at the pin’s ends.',
    legs: ['wrist-pin.bending'],
  },
  shearsVQ: {
    kind: 'closed form',
    say: 'Shear of a hollow section between the solid bar’s 4V/3A and the thin tube’s 2V/A, and by V Q/(I t).',
    legs: ['wrist-pin.shear'],
  },
  thickRingAgrees: {
    kind: 'second route',
    say: 'The thick ring against the same plane problem solved by a general linear-algebra library.',
    legs: ['wrist-pin.ovalClose'],
  },
  thickRingTends: {
    kind: 'property',
    say: 'The thick ring tends to the thin one as the wall grows thin.',
  },
  citedMethodAgrees: {
    kind: 'second route',
    say: 'The cited ovalization against plane elasticity: within a sixth for bore ratios from 0.4 to 0.7, and half of it at 0.8.',
    legs: ['wrist-pin.ovalization'],
  },
  pinchedRingAgrees: {
    kind: 'second route',
    say: 'The ring under two point loads against the energy of its bending moments.',
    legs: ['wrist-pin.ovalPoints', 'wrist-pin.flatPoints'],
  },
  givesMovementPrinted: {
    kind: 'second route',
    say: 'The same ring against the numbers of a general finite-element program’s verification page (the femorph-solver project, 0.20.2), which was read.',
  },
  smallPieces: {
    kind: 'second route',
    say: 'Fourteen pins from thin discs, strips of load and rings of the section, with accelerations as differences of positions; bores of equal pins searched by halving.',
    legs: [
      'wrist-pin.mass',
      'wrist-pin.pushLoad',
      'wrist-pin.bending',
      'wrist-pin.bendingPull',
      'wrist-pin.gasLoad',
      'wrist-pin.pullLoad',
      'wrist-pin.pullShare',
      'wrist-pin.sectionModulus',
      'wrist-pin.gapBore',
      'wrist-pin.equalModulusBore',
      'wrist-pin.equalBendingBore',
      'wrist-pin.equalMassBore',
    ],
  },
});
