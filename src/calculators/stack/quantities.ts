import { length, ratio } from '../quantity.ts';

/* What fits between the crank and the head. */

export const compressionRatio = ratio(
  'compressionRatio',
  'ε',
  'Compression ratio, geometric',
  [3, 8, 14.5, 25],
  { origin: 'part', demo: ['9.58', '12.13'], plusMinus: 0.1 },
);
export const pistonToHead = length(
  'pistonToHead',
  'c_ph',
  'Piston-to-head (squish) clearance, set cold',
  [-2, 0.75, 2, 15],
  { origin: 'part', demo: ['1.50 mm', '1.55 mm'], plusMinus: 0.04 },
);
