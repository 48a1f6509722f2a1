import type { Step } from '../define.ts';

const mm = { length: 'mm', area: 'mm2', volume: 'mm3', secondMoment: 'mm4' } as const;
const book = 'khurmi-gupta-machine-design-2005';

/** The working of a shank, from its section to what is left of the clearance. */
export const shankSteps: readonly Step[] = [
  {
    of: 'flangeSpan',
    tex: 'd = H_\\mathrm{s}\\ \\text{for an I},\\quad d = B_\\mathrm{s}\\ \\text{for an H}',
    say: 'From the outer face of one flange to that of the other: the height of an I, the width of an H.',
  },
  {
    of: 'flangeWidth',
    tex: 'b = B_\\mathrm{s}\\ \\text{for an I},\\quad b = H_\\mathrm{s}\\ \\text{for an H}',
    say: 'The other of the two is the long side of a flange.',
  },
  {
    of: 'sectionArea',
    formula:
      '2 * flangeWidth * flangeThickness + (flangeSpan - 2 * flangeThickness) * webThickness',
    say: 'Two flanges and the web between them.',
    units: mm,
    source: book,
  },
  {
    of: 'area',
    tex: 'A = A_4,\\ \\text{or the area given}',
    say: 'The area that carries the load: from the dimensions, or as given.',
  },
  {
    of: 'alongFlanges',
    formula:
      '(flangeWidth * flangeSpan^3 - (flangeWidth - webThickness) * (flangeSpan - 2 * flangeThickness)^3) / 12',
    say: 'About the axis that runs along the flanges: the full rectangle less its two pockets.',
    units: mm,
    source: book,
  },
  {
    of: 'alongWeb',
    formula:
      '(2 * flangeThickness * flangeWidth^3 + (flangeSpan - 2 * flangeThickness) * webThickness^3) / 12',
    say: 'About the axis that runs along the web: two flanges and a thin web, each about its own middle.',
    units: mm,
    source: book,
  },
  {
    of: 'secondMomentX',
    tex: 'I_x = I_\\mathrm{f}\\ \\text{for an I},\\quad I_x = I_\\mathrm{w}\\ \\text{for an H}',
    say: 'In the plane of motion an I bends about the axis along its flanges, an H about the axis along its web.',
  },
  {
    of: 'secondMomentY',
    tex: 'I_y = I_\\mathrm{w}\\ \\text{for an I},\\quad I_y = I_\\mathrm{f}\\ \\text{for an H}',
    say: 'Across that plane it is the other way round.',
  },
  {
    of: 'momentRatio',
    formula: 'secondMomentX / secondMomentY',
    say: 'Four would make the rod equally stiff against buckling both ways, since across the plane its ends are held.',
    units: mm,
    source: book,
  },
  {
    of: 'modulusX',
    formula: 'secondMomentX / (shankHeight / 2)',
    say: 'The second moment over the distance of the outermost fibre.',
    units: mm,
  },
  {
    of: 'radiusX',
    formula: 'sqrt(secondMomentX / area)',
    say: 'The radius at which the whole area would give the same second moment.',
    units: mm,
  },
  { of: 'radiusY', formula: 'sqrt(secondMomentY / area)', say: 'The same across.', units: mm },
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
    say: 'The throw over the rod length.',
  },
  {
    of: 'pull',
    formula:
      'crankRadius * maxSpeed^2 * ((pistonMass + ringMass + lockMass + pinMass) * (1 + throwRatio) + rodMassAbove * (1 + throwRatio * (1 - shankSection / (2 * rodLength))))',
    say: 'Everything that hangs on the cut, times its acceleration at TDC; the rod metal counts half way from the pin to the cut.',
  },
  {
    of: 'lowSpeedPush',
    formula: '(peakPressure - crankcasePressure) * pi * bore^2 / 4',
    say: 'Peak pressure less the crankcase’s, on the bore. Inertia takes nothing off it at low speed.',
    source: book,
  },
  {
    of: 'push',
    tex: 'F_\\mathrm{push} = \\frac{F_\\mathrm{low} - \\sum m\\,a(\\theta_\\mathrm{max})}{\\cos\\varphi}',
    say: 'At the highest speed the same masses take off what their acceleration at that angle needs; the rest goes along the rod, which leans a little.',
  },
  { of: 'pullStress', formula: 'pull / area', say: 'Force over area.' },
  { of: 'pushStress', formula: 'push / area', say: 'The same for the push at the highest speed.' },
  {
    of: 'lowSpeedStress',
    formula: 'lowSpeedPush / area',
    say: 'And for the push at low speed, the greatest the shank sees.',
  },
  {
    of: 'amplitude',
    formula: '(pullStress + lowSpeedStress) / 2',
    say: 'Half the swing from the greatest pull to the greatest push.',
  },
  {
    of: 'meanStress',
    formula: '(pullStress - lowSpeedStress) / 2',
    say: 'The middle of that swing. Negative: the push is the greater of the two.',
  },
  {
    of: 'shankMass',
    formula: 'rodDensity * area * rodLength',
    say: 'The shank as a bar of one section from centre to centre.',
  },
  {
    of: 'whipMoment',
    formula: 'shankMass * maxSpeed^2 * crankRadius * rodLength / (9 * sqrt(3))',
    say: 'The rod’s own mass, thrown sideways: nothing at the pin, the crankpin’s full acceleration at the other end.',
    source: book,
  },
  {
    of: 'whipPlace',
    formula: 'rodLength / sqrt(3)',
    say: 'It bends most at this distance from the pin.',
  },
  {
    of: 'whipStress',
    formula: 'whipMoment / modulusX',
    say: 'Bending moment over section modulus, in the outermost fibre.',
  },
  {
    of: 'slendernessX',
    formula: 'rodLength / radiusX',
    say: 'In the plane of motion both ends turn: the whole length over the radius of gyration.',
    source: book,
  },
  {
    of: 'slendernessY',
    formula: 'rodLength / 2 / radiusY',
    say: 'Across that plane pin and crankpin hold both ends: half the length counts.',
    source: book,
  },
  {
    of: 'eulerStress',
    tex: '\\sigma_\\mathrm{E} = \\frac{\\pi^2 E}{s^2},\\quad s\\ \\text{the greater of } s_x \\text{ and } s_y',
    say: 'The stress at which a perfectly straight elastic bar of the greater slenderness bows out.',
  },
  {
    of: 'transition',
    formula: 'pi * sqrt(2 * youngsModulus / yieldStrength)',
    say: 'Below this slenderness the metal gives way before Euler’s stress is reached.',
  },
  {
    of: 'johnsonStress',
    tex: '\\sigma_\\mathrm{J} = R_\\mathrm{p}\\,\\Bigl(1 - \\frac{R_\\mathrm{p}}{4\\,\\sigma_\\mathrm{E}}\\Bigr),\\quad \\sigma_\\mathrm{E}\\ \\text{above } s_\\mathrm{t}',
    say: 'Johnson’s parabola from yield at no length to half of yield, where it touches Euler’s curve and hands over to it.',
  },
  {
    of: 'bucklingShare',
    formula: 'johnsonStress / yieldStrength',
    say: 'What slenderness takes from the yield strength.',
  },
  {
    of: 'divisor',
    formula: 'pi^2 * youngsModulus / yieldStrength',
    say: 'The divisor with which Rankine’s formula runs into Euler’s curve for this metal.',
  },
  {
    of: 'rankineStress',
    formula: 'yieldStrength / (1 + yieldStrength / eulerStress)',
    say: 'Rankine’s formula with that divisor: crushing and Euler’s stress, added as reciprocals.',
  },
  {
    of: 'rankineTextbook',
    formula: 'yieldStrength / (1 + pi^2 * youngsModulus / eulerStress / 7500)',
    say: 'The same with the divisor of mild steel, for comparison.',
    source: book,
  },
  {
    of: 'bucklingMargin',
    formula: 'johnsonStress * area / lowSpeedPush',
    say: 'How many times the low-speed push it would take.',
  },
  {
    of: 'shankStretch',
    formula: 'pull * shankLength / (youngsModulus * area)',
    say: 'Stress over modulus, times the length between the eyes.',
  },
  {
    of: 'rodStretch',
    formula: 'stretchFactor * shankStretch',
    say: 'Eyes, cap, pin and bore give as well; the factor stands for them.',
  },
  {
    of: 'growth',
    formula: 'rodExpansion * rodLength * (rodTemperature - assemblyTemperature)',
    say: 'Expansion times length times rise of temperature, centre to centre.',
  },
  {
    of: 'clearanceLeft',
    formula: 'pistonToHead - rodStretch - growth',
    say: 'The clearance as set, less these two.',
  },
];
