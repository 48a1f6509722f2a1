import { acceleration, grams, is, length, ratio } from '../step.ts';

/** The working of the reversal load, from the throw down to the crankpin and back up to the bottom push. */
export const reversalSteps = {
  crankRadius: length('r', 'stroke / 2', 'The throw is half the stroke.'),
  throwRatio: ratio(
    'λ',
    'crankRadius / rodLength',
    'The throw over the rod length: how much the swing of the rod adds at the top.',
  ),
  crankpinAcceleration: acceleration(
    'a_r',
    'crankRadius * maxSpeed^2',
    'The crankpin’s acceleration towards the crank’s axis: throw times speed squared.',
  ),
  accelerationTop: is(
    'crankpinAcceleration * (1 + throwRatio)',
    'At TDC the swing of the rod adds its share to the crankpin’s acceleration.',
    { source: 'khurmi-gupta-machine-design-2005' },
  ),
  bossPull: is(
    '(pistonMass + ringMass + lockMass) * accelerationTop',
    'What hangs on the bosses, times that acceleration.',
  ),
  eyePull: is('bossPull + pinMass * accelerationTop', 'On the eye hangs the wrist pin as well.'),
  shankAcceleration: acceleration(
    'a_beam',
    'crankpinAcceleration * (1 + throwRatio * (1 - shankSection / (2 * rodLength)))',
    'Along the rod the acceleration falls evenly from the pin’s to the crankpin’s; this is its value half way from the pin to the section.',
  ),
  shankPull: is(
    'eyePull + rodMassAbove * shankAcceleration',
    'On the beam section hangs the rod metal above it as well.',
  ),
  reciprocating: is(
    'pistonMass + ringMass + lockMass + pinMass + smallEndMass',
    'Everything that counts as going up and down, the small end as weighed included.',
    { units: grams },
  ),
  reciprocatingPull: is(
    'reciprocating * accelerationTop',
    'The reciprocating mass times the acceleration at TDC.',
    { source: 'khurmi-gupta-machine-design-2005' },
  ),
  partingPull: is(
    'reciprocatingPull + (bigEndMass + shellMass - capMass) * crankpinAcceleration',
    'Across the parting line hangs the big end too, less the cap that stays below. Both bolts share it.',
    { source: 'kolchin-demidov-1984' },
  ),
  crankpinPull: is(
    'partingPull + capMass * crankpinAcceleration',
    'On the crankpin hangs the cap as well.',
  ),
  commonPull: is(
    '(reciprocating * (1 + throwRatio) + bigEndMass + shellMass - capMass) * crankRadius * commonSpeed^2',
    'The parting line again, at the speed common to both sets.',
  ),
  missedShiftPull: is(
    '(reciprocating * (1 + throwRatio) + bigEndMass + shellMass - capMass) * crankRadius * missedShiftSpeed^2',
    'And at the over-rev speed.',
  ),
  missedShiftExcess: is(
    '(missedShiftSpeed / maxSpeed)^2 - 1',
    'The load goes with the square of the speed, so this much is added.',
  ),
  suction: is(
    '(crankcasePressure - overrunPressure) * pi * bore^2 / 4',
    'With the throttle closed the crankcase presses harder on the piston from below than the cylinder does from above.',
  ),
  suctionShare: is('suction / eyePull', 'That force beside the pull on the eye.'),
  eyePullClosed: is('eyePull + suction', 'The eye carries both.'),
  partingPullClosed: is('partingPull + suction', 'So does the parting line.'),
  accelerationBottom: is(
    'crankpinAcceleration * (1 - throwRatio)',
    'At BDC the swing of the rod takes its share away.',
  ),
  bottomPush: is(
    'reciprocating * accelerationBottom',
    'The reciprocating mass pushes the rod down there.',
  ),
};
