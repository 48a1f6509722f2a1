import type { NotesOf } from '../quantity-notes.ts';
import type * as quantities from './quantities.ts';

/** How the quantities of this subject are measured. */
export const notes: NotesOf<typeof quantities> = {
  ring1Height: {
    measure: "Micrometer on the ring's flanks, at three places.",
    note: 'Called the axial width h in ISO 6621.',
  },
  ring1Radial: {
    measure: 'Micrometer with a ball anvil, from the running face to the back, at three places.',
    note: 'Called the radial wall thickness a in ISO 6621.',
  },
  ring1Modulus: {
    measure:
      'From the maker, by material: about 100 GPa for grey iron, 160 for ductile iron, 206 for steel (common practice, no source).',
  },
  ring1Tension: {
    measure:
      'Ring-tension scale with a band of the bore size closed to the end gap, or the value of the maker.',
    note: 'Called F_t in ISO 6621.',
  },
  ring1FreeGap: {
    measure: 'Caliper between the ends of the relaxed ring, at the middle of the radial wall.',
    note: 'Called the total free gap m in ISO 6621. A ring that was spread too far has kept some of it.',
  },
  ring1Gap: {
    measure: 'Feeler, with the ring squared in its own bore.',
    note: 'Called the closed gap s in ISO 6621.',
  },
  ringOpening: {
    measure:
      'The stop of the ring expander, or a caliper on the gap while the ring passes the piston.',
    note: 'Eight to nine radial walls by hand, less with a tool (common practice, no source).',
  },
  ring2Height: { measure: "Micrometer on the ring's flanks, at three places." },
  ring2Radial: {
    measure: 'Micrometer with a ball anvil, from the running face to the back, at three places.',
  },
  ring2Modulus: { measure: 'From the maker, by material.' },
  ring2Tension: {
    measure: 'Ring-tension scale with a band of the bore size, or the value of the maker.',
  },
  ring2FreeGap: {
    measure: 'Caliper between the ends of the relaxed ring, at the middle of the radial wall.',
  },
  ring2Gap: { measure: 'Feeler, with the ring squared in its own bore.' },
  oilRingTension: {
    measure:
      'Ring-tension scale, the oil ring complete with its expander, or the value of the maker.',
    note: 'An expander presses an oil ring out, so its own bending says nothing about it.',
  },
  packDrag: {
    measure:
      'Spring scale, the ringed piston without its rod in the oiled bore, a slow steady pull.',
    note: 'It compares packs. It does not give the friction of a running engine.',
  },
  ringFriction: {
    measure: 'Assumed: a mean over the cycle. Not measured on a bench.',
    note: '0.02 to 0.12 by lubrication and speed; use it as a band.',
  },
  benchFriction: {
    measure: 'Worked out of a bench pull and the measured tensions, or assumed.',
    note: 'About 0.13 in an oiled bore at the speed of a hand (common practice, no source).',
  },
  ringSideClearance: {
    measure: 'Feeler between ring and groove all round, or groove gauge less ring width.',
    note: 'A ring thicker than its groove has none: it is refused.',
  },
  ringBackClearance: {
    measure: 'Groove depth less radial wall plus half the land’s clearance.',
  },
  topLandHeight: { measure: 'Caliper from the crown’s edge to the top groove.' },
  topLandClearance: { measure: 'Bore gauge and micrometer, cold.' },
  secondLandHeight: { measure: 'Caliper between the top and the second groove.' },
  secondLandClearance: { measure: 'Bore gauge and micrometer, cold.' },
  ringDensity: { measure: 'From the material.' },
  portCount: { measure: 'Count.', note: 'None is an answer too.' },
  portDiameter: {
    measure: 'Shank of the drill that just passes.',
    note: 'Has no effect where there are no ports.',
  },
  portPlugged: { measure: 'Supposed: how far carbon may have closed the holes.' },
  dischargeCoefficient: { measure: 'From the literature.' },
  faceFactor: {
    measure: 'From the profile of the face: the share of its width below the line of contact.',
  },
  flankFactor: {
    measure:
      'From where the flank seals: one at its inner edge, a half for a straight fall across it.',
  },
  ringTemperature: {
    measure: 'Assumed.',
    note: 'The gas behind the ring is taken to be as warm as the ring.',
  },
  ringExpansion: { measure: 'From the material.' },
  boreExpansion: { measure: 'From the material of bore or liner.' },
  boreTemperature: { measure: 'Probe in the wall, or assumed.' },
  upstreamPressure: { measure: 'Absolute pressure sensor.' },
  downstreamPressure: { measure: 'Absolute pressure sensor.' },
  gasTemperature: { measure: 'Thermometer in the still gas.' },
  heatRatio: { measure: 'From a gas table; 1.4 for cool air.' },
  gasConstant: { measure: 'From a gas table; 287 for air.' },
  orificeArea: { measure: 'A drilled hole has π/4 of its diameter squared.' },
  vesselVolume: { measure: 'Filled with a liquid and weighed, or calculated.' },
  pressureShare: { measure: 'Chosen.' },
  portKind: {
    measure:
      'Look into the piston’s crown and at the flank of the top groove: drilled holes, or half-round slots.',
  },
  ringSeat: {
    measure:
      'Chosen: free as in an engine. The other two show what the model does with the ring held.',
  },
};
