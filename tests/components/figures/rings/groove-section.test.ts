import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  arrowsOn,
  grooveOf,
  magnified,
  sectionOf,
} from '../../../../src/components/figures/rings/groove-drawing.ts';
import {
  momentAt,
  shownStates,
  strokeAt,
  withinCycle,
} from '../../../../src/components/figures/rings/groove-section.ts';
import { must } from '../../../calculators/must.ts';

const bar = 1e5;
const input = {
  bore: 0.09,
  ring1Height: 0.0012,
  ring1Radial: 0.0035,
  ringSideClearance: 40e-6,
  ringBackClearance: 0.0006,
  secondLandClearance: 0.0004,
  secondLandHeight: 0.003,
  portDiameter: 0.0012,
  portCount: 12,
  portKind: 'crown',
  faceFactor: 0.5,
};
const x = [-Math.PI, Math.PI, 3 * Math.PI];
const curve = (pascal: number) => ({ x, y: [pascal, pascal, pascal] });
function set(behindShut: number, tension = 2 * bar) {
  const output = {
    tensionPressure: tension,
    cylinderCurve: curve(60 * bar),
    behindUnportedCurve: curve(59 * bar),
    landUnportedCurve: curve(2 * bar),
    liftUnportedCurve: curve(0),
    behindShutUnportedCurve: curve(behindShut),
    landShutUnportedCurve: curve(2 * bar),
    behindShutCurve: curve(58 * bar),
    landShutCurve: curve(2 * bar),
  };
  return { input, output, stale: false };
}
const [clean, shut] = shownStates('holes').map((state) => state);

describe('the three states of the groove', () => {
  test('are the clean one, the shut one and the one with holes', () => {
    expect(shownStates('holes').map(({ id }) => id)).toEqual(['clean', 'shut', 'holes']);
    expect(shownStates('plugged').map(({ id }) => id)).toEqual(['clean', 'shut', 'plugged']);
  });

  test('a ring with gas behind holds: 59 − (60 + 2)/2 + 2 = 30 bar on the bore', () => {
    const now = must(momentAt(set(2 * bar), must(clean), 15));
    expect((now.gas + now.tension) / bar).toBeCloseTo(30, 9);
    expect(now.holds).toBe(true);
  });

  test('without gas behind it leaves the bore, and lies off the wall in the drawing', () => {
    const now = must(momentAt(set(2 * bar), must(shut), 15));
    // 2 − (60 + 2)/2 = −29 bar, and 2 bar of tension.
    expect(now.gas / bar).toBeCloseTo(-29, 9);
    expect(now.holds).toBe(false);
    const section = must(sectionOf(set(0)));
    const field = { shut: true, open: 0, width: 230, height: 180 };
    const off = grooveOf(section, now, field);
    expect(off.right).toBeLessThan(off.wall);
    expect(off.left).toBeGreaterThan(off.root);
    const on = grooveOf(section, { ...now, holds: true }, field);
    expect(on.right).toBe(on.wall);
  });

  test('holds exactly where tension and gas are in balance, whatever the pressures', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 80 * bar, noNaN: true }),
        fc.double({ min: 0, max: 5 * bar, noNaN: true }),
        (behind, tension) => {
          const now = must(momentAt(set(behind, tension), must(shut), 0));
          expect(now.holds).toBe(behind - 31 * bar + tension >= 0);
        },
      ),
    );
  });

  test('nothing is told without a result', () => {
    expect(momentAt({ input, output: {}, stale: false }, must(clean), 0)).toBeUndefined();
    expect(sectionOf({ input: {}, output: {}, stale: false })).toBeUndefined();
  });
});

describe('the drawn groove', () => {
  const section = must(sectionOf(set(0)));
  const now = must(momentAt(set(2 * bar), must(clean), 0));
  const field = { shut: false, open: 0.25, width: 230, height: 180 };

  test('is to scale, but for the side clearance', () => {
    const drawn = grooveOf(section, now, field);
    const scale = (drawn.ringLow - drawn.ringTop) / section.height;
    expect((drawn.right - drawn.left) / section.radial).toBeCloseTo(scale, 9);
    expect((drawn.ringTop - drawn.top) / section.side).toBeCloseTo(magnified * scale, 6);
  });

  test('an open share of a quarter leaves half the width of a round hole', () => {
    const whole = grooveOf(section, now, { ...field, open: 1 }).piston;
    const quarter = grooveOf(section, now, field).piston;
    const wide = (path: string): number => {
      const [from, to] = /Z(?:M)([\d.]+) 0V[\d.]+H([\d.]+)/u.exec(path)?.slice(1).map(Number) ?? [];
      return must(to) - must(from);
    };
    expect(wide(quarter) / wide(whole)).toBeCloseTo(0.5, 9);
    expect(grooveOf(section, now, { ...field, open: 0 }).piston.match(/M/gu)).toHaveLength(1);
  });

  test('has no arrow where there is hardly a pressure, and the longest for the greatest', () => {
    const drawn = grooveOf(section, now, field);
    const none = { ...now, cylinder: 0, behind: 0, land: 0 };
    expect(arrowsOn(drawn, section, none, 60 * bar)).toEqual([]);
    expect(arrowsOn(drawn, section, now, 60 * bar).length).toBeGreaterThan(10);
  });
});

test('strokes by the angle, and any angle within one cycle', () => {
  expect([-90, 15, 270, 440].map(strokeAt)).toEqual(['compression', 'power', 'exhaust', 'intake']);
  expect([-180, 540, 541, -181, 900].map(withinCycle)).toEqual([-180, 540, -179, 539, 180]);
});
