import { crankOverlap } from '../../core/bearings/crank-overlap.ts';
import { dragRatio, journalLoad, surfaceSpeed } from '../../core/bearings/journal-sizes.ts';
import { atLeast } from '../../core/refuse.ts';
import { defineCalculator } from '../define.ts';
import {
  bearingLoad,
  bigEndMass,
  commonSpeed,
  crankpinDiameter,
  mainDiameter,
  maxSpeed,
  rodShellWidth,
  shellMass,
  stroke,
} from '../quantities.ts';
import { contactPressure, length, mass, ratio, smallArea, speed } from '../output.ts';
import { grams, is, millimetres } from '../step.ts';

/** Two crankpin sizes beside each other: speed, area, load, overlap, mass. */
export const journalSizes = defineCalculator({
  id: 'journal-sizes',
  title: 'Journal sizes',
  purpose:
    'What a crankpin of another size changes: surface speed, area, unit load, overlap, mass.',
  asks: ['crankpinDiameter', 'mainDiameter', 'stroke', 'rodShellWidth', 'bearingLoad', 'maxSpeed'],
  answers: ['pinSpeed', 'pinSpeedCommon', 'mainSpeed', 'unitLoad', 'overlap', 'bigEnd'],
  inputs: {
    crankpinDiameter,
    mainDiameter,
    stroke,
    rodShellWidth,
    bearingLoad,
    bigEndMass,
    shellMass,
    maxSpeed,
    commonSpeed,
  },
  outputs: {
    pinSpeed: speed('u_p', 'Surface speed of the crankpin', {
      phrase: 'At each set’s own highest speed the surface speed of the crankpin',
      main: true,
    }),
    pinSpeedCommon: speed('u_p,com', 'Surface speed of the crankpin at the common speed', {
      phrase: 'At the common speed it',
    }),
    mainSpeed: speed('u_m', 'Surface speed of the main journal'),
    projectedArea: smallArea('A_b', 'Projected area of the rod bearing'),
    unitLoad: contactPressure('p_b', 'Load over projected area', {
      phrase: 'The load over the projected area',
    }),
    overlap: length('o', 'Overlap with the main journal', { phrase: 'The overlap' }),
    bigEnd: mass('m_rot', 'Big end with its bearing pair', {
      phrase: 'The big end with its bearing pair',
    }),
  },
  compute: (input) => {
    const own = atLeast(input, 'maxSpeed');
    const common = atLeast(input, 'commonSpeed');
    const { overlap } = crankOverlap(input);
    return {
      pinSpeed: surfaceSpeed(input.crankpinDiameter, own),
      pinSpeedCommon: surfaceSpeed(input.crankpinDiameter, common),
      mainSpeed: surfaceSpeed(input.mainDiameter, own),
      ...journalLoad(input),
      overlap,
      bigEnd: atLeast(input, 'bigEndMass') + atLeast(input, 'shellMass'),
    };
  },
  comparisons: {
    drag: ratio('r_drag', 'Viscous drag, candidate over baseline, at one speed', {
      phrase:
        'At one speed, one width and one clearance the candidate’s viscous drag over the baseline’s',
    }),
    area: ratio('r_A', 'Projected area, candidate over baseline'),
  },
  compare: ({ baseline, candidate }) => ({
    drag: dragRatio(candidate.input.crankpinDiameter, baseline.input.crankpinDiameter),
    area: candidate.output.projectedArea / baseline.output.projectedArea,
  }),
  steps: {
    pinSpeed: is('crankpinDiameter / 2 * maxSpeed', 'Half the diameter times the angular speed.'),
    pinSpeedCommon: is(
      'crankpinDiameter / 2 * commonSpeed',
      'The same with both sets at one speed.',
    ),
    mainSpeed: is('mainDiameter / 2 * maxSpeed', 'The main journal turns as fast and is larger.'),
    projectedArea: is(
      'crankpinDiameter * rodShellWidth',
      'The projected area of the bearing: diameter times width.',
      { units: millimetres },
    ),
    unitLoad: is(
      'bearingLoad / projectedArea',
      'A mean over that area. The film’s own pressure is many times greater in one spot.',
      {
        units: { force: 'N', area: 'mm2', pressure: 'MPa' },
        source: 'khurmi-gupta-machine-design-2005',
      },
    ),
    overlap: is(
      '(mainDiameter + crankpinDiameter - stroke) / 2',
      'What the two journals share, seen along the shaft.',
      { units: millimetres, source: 'iacs-m53' },
    ),
    bigEnd: is(
      'bigEndMass + shellMass',
      'What goes round on this pin for one rod, from the weighing.',
      { units: grams },
    ),
  },
  limits: [
    {
      id: 'gap',
      holds: (_, { overlap }) => overlap >= 0,
      say: 'Pin and main journal do not overlap: the web alone joins them, and must be made for it.',
    },
    {
      id: 'load',
      holds: (_, { unitLoad }) => unitLoad <= 51.7e6,
      say: 'The mean load is above 51.7 MPa (7500 psi), which a handbook gives as the end of lead-bronze and tin-aluminium linings in small engines. Ask the shell maker for the lining’s own limit.',
    },
  ],
  validity: [
    {
      id: 'diameter',
      label: 'Crankpin diameter',
      symbol: 'D_p',
      kind: 'length',
      of: ({ crankpinDiameter }) => crankpinDiameter,
      possible: [0.01, 0.25],
    },
  ],
  assumptions: [
    'Surface speed, area and overlap are exact geometry.',
    'The load is the number in the form: here the pull on the crankpin at overlap TDC. Gas load, oil film and the bending of rod and pin are not in it.',
    'The mean over the projected area takes the shell’s full width. Grooves, chamfers and oil holes come off.',
    'Drag as the cube of the diameter holds for one speed, width, oil viscosity and clearance (Petroff). Where the clearance shrinks with the journal it is the square. A hotter or cooler film changes it as much.',
  ],
  cautions: ['journal', 'bearing'],
  sources: ['iacs-m53', 'khurmi-gupta-machine-design-2005', 'neale-tribology-handbook'],
  sweep: { input: 'crankpinDiameter', output: 'unitLoad' },
  solve: { input: 'crankpinDiameter', output: 'unitLoad' },
  exercise: {
    ask: 'unitLoad',
    tolerance: 0.01,
    given: { crankpinDiameter: 0.12, rodShellWidth: 0.12, bearingLoad: 0.2 },
    also: [
      { kind: 'number', ask: 'pinSpeed', given: { crankpinDiameter: 0.12, maxSpeed: 0.15 } },
      { kind: 'choice', ask: 'pinSpeed', given: { crankpinDiameter: 0.12, maxSpeed: 0.15 } },
    ],
  },
});
