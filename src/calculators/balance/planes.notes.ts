import type { NotesOf } from '../quantity-notes.ts';
import type * as quantities from './planes.quantities.ts';

/** How the quantities of unbalance in two planes, and of what may be left are measured. */
export const notes: NotesOf<typeof quantities> = {
  planeA: {
    measure: 'Rule along the crank, from its middle.',
    note: 'Negative: towards the nose.',
  },
  planeB: {
    measure: 'Rule along the crank, from its middle.',
    note: 'Positive: towards the flywheel.',
  },
  balanceGrade: {
    measure:
      'Chosen. ISO 21940-11 lists grades by what the rotor is in, in steps of about 2.5 times.',
    note: 'The number is the grade: G 6.3 is 6.3 mm/s. The standard’s list is a place to begin, and no order.',
  },
  crankMass: { measure: 'Hanging scale, the crank clean, plugs and keys as balanced.' },
  bobweightsMass: {
    measure: 'Scale: all clamps complete, as they hang on the pins.',
    note: 'Zero for a crank that is balanced without bobweights.',
  },
  bearingSpan: {
    measure: 'Rule between the middles of the two main journals that the crank is borne on.',
    note: 'On the balancing machine and in the engine alike, where both use the end mains.',
  },
  cgToBearingA: {
    measure: 'Balance the crank with its bobweights on an edge; rule from bearing A.',
    note: 'Negative where it overhangs beyond A. Half of the distance of the bearings where nothing is known.',
  },
  residualA: {
    measure: 'Last spin on the balancing machine: what it reads in plane A.',
    note: 'Grams at a radius: multiply. 2 g at 75 mm are 150 g·mm.',
  },
  residualB: {
    measure: 'Last spin on the balancing machine: what it reads in plane B.',
    note: 'Plane B is the one at the flywheel.',
  },
  unbalanceFloor: {
    measure: 'Worked on the same page from mounting, register and bobweights.',
    note: 'Or from the shop’s own test: take the crank off, put it on again, and look how far the reading moves.',
  },
  mountingOffset: {
    measure:
      'Dial gauge on a main journal, turned slowly on the machine: half of the run-out it shows.',
    note: 'Assumed where it was not measured.',
  },
  flywheelMass: { measure: 'Scale, with its starter ring, without clutch and bolts.' },
  flywheelClearance: {
    measure: 'Bore of the flywheel less the register of the crank, both by micrometer.',
    note: 'Dowels that fit closer than the register count in its place.',
  },
  bobweightUnbalance: {
    measure: 'Worked on the same page from the error of every bobweight.',
    note: 'Zero for a crank that is balanced without bobweights.',
  },
  planeUnbalanceA: {
    measure: 'The balancing machine, of plane A, the one towards the nose.',
    note: 'Write the unit beside the number: 1 oz·in is 720 g·mm, 1 g·in is 25.4.',
  },
  planeAngleA: {
    measure:
      'From the machine’s reading, once it is settled what it points to, from where and which way it counts.',
    note: 'Seen from the nose, of plane A and of plane B alike.',
  },
  planeUnbalanceB: { measure: 'The balancing machine, of plane B, the one towards the flywheel.' },
  planeAngleB: { measure: 'As that of plane A: from throw 1, clockwise seen from the nose.' },
  newPlaneA: {
    measure: 'Rule along the crank, from its middle, to where metal can come off.',
    note: 'Negative: towards the nose.',
  },
  newPlaneB: {
    measure: 'Rule along the crank, from its middle.',
    note: 'A flange behind the last main stands outside the bearings; that is allowed.',
  },
  thirdUnbalance: {
    measure: 'A weight times its radius; of one pin, its mass times half the stroke.',
    note: 'With it, its heavy spot and its place are needed.',
  },
  thirdAngle: { measure: 'Degree disc, clockwise from throw 1 seen from the nose.' },
  thirdPlace: { measure: 'Rule along the crank, from its middle.' },
  fourthUnbalance: { measure: 'As the third.' },
  fourthAngle: { measure: 'Degree disc, clockwise from throw 1 seen from the nose.' },
  fourthPlace: { measure: 'Rule along the crank, from its middle.' },
  newBobweight: { measure: 'Worked on the page of the bobweight, from what was weighed.' },
  balancedBobweight: {
    measure: 'The balance card of the crank as it is, or its maker’s sheet.',
    note: 'A maker’s word is a target, often with a band of some per cent.',
  },
  takenAt: {
    measure: 'Chosen: where there is metal to take off, or room for more.',
    note: 'The machine reads the same for either.',
  },
  balancedWith: {
    measure: 'The maker’s sheet; or look at damper and flywheel: a weight on one side tells.',
    note: 'Write the choice on the balance card.',
  },
  swappedPart: { measure: 'Chosen: what is to be exchanged for a part of the other kind.' },
  damperUnbalance: {
    measure: 'The maker’s sheet; or the damper alone on a balancing machine, on its own arbor.',
  },
  damperAngle: {
    measure: 'Degree disc, the damper on its key: where its weight stands.',
    note: 'For a damper that is drilled out on one side, the heavy spot is opposite the holes.',
  },
  damperPlace: { measure: 'Rule along the crank, from its middle to the middle of the weight.' },
  flywheelUnbalance: {
    measure: 'The maker’s sheet; or the flywheel alone on a balancing machine, on its own arbor.',
  },
  flywheelAngle: { measure: 'Degree disc, the flywheel on its dowels: where its weight stands.' },
  flywheelPlace: { measure: 'Rule along the crank, from its middle to the middle of the weight.' },
};
