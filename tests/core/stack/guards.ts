import { cylinderVolume } from '../../../src/core/stack/cylinder-volume.ts';
import { guarded, type Tables } from '../guards.ts';

export const stack: Tables = {
  'stack/cylinder-volume.ts': [
    guarded({ bore: 0.09, stroke: 0.08, rodLength: 0.14, compressionRatio: 11 }, cylinderVolume, [
      ['bore', 'greater than', 0],
      ['stroke', 'greater than', 0],
      ['rodLength', 'greater than', 0.04, 'half the stroke'],
      ['compressionRatio', 'greater than', 1],
    ]),
  ],
};
