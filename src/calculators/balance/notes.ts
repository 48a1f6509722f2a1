import type { NotesOf } from '../quantity-notes.ts';
import type * as quantities from './quantities.ts';

/** How the quantities of this subject are measured. */
export const notes: NotesOf<typeof quantities> = {
  pistonMass: {
    measure: 'Scale. Bare: no pin, rings or locks, clean and dry.',
    note: 'Check the scale with a known mass first, and weigh twice.',
  },
  pinMass: { measure: 'Scale, clean and dry.' },
  ringMass: { measure: 'Scale, all rings of one piston together.' },
  lockMass: {
    measure: 'Weigh ten locks and divide; enter the pair.',
    note: 'Zero for a pin that is pressed into the rod.',
  },
  shellMass: { measure: 'Scale, both shells of one rod together.' },
  oilMass: {
    measure: 'Assumed. The volume of the drilling times 0.86 g/cm³ shows the size.',
    note: 'Write on the card that it was assumed.',
  },
  rodsPerPin: {
    measure: 'Count.',
    note: 'Two on most V engines, one on an in-line engine or on each half of a split pin.',
  },
  reciprocatingFraction: {
    measure: 'Chosen: it follows from the layout, or from a decision to move the shake.',
    note: 'In per cent of the reciprocating mass. 50 % for two rods on a common pin at 90°.',
  },
  partnerRotating: {
    measure:
      'Big end, shells and their share weighed for both rods of the pin; the second less the first.',
  },
  partnerReciprocating: {
    measure:
      'Piston, pin, rings, locks and small end weighed for both rods of the pin; the second less the first.',
  },
  bobweight: { measure: 'Scale, the clamp complete with its shims, screws and added weights.' },
  bobweightError: { measure: 'Weigh the clamp and subtract the wanted bobweight.' },
  rotatingMass: {
    measure: 'Sum of the weighed parts that rotate with one crankpin: big ends, shells, oil.',
  },
  reciprocatingMass: {
    measure:
      'Sum of the weighed parts that reciprocate with one piston: piston, pin, rings, locks, small end.',
  },
  balanceRadius: {
    measure: 'Rule or caliper from the surface of a main journal, plus half the journal.',
  },
  planeA: {
    measure: 'Rule along the crank, from its middle.',
    note: 'Negative: towards the nose.',
  },
  planeB: {
    measure: 'Rule along the crank, from its middle.',
    note: 'Positive: towards the flywheel.',
  },
  cylinderSpacing: {
    measure: 'Caliper over the outer edges of two neighbouring bores, less the mean of both bores.',
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
  bankAngle: { measure: 'From the drawing, or a digital level on each deck.' },
  pistonMasses: {
    measure: 'Scale: every piston bare, clean and dry. Mark each with its place in the list.',
    note: 'All on one day and one scale, separated by semicolons. What is compared is the difference.',
  },
  pinMasses: {
    measure: 'Scale: every wrist pin, marked with its place in the list.',
    note: 'Leave the list empty where pins stay with their pistons, and weigh both together.',
  },
  smallEndMasses: {
    measure: 'Small end of every rod on the scale, the rod level, each lifted off and repeated.',
    note: 'The mean of the repeats. A rod keeps its cap, so it has one place in both of its lists.',
  },
  ringMasses: {
    measure: 'Scale: the rings of one piston together, with the pair of locks of its pin.',
    note: 'Only if lots are to be exchanged: file the gaps first, since a ring belongs to its bore from then on.',
  },
  bigEndMasses: {
    measure: 'Big end of every rod on the scale, in the same order as the small ends.',
    note: 'Bolts in, bearing shells out.',
  },
  targetSpread: {
    measure: 'Chosen: how far the heaviest set may be above the lightest.',
    note: 'Finer than the scale repeats is a number on paper.',
  },
  cutArea: {
    measure:
      'From the drawing or a caliper: the face or the pad that the part’s maker leaves for it.',
    note: 'Straight walls are assumed. For a drill it is the area of its hole.',
  },
  cutDensity: {
    measure: 'Data sheet of the alloy: about 2.7 g/cm³ for aluminium, 7.85 for steel.',
  },
  partBanks: {
    measure:
      'Chosen, from the parts: offset pins, valve reliefs or a chamfer on one side tell left from right.',
    note: 'Pins and rings fit either bank.',
  },
  balanceShafts: {
    measure:
      'Look for a geared shaft beside the crank: how many, how fast, and which way each turns.',
    note: 'Each is taken to carry just what it is for.',
  },
  crankLayout: {
    measure:
      'Count the cylinders, look at the crank from its front end, and take the row whose throws stand as these do.',
    note: 'Where none does, the last entry is an own layout, written throw by throw.',
  },
  unbalanceRead: {
    measure: 'The balancing machine, of the plane that this counterweight stands in.',
    note: 'Write the unit beside the number: 1 oz·in is 720 g·mm, 1 g·in is 25.4.',
  },
  unbalanceAngle: {
    measure: 'The balancing machine, as it shows it; nothing added, nothing turned round.',
  },
  angleOrigin: {
    measure:
      'Turn the crank until the machine shows zero. Enter how far clockwise from throw 1 its mark then stands, seen from the nose.',
    note: 'Zero where the machine’s mark was set at throw 1. For a keyway the angle stands on the crank’s drawing.',
  },
  heavyAngle: { measure: 'From the reading above, once the three choices are settled.' },
  secondUnbalance: {
    measure: 'The balancing machine, same plane, same bobweights, after drilling and washing.',
  },
  secondAngle: { measure: 'The balancing machine, as it shows it.' },
  askedUnbalance: {
    measure: 'From the plan of the holes: what all of them were to take.',
    note: 'Leave it empty if they were to take all of the first reading.',
  },
  askedAngle: { measure: 'From the plan of the holes: their middle.' },
  counterweightRadius: {
    measure: 'Caliper from the main journal to the rim, plus half the journal.',
  },
  counterweightWidth: {
    measure: 'Caliper, where the holes are to go: many counterweights are tapered.',
  },
  counterweightAngle: {
    measure:
      'Degree disc, or the drawing; for one opposite its own throw, that throw’s angle plus 180°.',
  },
  holeDiameter: { measure: 'Shank of the drill. The nearest drill of the list is taken.' },
  holeCount: { measure: 'Chosen.' },
  holeSpacing: {
    measure:
      'Chosen. The chord at the rim is about the radius times the angle in degrees over 57.3.',
  },
  holeAngleLimit: {
    measure: 'Protractor: how far the full width of the rim runs, less half a hole.',
  },
  depthLimit: {
    measure: 'The crank’s maker; without a word from there, ask before drilling.',
    note: 'Counted to the full diameter, not to the tip.',
  },
  keepOutRadius: {
    measure:
      'Half the largest journal, its fillet, and whatever oil way or hollow lies outside it; from the drawing.',
  },
  holeWall: { measure: 'The crank’s maker; else chosen.' },
  pointAngle: { measure: 'Drill gauge. Usual drills have 118° or 135°; a flat cutter has 180°.' },
  axialHoleRadius: { measure: 'Rule from the main journal, plus half the journal.' },
  steelDensity: {
    measure:
      'Data sheet of the metal: about 7.85 g/cm³ for forged steel, 7.1 to 7.3 for cast iron with nodular graphite.',
  },
  readingNames: {
    measure:
      'The machine’s manual; or stick a lump of clay on a balanced crank and see where it points.',
    note: 'The wrong choice doubles the unbalance.',
  },
  angleSense: {
    measure:
      'The machine’s manual; or move the lump a quarter turn with the rotation and see whether the angle grows.',
  },
  crankTurns: {
    measure: 'Look at the nose while the machine runs slowly, the hood closed.',
    note: 'A machine may turn a crank the other way than its engine does.',
  },
  drillList: { measure: 'What is in the drawer.' },
  holeKind: { measure: 'As the counterweight can be reached, and as its maker allows.' },
  addedUnbalance: {
    measure:
      'The balancing machine, or what a heavier bobweight asks of this plane. Added at the light spot, opposite the heavy one.',
    note: 'Write the unit beside the number: 1 oz·in is 720 g·mm, 1 g·in is 25.4.',
  },
  slugClass: {
    measure: 'The alloy’s certificate names the class.',
    note: 'Without one the density is not known: weigh the slug, and divide by its volume.',
  },
  slugDensity: {
    measure: 'Certificate; or the slug’s mass over its volume.',
    note: 'Left empty, the middle of the class’s range is taken.',
  },
  slugDiameter: { measure: 'Micrometer.' },
  slugLength: {
    measure: 'Caliper, as it sits in the hole: a seat or a gap under the slug is not part of it.',
  },
  slugRadius: {
    measure: 'Rule from the main journal to the slug’s middle, plus half the journal.',
  },
  slugCount: { measure: 'Chosen, for one counterweight.' },
  slugSpacing: {
    measure:
      'Chosen. The distance of two centres is twice the radius times the sine of half of it.',
  },
  slugInterference: {
    measure:
      'Micrometer over the slug less bore gauge in the reamed or honed hole, both at one temperature.',
    note: 'Each in three places and two directions; the least difference counts.',
  },
  slugModulus: {
    measure: 'Data sheet of the alloy: about 270 GPa for class 1, 340 to 365 for classes 3 and 4.',
  },
  slugExpansion: { measure: 'Data sheet of the alloy: 4.5 to 5.6 ppm/K; steel has 11 to 12.5.' },
  counterweightModulus: {
    measure: 'Data sheet: about 207 GPa for steel, 165 to 175 for cast iron with nodular graphite.',
  },
  counterweightTemperature: { measure: 'Assumed. The oil that is thrown about it is as warm.' },
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
