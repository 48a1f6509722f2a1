import type { Step } from './define.ts';

/** The working of the reversal load, from the throw down to the crankpin and back up to the bottom push. */
export const reversalSteps: readonly Step[] = [
  {
    of: 'crankRadius',
    symbol: 'r',
    kind: 'length',
    formula: 'stroke / 2',
    say: 'The throw is half the stroke.',
  },
  {
    of: 'throwRatio',
    symbol: 'λ',
    kind: 'ratio',
    formula: 'crankRadius / rodLength',
    say: 'The throw over the rod length: how much the swing of the rod adds at the top.',
  },
  {
    of: 'crankpinAcceleration',
    symbol: 'a_r',
    kind: 'acceleration',
    formula: 'crankRadius * maxSpeed^2',
    say: 'The crankpin’s acceleration towards the crank’s axis: throw times speed squared.',
  },
  {
    of: 'accelerationTop',
    formula: 'crankpinAcceleration * (1 + throwRatio)',
    say: 'At TDC the swing of the rod adds its share to the crankpin’s acceleration.',
    source: 'khurmi-gupta-machine-design-2005',
  },
  {
    of: 'bossPull',
    formula: '(pistonMass + ringMass + lockMass) * accelerationTop',
    say: 'What hangs on the bosses, times that acceleration.',
  },
  {
    of: 'eyePull',
    formula: 'bossPull + pinMass * accelerationTop',
    say: 'On the eye hangs the wrist pin as well.',
  },
  {
    of: 'shankAcceleration',
    symbol: 'a_shank',
    kind: 'acceleration',
    formula: 'crankpinAcceleration * (1 + throwRatio * (1 - shankSection / (2 * rodLength)))',
    say: 'Along the rod the acceleration falls evenly from the pin’s to the crankpin’s; this is its value half way from the pin to the section.',
  },
  {
    of: 'shankPull',
    formula: 'eyePull + rodMassAbove * shankAcceleration',
    say: 'On the shank section hangs the rod metal above it as well.',
  },
  {
    of: 'reciprocating',
    formula: 'pistonMass + ringMass + lockMass + pinMass + smallEndMass',
    say: 'Everything that counts as going up and down, the small end as weighed included.',
    units: { mass: 'g' },
  },
  {
    of: 'reciprocatingPull',
    formula: 'reciprocating * accelerationTop',
    say: 'The reciprocating mass times the acceleration at TDC.',
    source: 'khurmi-gupta-machine-design-2005',
  },
  {
    of: 'partingPull',
    formula: 'reciprocatingPull + (bigEndMass + shellMass - capMass) * crankpinAcceleration',
    say: 'Across the parting line hangs the big end too, less the cap that stays below. Both bolts share it.',
    source: 'kolchin-demidov-1984',
  },
  {
    of: 'crankpinPull',
    formula: 'partingPull + capMass * crankpinAcceleration',
    say: 'On the crankpin hangs the cap as well.',
  },
  {
    of: 'commonPull',
    formula:
      '(reciprocating * (1 + throwRatio) + bigEndMass + shellMass - capMass) * crankRadius * commonSpeed^2',
    say: 'The parting line again, at the speed common to both sets.',
  },
  {
    of: 'missedShiftPull',
    formula:
      '(reciprocating * (1 + throwRatio) + bigEndMass + shellMass - capMass) * crankRadius * missedShiftSpeed^2',
    say: 'And at the missed-shift speed.',
  },
  {
    of: 'missedShiftExcess',
    formula: '(missedShiftSpeed / maxSpeed)^2 - 1',
    say: 'The load goes with the square of the speed, so this much is added.',
  },
  {
    of: 'suction',
    formula: '(crankcasePressure - overrunPressure) * pi * bore^2 / 4',
    say: 'With the throttle closed the crankcase presses harder on the piston from below than the cylinder does from above.',
  },
  {
    of: 'suctionShare',
    formula: 'suction / eyePull',
    say: 'That force beside the pull on the eye.',
  },
  {
    of: 'eyePullClosed',
    formula: 'eyePull + suction',
    say: 'The eye carries both.',
  },
  {
    of: 'partingPullClosed',
    formula: 'partingPull + suction',
    say: 'So does the parting line.',
  },
  {
    of: 'accelerationBottom',
    formula: 'crankpinAcceleration * (1 - throwRatio)',
    say: 'At BDC the swing of the rod takes its share away.',
  },
  {
    of: 'bottomPush',
    formula: 'reciprocating * accelerationBottom',
    say: 'The reciprocating mass pushes the rod down there.',
  },
];
