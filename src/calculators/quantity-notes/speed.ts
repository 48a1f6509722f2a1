import type * as quantities from '../quantities/speed.ts';
import type { NotesOf } from './note.ts';

export const speed: NotesOf<typeof quantities> = {
  maxSpeed: { measure: 'Chosen, then confirmed by the log.' },
  missedShiftSpeed: {
    measure:
      'The highest speed in the log of a missed shift, or an assumed margin above the highest intended speed.',
  },
  commonSpeed: { measure: 'Chosen: one speed at which both sets are compared.' },
  crankAngle: {
    measure:
      'Degree disc on the nose, zero set at true TDC with a dial indicator read on both sides of it.',
  },
  crankAcceleration: {
    measure: 'From the log: change of speed over time.',
    note: 'Zero at a steady speed.',
  },
  rodPoint: { measure: 'Caliper from the centre of the big end along the line to the small end.' },
  crankcasePressure: { measure: 'Absolute pressure sensor in the crankcase.' },
  overrunPressure: {
    measure:
      'Absolute pressure sensor in the cylinder or, near enough, in the manifold with the throttle shut.',
  },
  shankSection: { measure: 'Caliper from the centre of the small end along the beam.' },
  rodMassAbove: {
    measure:
      'From a model of the rod, or dip the small end in water up to the section and multiply the volume it displaces by the density of the rod.',
  },
};
