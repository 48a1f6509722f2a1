import { acceleration, angle, is, length, millimetres, ratio } from '../step.ts';

/** The working of a shank, from its section to what is left of the clearance. */
export const shankSteps = {
  flangeSpan: is(
    'when(shankShape == "i", shankHeight, shankWidth)',
    'From the outer face of one flange to that of the other: the height of an I, the width of an H.',
    { units: millimetres },
  ),
  flangeWidth: is(
    'when(shankShape == "i", shankWidth, shankHeight)',
    'The other of the two is the long side of a flange.',
    { units: millimetres },
  ),
  sectionArea: is(
    '2 * flangeWidth * flangeThickness + (flangeSpan - 2 * flangeThickness) * webThickness',
    'Two flanges and the web between them.',
    { units: millimetres, source: 'khurmi-gupta-machine-design-2005' },
  ),
  area: is(
    'when(areaFrom == "given", shankArea, sectionArea)',
    'The area that carries the load: from the dimensions, or as given.',
    { units: millimetres },
  ),
  alongFlanges: is(
    '(flangeWidth * flangeSpan^3 - (flangeWidth - webThickness) * (flangeSpan - 2 * flangeThickness)^3) / 12',
    'About the axis that runs along the flanges: the full rectangle less its two pockets.',
    { units: millimetres, source: 'khurmi-gupta-machine-design-2005' },
  ),
  alongWeb: is(
    '(2 * flangeThickness * flangeWidth^3 + (flangeSpan - 2 * flangeThickness) * webThickness^3) / 12',
    'About the axis that runs along the web: two flanges and a thin web, each about its own middle.',
    { units: millimetres, source: 'khurmi-gupta-machine-design-2005' },
  ),
  secondMomentX: is(
    'when(shankShape == "i", alongFlanges, alongWeb)',
    'In the plane of motion an I bends about the axis along its flanges, an H about the axis along its web.',
    { units: millimetres },
  ),
  secondMomentY: is(
    'when(shankShape == "i", alongWeb, alongFlanges)',
    'Across that plane it is the other way round.',
    { units: millimetres },
  ),
  momentRatio: is(
    'secondMomentX / secondMomentY',
    'Four would make the rod equally stiff against buckling both ways, since across the plane its ends are held.',
    { units: millimetres, source: 'khurmi-gupta-machine-design-2005' },
  ),
  modulusX: is(
    '2 * secondMomentX / shankHeight',
    'The second moment over the distance of the outermost fibre.',
    { units: millimetres },
  ),
  radiusX: is(
    'sqrt(secondMomentX / area)',
    'The radius at which the whole area would give the same second moment.',
    { units: millimetres },
  ),
  radiusY: is('sqrt(secondMomentY / area)', 'The same across.', { units: millimetres }),
  crankRadius: length('r', 'stroke / 2', 'The throw is half the stroke.'),
  throwRatio: ratio('λ', 'crankRadius / rodLength', 'The throw over the rod length.'),
  pull: is(
    'crankRadius * maxSpeed^2 * ((pistonMass + ringMass + lockMass + pinMass) * (1 + throwRatio) + rodMassAbove * (1 + throwRatio * (1 - shankSection / (2 * rodLength))))',
    'Everything that hangs on the cut, times its acceleration at TDC; the rod metal counts half way from the pin to the cut.',
  ),
  lowSpeedPush: is(
    '(peakPressure - crankcasePressure) * pi * bore^2 / 4',
    'Peak pressure less the crankcase’s, on the bore. Inertia takes nothing off it at low speed.',
    { source: 'khurmi-gupta-machine-design-2005' },
  ),
  peakLean: angle(
    'φ',
    'asin(crankRadius * sin(peakAngle) / rodLength)',
    'At the angle of the peak the rod leans by this much.',
    { units: { ...millimetres, angle: 'deg' } },
  ),
  crankpinAtPeak: acceleration(
    'a_cp',
    'crankRadius * maxSpeed^2 * cos(peakAngle)',
    'The crankpin’s acceleration along the bore at that angle, at the highest speed.',
  ),
  pistonAtPeak: acceleration(
    'a_p',
    'crankRadius * maxSpeed^2 * (cos(peakAngle) - tan(peakLean) * sin(peakAngle) + throwRatio * cos(peakAngle)^2 / cos(peakLean)^3)',
    'The piston’s acceleration there: the exact one, with the swing of the rod.',
    { source: 'beer-johnston-2009' },
  ),
  metalAtPeak: acceleration(
    'a_m',
    'pistonAtPeak + (crankpinAtPeak - pistonAtPeak) * shankSection / (2 * rodLength)',
    'Between the two, half way from the pin to the cut: that of the rod metal above it.',
  ),
  push: is(
    '(lowSpeedPush - (pistonMass + ringMass + lockMass + pinMass) * pistonAtPeak - rodMassAbove * metalAtPeak) / cos(peakLean)',
    'At the highest speed the same masses take off what their acceleration at that angle needs; the rest goes along the rod, which leans a little.',
  ),
  pullStress: is('pull / area', 'Force over area.'),
  pushStress: is('push / area', 'The same for the push at the highest speed.'),
  lowSpeedStress: is(
    'lowSpeedPush / area',
    'And for the push at low speed, the greatest the beam sees.',
  ),
  amplitude: is(
    '(pullStress + lowSpeedStress) / 2',
    'Half the swing from the greatest pull to the greatest push.',
  ),
  meanStress: is(
    '(pullStress - lowSpeedStress) / 2',
    'The middle of that swing. Negative: the push is the greater of the two.',
  ),
  shankMass: is(
    'rodDensity * area * rodLength',
    'The beam as a bar of one section from centre to centre.',
  ),
  whipMoment: is(
    'shankMass * maxSpeed^2 * crankRadius * rodLength / (9 * sqrt(3))',
    'The rod’s own mass, thrown sideways: nothing at the pin, the crankpin’s full acceleration at the other end.',
    { source: 'khurmi-gupta-machine-design-2005' },
  ),
  whipPlace: is('rodLength / sqrt(3)', 'It bends most at this distance from the pin.'),
  whipStress: is(
    'whipMoment / modulusX',
    'Bending moment over section modulus, in the outermost fibre.',
  ),
  slendernessX: is(
    'rodLength / radiusX',
    'In the plane of motion both ends turn: the whole length over the radius of gyration.',
    { source: 'khurmi-gupta-machine-design-2005' },
  ),
  slendernessY: is(
    'rodLength / (2 * radiusY)',
    'Across that plane pin and crankpin hold both ends: half the length counts.',
    { source: 'khurmi-gupta-machine-design-2005' },
  ),
  slenderness: ratio(
    's',
    'max(slendernessX, slendernessY)',
    'The bar gives way towards the side on which it is more slender.',
  ),
  eulerStress: is(
    'pi^2 * youngsModulus / slenderness^2',
    'The stress at which a perfectly straight elastic bar of that slenderness bows out.',
  ),
  transition: is(
    'pi * sqrt(2 * youngsModulus / yieldStrength)',
    'Below this slenderness the metal gives way before Euler’s stress is reached.',
  ),
  johnsonStress: is(
    'when(slenderness < transition, yieldStrength * (1 - yieldStrength / (4 * eulerStress)), eulerStress)',
    'Johnson’s parabola from yield at no length to half of yield, where it touches Euler’s curve and hands over to it.',
    { units: { pressure: 'MPa' } },
  ),
  bucklingShare: is(
    'johnsonStress / yieldStrength',
    'What slenderness takes from the yield strength.',
  ),
  divisor: is(
    'pi^2 * youngsModulus / yieldStrength',
    'The divisor with which Rankine’s formula runs into Euler’s curve for this metal.',
  ),
  rankineStress: is(
    'yieldStrength / (1 + yieldStrength / eulerStress)',
    'Rankine’s formula with that divisor: crushing and Euler’s stress, added as reciprocals.',
  ),
  rankineTextbook: is(
    'yieldStrength / (1 + pi^2 * youngsModulus / eulerStress / 7500)',
    'The same with the divisor of mild steel, for comparison.',
    { source: 'khurmi-gupta-machine-design-2005' },
  ),
  bucklingMargin: is(
    'johnsonStress * area / lowSpeedPush',
    'How many times the low-speed push it would take.',
  ),
  shankStretch: is(
    'pull * shankLength / (youngsModulus * area)',
    'Stress over modulus, times the length between the eyes.',
  ),
  rodStretch: is(
    'stretchFactor * shankStretch',
    'Eyes, cap, pin and bore give as well; the factor stands for them.',
  ),
  growth: is(
    'rodExpansion * rodLength * (rodTemperature - assemblyTemperature)',
    'Expansion times length times rise of temperature, centre to centre.',
  ),
  clearanceLeft: is('pistonToHead - rodStretch - growth', 'The clearance as set, less these two.'),
};
