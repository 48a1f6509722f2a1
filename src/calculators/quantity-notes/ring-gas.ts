import type * as quantities from '../quantities/ring-gas.ts';
import type { NotesOf } from './note.ts';

export const ringGas: NotesOf<typeof quantities> = {
  ringSideClearance: {
    measure: 'Feeler between ring and groove all round, or groove gauge less ring height.',
    note: 'A ring thicker than its groove has none: it is refused.',
  },
  ringBackClearance: {
    measure: 'Groove depth less radial thickness plus half the land’s clearance.',
  },
  topLandHeight: {
    measure: 'Caliper from the crown’s edge to the top groove.',
  },
  topLandClearance: {
    measure: 'Bore gauge and micrometer, cold.',
  },
  secondLandHeight: {
    measure: 'Caliper between the top and the second groove.',
  },
  secondLandClearance: {
    measure: 'Bore gauge and micrometer, cold.',
  },
  ringDensity: {
    measure: 'From the material.',
  },
  portCount: {
    measure: 'Count.',
    note: 'None is an answer too.',
  },
  portDiameter: {
    measure: 'Shank of the drill that just passes.',
    note: 'Has no effect where there are no ports.',
  },
  portPlugged: {
    measure: 'Supposed: how far carbon may have closed the holes.',
  },
  dischargeCoefficient: {
    measure: 'From the literature.',
  },
  faceFactor: {
    measure: 'From the profile of the face: the share of its height below the line of contact.',
  },
  flankFactor: {
    measure:
      'From where the flank seals: one at its inner edge, a half for a straight fall across it.',
  },
  ringTemperature: {
    measure: 'Assumed.',
    note: 'The gas behind the ring is taken to be as warm as the ring.',
  },
  ringExpansion: {
    measure: 'From the material.',
  },
  boreExpansion: {
    measure: 'From the material of bore or liner.',
  },
  boreTemperature: {
    measure: 'Probe in the wall, or assumed.',
  },
};
