import type { NotesOf } from '../quantity-notes.ts';
import type * as quantities from './quantities.ts';

/** How the quantities of this subject are measured. */
export const notes: NotesOf<typeof quantities> = {
  rodMass: {
    measure: 'Scale: the whole rod with its bolts, without shells.',
    note: 'The two ends must add up to it within the repeatability of the fixture. A larger gap shows friction, a side pull or a wrong tare; it cannot show a support that is off centre.',
  },
  bigEndMass: {
    measure:
      'Big end on the scale, small end hung at the same height so that the rod lies level. Lift off and repeat; use the mean.',
  },
  smallEndMass: {
    measure:
      'Small end on the scale, big end hung at the same height so that the rod lies level. Lift off and repeat; use the mean.',
  },
  capMass: {
    measure: 'Scale: the cap with its share of the bolts and its half shell.',
    note: 'What lies beyond the parting line is what the bolts must hold.',
  },
  bigEndReadings: {
    measure: 'One reading for each lift of the big end, separated by semicolons.',
    note: 'Five lifts show the spread.',
  },
  smallEndReadings: {
    measure: 'One reading for each lift of the small end, separated by semicolons.',
    note: 'Five lifts show the spread.',
  },
  scaleResolution: { measure: 'Read it from the label of the scale.' },
  fixtureRepeat: {
    measure:
      'Lift the same rod off and put it back five times; the standard deviation of the readings.',
  },
  supportOffset: {
    measure:
      'Estimate how far the support touches from the centre of the eye; a knife edge or a ball bearing keeps it small.',
  },
  checkMass: {
    measure: 'The value on its certificate.',
    note: 'OIML R 111 class M1 allows 25 mg at 500 g.',
  },
  checkReading: {
    measure: 'Put the check mass on the scale before and after the parts, and note what it reads.',
  },
  batchMass: { measure: 'Scale, all the small parts of the batch at once.' },
  batchCount: { measure: 'Count.', note: 'Ten is usual for locks.' },
  shankHeight: {
    measure:
      'Caliper at the thinnest place of the beam. The height lies in the plane in which the crank turns, for an I and for an H alike.',
  },
  shankWidth: { measure: 'Caliper at the same place, across the plane in which the crank turns.' },
  flangeThickness: {
    measure: 'Caliper over one flange, at mid-width. Draft and fillets: take the mean.',
  },
  webThickness: { measure: 'Ball micrometer or caliper through the pocket.' },
  shankArea: {
    measure:
      'From the drawing, or from the rod maker. Leave it empty to have it worked from the four dimensions, without fillets.',
  },
  shankLength: {
    measure:
      'Caliper, from where the small end’s ring begins to where the big end’s shoulders begin.',
  },
  stretchFactor: {
    measure:
      'From the rod maker’s pull figure over that of the beam alone, or measured on a pull rig.',
  },
  youngsModulus: { measure: 'From the material table.' },
  rodDensity: { measure: 'From the material table.' },
  yieldStrength: {
    measure: 'From the material table or the maker’s certificate, at the temperature of the rod.',
  },
  rodExpansion: { measure: 'From the material table.' },
  rodTemperature: { measure: 'Assumed: near that of the oil.' },
  assemblyTemperature: {
    measure: 'Thermometer beside the parts, which have lain together long enough to agree.',
  },
  rodNotchFactor: {
    measure: 'From the geometry and the finish. One for a polished beam with no step.',
  },
  rodMargin: { measure: 'A choice: what the design code, the rule book or the maker asks for.' },
  stretchWanted: { measure: 'A choice: what the clearance to the head can spare.' },
  endFactor: {
    measure:
      'From how the ends are held: 1 where both ends turn freely, as a rod does in the plane of motion; 0.5 where both are held, as it nearly is across that plane; 2 where one is free.',
  },
  gyrationRadius: {
    measure:
      'Root of second moment over area, from the dimensions of the section. A quarter of the diameter for a round bar.',
  },
  rankineDivisor: {
    measure:
      'From the textbook: 7500 for mild steel, 9000 for wrought iron, 1600 for cast iron in textbooks.',
  },
  rodMaterial: {
    measure:
      'Read from the drawing or the order of the rod. A look at it does not tell steels apart.',
  },
  areaFrom: {
    measure: 'Chosen: as given where the area was measured or taken from a model with its fillets.',
  },
  shankShape: {
    measure:
      'Look at the beam from the end of the crankshaft: the flanges of an I lie at its left and right edges, those of an H face you.',
  },
};
