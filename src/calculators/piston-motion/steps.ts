import type { Step } from '../define.ts';

const exact = 'beer-johnston-2009';
const short = 'khurmi-gupta-2009';
const millimetres = { units: { length: 'mm' } } as const;

/** The working of `piston-motion`, from the measured lengths to the motion at the chosen angle. */
export const pistonMotionSteps: readonly Step[] = [
  {
    of: 'crankRadius',
    symbol: 'r',
    kind: 'length',
    formula: 'stroke / 2',
    say: 'The throw is half of the stroke entered.',
    ...millimetres,
  },
  {
    of: 'lambda',
    formula: 'crankRadius / rodLength',
    say: 'Throw over rod length: the one number that tells how far the motion is from a plain swing.',
    ...millimetres,
  },
  {
    of: 'rodRatio',
    formula: 'rodLength / stroke',
    say: 'The trade’s rod ratio is the same thing turned over, and halved.',
    ...millimetres,
  },
  {
    of: 'offset',
    formula: 'boreOffset - pinOffset',
    say: 'How far the pin’s line passes to the right of the crank’s axis: the bore’s offset less the pin’s.',
    ...millimetres,
  },
  {
    of: 'topAngle',
    formula: 'asin(offset / (rodLength + crankRadius))',
    say: 'At TDC rod and crank are one straight line, tilted by the offset.',
    units: { length: 'mm', angle: 'deg' },
  },
  {
    of: 'bottomAngle',
    formula: 'pi + asin(offset / (rodLength - crankRadius)) - topAngle',
    say: 'At BDC they lie one over the other. The downstroke is this long, in crank angle.',
    ...millimetres,
  },
  {
    of: 'topHeight',
    symbol: 'h_TDC',
    kind: 'length',
    formula: 'sqrt((rodLength + crankRadius)^2 - offset^2)',
    say: 'The pin’s height over the crank’s axis at TDC: rod and crank in one line are the long side of a right-angled triangle.',
    ...millimetres,
  },
  {
    of: 'bottomHeight',
    symbol: 'h_BDC',
    kind: 'length',
    formula: 'sqrt((rodLength - crankRadius)^2 - offset^2)',
    say: 'The same at BDC, where the long side is the rod less the throw.',
    ...millimetres,
  },
  {
    of: 'travel',
    formula: 'topHeight - bottomHeight',
    say: 'The piston travels from one height to the other.',
    ...millimetres,
  },
  {
    of: 'strokeGain',
    formula:
      'stroke * offset^2 / (topHeight + bottomHeight) * (1 / (rodLength + crankRadius + topHeight) + 1 / (rodLength - crankRadius + bottomHeight))',
    say: 'What the offset adds to the stroke, in a form that does not subtract two nearly equal lengths.',
    ...millimetres,
  },
  {
    of: 'meanSpeed',
    formula: 'travel * maxSpeed / pi',
    say: 'Two travels in each turn, spread over the time of the turn.',
    source: 'heywood-1988',
  },
  {
    of: 'crankpinAcceleration',
    symbol: 'a_r',
    kind: 'acceleration',
    formula: 'crankRadius * maxSpeed^2',
    say: 'The crankpin’s own acceleration: throw times speed squared. Everything below is a multiple of it.',
    source: exact,
  },
  {
    of: 'accelerationTop',
    formula: 'crankpinAcceleration * (1 + lambda) / cos(topAngle)',
    say: 'At TDC the swing of the rod adds its share to the crankpin’s acceleration.',
    source: exact,
  },
  {
    of: 'accelerationBottom',
    formula: 'crankpinAcceleration * (1 - lambda) / cos(bottomAngle + topAngle)',
    say: 'At BDC it takes its share away. The cosine is near −1 there, so the result points upward.',
    source: exact,
  },
  {
    of: 'boreLineAngle',
    symbol: 'ψ',
    kind: 'angle',
    formula: 'crankAngle + topAngle',
    say: 'The crank’s angle from the line of the bore at the chosen crank angle.',
    units: { angle: 'deg' },
  },
  {
    of: 'rodAngle',
    formula: 'asin((crankRadius * sin(boreLineAngle) - offset) / rodLength)',
    say: 'The rod must reach from the crankpin to the pin’s line: that sets its tilt.',
    source: exact,
    units: { length: 'mm', angle: 'deg' },
  },
  {
    of: 'displacement',
    formula:
      'crankRadius * (cos(topAngle) - cos(boreLineAngle)) + rodLength * (cos(topAngle) - cos(rodAngle))',
    say: 'The pin’s height at TDC less its height now. The site computes it in another form, which keeps its digits near TDC.',
    units: { length: 'mm', angle: 'deg' },
  },
  {
    of: 'pistonSpeed',
    formula: 'crankRadius * maxSpeed * (sin(boreLineAngle) + tan(rodAngle) * cos(boreLineAngle))',
    say: 'The crankpin’s speed along the bore, and what the tilted rod makes of its speed across.',
    source: exact,
  },
  {
    of: 'acceleration',
    formula:
      'crankpinAcceleration * (cos(boreLineAngle) - tan(rodAngle) * sin(boreLineAngle) + lambda * cos(boreLineAngle)^2 / cos(rodAngle)^3) + crankAcceleration * crankRadius * (sin(boreLineAngle) + tan(rodAngle) * cos(boreLineAngle))',
    say: 'The rate of that speed: from the turning at constant speed, and from the crank’s own speeding up.',
    source: exact,
  },
  {
    of: 'rodSpeed',
    formula: 'lambda * maxSpeed * cos(boreLineAngle) / cos(rodAngle)',
    say: 'How fast the rod swings.',
    source: exact,
  },
  {
    of: 'rodAcceleration',
    formula:
      'lambda * (crankAcceleration * cos(boreLineAngle) - maxSpeed^2 * sin(boreLineAngle)) / cos(rodAngle) + rodSpeed^2 * tan(rodAngle)',
    say: 'And how fast that swing changes.',
    source: exact,
  },
  {
    of: 'peakSpeed',
    tex: 'v_{\\text{max}} = v(\\theta_{\\text{v}}),\\quad a(\\theta_{\\text{v}}) = 0',
    say: 'The piston is fastest where its acceleration passes through zero. That angle is searched for.',
  },
  {
    of: 'greatestUpward',
    tex: 'a_{\\text{up}} = \\min_{\\theta} a(\\theta)',
    say: 'The lowest point of the exact acceleration over the turn, searched for. It stands at BDC only while λ is at most 0.2638.',
  },
  {
    of: 'halfStrokeAngle',
    tex: 'x(\\theta_{\\text{half}}) = S_{\\text{t}} / 2',
    say: 'The crank angle at which half of the travel is done, searched for.',
  },
  {
    of: 'secondary',
    tex: '{A}_{k} = \\frac{1}{\\pi} \\int_0^{2\\pi} \\frac{a}{r \\omega^2} \\cos k\\theta \\, d\\theta',
    say: 'The share of each order in the exact acceleration, without its sign. With an offset the sine part counts too.',
    source: 'taylor-1985',
  },
  {
    of: 'twoTermSpeed',
    formula: 'crankRadius * maxSpeed * (sin(crankAngle) + lambda / 2 * sin(2 * crankAngle))',
    say: 'The short series of the textbooks, without offset.',
    source: short,
  },
  {
    of: 'twoTermAcceleration',
    formula:
      'crankpinAcceleration * (cos(crankAngle) + lambda * cos(2 * crankAngle)) + crankAcceleration * crankRadius * (sin(crankAngle) + lambda / 2 * sin(2 * crankAngle))',
    say: 'Its acceleration: one part at crank speed, the secondary one at twice crank speed.',
    source: short,
  },
  {
    of: 'twoTermZeroAngle',
    formula: 'acos(2 * lambda / (1 + sqrt(1 + 8 * lambda^2)))',
    say: 'Where that acceleration is zero, and the speed by two terms greatest.',
    source: short,
    units: { angle: 'deg' },
  },
  {
    of: 'twoTermPeakSpeed',
    formula:
      'crankRadius * maxSpeed * (sin(twoTermZeroAngle) + lambda / 2 * sin(2 * twoTermZeroAngle))',
    say: 'The greatest speed by two terms.',
    source: short,
  },
  {
    of: 'pointAcross',
    symbol: 'v_X,ac',
    kind: 'speed',
    formula: 'crankRadius * maxSpeed * cos(boreLineAngle) - rodPoint * rodSpeed * cos(rodAngle)',
    say: 'Speed of the chosen point on the rod across the bore.',
    source: exact,
  },
  {
    of: 'pointAlong',
    symbol: 'v_X,al',
    kind: 'speed',
    formula: 'crankRadius * maxSpeed * sin(boreLineAngle) + rodPoint * rodSpeed * sin(rodAngle)',
    say: 'Its speed along the bore, downward.',
    source: exact,
  },
  {
    of: 'rodPointSpeed',
    formula: 'sqrt(pointAcross^2 + pointAlong^2)',
    say: 'Both together.',
  },
  {
    of: 'pointAcrossRate',
    symbol: 'a_X,ac',
    kind: 'acceleration',
    formula:
      'crankRadius * (crankAcceleration * cos(boreLineAngle) - maxSpeed^2 * sin(boreLineAngle)) - rodPoint * (rodAcceleration * cos(rodAngle) - rodSpeed^2 * sin(rodAngle))',
    say: 'The rate of the speed across: the crankpin’s, and what the swinging rod adds.',
    source: exact,
  },
  {
    of: 'pointAlongRate',
    symbol: 'a_X,al',
    kind: 'acceleration',
    formula:
      'crankRadius * (crankAcceleration * sin(boreLineAngle) + maxSpeed^2 * cos(boreLineAngle)) + rodPoint * (rodAcceleration * sin(rodAngle) + rodSpeed^2 * cos(rodAngle))',
    say: 'And of the speed along.',
    source: exact,
  },
  {
    of: 'rodPointAcceleration',
    formula: 'sqrt(pointAcrossRate^2 + pointAlongRate^2)',
    say: 'Both together.',
  },
];
