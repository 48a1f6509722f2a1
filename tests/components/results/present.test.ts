import { expect, test } from 'vitest';
import { apart } from '../../../src/components/results/present.ts';

test.each([
  ['5.36\u00a0m/s²', '5.36 ', 'm/s²'],
  ['−452.1 ± 1.9\u00a0g', '−452.1 ± 1.9 ', 'g'],
  ['+1\u202f280\u00a0rpm/s', '+1\u202f280 ', 'rpm/s'],
  ['0.6901', '0.6901', ''],
  ['—', '—', ''],
  ['nothing, since\u00a0both agree', 'nothing, since\u00a0both agree', ''],
])('%s is parted from its unit only', (text, digits, unit) => {
  expect(apart(text)).toEqual({ digits, unit });
});
