import {
  fineLength,
  force,
  gradeSpeed,
  heavyMass,
  mass,
  maybe,
  percent,
  unbalance,
} from '../output.ts';

/** What may be left in a crank, and what is left. */
export const residualOutputs = {
  permissible: unbalance('U_per', 'Residual unbalance that the grade permits, whole crank', {
    phrase: 'The residual unbalance that the grade permits in all',
    main: true,
  }),
  gradeReached: maybe(
    gradeSpeed('G_res', 'Grade that the residual amounts to', {
      phrase: 'The grade that the residual amounts to at the redline',
      main: true,
    }),
  ),
  correctionA: unbalance('U_per,cA', 'Permitted in correction plane A'),
  correctionB: unbalance('U_per,cB', 'Permitted in correction plane B'),
  residualForce: maybe(force('F_res', 'Rotating force of the residual on the worse bearing')),
  floorGrade: maybe(gradeSpeed('G_floor', 'Grade that the floor amounts to')),
  allowedA: unbalance('U_per,A', 'Permitted at bearing A'),
  allowedB: unbalance('U_per,B', 'Permitted at bearing B'),
  eccentricity: fineLength('e_per', 'Centre of mass off the axis, as the grade permits'),
  allowedForce: force('F_per', 'Rotating force of all that is permitted'),
  rimMass: mass('m_per', 'All that is permitted, as a mass at the radius given'),
  rotorMass: heavyMass('m', 'Crank as balanced'),
  atBearingA: maybe(unbalance('U_A', 'Residual at bearing A, at the worst angle')),
  atBearingB: maybe(unbalance('U_B', 'Residual at bearing B, at the worst angle')),
  residual: maybe(unbalance('U_res', 'Residual as that of the whole crank')),
  allowanceUsed: maybe(
    percent('q_per', 'Part of the allowance that it uses', {
      phrase: 'Of what the grade permits, the part that the residual takes up',
    }),
  ),
} as const;
