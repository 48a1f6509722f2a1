import { test } from 'vitest';
import { routes } from '../../../content/topics/gas-port/routes.ts';
import { gasPort } from '../../../src/calculators/rings/gas-port.ts';
import { orificeFlow } from '../../../src/calculators/rings/orifice-flow.ts';
import reference from '../../fixtures/gas-port/reference.json' with { type: 'json' };
import { proves } from '../../proves.ts';
import { expectReference, within } from '../against.ts';

// Both solvers keep three digits of a pressure. A lag is held to a thousandth of a degree and the place of a
// shortfall, which is flat there, to a twentieth; loads that nearly cancel in a slow engine to 1 mbar. Not held: the
// mean load of the intake stroke, which nearly cancels in all.
test(proves(routes.wholeEngines), () => {
  const lags = ['lag', 'lagUnported', 'lagPlugged', 'shutLag', 'shutLagUnported', 'shutLagPlugged'];
  const size = {
    ...within(2e-5, lags),
    ...within(100, ['leastGas', 'gasCompression', 'gasExhaust']),
    shortfallAngle: 1e-3,
  };
  expectReference(routes.wholeEngines, gasPort, reference['gas-port'], { share: 3e-3, size });
});

// Rounding of double numbers.
test(proves(routes.smallPieces), () => {
  const near = { share: 1e-12 };
  expectReference(routes.smallPieces, gasPort, reference['gas-port'], near);
  expectReference(routes.smallPieces, orificeFlow, reference['orifice-flow'], near);
});
