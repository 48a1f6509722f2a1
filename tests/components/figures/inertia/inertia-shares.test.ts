import { describe, expect, test } from 'vitest';
import {
  inertiaParts,
  inertiaSegments,
} from '../../../../src/components/figures/inertia/inertia-shares.ts';
import { rotatingInertia } from '../../../../src/calculators/inertia/rotating-inertia.ts';

describe('the bar of an engine’s inertia', () => {
  test('its segments lie end to end, in order, and end at the sum', () => {
    const output = Object.fromEntries(inertiaParts.map((part, i) => [part.output, 10 * (i + 1)]));
    const segments = inertiaSegments({ input: {}, output, stale: false });
    expect(segments.map(({ from }) => from)).toEqual([0, 10, 30, 60, 100]);
    expect(segments.at(-1)?.to).toBe(150);
  });

  test('without a result there is nothing to draw', () => {
    const segments = inertiaSegments({ input: undefined, output: undefined, stale: false });
    expect(segments.every(({ value, to }) => value === 0 && to === 0)).toBe(true);
  });

  test('each part is an output of the calculator, with a name of its own', () => {
    for (const { output } of inertiaParts)
      expect(Object.keys(rotatingInertia.outputs)).toContain(output);
    expect(new Set(inertiaParts.map(({ label }) => label)).size).toBe(inertiaParts.length);
  });
});
