import { is, ratio, unbalance, type OnTheWay, type Working } from '../step.ts';
import { arrowUnits, sizeOf, turnOf } from './arrow-steps.ts';

const units = { units: arrowUnits };
const bevan = { ...units, source: 'bevan-2005' };

/** What one of the two known planes, or a third or fourth thing, gives to new plane A: by moments about new plane B. */
function share(symbol: string, place: string, say: string): OnTheWay {
  return ratio(symbol, `(newPlaneB - ${place}) / (newPlaneB - newPlaneA)`, say, bevan);
}

/** The same of an unbalance that may be left out. */
function shareIfGiven(symbol: string, thing: 'third' | 'fourth', say: string): OnTheWay {
  return ratio(
    symbol,
    `when(given(${thing}Unbalance), (newPlaneB - ${thing}Place) / (newPlaneB - newPlaneA), 0)`,
    say,
    units,
  );
}

function component(
  symbol: string,
  thing: 'third' | 'fourth',
  of: 'cos' | 'sin',
  say: string,
): OnTheWay {
  return unbalance(
    symbol,
    `when(given(${thing}Unbalance), ${thing}Unbalance * ${of}(${thing}Angle), 0)`,
    say,
    units,
  );
}

/** The lever’s shares of all unbalances, times their components along throw 1 or across it. */
function sum(plane: 'A' | 'B', of: 'cos' | 'sin'): string {
  const part = of === 'cos' ? 'Along' : 'Across';
  const held = (name: string): string => (plane === 'A' ? name : `(1 - ${name})`);
  return [
    `${held('shareA')} * planeUnbalanceA * ${of}(planeAngleA)`,
    `${held('shareB')} * planeUnbalanceB * ${of}(planeAngleB)`,
    `${held('share3')} * third${part}`,
    `${held('share4')} * fourth${part}`,
  ].join(' + ');
}

/** From the levers of the known unbalances to what the new planes hold. */
export const planeTransferSteps = {
  shareA: share(
    'h_A',
    'planeA',
    'What one unit in plane A gives to new plane A, by moments about new plane B; new plane B gets the rest.',
  ),
  shareB: share('h_B', 'planeB', 'And one unit in plane B. A share below 0 pulls the other way.'),
  share3: shareIfGiven('h_3', 'third', 'And one unit of the third unbalance, if there is one.'),
  share4: shareIfGiven('h_4', 'fourth', 'And of the fourth.'),
  thirdAlong: component('U_3x', 'third', 'cos', 'The third unbalance along throw 1.'),
  thirdAcross: component('U_3y', 'third', 'sin', 'And across it.'),
  fourthAlong: component('U_4x', 'fourth', 'cos', 'The fourth along throw 1.'),
  fourthAcross: component('U_4y', 'fourth', 'sin', 'And across it.'),
  alongA: unbalance('U_Ax', sum('A', 'cos'), 'New plane A, along throw 1.', bevan),
  acrossA: unbalance('U_Ay', sum('A', 'sin'), 'And across it.', bevan),
  alongB: unbalance('U_Bx', sum('B', 'cos'), 'New plane B: the rest of each.', bevan),
  acrossB: unbalance('U_By', sum('B', 'sin'), 'And across throw 1.', bevan),
  movedA: sizeOf('alongA', 'acrossA', 'The length of the arrow in new plane A.'),
  movedAngleA: turnOf('alongA', 'acrossA', 'And its angle, brought between 0 and 360°.'),
  movedB: sizeOf('alongB', 'acrossB', 'The length of the arrow in new plane B.'),
  movedAngleB: turnOf('alongB', 'acrossB', 'And its angle.'),
  lightA: is(
    'movedAngleA + pi - 2 * pi * floor((movedAngleA + pi) / (2 * pi))',
    'Half a turn further: where mass would be added.',
  ),
  lightB: is('movedAngleB + pi - 2 * pi * floor((movedAngleB + pi) / (2 * pi))', 'And in plane B.'),
  bearA: ratio(
    'k_A',
    '(bearingSpan / 2 - newPlaneA) / bearingSpan',
    'What new plane A gives to the bearing at the nose, by moments about the other bearing.',
    units,
  ),
  bearB: ratio('k_B', '(bearingSpan / 2 - newPlaneB) / bearingSpan', 'And new plane B.', units),
  bearingA: sizeOf(
    'bearA * alongA + bearB * alongB',
    'bearA * acrossA + bearB * acrossB',
    'Both, as arrows.',
  ),
  bearingB: sizeOf(
    '(1 - bearA) * alongA + (1 - bearB) * alongB',
    '(1 - bearA) * acrossA + (1 - bearB) * acrossB',
    'The other bearing gets the rest.',
  ),
  staticAlong: unbalance('U_Sx', 'alongA + alongB', 'Both arrows added, along throw 1.', units),
  staticAcross: unbalance('U_Sy', 'acrossA + acrossB', 'And across it.', units),
  staticUnbalance: sizeOf('staticAlong', 'staticAcross', 'What would roll the crank on rails.'),
  staticAngle: turnOf('staticAlong', 'staticAcross', 'Where it would come to rest at the bottom.'),
  coupleAlong: unbalance('U_Cx', '(alongB - alongA) / 2', 'Half of their difference.', units),
  coupleAcross: unbalance('U_Cy', '(acrossB - acrossA) / 2', 'And across throw 1.', units),
  coupleUnbalance: sizeOf(
    'coupleAlong',
    'coupleAcross',
    'Two equal arrows, opposite each other, one in each new plane: rails never show them.',
  ),
  coupleAngle: turnOf('coupleAlong', 'coupleAcross', 'The one in new plane B.'),
} as const satisfies Readonly<Record<string, Working>>;
