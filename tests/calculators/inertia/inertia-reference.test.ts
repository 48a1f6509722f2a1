import { test } from 'vitest';
import { routes as swingRoutes } from '../../../content/topics/inertia-by-swinging/routes.ts';
import { routes } from '../../../content/topics/rotating-inertia/routes.ts';
import { benchSwing } from '../../../src/calculators/inertia/bench-swing.ts';
import { rodSwing } from '../../../src/calculators/inertia/rod-swing.ts';
import { rotatingInertia } from '../../../src/calculators/inertia/rotating-inertia.ts';
import reference from '../../fixtures/rotating-inertia/reference.json' with { type: 'json' };
import { proves } from '../../proves.ts';
import { expectReference, within } from '../against.ts';

// First differences of the eighth order keep eleven digits; a saving is a difference of masses near 100 kg.
test(proves(routes.byEnergy), () => {
  const saved = ['Road', 'Flywheel', 'Clutch', 'Crank', 'Damper', 'Moving'];
  const size = within(
    1e-8,
    saved.map((name) => `saved${name}`),
  );
  expectReference(routes.byEnergy, rotatingInertia, reference['rotating-inertia'], {
    share: 1e-9,
    size,
  });
});

// Second differences of a height that is a small part of the arm keep about nine digits.
test(proves(swingRoutes.swingEnergy), () => {
  const near = { share: 1e-7 };
  expectReference(swingRoutes.swingEnergy, benchSwing, reference['bench-swing'], near);
  expectReference(swingRoutes.swingEnergy, rodSwing, reference['rod-swing'], near);
});
