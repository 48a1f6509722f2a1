import { describe, expect, it } from 'vitest';
import { holeConductance } from '../../../src/core/rings/ring-flows.ts';
import { ringNetwork } from '../../../src/core/rings/ring-gas.ts';
import { seatLeak } from '../../../src/core/rings/ring-pack.ts';
import { startState } from '../../../src/core/rings/ring-state.ts';
import { packOf } from './hill.ts';

describe('the door at the end gap', () => {
  // No other path is open: no ports, no flanks, no gap past the face, none at the second ring.
  const pack = { ...packOf({ portCount: 0 }), girth: 0, gapArea: 0, exitArea: 0 };

  it('is as high as the seat leaks and the ring has risen together', () => {
    const [behind, land, seconds] = [20e5, 12e5, 1e-5];
    const network = ringNetwork(pack, 1e5, 'free');
    for (const lift of [0, 4e-6, 20e-6]) {
      const to = startState(0, 0);
      network.open(30e5, behind, land);
      network.fill(startState(behind, land, lift), 30e5, lift, seconds, to);
      const area = pack.gapDoor * (seatLeak + lift);
      const flow = holeConductance(area, behind, land, pack.rt) * (to.behind - to.land);
      // What one volume loses, and what the other gains.
      expect(((behind - to.behind) * pack.behindVolume) / pack.rt / seconds / flow).toBeCloseTo(
        1,
        9,
      );
      expect(((to.land - land) * pack.landVolume) / pack.rt / seconds / flow).toBeCloseTo(1, 9);
    }
  });
});
