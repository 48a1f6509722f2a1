import { test } from 'vitest';
import { routes } from '../../../content/topics/ring-tension/routes.ts';
import { ringPack } from '../../../src/calculators/rings/ring-pack.ts';
import { ringSecond } from '../../../src/calculators/rings/ring-second.ts';
import { ringTension } from '../../../src/calculators/rings/ring-tension.ts';
import reference from '../../fixtures/ring-tension/reference.json' with { type: 'json' };
import { proves } from '../../proves.ts';
import { expectReference } from '../against.ts';

// Sums are good to a part in 10¹⁰, two second differences one in the other to a part in 10⁸ of a waviness. The
// site lays out the free line to a millionth of the radius, which is 60 nm at most.
test(proves(routes.sectionBySection), () => {
  const near = {
    share: 1e-9,
    size: { followedGap: 1e-7, followedOval: 1e-12, followedFour: 1e-12 },
  };
  expectReference(routes.sectionBySection, ringTension, reference['ring-tension'], near);
  expectReference(routes.sectionBySection, ringSecond, reference['ring-second'], near);
  expectReference(routes.sectionBySection, ringPack, reference['ring-pack'], near);
});
