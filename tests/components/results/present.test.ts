import { describe, expect, test } from 'vitest';
import { angle, direction } from '../../../src/calculators/output.ts';
import { difference, ratio } from '../../../src/components/results/present.ts';

const degrees = (value: number): number => (value * Math.PI) / 180;
const pair = (baseline: number, candidate: number) => ({
  baseline: degrees(baseline),
  candidate: degrees(candidate),
});

describe('two directions', () => {
  const spot = direction('α', 'Heavy spot');
  test.each([
    [224, 0, '+136°'],
    [10, 350, '−20°'],
    [350, 10, '+20°'],
    [-170, 170, '−20°'],
    [30, 75, '+45°'],
    [0, 360, 'none'],
  ])('from %d° to %d° it is %s', (from, to, said) => {
    expect(difference(spot, pair(from, to), 'metric')).toBe(said);
  });

  test('none is a multiple of another, as a size is', () => {
    expect(ratio(spot, pair(100, 200))).toBeUndefined();
    expect(ratio(angle('θ', 'Angle of half stroke'), pair(100, 200))).toBe('2.00');
    expect(difference(angle('θ', 'Angle of half stroke'), pair(10, 350), 'metric')).toBe('+340°');
  });
});
