import type { NotesOf } from '../quantity-notes.ts';
import type * as quantities from './quantities.ts';

/** How the quantities of this subject are measured. */
export const notes: NotesOf<typeof quantities> = {
  cylinders: { measure: 'Count them. All are taken as alike.' },
  crankInertia: {
    measure:
      'Bifilar or trifilar swing, or a maker’s figure. Bare: no damper, no flywheel, plugs in.',
    note: 'The part hangs with the axis it will turn about upright, midway between the wires.',
  },
  damperInertia: {
    measure:
      'Swing the whole damper, ring and hub. The ring turns with the hub but for its small twist.',
  },
  clutchInertia: {
    measure:
      'Swing cover and plates together. With the clutch closed the gearbox input turns too: add it here.',
  },
  flywheelInertia: { measure: 'Swing it on three wires, starter ring fitted.' },
  flywheelDiameter: { measure: 'Rule or caliper across the wheel, without the starter ring.' },
  flywheelInside: { measure: 'Caliper. Zero for a plain disc; the hole of a ring.' },
  flywheelThickness: {
    measure: 'Caliper at several radii; weigh the outer ones more, since they count more.',
  },
  flywheelDensity: {
    measure:
      'From a table for its metal: steel 7.85, grey iron 7.2, aluminium 2.7 g/cm³. Or mass over volume.',
  },
  speedRise: {
    measure: 'From a logged run: the slope of engine speed over time in the gear of interest.',
  },
  speedFrom: { measure: 'From the log: the speed a gear change drops to.' },
  speedTo: { measure: 'From the log: the speed at which the next change is made.' },
  netTorque: {
    measure: 'Engine stand or dynamometer at steady speed, near the middle of the range.',
  },
  gearRatio: { measure: 'Count the teeth.' },
  finalDrive: { measure: 'Count the teeth.' },
  tyreRadius: {
    measure: 'Roll the loaded car through ten turns of a wheel and divide the distance by 20π.',
  },
  wheelInertia: {
    measure:
      'Swing one on three wires, or take 0.8 of its mass times its radius squared as a first guess.',
  },
  carMass: { measure: 'Corner scales, driver and fuel aboard.' },
  drivelineEfficiency: { measure: 'From the literature: 0.86 to 0.96. Rarely measured.' },
  engineInertia: {
    measure:
      'The sum that the first calculator of the rotating-inertia page gives, or a maker’s figure.',
  },
  energySwing: {
    measure:
      'Area between the turning-moment curve and its mean, from its greatest shortage to its greatest surplus.',
    note: '60 J is an assumed value for the example at idle, about one cylinder’s work.',
  },
  meanSpeed: { measure: 'From the log, or the idle speed that was set.' },
  swingMass: { measure: 'Scale. Weigh exactly what hangs on the wires, without the platform.' },
  swingCount: {
    measure:
      'Count whole swings, to and fro, starting with zero at the first passage through the middle.',
    note: 'Twenty or more, and no further than 10° to either side.',
  },
  swingTime: {
    measure:
      'Stop-watch, at the passage through the middle, where the part is fastest. Three tries or more; enter their mean.',
  },
  swingSpacing: {
    measure:
      'Caliper, from wire to wire through the axis, and half of that. On a knife edge: from the edge to the centre of gravity, found by balancing the part.',
  },
  swingWire: { measure: 'Tape, between the two points that hold one wire.' },
  platformMass: { measure: 'Scale, the wire clamps included.' },
  platformTime: { measure: 'Stop-watch, as with the part, as many swings.' },
  edgeDistance: {
    measure:
      'Caliper: from the highest point inside the small-end bore to the farthest point inside the big-end bore.',
  },
  smallEndTime: {
    measure: 'Stop-watch over all swings, the rod hung on a knife edge in the small-end bore.',
  },
  bigEndTime: { measure: 'The same, turned over, hung in the big-end bore.' },
  rodSwingCount: { measure: 'Count whole swings, as many from each end.' },
  flywheelFrom: {
    measure:
      'Chosen: a swing on the bench where there was one, the dimensions of the disc or ring otherwise.',
  },
  swingRig: {
    measure: 'Chosen by how the part hangs while its swings are timed.',
  },
};
