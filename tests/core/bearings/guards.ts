import { bearingState, computedClearance } from '../../../src/core/bearings/bearing-clearance.ts';
import {
  checkingLoad,
  compliance,
  interference,
  interferenceAt,
  looseTemperature,
} from '../../../src/core/bearings/bearing-fit.ts';
import { crankOverlap } from '../../../src/core/bearings/crank-overlap.ts';
import { toleranceStep, toleranceUnit } from '../../../src/core/bearings/iso-fit.ts';
import { dragRatio, journalLoad } from '../../../src/core/bearings/journal-sizes.ts';
import { guarded, type Tables } from '../guards.ts';

const fit = {
  rodHousing: 0.056,
  housingOutside: 0.08,
  youngsModulus: 205e9,
  housingPoisson: 0.3,
  rodShellWall: 0.0015,
  shellModulus: 200e9,
  crushHeight: 3e-5,
  rodExpansion: 12e-6,
  shellExpansion: 11e-6,
  assemblyTemperature: 293,
  crankpinDiameter: 0.0529,
  crankExpansion: 11.5e-6,
  rodShellWidth: 0.02,
  rodClearance: 5e-5,
  rodTemperature: 390,
  crankpinTemperature: 400,
};
const tenths = { IT5: 1e-5, IT6: 1.5e-5, IT7: 2.5e-5 };
const steps = [
  { upTo: 0.003, ...tenths },
  { upTo: 0.05, ...tenths },
];

export const bearings: Tables = {
  'bearings/bearing-clearance.ts': [
    guarded(fit, computedClearance, [
      ['rodHousing', 'greater than', 0],
      ['crankpinDiameter', 'greater than', 0],
      ['crankpinDiameter', 'less than', 0.056, 'the bore of the housing'],
      ['rodShellWall', 'greater than', 0],
      [
        'rodShellWall',
        'less than',
        (0.056 - 0.0529) / 2,
        'half the gap between housing and journal',
      ],
    ]),
    guarded(
      fit,
      (at) =>
        bearingState(at, at.rodClearance, {
          rod: at.rodTemperature,
          journal: at.crankpinTemperature,
        }),
      [
        ['rodTemperature', 'a number'],
        ['crankExpansion', 'a number'],
        ['crankpinDiameter', 'greater than', 0],
        ['crankpinTemperature', 'a number'],
        ['rodClearance', 'a number'],
      ],
    ),
  ],
  'bearings/bearing-fit.ts': [
    guarded(fit, interference, [['crushHeight', 'at least', 0]]),
    guarded(fit, compliance, [
      ['rodHousing', 'greater than', 0],
      ['housingOutside', 'greater than', 0.056, 'the bore of the housing'],
      ['rodShellWall', 'greater than', 0],
      ['rodShellWall', 'at most', 0.028, 'half the bore of the housing'],
      ['youngsModulus', 'greater than', 0],
      ['housingPoisson', 'at least', 0],
      ['housingPoisson', 'less than', 0.5],
      ['shellModulus', 'greater than', 0],
    ]),
    guarded(fit, (warm) => interferenceAt(warm, 400), [
      ['assemblyTemperature', 'a number'],
      ['shellExpansion', 'a number'],
      ['rodExpansion', 'a number'],
      ['rodHousing', 'greater than', 0],
    ]),
    guarded(fit, looseTemperature, [
      ['rodExpansion', 'a number'],
      ['rodHousing', 'greater than', 0],
    ]),
    guarded(fit, checkingLoad, [
      ['rodShellWidth', 'greater than', 0],
      ['rodShellWall', 'greater than', 0],
      ['rodHousing', 'greater than', 0],
    ]),
  ],
  'bearings/crank-overlap.ts': [
    guarded({ mainDiameter: 0.06, crankpinDiameter: 0.05, stroke: 0.08 }, crankOverlap, [
      ['mainDiameter', 'greater than', 0],
      ['crankpinDiameter', 'greater than', 0],
      ['stroke', 'greater than', 0],
    ]),
  ],
  'bearings/iso-fit.ts': [
    guarded({ fitDiameter: 0.02 }, ({ fitDiameter }) => toleranceStep(steps, fitDiameter), [
      ['fitDiameter', 'greater than', 0],
      ['fitDiameter', 'at most', 0.05, 'the end of the table'],
    ]),
    guarded({ fitDiameter: 0.02 }, ({ fitDiameter }) => toleranceUnit(fitDiameter), [
      ['fitDiameter', 'greater than', 0],
    ]),
  ],
  'bearings/journal-sizes.ts': [
    guarded({ ...fit, bearingLoad: 2e4 }, journalLoad, [
      ['crankpinDiameter', 'greater than', 0],
      ['rodShellWidth', 'greater than', 0],
      ['bearingLoad', 'at least', 0],
    ]),
    guarded(fit, ({ crankpinDiameter }) => dragRatio(crankpinDiameter, 0.048), [
      ['crankpinDiameter', 'greater than', 0],
    ]),
    guarded(fit, ({ crankpinDiameter }) => dragRatio(0.048, crankpinDiameter), [
      ['crankpinDiameter', 'greater than', 0],
    ]),
  ],
};
