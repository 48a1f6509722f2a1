import { describe, expect, test } from 'vitest';
import { sections } from '../../../../src/components/figures/loads/load-speed.ts';
import { cuts, hangs, parts, room } from '../../../../src/components/figures/loads/rod-cuts.ts';

const hanging = (chosen: keyof typeof cuts): number =>
  parts.filter((part) => hangs(part, chosen)).length;

describe('the rod and where it is cut', () => {
  test('the further down it is cut, the more hangs on it; the crankpin’s own metal never does', () => {
    // Piston; pin; beam above the cut; rod to the joint; cap.
    expect(sections.map(({ id }) => hanging(id))).toEqual([1, 2, 3, 4, 5]);
    expect(parts).toHaveLength(6);
  });

  test('the cuts follow each other downward, inside the sketch', () => {
    const heights = sections.map(({ id }) => cuts[id].end[1]);
    expect(heights).toEqual([...heights].sort((a, b) => a - b));
    for (const [x, y] of sections.map(({ id }) => cuts[id].end)) {
      expect(x).toBeLessThan(room.width);
      expect(y).toBeLessThan(room.height);
    }
  });
});
