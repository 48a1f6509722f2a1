import {
  airViscosity,
  blowDownTime,
  chokedTime,
  criticalRatio,
  flowFunction,
  orificeFlow,
} from '../../../src/core/rings/orifice-flow.ts';
import { gasPort } from '../../../src/core/rings/gas-port.ts';
import { ringDrive } from '../../../src/core/rings/ring-drive.ts';
import { ringPack } from '../../../src/core/rings/ring-pack.ts';
import {
  closureOf,
  openingStress,
  packLoad,
  ringInBore,
  ringLine,
} from '../../../src/core/rings/ring-tension.ts';
import { guarded, type Tables } from '../guards.ts';
import { cycle } from '../loads/guards.ts';

const hole = {
  gasConstant: 287,
  heatRatio: 1.35,
  gasTemperature: 470,
  orificeArea: 1e-6,
  dischargeCoefficient: 0.8,
  upstreamPressure: 15e5,
  downstreamPressure: 14e5,
  vesselVolume: 1e-7,
};
const pack = {
  bore: 0.09,
  ring1Height: 0.001,
  ring1Radial: 0.003,
  ring1Tension: 6,
  ringDensity: 7700,
  ringSideClearance: 4e-5,
  ringBackClearance: 5e-4,
  topLandHeight: 0.005,
  topLandClearance: 8e-4,
  secondLandHeight: 0.004,
  secondLandClearance: 6e-4,
  ring1Gap: 4e-4,
  ring2Gap: 5e-4,
  portCount: 10,
  portDiameter: 0.001,
  portKind: 'crown',
  portPlugged: 0.3,
  dischargeCoefficient: 0.7,
  faceFactor: 0.5,
  flankFactor: 0.5,
  ringFriction: 0.1,
  ringTemperature: 470,
} as const;
const ring1 = {
  bore: 0.09,
  ring1Height: 0.0015,
  ring1Radial: 0.0035,
  ring1Modulus: 160e9,
  ring1FreeGap: 0.0127,
  ring1Gap: 4e-4,
  ring1Tension: 13,
  ringOpening: 0.03,
};
const ring2 = {
  bore: 0.09,
  ring2Height: 0.0015,
  ring2Radial: 0.0035,
  ring2Modulus: 160e9,
  ring2FreeGap: 0.0127,
  ring2Gap: 4e-4,
  ring2Tension: 13,
};
const twice = 'twice the ring’s radial wall';

export const rings: Tables = {
  'rings/gas-port.ts': [
    guarded(
      {
        ...cycle,
        ...pack,
        ringSeat: 'shut',
        maxSpeed: 700,
        crankcasePressure: 1e5,
        ringExpansion: 12e-6,
        boreExpansion: 12e-6,
        boreTemperature: 400,
      } as const,
      (input) => gasPort(input),
      [
        ['ring1Gap', 'at least', 0],
        ['ring2Gap', 'at least', 0],
        ['ringExpansion', 'a number'],
        ['boreExpansion', 'a number'],
        ['boreTemperature', 'greater than', 0],
      ],
    ),
  ],
  'rings/orifice-flow.ts': [
    guarded(hole, (input) => orificeFlow(input, input), [
      ['gasConstant', 'greater than', 0],
      ['heatRatio', 'greater than', 1, 'one'],
      ['gasTemperature', 'greater than', 0],
      ['orificeArea', 'at least', 0],
      ['dischargeCoefficient', 'at least', 0],
      ['dischargeCoefficient', 'at most', 1, 'one'],
      ['upstreamPressure', 'greater than', 0],
      ['downstreamPressure', 'at least', 0],
      ['downstreamPressure', 'at most', 15e5, 'the upstream pressure'],
    ]),
    guarded(hole, ({ heatRatio }) => criticalRatio(heatRatio), [
      ['heatRatio', 'greater than', 1, 'one'],
    ]),
    guarded(
      { downstreamPressure: 0.9 },
      ({ downstreamPressure }) => flowFunction(downstreamPressure, 1.35),
      [
        ['downstreamPressure', 'at least', 0],
        ['downstreamPressure', 'at most', 1, 'the upstream pressure'],
      ],
    ),
    guarded(hole, (input) => chokedTime(input, input), [
      ['vesselVolume', 'greater than', 0],
      ['orificeArea', 'greater than', 0],
      ['dischargeCoefficient', 'greater than', 0],
    ]),
    guarded(
      { pressureShare: 0.5 },
      ({ pressureShare }) => blowDownTime(pressureShare, 1, 1.4, true),
      [
        ['pressureShare', 'greater than', 0],
        ['pressureShare', 'at most', 1, 'the first pressure'],
      ],
    ),
    guarded(hole, ({ gasTemperature }) => airViscosity(gasTemperature), [
      ['gasTemperature', 'greater than', 0],
    ]),
  ],
  'rings/ring-drive.ts': [
    guarded(
      { bore: 0.09, stroke: 0.08, rodLength: 0.14, maxSpeed: 700, crankcasePressure: 1e5 },
      (engine) => ringDrive(engine, new Float64Array(361).fill(1e5)),
      [
        ['maxSpeed', 'greater than', 0],
        ['crankcasePressure', 'greater than', 0],
      ],
    ),
  ],
  'rings/ring-pack.ts': [
    guarded(pack, ringPack, [
      ['bore', 'greater than', 0],
      ['ring1Height', 'greater than', 0],
      ['ring1Radial', 'greater than', 0],
      ['ring1Radial', 'less than', 0.045, 'half the bore'],
      ['ringSideClearance', 'at least', 0],
      ['ringSideClearance', 'at most', 0.4e-3],
      ['ringBackClearance', 'greater than', 0],
      ['topLandHeight', 'greater than', 0],
      ['topLandClearance', 'at least', 0],
      ['topLandClearance', 'less than', 0.006, twice],
      ['secondLandClearance', 'greater than', 0],
      ['secondLandClearance', 'less than', 0.006, twice],
      ['secondLandHeight', 'greater than', 0],
      ['portCount', 'at least', 0],
      ['portDiameter', 'at least', 0],
      ['portDiameter', 'at most', 0.005, 'the height of the top land'],
      ['portCount', 'less than', Math.PI * 84, 'what fits round the groove'],
      ['portPlugged', 'at least', 0],
      ['portPlugged', 'at most', 1],
      ['dischargeCoefficient', 'greater than', 0],
      ['dischargeCoefficient', 'at most', 1],
      ['ring1Gap', 'at least', 0],
      ['ring2Gap', 'at least', 0],
      ['ringTemperature', 'greater than', 0],
      ['ring1Tension', 'at least', 0],
      ['ringDensity', 'greater than', 0],
      ['faceFactor', 'at least', 0],
      ['faceFactor', 'at most', 1],
      ['flankFactor', 'at least', 0],
      ['flankFactor', 'at most', 1],
      ['ringFriction', 'at least', 0],
    ]),
  ],
  'rings/ring-tension.ts': [
    guarded(ring1, (ring) => ringLine(ring, 'ring1'), [
      ['bore', 'greater than', 0],
      ['ring1Height', 'greater than', 0],
      ['ring1Radial', 'greater than', 0],
      ['ring1Radial', 'less than', 0.045, 'half the bore'],
      ['ring1Modulus', 'greater than', 0],
    ]),
    guarded(ring2, (ring) => ringLine(ring, 'ring2'), [
      ['ring2Height', 'greater than', 0],
      ['ring2Radial', 'greater than', 0],
      ['ring2Radial', 'less than', 0.045, 'half the bore'],
      ['ring2Modulus', 'greater than', 0],
    ]),
    guarded(ring1, (ring) => closureOf(ring, 'ring1'), [['ring1Tension', 'greater than', 0]]),
    guarded(ring2, (ring) => closureOf(ring, 'ring2'), [['ring2Tension', 'greater than', 0]]),
    guarded(ring1, (ring) => ringInBore(ring, 'ring1'), [
      ['ring1Gap', 'at least', 0],
      ['ring1FreeGap', 'greater than', 4e-4, 'the gap in the bore'],
    ]),
    guarded(ring2, (ring) => ringInBore(ring, 'ring2'), [
      ['ring2Gap', 'at least', 0],
      ['ring2FreeGap', 'greater than', 4e-4, 'the gap in the bore'],
    ]),
    guarded(ring1, (ring) => openingStress(ring, 'ring1'), [['ringOpening', 'greater than', 0]]),
    guarded(
      { ring1Tension: 13, ring2Tension: 10, oilRingTension: 30, benchFriction: 0.1 },
      (rings) => packLoad(rings, rings.benchFriction),
      [
        ['ring1Tension', 'at least', 0],
        ['ring2Tension', 'at least', 0],
        ['oilRingTension', 'greater than', 0],
        ['benchFriction', 'at least', 0],
        ['benchFriction', 'at most', 1],
      ],
    ),
  ],
};
