import { expect, test } from 'vitest';
import {
  drawnSlugs,
  halfAngle,
  outlinePath,
  radialPath,
  wallBetween,
} from '../../../../src/components/figures/balance/counterweight-slugs.ts';

const input = {
  slugDiameter: 0.02,
  slugLength: 0.018,
  slugRadius: 0.05,
  slugCount: 3,
  slugSpacing: 0.5,
  counterweightRadius: 0.07,
  counterweightWidth: 0.02,
  keepOutRadius: 0.03,
  slugInterference: 5e-5,
};
const output = {
  perSlug: 2e-3,
  left: 1e-3,
  pull: 3000,
  overPull: 3300,
  slugMass: 0.09,
  massGain: 0.05,
  rimWall: 0.01,
  rimStress: 2e7,
  warmInterference: 4e-5,
  besideWall: 0.0047,
};
const set = { input, output, stale: false };

function drawn(change: Partial<typeof input> = {}) {
  const slugs = drawnSlugs({ ...set, input: { ...input, ...change } });
  if (slugs === undefined) throw new Error('nothing is drawn');
  return slugs;
}

test('slugs stand about the middle, from left to right below the shaft', () => {
  expect(drawn().angles).toEqual([Math.PI + 0.5, Math.PI, Math.PI - 0.5]);
  expect(drawn({ slugCount: 1 }).angles).toEqual([Math.PI]);
});

test('a set without a number that the drawing needs has none', () => {
  expect(drawnSlugs({ input: undefined, output: undefined, stale: false })).toBeUndefined();
  expect(
    drawnSlugs({ ...set, output: { ...output, pull: { absent: 'no speed' } } }),
  ).toBeUndefined();
  const alone = drawnSlugs({ ...set, output: { ...output, besideWall: { absent: 'one' } } });
  expect(alone).toMatchObject({ besideWall: undefined, pull: 3000 });
});

test('the counterweight is as wide as its slugs ask for', () => {
  // 0.5 rad to the outermost, half a slug (0.2014 rad), and 0.2 for form.
  expect(halfAngle(drawn())).toBeCloseTo(0.5 + Math.asin(0.2) + 0.2, 12);
  expect(halfAngle(drawn({ slugCount: 1 }))).toBe(0.75);
  expect(outlinePath(drawn(), 1000)).toMatch(/^M54\.\d+ 43\.\d+A70 70 0 0 1 -54/);
});

test('strokes stand where the metal is', () => {
  expect(radialPath(Math.PI, 60, 70)).toBe('M0 60L0 70');
  const between = wallBetween(drawn({ slugCount: 2 }), 1000);
  // The chord of two centres less two half slugs: 2 · 50 · sin 0.25 − 20 = 4.74.
  expect(between).toMatchObject({ x: 0, y: 48.45, path: 'M-2.37 48.45L2.37 48.45' });
  expect(wallBetween(drawn({ slugCount: 1 }), 1000)).toBeUndefined();
});
