import type * as quantities from '../quantities/orifice.ts';
import type { NotesOf } from './note.ts';

export const orifice: NotesOf<typeof quantities> = {
  upstreamPressure: {
    measure: 'Absolute pressure sensor.',
  },
  downstreamPressure: {
    measure: 'Absolute pressure sensor.',
  },
  gasTemperature: {
    measure: 'Thermometer in the still gas.',
  },
  heatRatio: {
    measure: 'From a gas table; 1.4 for cool air.',
  },
  gasConstant: {
    measure: 'From a gas table; 287 for air.',
  },
  orificeArea: {
    measure: 'A drilled hole has π/4 of its diameter squared.',
  },
  vesselVolume: {
    measure: 'Filled with a liquid and weighed, or calculated.',
  },
  targetPressure: {
    measure: 'Chosen.',
  },
};
