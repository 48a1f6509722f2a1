import { expect, test } from 'vitest';

// Node comes as a dependency; on an older one some packages would quietly behave otherwise.
test('runs on Node 24 or newer', () => {
  expect(Number(process.version.slice(1).split('.')[0])).toBeGreaterThanOrEqual(24);
});
