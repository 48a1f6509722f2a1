import { grams, is, length, mass, ratio, tex } from '../step.ts';

/** The working of rotating-inertia: the parts, their sum, and what it costs on the bench and on the road. */
export const inertiaSteps = {
  crankRadius: length('r', 'stroke / 2', 'The throw is half the stroke.'),
  bigEndsPart: is(
    'cylinders * (bigEndMass + shellMass) * crankRadius^2',
    'Each rod’s big end with its shells goes round with the crankpin.',
  ),
  reciprocating: mass(
    'm_rec',
    'pistonMass + pinMass + ringMass + lockMass + smallEndMass',
    'What goes up and down in one cylinder.',
    { units: grams },
  ),
  reciprocatingShare: is(
    tex(
      '\\q{reciprocatingShare} = \\frac{1}{2\\pi}\\int_0^{2\\pi}{\\left(\\frac{v}{\\q{crankRadius}\\,\\omega}\\right)}^2 d\\theta',
      'integral',
    ),
    'The mean over a turn of piston speed over crankpin speed, squared: a little over one half.',
  ),
  reciprocatingPart: is(
    'cylinders * reciprocatingShare * reciprocating * crankRadius^2',
    'With that share the mass going up and down counts at the throw.',
  ),
  throwInertia: is(
    '(crankInertia + bigEndsPart + reciprocatingPart) * rodsPerPin / cylinders',
    'The bare crank with all that hangs on its pins, shared among the throws.',
  ),
  flywheelMass: is(
    'flywheelDensity * flywheelThickness * pi * (flywheelDiameter^2 - flywheelInside^2) / 4',
    'Mass of the disc or ring, where dimensions are taken.',
  ),
  flywheelComputed: is(
    'flywheelMass * (flywheelDiameter^2 + flywheelInside^2) / 8',
    'Its inertia about its axis.',
  ),
  flywheelPart: is(
    'when(flywheelFrom == "measured", flywheelInertia, flywheelComputed)',
    'The flywheel as chosen: its measured inertia, or the one from its dimensions.',
  ),
  totalInertia: is(
    'crankInertia + bigEndsPart + reciprocatingPart + damperInertia + clutchInertia + flywheelPart',
    'All that turns with the crank, added up.',
  ),
  wheelShare: is(
    'flywheelPart / totalInertia + clutchInertia / totalInertia',
    'Flywheel and clutch beside the whole.',
  ),
  movingShare: is(
    'bigEndsPart / totalInertia + reciprocatingPart / totalInertia',
    'Pistons, pins, rings and rods beside the whole.',
  ),
  riseTorque: is('totalInertia * speedRise', 'Torque is inertia times the rate of rise in speed.', {
    source: 'khurmi-gupta-2009',
  }),
  risePower: is(
    'riseTorque * speedTo',
    'Power is that torque times the speed at which it is taken.',
  ),
  riseTime: is(
    'totalInertia * (speedTo - speedFrom) / netTorque',
    'With the clutch open all the torque speeds up the engine: inertia times the rise over the torque.',
    { source: 'khurmi-gupta-2009' },
  ),
  energyHeld: is('totalInertia * maxSpeed^2 / 2', 'Half the inertia times the speed squared.', {
    source: 'khurmi-gupta-2009',
  }),
  energyHeight: is('energyHeld / (1000 * 9.80665)', 'How high that would lift a car of 1000 kg.'),
  roadFactor: ratio(
    'k_road',
    '(gearRatio * finalDrive / tyreRadius)^2',
    'Kilograms on the road for each kg·m² at the crank: ratio over rolling radius, squared.',
    { source: 'bevan-2005' },
  ),
  equivalentMass: is(
    'totalInertia * roadFactor',
    'The engine’s inertia as mass on the road, without loss.',
    { source: 'bevan-2005' },
  ),
  flywheelRoad: is('flywheelPart * roadFactor', 'Of it, the flywheel.'),
  clutchRoad: is('clutchInertia * roadFactor', 'The clutch.'),
  crankRoad: is('crankInertia * roadFactor', 'The bare crank.'),
  damperRoad: is('damperInertia * roadFactor', 'The damper.'),
  movingRoad: is('movingShare * equivalentMass', 'And pistons, pins, rings and rods.'),
  meanTorque: is(
    tex(
      '\\q{meanTorque} = -\\frac{1}{2\\pi}\\int_0^{2\\pi} \\q{reciprocating}\\,\\frac{v}{\\omega}\\,a\\;d\\theta = 0',
      'integral',
    ),
    'The inertia torque summed over 120 places of a turn, rounded to a part in 10¹² of its size.',
  ),
};
