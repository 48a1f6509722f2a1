import { crankLine } from '../../../src/core/torsion/crank-line.ts';
import { bestTuning, ringFrequency, splitFrequencies } from '../../../src/core/torsion/damper.ts';
import { firingsOf } from '../../../src/core/torsion/firing.ts';
import { naturalModes } from '../../../src/core/torsion/natural-modes.ts';
import { holzerTable } from '../../../src/core/torsion/shaft-line.ts';
import { equivalentLengths, shaftStiffness } from '../../../src/core/torsion/throw-stiffness.ts';
import { guarded, type Tables } from '../guards.ts';

const line = { lineInertias: [5, 11, 22], lineStiffnesses: [1e5, 2e5] };
const eleven = new Array<number>(11).fill(1);
const crank = {
  throwInertia: 0.017,
  throwStiffness: 6e5,
  damperInertia: 0.009,
  hubInertia: 0.003,
  ringStiffness: 3e4,
  noseStiffness: 6e5,
  flangeStiffness: 1e6,
  flywheelInertia: 0.1,
  clutchInertia: 0.05,
};
const pair = { mainInertia: 0.04, mainFrequency: 2500, ringInertia: 0.006, ringStiffness: 3e4 };
const shape = {
  stroke: 0.073,
  mainDiameter: 0.06,
  mainBore: 0.01,
  mainLength: 0.026,
  crankpinDiameter: 0.052,
  crankpinBore: 0.01,
  crankpinLength: 0.045,
  crankWebThickness: 0.02,
  crankWebWidth: 0.09,
};
const four = [0, Math.PI, Math.PI, 0].map((angle, i) => ({ angle, position: i - 1.5, banks: [0] }));
const all = '4 cylinders, each once';
const fewer = 'one fewer than inertias';

export const torsion: Tables = {
  'torsion/shaft-line.ts': [
    guarded({ ...line, trialFrequency: 20 }, (given) => holzerTable(given, given), [
      ['trialFrequency', 'at least', 0],
    ]),
    guarded(line, (given) => naturalModes(given), [
      ['lineInertias', 'at least', 2, 'two', [1]],
      ['lineInertias', 'at most', 10, 'ten', eleven],
      ['lineInertias', 'greater than', 0, undefined, [1, 0, 1]],
      ['lineStiffnesses', 'at least', 2, fewer, [1e5]],
      ['lineStiffnesses', 'at most', 2, fewer, [1e5, 1e5, 1e5]],
      ['lineStiffnesses', 'greater than', 0, undefined, [1e5, 0]],
    ]),
  ],
  'torsion/crank-line.ts': [
    guarded(
      { ...crank, crankLayout: [1, 1, 1, 1] },
      (given) => crankLine(given, given.crankLayout),
      [
        [
          'crankLayout',
          'at most',
          7,
          'the places that a line of ten leaves',
          new Array<number>(8).fill(1),
        ],
      ],
    ),
    guarded(crank, (given) => crankLine(given, [1, 1, 1, 1]), [
      ['throwInertia', 'greater than', 0],
      ['throwStiffness', 'greater than', 0],
      ['damperInertia', 'greater than', 0],
      ['hubInertia', 'greater than', 0],
      ['hubInertia', 'at most', crank.damperInertia, 'the whole damper'],
      ['ringStiffness', 'greater than', 0],
      ['noseStiffness', 'greater than', 0],
      ['flangeStiffness', 'greater than', 0],
      ['flywheelInertia', 'greater than', 0],
      ['clutchInertia', 'at least', 0],
    ]),
  ],
  'torsion/damper.ts': [
    guarded(pair, (given) => bestTuning(given), [
      ['ringInertia', 'greater than', 0],
      ['mainInertia', 'greater than', 0],
      ['mainFrequency', 'greater than', 0],
    ]),
    guarded(pair, (given) => splitFrequencies(given), [
      ['mainFrequency', 'greater than', 0],
      ['ringInertia', 'greater than', 0],
      ['mainInertia', 'greater than', 0],
    ]),
    guarded({ ringInertia: 0.006, ringStiffness: 3e4 }, (given) => ringFrequency(given), [
      ['ringStiffness', 'greater than', 0],
      ['ringInertia', 'greater than', 0],
    ]),
  ],
  'torsion/firing.ts': [
    guarded({ firingOrder: [1, 3, 4, 2] }, (given) => firingsOf(four, given), [
      [
        'firingOrder',
        'at most',
        2,
        'the two turns of a cycle: fired in this order, this crank takes more',
        [1, 4, 2, 3],
      ],
      ['firingOrder', 'at least', 4, all, [1, 3, 4]],
      ['firingOrder', 'at most', 4, all, [1, 3, 4, 2, 1]],
      ['firingOrder', 'at least', 1, undefined, [1, 3, 0, 2]],
      ['firingOrder', 'at most', 4, undefined, [1, 3, 5, 2]],
      ['firingOrder', 'at least', 4, all, [1, 3, 3, 2]],
    ]),
  ],
  'torsion/throw-stiffness.ts': [
    guarded(shape, (given) => equivalentLengths(given), [
      [
        'stroke',
        'greater than',
        0.4 * (shape.mainDiameter + shape.crankpinDiameter),
        'two fifths of both journals’ diameters',
      ],
      ['mainDiameter', 'greater than', 0],
      ['mainBore', 'at least', 0],
      ['mainBore', 'less than', shape.mainDiameter, 'the main journal'],
      ['crankpinDiameter', 'greater than', 0],
      ['crankpinBore', 'at least', 0],
      ['crankpinBore', 'less than', shape.crankpinDiameter, 'the crankpin'],
      ['mainLength', 'greater than', 0],
      ['crankpinLength', 'greater than', 0],
      ['crankWebThickness', 'greater than', 0],
      ['crankWebWidth', 'greater than', 0],
    ]),
    guarded(
      { crankShearModulus: 80e9, mainDiameter: 0.06 },
      (given) => shaftStiffness(given, 0.15),
      [
        ['crankShearModulus', 'greater than', 0],
        ['mainDiameter', 'greater than', 0],
      ],
    ),
  ],
};
