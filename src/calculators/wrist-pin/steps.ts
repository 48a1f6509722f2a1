import type { Step } from '../define.ts';

const mm = { length: 'mm' } as const;
/** N, mm and MPa fit together: 1 MPa is 1 N on 1 mm². */
const newtonMillimetre = {
  ...mm,
  pressure: 'MPa',
  volume: 'mm3',
  secondMoment: 'mm4',
} as const;

/** The working of the wrist pin: body, loads, pressures, stresses, ovalization. */
export const pinSteps: readonly Step[] = [
  {
    of: 'taperVolume',
    symbol: 'V_t',
    kind: 'volume',
    formula: 'pi * pinTaperLength * (pinBore^2 + pinBore * pinTaperBore + pinTaperBore^2) / 12',
    say: 'The hollow of one tapered mouth is the frustum of a cone.',
    units: { ...mm, volume: 'mm3' },
  },
  {
    of: 'metalVolume',
    symbol: 'V',
    kind: 'volume',
    formula:
      'pi * (pinDiameter^2 * pinLength - pinBore^2 * (pinLength - 2 * pinTaperLength)) / 4 - 2 * taperVolume',
    say: 'Full cylinder less the straight bore less both mouths.',
    units: { ...mm, volume: 'mm3' },
  },
  {
    of: 'mass',
    formula: 'pinDensity * metalVolume',
    say: 'Volume times density. Chamfers take a few tenths of a gram more.',
    units: { mass: 'g', density: 'g/cm3', volume: 'cm3' },
  },
  {
    of: 'boreRatio',
    formula: 'pinBore / pinDiameter',
    say: 'How hollow the pin is in the middle.',
    units: mm,
  },
  {
    of: 'sectionModulus',
    formula: 'pi * (pinDiameter^4 - pinBore^4) / (32 * pinDiameter)',
    say: 'The fourth power makes the middle of a pin nearly idle in bending.',
    units: { ...mm, volume: 'mm3' },
    source: 'khurmi-gupta-machine-design-2005',
  },
  {
    of: 'gasLoad',
    formula: '(peakPressure - crankcasePressure) * pi * bore^2 / 4',
    say: 'Peak pressure above the crankcase’s, on the whole bore.',
    source: 'khurmi-gupta-machine-design-2005',
  },
  {
    of: 'topFactor',
    symbol: 'r_T',
    kind: 'length',
    formula: '(stroke / 2) * (1 + stroke / (2 * rodLength))',
    say: 'Acceleration at TDC for each unit of speed squared.',
    units: mm,
  },
  {
    of: 'pushLoad',
    formula: 'gasLoad - (pistonMass + ringMass + lockMass) * topFactor * torqueSpeed^2',
    say: 'Piston, rings and locks use up a part of the gas force to be turned round, so it never reaches the pin.',
    source: 'kolchin-demidov-1984',
  },
  {
    of: 'pullLoad',
    formula: '(pistonMass + ringMass + lockMass + mass) * topFactor * maxSpeed^2',
    say: 'One turn later there is no gas, and all of it, the pin included, hangs on the eye.',
  },
  { of: 'pullShare', formula: 'pullLoad / pushLoad', say: 'The pull beside the push.' },
  {
    of: 'smallEndPressure',
    formula: 'pushLoad / (pinDiameter * smallEndWidth)',
    say: 'Load over the shadow of the eye on the pin.',
    source: 'khurmi-gupta-machine-design-2005',
  },
  {
    of: 'bossPressure',
    formula: 'pushLoad / (pinDiameter * (pinLength - bossGap))',
    say: 'Load over the shadow of both bosses.',
  },
  {
    of: 'bending',
    formula:
      'pushLoad * (pinLength + 2 * bossGap - 1.5 * smallEndWidth) / (1.2 * (1 - boreRatio^4) * pinDiameter^3)',
    say: 'Each boss pushes hardest at its inner edge and not at all at the pin’s end. The 1.2 is 12 times a section modulus rounded to 0.1 d³.',
    units: newtonMillimetre,
    source: 'kolchin-demidov-1984',
  },
  {
    of: 'bendingMiddle',
    formula: 'pushLoad * (pinLength + bossGap - smallEndWidth) / (8 * sectionModulus)',
    say: 'The same with each boss taken as one support in its middle: the longest span there can be.',
    units: newtonMillimetre,
    source: 'khurmi-gupta-machine-design-2005',
  },
  {
    of: 'bendingPull',
    formula: 'bending * pullLoad / pushLoad',
    say: 'The pull bends the pin the other way, in proportion.',
  },
  {
    of: 'gapBore',
    formula:
      'pinBore + max(0, (bossGap / 2 - pinLength / 2 + pinTaperLength) * (pinTaperBore - pinBore) / max(pinTaperLength, 1e-9))',
    say: 'Where a taper reaches past the boss’s edge, the pin is thinner there.',
  },
  {
    of: 'gapRatio',
    symbol: 'α_g',
    kind: 'ratio',
    formula: 'gapBore / pinDiameter',
    say: 'How hollow the pin is at the edge of the boss.',
    units: mm,
  },
  {
    of: 'shear',
    formula:
      '8 * pushLoad * (1 + gapRatio + gapRatio^2) / (3 * pi * (1 - gapRatio^4) * pinDiameter^2)',
    say: 'Half of the load crosses each gap; shear is greatest at the middle line of the section.',
    units: newtonMillimetre,
    source: 'kolchin-demidov-1984',
  },
  {
    of: 'ovalization',
    formula:
      '1.35 * pushLoad / (pinModulus * pinLength) * ((1 + boreRatio) / (1 - boreRatio))^3 * (0.1 - (boreRatio - 0.4)^3)',
    say: 'A ring’s law with a correction found by test. It is stated for bore ratios from 0.40 to 0.80 only.',
    units: newtonMillimetre,
    source: 'kolchin-demidov-1984',
  },
  {
    of: 'ovalClose',
    tex: '\\Delta d_\\mathrm{c} = \\frac{16}{\\pi^2} \\frac{P}{E\\,l_\\mathrm{p}} \\sum_{n=2,4,\\ldots} \\frac{w_n(\\alpha)}{n^2-1}',
    say: 'Plane elasticity of a hollow cylinder pressed from both sides as in a close bore: each pair of lobes moves the wall by its own share. Any bore ratio.',
  },
  {
    of: 'ringRadius',
    symbol: 'R',
    kind: 'length',
    formula: '(pinDiameter + pinBore) / 4',
    say: 'For the thin ring: the middle of the wall.',
    units: mm,
  },
  {
    of: 'ringMoment',
    symbol: 'I_w',
    kind: 'secondMoment',
    formula: 'pinLength * ((pinDiameter - pinBore) / 2)^3 / 12',
    say: 'The wall bends as a strip as long as the pin.',
    units: { ...mm, secondMoment: 'mm4' },
  },
  {
    of: 'ovalPoints',
    formula: '(2 / pi - 0.5) * pushLoad * ringRadius^3 / (pinModulus * ringMoment)',
    say: 'Two opposite point loads widen a thin ring by 0.1366 of this product.',
    units: newtonMillimetre,
    source: 'roark-young-budynas-2002',
  },
  {
    of: 'flatPoints',
    formula: '(pi / 4 - 2 / pi) * pushLoad * ringRadius^3 / (pinModulus * ringMoment)',
    say: 'And flatten it along the load by 0.1488 of it.',
    units: newtonMillimetre,
    source: 'roark-young-budynas-2002',
  },
  {
    of: 'diameterRatio',
    formula: 'pinDiameter / bore',
    say: 'The pin beside the bore.',
    units: mm,
  },
];
