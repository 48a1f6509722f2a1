import { angle, is, ratio, unbalance, type Working } from '../step.ts';
import { arrowUnits, sizeOf, turnOf } from './arrow-steps.ts';

const units = { units: arrowUnits };
const bevan = { ...units, source: 'bevan-2005' };

/** Damper and flywheel added up in one plane, of sizes that are names of earlier lines, `turn` further round. */
function sum(
  plane: 'A' | 'B',
  of: 'cos' | 'sin',
  [damper, flywheel]: readonly [string, string],
  turn = '',
): string {
  const held = (name: string): string => (plane === 'A' ? name : `(1 - ${name})`);
  return (
    `${held('damperShare')} * ${damper} * ${of}(damperAngle${turn}) + ` +
    `${held('flywheelShare')} * ${flywheel} * ${of}(flywheelAngle${turn})`
  );
}
const both = ['damperUnbalance', 'flywheelUnbalance'] as const;
const swapped = ['damperSwapped', 'flywheelSwapped'] as const;

/** From the levers of the two weights to the planes, with all of them and with what was exchanged. */
export const outsideSteps = {
  damperShare: ratio(
    'h_dmp',
    '(planeB - damperPlace) / (planeB - planeA)',
    'The damper stands outside plane A: by moments about plane B it counts more than once there.',
    bevan,
  ),
  flywheelShare: ratio(
    'h_fw',
    '(planeB - flywheelPlace) / (planeB - planeA)',
    'The flywheel stands outside plane B: plane A gets a share below 0, and plane B more than all.',
    bevan,
  ),
  madeAlongA: unbalance('U_Ax', sum('A', 'cos', both), 'Both in plane A, along throw 1.', units),
  madeAcrossA: unbalance('U_Ay', sum('A', 'sin', both), 'And across it.', units),
  madeAlongB: unbalance('U_Bx', sum('B', 'cos', both), 'Both in plane B.', units),
  madeAcrossB: unbalance('U_By', sum('B', 'sin', both), 'And across throw 1.', units),
  madeA: sizeOf('madeAlongA', 'madeAcrossA', 'The arrow in plane A.'),
  madeB: sizeOf('madeAlongB', 'madeAcrossB', 'The arrow in plane B.'),
  madeAngleA: turnOf('madeAlongA', 'madeAcrossA', 'Its angle in plane A.'),
  madeAngleB: turnOf('madeAlongB', 'madeAcrossB', 'And in plane B.'),
  damperSwapped: unbalance(
    'U_d',
    'when(swappedPart == "flywheel", 0, damperUnbalance)',
    'What the damper changes by.',
    units,
  ),
  flywheelSwapped: unbalance(
    'U_f',
    'when(swappedPart == "damper", 0, flywheelUnbalance)',
    'What the flywheel changes by.',
    units,
  ),
  swapPull: is(
    'max(damperSwapped, flywheelSwapped) * maxSpeed^2',
    'The larger of them, times the square of the speed.',
  ),
  missing: angle(
    'α_m',
    'when(balancedWith == "own", pi, 0)',
    'A weight that goes leaves the opposite of itself; a weight that comes leaves itself.',
  ),
  leftAlongA: unbalance(
    'U_Lx',
    sum('A', 'cos', swapped, ' + missing'),
    'What was exchanged, in plane A.',
    units,
  ),
  leftAcrossA: unbalance('U_Ly', sum('A', 'sin', swapped, ' + missing'), 'And across.', units),
  leftAlongB: unbalance('U_Mx', sum('B', 'cos', swapped, ' + missing'), 'In plane B.', units),
  leftAcrossB: unbalance('U_My', sum('B', 'sin', swapped, ' + missing'), 'And across.', units),
  leftA: sizeOf('leftAlongA', 'leftAcrossA', 'The arrow in plane A.'),
  leftB: sizeOf('leftAlongB', 'leftAcrossB', 'The arrow in plane B.'),
  leftAngleA: turnOf('leftAlongA', 'leftAcrossA', 'Its angle in plane A.'),
  leftAngleB: turnOf('leftAlongB', 'leftAcrossB', 'And in plane B.'),
} as const satisfies Readonly<Record<string, Working>>;
