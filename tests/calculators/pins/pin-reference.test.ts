import { test } from 'vitest';
import { routes } from '../../../content/topics/wrist-pin/routes.ts';
import { wristPin } from '../../../src/calculators/pins/wrist-pin.ts';
import reference from '../../fixtures/wrist-pin/reference.json' with { type: 'json' };
import { proves } from '../../proves.ts';
import { expectReference } from '../against.ts';

// Two thousand strips of a load that falls evenly leave 1 part in 10⁷ of a moment, a bore searched by it as much.
test(proves(routes.smallPieces), () => {
  expectReference(routes.smallPieces, wristPin, reference['wrist-pin'], { share: 1e-6 });
});
