import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { at } from '../../../src/core/math/at.ts';
import { ringCycle } from '../../../src/core/rings/ring-cycle.ts';
import { angleAt, ringDrive } from '../../../src/core/rings/ring-drive.ts';
import { axialGas, netGas, radialForce } from '../../../src/core/rings/ring-forces.ts';
import { ringCurves, ringLoads, strokes } from '../../../src/core/rings/ring-loads.ts';
import { hotGap } from '../../../src/core/rings/ring-pack.ts';
import { hill, packOf } from './hill.ts';
import { standInTable } from './stand-in.ts';
import { routes } from '../../../content/topics/gas-port/routes.ts';
import { proves } from '../../proves.ts';
import { evenly } from '../../evenly.ts';

function near(value: number, wanted: number, share: number): void {
  expect(Math.abs(value / wanted - 1), `${value} for ${wanted}`).toBeLessThan(share);
}

describe('forces and sizes', () => {
  const pack = packOf();

  it('gas presses with the face factor’s share of the difference once behind equals above', () => {
    near(netGas(pack, 60e5, 60e5, 2e5), 0.5 * 58e5, 1e-12);
    near(netGas({ ...pack, faceFactor: 0.3 }, 60e5, 60e5, 2e5), 0.3 * 58e5, 1e-12);
  });

  it('a face with more pressure than the ring can answer has no load, not a negative one', () => {
    expect(radialForce(pack, 60e5, 1e5, 1e5)).toBe(0);
    near(radialForce(pack, 1e5, 1e5, 1e5), 2 * Math.PI * 5.3, 1e-12);
  });

  it('holds the lower flank with the flank factor’s share, and the upper one turned round', () => {
    const half = { ...pack, flankFactor: 0.8 };
    near(axialGas(half, 60e5, 60e5, 2e5, 0), half.sideArea * 0.8 * 58e5, 1e-12);
    near(axialGas(half, 1e5, 3e5, 3e5, half.clearance), -half.sideArea * 0.8 * 2e5, 1e-12);
  });

  it('holds a ring without clearance on its lower flank', () => {
    const tight = { ...packOf({ ringSideClearance: 0 }), flankFactor: 0.8 };
    // The upper flank is taken as open: the mean of both pressures, less what the lower one holds.
    near(axialGas(tight, 60e5, 50e5, 2e5, 0), tight.sideArea * (0.5 * 10e5 + 0.8 * 48e5), 1e-12);
  });

  it('turns its sign where the ring is turned upside down', () => {
    const pressure = fc.double({ min: 1e4, max: 1e7, noNaN: true });
    const share = evenly(0, 1);
    fc.assert(
      fc.property(
        pressure,
        pressure,
        pressure,
        share,
        share,
        (above, behind, below, place, sealed) => {
          const one = { ...pack, flankFactor: sealed };
          const lift = place * one.clearance;
          const down = axialGas(one, above, behind, below, lift);
          const up = axialGas(one, below, behind, above, one.clearance - lift);
          // Rounding of differences of pressures of ten million.
          expect(Math.abs(down + up)).toBeLessThan(1e-6);
        },
      ),
    );
  });

  it('has the volume, the mass and the hot gap of the example', () => {
    near(pack.behindVolume, 85.5e-9, 1e-3);
    near(pack.mass, 5.64e-3, 2e-3);
    near(pack.mass / pack.sideArea, 7850 * 0.9e-3, 1e-12);
    near(hotGap(0.42e-3, hill), 0.141e-3, 5e-3);
    near(
      hotGap(0.38e-3, { ...hill, ringTemperature: 468.15, boreTemperature: 393.15 }),
      0.149e-3,
      5e-3,
    );
    expect(hotGap(0.1e-3, hill)).toBe(0);
    near(pack.tensionPressure, 0.1301e6, 1e-3);
  });

  it('lateral slots have half the area of holes', () => {
    near(packOf({ portKind: 'lateral' }).portArea, packOf().portArea / 2, 1e-12);
  });
});

describe('loads over the strokes', () => {
  const pack = packOf();
  const drive = ringDrive(hill, new Float64Array(5761).fill(5e5));
  const { pressure } = drive;

  it(proves(routes.loadsByHand), () => {
    const level = { angle: pressure, cylinder: pressure, lift: pressure.map(() => 0) };
    const curves = { ...level, behind: pressure.map(() => 8e5), land: pressure.map(() => 2e5) };
    const { gas, slide, greatestGas, leastGas } = ringLoads(pack, curves, drive);
    const net = 8e5 - 0.5 * 5e5 - 0.5 * 2e5;
    const force = 2 * Math.PI * 5.3 + Math.PI * 0.0905 * 0.9e-3 * net;
    for (const stroke of strokes) {
      near(gas[stroke], net, 1e-12);
      near(slide[stroke], force * 0.073, 1e-9);
    }
    expect(greatestGas).toBe(net);
    expect(leastGas).toBe(net);
  });

  it('of a pressure that grows with the travel are its mean over the way, not over the angle', () => {
    const level = { angle: pressure, cylinder: pressure, lift: pressure, land: pressure };
    const curves = { ...level, behind: drive.travel.map((way) => 5e5 + 1e7 * way) };
    const { slide } = ringLoads(pack, curves, drive);
    // Net gas is 1e7·s: ∫(2πF_t + πdh·1e7·s) ds over a stroke S = 2πF_t·S + πdh·1e7·S²/2.
    const wanted = 2 * Math.PI * 5.3 * 0.073 + Math.PI * 0.0905 * 0.9e-3 * 1e7 * (0.073 ** 2 / 2);
    for (const stroke of strokes) near(slide[stroke], wanted, 1e-9);
  });
});

describe('the curves', () => {
  it('keep the distance from the cylinder between steps, not the pressure', () => {
    const drive = ringDrive(hill, standInTable(1440));
    const places = [0, 360, 700, 1440];
    const list = (of: (place: number) => number): Float64Array => new Float64Array(places.map(of));
    const trace = {
      angle: list((place) => angleAt(drive, place)),
      cylinder: list((place) => at(drive.pressure, place)),
      behind: list((place) => at(drive.pressure, place) - 3e4),
      land: list((place) => 1e5 + place),
      lift: list((place) => place * 1e-9),
    };
    const whole = { ...ringCycle(packOf(), drive, 'lower'), ...trace };
    const { angle, cylinder, behind, land, lift } = ringCurves(whole, drive);
    for (let i = 0; i <= 1440; i += 45) {
      expect(at(angle, i)).toBe(angleAt(drive, i));
      near(at(behind, i), at(cylinder, i) - 3e4, 1e-9);
      near(at(land, i), 1e5 + i, 1e-9);
      expect(Math.abs(at(lift, i) - i * 1e-9)).toBeLessThan(1e-15);
    }
  });
});
