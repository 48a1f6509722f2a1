import type { Step } from '../define.ts';

/** The working of rotating-inertia: the parts, their sum, and what it costs on the bench and on the road. */
export const inertiaSteps: readonly Step[] = [
  {
    of: 'crankRadius',
    symbol: 'r',
    kind: 'length',
    formula: 'stroke / 2',
    say: 'The throw is half the stroke.',
  },
  {
    of: 'bigEndsPart',
    formula: 'cylinders * (bigEndMass + shellMass) * crankRadius^2',
    say: 'Each rod’s big end with its shells goes round with the crankpin.',
  },
  {
    of: 'reciprocating',
    symbol: 'm_rec',
    kind: 'mass',
    formula: 'pistonMass + pinMass + ringMass + lockMass + smallEndMass',
    say: 'What goes up and down in one cylinder.',
    units: { mass: 'g' },
  },
  {
    of: 'reciprocatingShare',
    tex: String.raw`q = \frac{1}{2\pi}\int_0^{2\pi}{\left(\frac{v}{r\omega}\right)}^2 d\theta`,
    say: 'The mean over a turn of piston speed over crankpin speed, squared: a little over one half.',
  },
  {
    of: 'reciprocatingPart',
    formula: 'cylinders * reciprocatingShare * reciprocating * crankRadius^2',
    say: 'With that share the mass going up and down counts at the throw.',
  },
  {
    of: 'flywheelMass',
    formula:
      'flywheelDensity * flywheelThickness * pi * (flywheelDiameter^2 - flywheelInside^2) / 4',
    say: 'Mass of the disc or ring, where dimensions are taken.',
  },
  {
    of: 'flywheelComputed',
    formula: 'flywheelMass * (flywheelDiameter^2 + flywheelInside^2) / 8',
    say: 'Its inertia about its axis.',
  },
  {
    of: 'flywheelPart',
    tex: String.raw`I_F = I_\mathrm{fw} \quad\text{or}\quad I_F = I_\mathrm{dim}`,
    say: 'The flywheel as chosen: its measured inertia, or the one from its dimensions.',
  },
  {
    of: 'totalInertia',
    formula:
      'crankInertia + bigEndsPart + reciprocatingPart + damperInertia + clutchInertia + flywheelPart',
    say: 'All that turns with the crank, added up.',
  },
  {
    of: 'wheelShare',
    formula: 'flywheelPart / totalInertia + clutchInertia / totalInertia',
    say: 'Flywheel and clutch beside the whole.',
  },
  {
    of: 'movingShare',
    formula: 'bigEndsPart / totalInertia + reciprocatingPart / totalInertia',
    say: 'Pistons, pins, rings and rods beside the whole.',
  },
  {
    of: 'riseTorque',
    formula: 'totalInertia * speedRise',
    say: 'Torque is inertia times the rate of rise in speed.',
    source: 'khurmi-gupta-2009',
  },
  {
    of: 'risePower',
    formula: 'riseTorque * speedTo',
    say: 'Power is that torque times the speed at which it is taken.',
  },
  {
    of: 'riseTime',
    formula: 'totalInertia * (speedTo - speedFrom) / netTorque',
    say: 'With the clutch open all the torque speeds up the engine: inertia times the rise over the torque.',
    source: 'khurmi-gupta-2009',
  },
  {
    of: 'energyHeld',
    formula: 'totalInertia * maxSpeed^2 / 2',
    say: 'Half the inertia times the speed squared.',
    source: 'khurmi-gupta-2009',
  },
  {
    of: 'energyHeight',
    formula: 'energyHeld / (1000 * 9.80665)',
    say: 'How high that would lift a car of 1000 kg.',
  },
  {
    of: 'roadFactor',
    symbol: 'k_road',
    kind: 'ratio',
    formula: '(gearRatio * finalDrive / tyreRadius)^2',
    say: 'Kilograms on the road for each kg·m² at the crank: ratio over rolling radius, squared.',
    source: 'bevan-2005',
  },
  {
    of: 'equivalentMass',
    formula: 'totalInertia * roadFactor',
    say: 'The engine’s inertia as mass on the road, without loss.',
    source: 'bevan-2005',
  },
  {
    of: 'movingRoad',
    formula: 'movingShare * equivalentMass',
    say: 'Of it, pistons, pins, rings and rods.',
  },
  {
    of: 'meanTorque',
    tex: String.raw`M_\mathrm{mean} = -\frac{1}{2\pi}\int_0^{2\pi} m_\mathrm{rec}\,\frac{v}{\omega}\,a\;d\theta = 0`,
    say: 'The inertia torque summed over 120 places of a turn, rounded to a part in 10¹² of its size.',
  },
];
