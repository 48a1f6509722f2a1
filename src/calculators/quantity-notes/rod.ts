import type * as quantities from '../quantities/rod.ts';
import type { NotesOf } from './note.ts';

export const rod: NotesOf<typeof quantities> = {
  shankHeight: {
    measure:
      'Caliper at the thinnest place of the shank. The height lies in the plane in which the crank turns, for an I and for an H alike.',
  },
  shankWidth: {
    measure: 'Caliper at the same place, across the plane in which the crank turns.',
  },
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
      'From the rod maker’s pull figure over that of the shank alone, or measured on a pull rig.',
  },
  pistonToHead: { measure: 'Deck clearance and gasket as pressed, at the lowest corner.' },
  peakAngle: { measure: 'From the pressure trace, or from the model of the cylinder pressure.' },
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
    measure: 'From the geometry and the finish. One for a polished shank with no step.',
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
};
