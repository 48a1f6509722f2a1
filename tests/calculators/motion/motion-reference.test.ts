import { test } from 'vitest';
import { routes } from '../../../content/topics/piston-motion/routes.ts';
import { pistonMotion } from '../../../src/calculators/motion/piston-motion.ts';
import reference from '../../fixtures/piston-motion/reference.json' with { type: 'json' };
import { proves } from '../../proves.ts';
import { expectReference, within } from '../against.ts';

// Differences of the eighth order keep ten digits of a speed and nine of an acceleration; an extreme is flat, so
// that its place is worth three digits less. What may vanish is held to that part of its usual size.
test(proves(routes.fromHeightsAlone), () => {
  const angles = ['greatestUpwardAngle', 'greatestDownwardAngle', 'peakSpeedUpAngle', 'topAngle'];
  const size = {
    ...within(1e-6, angles),
    ...within(1e-15, ['displacement', 'strokeGain', 'travel']),
    pistonSpeed: 1e-8,
    acceleration: 1e-4,
    rodAngle: 1e-12,
    rodSpeed: 1e-7,
    rodAcceleration: 1e-3,
  };
  expectReference(routes.fromHeightsAlone, pistonMotion, reference['piston-motion'], {
    share: 1e-8,
    size,
  });
});
