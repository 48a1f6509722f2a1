import { is, ratio, tex, unbalance, type Working } from '../step.ts';
import { arrowUnits, sizeOf, turnOf } from './arrow-steps.ts';

const units = { units: arrowUnits };
const bosch = { source: 'bosch-handbook' };

function component(symbol: string, plane: 'A' | 'B', way: 'Along' | 'Across', say: string) {
  const share =
    plane === 'A'
      ? `planeB * force${way} - cylinderSpacing * couple${way}`
      : `cylinderSpacing * couple${way} - planeA * force${way}`;
  return unbalance(symbol, `pinUnbalance * (${share}) / (planeB - planeA)`, say, units);
}

/** From the throws to the end planes, and on to what the middle of the crank gets. */
export const changeSteps = {
  change: is(
    'newBobweight - balancedBobweight',
    'What hangs on a pin from now on, less what it was balanced for.',
    {
      units: { mass: 'g' },
    },
  ),
  pinUnbalance: is('change * stroke / 2', 'The change times the throw, at every pin.', units),
  forceAlong: is(
    tex('\\q{forceAlong} = \\textstyle\\sum \\cos\\theta', 'sum over parts'),
    'Unit throws added as arrows: what they come to along throw 1.',
    bosch,
  ),
  forceAcross: is(
    tex('\\q{forceAcross} = \\textstyle\\sum \\sin\\theta', 'sum over parts'),
    'And across it.',
    bosch,
  ),
  coupleAlong: is(
    tex('\\q{coupleAlong} = \\textstyle\\sum z\\cos\\theta', 'sum over parts'),
    'The same, each arrow weighted by its place z along the crank, in pin spacings from the middle.',
    bosch,
  ),
  coupleAcross: is(
    tex('\\q{coupleAcross} = \\textstyle\\sum z\\sin\\theta', 'sum over parts'),
    'And across throw 1.',
    bosch,
  ),
  alongA: component('U_Ax', 'A', 'Along', 'Moments about plane B give what stands in plane A.'),
  acrossA: component('U_Ay', 'A', 'Across', 'And across throw 1.'),
  alongB: component('U_Bx', 'B', 'Along', 'Moments about plane A give what stands in plane B.'),
  acrossB: component('U_By', 'B', 'Across', 'And across throw 1.'),
  unbalanceA: sizeOf('alongA', 'acrossA', 'The length of the arrow in plane A.'),
  unbalanceB: sizeOf('alongB', 'acrossB', 'And in plane B.'),
  endUnbalance: is('max(unbalanceA, unbalanceB)', 'The worse of the two.', units),
  endAngleA: turnOf('alongA', 'acrossA', 'Where it is heavy in plane A.'),
  endAngleB: turnOf('alongB', 'acrossB', 'And in plane B.'),
  perWeight: is(
    'when(takenAt == "webs", abs(pinUnbalance) / 2, endUnbalance)',
    'At the webs each pin is answered where it stands, by two counterweights; at the ends two answer for all.',
    units,
  ),
  pinPull: is('abs(pinUnbalance) * maxSpeed^2', 'Unbalance times the square of the speed.'),
  mainShare: is(
    tex(
      '\\q{mainShare} = \\max\\left|\\tfrac12\\left(e^{i\\theta_k}+e^{i\\theta_{k+1}}\\right)\\right|',
      'sum over parts',
    ),
    'A main between two pins gets half of what either pulls, as arrows: as if the crank were cut at every main.',
  ),
  share: ratio(
    'k_t',
    'when(takenAt == "webs", 0, 1)',
    'Webs that answer their own pin leave nothing.',
  ),
  mainPull: is('share * mainShare * pinPull', 'At the worst of the middle mains.'),
  bendingArm: is(
    tex(
      '\\q{bendingArm} = \\max\\left|\\textstyle\\sum_{z_k<z}(z-z_k)\\,\\vec F_k\\right|/F_{pin}',
      'sum over parts',
    ),
    'The pins pull, the two ends pull against them: the greatest bending along the free crank, no main helping.',
  ),
  bending: is('share * bendingArm * pinPull', 'At the redline.'),
} as const satisfies Readonly<Record<string, Working>>;
