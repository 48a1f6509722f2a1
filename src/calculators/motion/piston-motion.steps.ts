import { acceleration, angle, is, length, millimetres, speed, tex } from '../step.ts';

/** The working of `piston-motion`, from the measured lengths to the motion at the chosen angle. */
export const pistonMotionSteps = {
  crankRadius: length('r', 'stroke / 2', 'The throw is half of the stroke entered.', {
    units: millimetres,
  }),
  lambda: is(
    'crankRadius / rodLength',
    'Throw over rod length: the one number that tells how far the motion is from a plain swing.',
    { units: millimetres },
  ),
  rodRatio: is(
    'rodLength / stroke',
    'The trade’s rod ratio is the same thing turned over, and halved.',
    { units: millimetres },
  ),
  offset: is(
    'boreOffset - pinOffset',
    'How far the pin’s line passes to the right of the crank’s axis: the bore’s offset less the pin’s.',
    { units: millimetres },
  ),
  topAngle: is(
    'asin(offset / (rodLength + crankRadius))',
    'At TDC rod and crank are one straight line, tilted by the offset.',
    { units: { ...millimetres, angle: 'deg' } },
  ),
  bottomAngle: is(
    'pi + asin(offset / (rodLength - crankRadius)) - topAngle',
    'At BDC they lie one over the other. The downstroke is this long, in crank angle.',
    { units: millimetres },
  ),
  topHeight: length(
    'h_TDC',
    'sqrt((rodLength + crankRadius)^2 - offset^2)',
    'The pin’s height over the crank’s axis at TDC: rod and crank in one line are the long side of a right-angled triangle.',
    { units: millimetres },
  ),
  bottomHeight: length(
    'h_BDC',
    'sqrt((rodLength - crankRadius)^2 - offset^2)',
    'The same at BDC, where the long side is the rod less the throw.',
    { units: millimetres },
  ),
  travel: is('topHeight - bottomHeight', 'The piston travels from one height to the other.', {
    units: millimetres,
  }),
  strokeGain: is(
    'stroke * offset^2 / (topHeight + bottomHeight) * (1 / (rodLength + crankRadius + topHeight) + 1 / (rodLength - crankRadius + bottomHeight))',
    'What the offset adds to the stroke, in a form that does not subtract two nearly equal lengths.',
    { units: millimetres },
  ),
  meanSpeed: is(
    'travel * maxSpeed / pi',
    'Two travels in each turn, spread over the time of the turn.',
    { source: 'heywood-1988' },
  ),
  crankpinAcceleration: acceleration(
    'a_r',
    'crankRadius * maxSpeed^2',
    'The crankpin’s own acceleration: throw times speed squared. Everything below is a multiple of it.',
    { source: 'beer-johnston-2009' },
  ),
  accelerationTop: is(
    'crankpinAcceleration * (1 + lambda) / cos(topAngle)',
    'At TDC the swing of the rod adds its share to the crankpin’s acceleration.',
    { source: 'beer-johnston-2009' },
  ),
  accelerationBottom: is(
    'crankpinAcceleration * (1 - lambda) / cos(bottomAngle + topAngle)',
    'At BDC it takes its share away. The cosine is near −1 there, so the result points upward.',
    { source: 'beer-johnston-2009' },
  ),
  boreLineAngle: angle(
    'ψ',
    'crankAngle + topAngle',
    'The crank’s angle from the line of the bore at the chosen crank angle.',
    { units: { angle: 'deg' } },
  ),
  rodAngle: is(
    'asin((crankRadius * sin(boreLineAngle) - offset) / rodLength)',
    'The rod must reach from the crankpin to the pin’s line: that sets its tilt.',
    { units: { ...millimetres, angle: 'deg' }, source: 'beer-johnston-2009' },
  ),
  displacement: is(
    'crankRadius * (cos(topAngle) - cos(boreLineAngle)) + rodLength * (cos(topAngle) - cos(rodAngle))',
    'The pin’s height at TDC less its height now. The site computes it in another form, which keeps its digits near TDC.',
    { units: { ...millimetres, angle: 'deg' } },
  ),
  pistonSpeed: is(
    'crankRadius * maxSpeed * (sin(boreLineAngle) + tan(rodAngle) * cos(boreLineAngle))',
    'The crankpin’s speed along the bore, and what the tilted rod makes of its speed across.',
    { source: 'beer-johnston-2009' },
  ),
  acceleration: is(
    'crankpinAcceleration * (cos(boreLineAngle) - tan(rodAngle) * sin(boreLineAngle) + lambda * cos(boreLineAngle)^2 / cos(rodAngle)^3) + crankAcceleration * crankRadius * (sin(boreLineAngle) + tan(rodAngle) * cos(boreLineAngle))',
    'The rate of that speed: from the turning at constant speed, and from the crank’s own speeding up.',
    { source: 'beer-johnston-2009' },
  ),
  rodSpeed: is(
    'lambda * maxSpeed * cos(boreLineAngle) / cos(rodAngle)',
    'How fast the rod swings.',
    { source: 'beer-johnston-2009' },
  ),
  rodAcceleration: is(
    'lambda * (crankAcceleration * cos(boreLineAngle) - maxSpeed^2 * sin(boreLineAngle)) / cos(rodAngle) + rodSpeed^2 * tan(rodAngle)',
    'And how fast that swing changes.',
    { source: 'beer-johnston-2009' },
  ),
  peakSpeed: is(
    tex('\\q{peakSpeed} = v(\\q{peakSpeedAngle}),\\quad a(\\q{peakSpeedAngle}) = 0', 'search'),
    'The piston is fastest where its acceleration passes through zero. That angle is searched for.',
  ),
  greatestUpward: is(
    tex('\\q{greatestUpward} = \\min_{\\theta} a(\\theta)', 'search'),
    'The lowest point of the exact acceleration over the turn, searched for. It stands at BDC only while λ is at most 0.2638.',
  ),
  halfStrokeAngle: is(
    tex('x(\\q{halfStrokeAngle}) = \\q{travel} / 2', 'search'),
    'The crank angle at which half of the travel is done, searched for.',
  ),
  secondary: is(
    tex(
      '\\q{secondary} = \\frac{1}{\\pi} \\left|\\int_0^{2\\pi} \\frac{a}{\\q{crankpinAcceleration}} \\cos 2\\theta \\, d\\theta\\right|',
      'integral',
    ),
    'The share of the second order in the exact acceleration, without its sign; the fourth and the sixth have 4θ and 6θ. With an offset the sine part counts too.',
    { source: 'taylor-1985' },
  ),
  twoTermSpeed: is(
    'crankRadius * maxSpeed * (sin(crankAngle) + lambda / 2 * sin(2 * crankAngle))',
    'The short series of the textbooks, without offset.',
    { source: 'khurmi-gupta-2009' },
  ),
  twoTermAcceleration: is(
    'crankpinAcceleration * (cos(crankAngle) + lambda * cos(2 * crankAngle)) + crankAcceleration * crankRadius * (sin(crankAngle) + lambda / 2 * sin(2 * crankAngle))',
    'Its acceleration: one part at crank speed, the secondary one at twice crank speed.',
    { source: 'khurmi-gupta-2009' },
  ),
  twoTermZeroAngle: is(
    'acos(2 * lambda / (1 + sqrt(1 + 8 * lambda^2)))',
    'Where that acceleration is zero, and the speed by two terms greatest.',
    { units: { angle: 'deg' }, source: 'khurmi-gupta-2009' },
  ),
  twoTermPeakSpeed: is(
    'crankRadius * maxSpeed * (sin(twoTermZeroAngle) + lambda / 2 * sin(2 * twoTermZeroAngle))',
    'The greatest speed by two terms.',
    { source: 'khurmi-gupta-2009' },
  ),
  twoTermPeakSpeedAngle: is(
    'twoTermZeroAngle',
    'It stands where the acceleration by two terms passes through zero.',
    { units: { angle: 'deg' } },
  ),
  twoTermGreatestUpward: is(
    'when(lambda <= 0.25, -crankpinAcceleration * (1 - lambda), -crankpinAcceleration * (lambda + 1 / (8 * lambda)))',
    'The lowest point of that acceleration: at BDC for long rods, on both sides of it for short ones.',
  ),
  pointAcross: speed(
    'v_X,ac',
    'crankRadius * maxSpeed * cos(boreLineAngle) - rodPoint * rodSpeed * cos(rodAngle)',
    'Speed of the chosen point on the rod across the bore.',
    { source: 'beer-johnston-2009' },
  ),
  pointAlong: speed(
    'v_X,al',
    'crankRadius * maxSpeed * sin(boreLineAngle) + rodPoint * rodSpeed * sin(rodAngle)',
    'Its speed along the bore, downward.',
    { source: 'beer-johnston-2009' },
  ),
  rodPointSpeed: is('sqrt(pointAcross^2 + pointAlong^2)', 'Both together.'),
  pointAcrossRate: acceleration(
    'a_X,ac',
    'crankRadius * (crankAcceleration * cos(boreLineAngle) - maxSpeed^2 * sin(boreLineAngle)) - rodPoint * (rodAcceleration * cos(rodAngle) - rodSpeed^2 * sin(rodAngle))',
    'The rate of the speed across: the crankpin’s, and what the swinging rod adds.',
    { source: 'beer-johnston-2009' },
  ),
  pointAlongRate: acceleration(
    'a_X,al',
    'crankRadius * (crankAcceleration * sin(boreLineAngle) + maxSpeed^2 * cos(boreLineAngle)) + rodPoint * (rodAcceleration * sin(rodAngle) + rodSpeed^2 * cos(rodAngle))',
    'And of the speed along.',
    { source: 'beer-johnston-2009' },
  ),
  rodPointAcceleration: is('sqrt(pointAcrossRate^2 + pointAlongRate^2)', 'Both together.'),
};
