import { is, millimetres, ratio } from '../step.ts';

const small = { ...millimetres, mass: 'g', unbalance: 'gmm', speed: 'mm/s' } as const;
const iso = { units: small, source: 'iso-21940-11' };

/** The lines from grade, mass and speed to what is permitted in each plane, and back from a reading to its grade. */
export const residualSteps = {
  rotorMass: is('crankMass + bobweightsMass', 'What turns on the machine.', {
    units: { mass: 'kg' },
  }),
  eccentricity: is(
    'balanceGrade / maxSpeed',
    'The grade is a speed: that of the centre of mass round the axis. Divided by the highest speed it says how far off the axis it may stand.',
    iso,
  ),
  permissible: is('rotorMass * eccentricity', 'That distance times the mass.', iso),
  allowedForce: is('permissible * maxSpeed^2', 'Unbalance times the square of the speed.'),
  rimMass: is(
    'permissible / balanceRadius',
    'The same as a mass that stands at the radius of a hole.',
    { units: small },
  ),
  mostShare: ratio(
    'k_max',
    'when(cgToBearingA < 0, 1.3, when(bearingSpan < cgToBearingA, 1.3, 0.7))',
    'The most that one bearing gets: 0.7 of it, or 1.3 where the centre of mass overhangs.',
    iso,
  ),
  shareA: ratio(
    'k_A',
    'min(max(abs(bearingSpan - cgToBearingA) / bearingSpan, 0.3), mostShare)',
    'Bearing A gets as much of it as of the weight, and never less than 0.3.',
    iso,
  ),
  shareB: ratio(
    'k_B',
    'min(max(abs(cgToBearingA) / bearingSpan, 0.3), mostShare)',
    'And bearing B.',
    iso,
  ),
  allowedA: is('shareA * permissible', 'At bearing A.', iso),
  allowedB: is('shareB * permissible', 'At bearing B.', iso),
  reachAA: ratio(
    'h_AA',
    'abs(bearingSpan / 2 - planeA) / bearingSpan',
    'What an unbalance in plane A makes at bearing A, by moments about bearing B.',
    { units: small },
  ),
  reachAB: ratio(
    'h_AB',
    'abs(bearingSpan / 2 + planeA) / bearingSpan',
    'And at bearing B, by moments about bearing A.',
    { units: small },
  ),
  reachBA: ratio(
    'h_BA',
    'abs(bearingSpan / 2 - planeB) / bearingSpan',
    'What an unbalance in plane B makes at bearing A.',
    { units: small },
  ),
  reachBB: ratio('h_BB', 'abs(bearingSpan / 2 + planeB) / bearingSpan', 'And at bearing B.', {
    units: small,
  }),
  partA: ratio(
    'w_A',
    'min(max((planeB - cgToBearingA + bearingSpan / 2) / (planeB - planeA), 0.3), 0.7)',
    'Plane A’s part, by the distances of the centre of mass from the planes. Plane B has the rest.',
    { units: small },
  ),
  whole: ratio(
    'k_c',
    'min(shareA / (partA * reachAA + (1 - partA) * reachBA), shareB / (partA * reachAB + (1 - partA) * reachBB))',
    'How much of the permitted unbalance both planes may hold together, so that neither bearing gets more than its share at the worst angle.',
  ),
  correctionA: is('permissible * whole * partA', 'In correction plane A.', { units: small }),
  correctionB: is('permissible * whole * (1 - partA)', 'In correction plane B.', { units: small }),
  atBearingA: is(
    'residualA * reachAA + residualB * reachBA',
    'The other way: both residuals at bearing A, as if they pointed so that their sizes add.',
    { units: small },
  ),
  atBearingB: is('residualA * reachAB + residualB * reachBB', 'And at bearing B.', {
    units: small,
  }),
  residual: is(
    'max(atBearingA / shareA, atBearingB / shareB)',
    'The bearing that is worse off, for its share, counts.',
    { units: small },
  ),
  gradeReached: is('residual * maxSpeed / rotorMass', 'The first lines read backwards.', {
    units: small,
  }),
  allowanceUsed: is('gradeReached / balanceGrade', 'Beside the grade that was chosen.', {
    units: small,
  }),
  residualForce: is(
    'max(atBearingA, atBearingB) * maxSpeed^2',
    'On the worse bearing, once a turn.',
  ),
  floorGrade: is(
    '2 * unbalanceFloor * maxSpeed / rotorMass',
    'The floor of one end at both ends, as a grade.',
    { units: small },
  ),
};
