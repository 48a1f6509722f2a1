import { is, length, millimetres, ratio, secondMoment, tex, volume } from '../step.ts';

/** The working of the wrist pin: body, loads, pressures, stresses, ovalization. */
export const pinSteps = {
  taperVolume: volume(
    'V_t',
    'pi * pinTaperLength * (pinBore^2 + pinBore * pinTaperBore + pinTaperBore^2) / 12',
    'The hollow of one tapered mouth is the frustum of a cone.',
    { units: millimetres },
  ),
  metalVolume: volume(
    'V',
    'pi * (pinDiameter^2 * pinLength - pinBore^2 * (pinLength - 2 * pinTaperLength)) / 4 - 2 * taperVolume',
    'Full cylinder less the straight bore less both mouths.',
    { units: millimetres },
  ),
  mass: is(
    'pinDensity * metalVolume',
    'Volume times density. Chamfers take a few tenths of a gram more.',
    { units: { mass: 'g', density: 'g/cm3', volume: 'cm3' } },
  ),
  boreRatio: is('pinBore / pinDiameter', 'How hollow the pin is in the middle.', {
    units: millimetres,
  }),
  sectionModulus: is(
    'pi * (pinDiameter^4 - pinBore^4) / (32 * pinDiameter)',
    'The fourth power makes the middle of a pin nearly idle in bending.',
    { units: millimetres, source: 'khurmi-gupta-machine-design-2005' },
  ),
  gasLoad: is(
    '(peakPressure - crankcasePressure) * pi * bore^2 / 4',
    'Peak pressure above the crankcase’s, on the whole bore.',
    { source: 'khurmi-gupta-machine-design-2005' },
  ),
  topFactor: length(
    'r_T',
    '(stroke / 2) * (1 + stroke / (2 * rodLength))',
    'Acceleration at TDC for each unit of speed squared.',
    { units: millimetres },
  ),
  pushLoad: is(
    'gasLoad - (pistonMass + ringMass + lockMass) * topFactor * torqueSpeed^2',
    'Piston, rings and locks use up a part of the gas force to be turned round, so it never reaches the pin.',
    { source: 'kolchin-demidov-1984' },
  ),
  pullLoad: is(
    '(pistonMass + ringMass + lockMass + mass) * topFactor * maxSpeed^2',
    'One turn later there is no gas, and all of it, the pin included, hangs on the eye.',
  ),
  pullShare: is('pullLoad / pushLoad', 'The pull beside the push.'),
  smallEndPressure: is(
    'pushLoad / (pinDiameter * smallEndWidth)',
    'Load over the projected area of the eye on the pin.',
    { source: 'khurmi-gupta-machine-design-2005' },
  ),
  bossPressure: is(
    'pushLoad / (pinDiameter * (pinLength - bossGap))',
    'Load over the projected area of both bosses.',
  ),
  bending: is(
    'pushLoad * (pinLength + 2 * bossGap - 1.5 * smallEndWidth) / (1.2 * (1 - boreRatio^4) * pinDiameter^3)',
    'Each boss pushes hardest at its inner edge and not at all at the pin’s end. The 1.2 is 12 times a section modulus rounded to 0.1 d³.',
    { units: millimetres, source: 'kolchin-demidov-1984' },
  ),
  bendingMiddle: is(
    'pushLoad * (pinLength + bossGap - smallEndWidth) / (8 * sectionModulus)',
    'The same with each boss taken as one support in its middle: the longest span there can be.',
    { units: millimetres, source: 'khurmi-gupta-machine-design-2005' },
  ),
  bendingPull: is(
    'bending * pullLoad / pushLoad',
    'The pull bends the pin the other way, in proportion.',
  ),
  gapBore: is(
    'when(pinLength - 2 * pinTaperLength < bossGap, pinBore + (bossGap - pinLength + 2 * pinTaperLength) * (pinTaperBore - pinBore) / (2 * pinTaperLength), pinBore)',
    'Where a taper reaches past the boss’s edge, the pin is thinner there.',
    { units: millimetres },
  ),
  gapRatio: ratio(
    'α_g',
    'gapBore / pinDiameter',
    'How hollow the pin is at the edge of the boss.',
    { units: millimetres },
  ),
  shear: is(
    '8 * pushLoad * (1 + gapRatio + gapRatio^2) / (3 * pi * (1 - gapRatio^4) * pinDiameter^2)',
    'Half of the load crosses each gap; shear is greatest at the middle line of the section.',
    { units: millimetres, source: 'kolchin-demidov-1984' },
  ),
  ovalization: is(
    '1.35 * pushLoad / (pinModulus * pinLength) * ((1 + boreRatio) / (1 - boreRatio))^3 * (0.1 - (boreRatio - 0.4)^3)',
    'A ring’s law with a correction found by test. It is stated for bore ratios from 0.4 to 0.8 only.',
    { units: millimetres, source: 'kolchin-demidov-1984' },
  ),
  ovalClose: is(
    tex(
      '\\q{ovalClose} = \\frac{16}{\\pi^2} \\frac{\\q{pushLoad}}{\\q{pinModulus}\\,\\q{pinLength}} \\sum_{n=2,4,\\ldots} \\frac{w_n(\\q{boreRatio})}{n^2-1}',
      'sum over parts',
    ),
    'Plane elasticity of a hollow cylinder pressed from both sides as in a close bore: each pair of lobes moves the wall by its own share. Any bore ratio.',
  ),
  ringRadius: length(
    'R',
    '(pinDiameter + pinBore) / 4',
    'For the thin ring: the middle of the wall.',
    { units: millimetres },
  ),
  ringMoment: secondMoment(
    'I_w',
    'pinLength * ((pinDiameter - pinBore) / 2)^3 / 12',
    'The wall bends as a strip as long as the pin.',
    { units: millimetres },
  ),
  ovalPoints: is(
    '(2 / pi - 0.5) * pushLoad * ringRadius^3 / (pinModulus * ringMoment)',
    'Two opposite point loads widen a thin ring by 0.1366 of this product.',
    { units: millimetres, source: 'roark-young-budynas-2002' },
  ),
  flatPoints: is(
    '(pi / 4 - 2 / pi) * pushLoad * ringRadius^3 / (pinModulus * ringMoment)',
    'And flatten it along the load by 0.1488 of it.',
    { units: millimetres, source: 'roark-young-budynas-2002' },
  ),
  diameterRatio: is('pinDiameter / bore', 'The pin beside the bore.', { units: millimetres }),
};
