import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  turnedToItsAxes: {
    kind: 'second route',
    say: 'The whole matrix of springs and inertias turned by Jacobi’s rotations until nothing is left beside its diagonal, and its frequencies and shapes laid beside those of the halving.',
    legs: [
      'shaft-line.firstFrequency',
      'shaft-line.secondFrequency',
      'shaft-line.thirdFrequency',
      'shaft-line.firstLast',
      'shaft-line.firstNode',
      'shaft-line.secondNode',
    ],
  },
  fewRotors: {
    kind: 'closed form',
    say: 'Two rotors on a shaft, three by the root of a quadratic, and any number of equal ones on equal springs: 2√(k/J) sin(mπ/2n).',
    legs: ['shaft-line.firstFrequency', 'shaft-line.secondFrequency', 'shaft-line.thirdFrequency'],
  },
  exampleTurned: {
    kind: 'second route',
    say: 'Both example cranks written down as a row by hand, with the ring sprung, held fast and taken off, and turned to their axes by Jacobi’s rotations.',
    legs: [
      'crank-torsion.firstFrequency',
      'crank-torsion.secondFrequency',
      'crank-torsion.lockedFrequency',
      'crank-torsion.bareFrequency',
      'crank-torsion.seenInertia',
      'crank-torsion.firstNode',
      'crank-torsion.inertias',
    ],
  },
  arrowsByHand: {
    kind: 'second route',
    say: 'The arrows of a star diagram added one by one from firing angles written down by hand, for an in-line four and a cross-plane V8.',
    legs: ['crank-torsion.firstSum', 'crank-torsion.secondSum'],
  },
  nearestByHand: {
    kind: 'second route',
    say: 'All orders of two modes of both example cranks tried one after the other, their arrows added from firing angles written down by hand, and the nearest to the redline kept.',
    legs: [
      'crank-torsion.firstSum',
      'crank-torsion.secondSum',
      'crank-torsion.nearOrder',
      'crank-torsion.nearCritical',
      'crank-torsion.nearSum',
    ],
  },
  ordersOfFiring: {
    kind: 'closed form',
    say: 'A critical speed is the natural frequency over the order: at as many firings a turn as half the cylinders.',
    legs: [
      'crank-torsion.firingRate',
      'crank-torsion.firstCritical',
      'crank-torsion.secondCritical',
    ],
  },
  ringByHand: {
    kind: 'closed form',
    say: 'The ring of both example cranks: root of stiffness over inertia, and what it should be, by hand.',
    legs: ['crank-torsion.ringTuning', 'crank-torsion.ringRatio', 'crank-torsion.bestTuning'],
  },
  ringOnItsSpring: {
    kind: 'closed form',
    say: 'A ring on its spring by hand, its best tuning by the equal peaks of Den Hartog, and its stiffness from that.',
    legs: [
      'damper-tuning.own',
      'damper-tuning.ratio',
      'damper-tuning.tuning',
      'damper-tuning.stiffness',
    ],
  },
  sharedOut: {
    kind: 'closed form',
    say: 'Crank, rods and pistons of the example added up and shared among four throws; the shift of a critical speed as the difference of both; inertias counted.',
    legs: ['rotating-inertia.throwInertia', 'crank-torsion.moved', 'shaft-line.inertias'],
  },
  peaksSearched: {
    kind: 'second route',
    say: 'The swing of ring and crank solved at thousands of frequencies: both peaks are equally high at the best tuning, and no other damping lowers the higher one.',
    legs: ['damper-tuning.tuning', 'damper-tuning.damping', 'damper-tuning.peak'],
  },
  pairAsLine: {
    kind: 'second route',
    say: 'Main inertia and ring as a line of inertias whose far end is all but fixed, worked by Holzer’s table.',
    legs: ['damper-tuning.lower', 'damper-tuning.upper'],
  },
  journalsAlone: {
    kind: 'closed form',
    say: 'With webs as wide as a wall only the journals twist; their twists by G and J are added by hand. Webs alone bend as two beams do, to the tenth that the formulas differ by.',
    legs: [
      'throw-stiffness.kerWilsonLength',
      'throw-stiffness.carterLength',
      'throw-stiffness.kerWilson',
      'throw-stiffness.carter',
      'throw-stiffness.mean',
      'throw-stiffness.apart',
    ],
  },
  linesScale: {
    kind: 'property',
    say: 'All springs k² times as stiff raise every frequency k times; the line turned round has the same; more inertia anywhere raises none, more stiffness lowers none; shapes stand square on each other.',
  },
});
