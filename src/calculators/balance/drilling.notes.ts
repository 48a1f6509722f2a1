import type { NotesOf } from '../quantity-notes.ts';
import type * as quantities from './drilling.quantities.ts';

/** How the quantities of a reading and of the holes and slugs that answer it are measured. */
export const notes: NotesOf<typeof quantities> = {
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
};
