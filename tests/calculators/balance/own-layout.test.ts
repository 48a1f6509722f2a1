import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  crankLayouts,
  isLayout,
  layoutLabel,
  ownLayoutFrom,
  throwsOf,
} from '../../../src/calculators/balance/crank-layout.choices.ts';
import { crankLayout } from '../../../src/calculators/balance/crank-layout.ts';
import {
  bobweightsWords,
  factorWords,
  hangsWords,
} from '../../../src/calculators/balance/layout.words.ts';
import {
  ownLayout,
  readOwnLayout,
  withThrowAt,
  writtenThrows,
} from '../../../src/calculators/balance/own-layout.ts';
import { calculators } from '../../../src/calculators/index.ts';
import type { AnyCalculator } from '../../../src/calculators/define.ts';
import { outputsOrNone } from '../../../src/calculators/evaluate.ts';
import { shakingForces } from '../../../src/calculators/balance/shaking-forces.ts';
import { exampleInput } from '../../../src/calculators/practice/example.ts';
import { evenly } from '../../evenly.ts';

const parts = {
  reciprocatingMass: 0.7,
  reciprocatingFraction: 0.4,
  stroke: 0.073,
  rodLength: 0.139,
  maxSpeed: 670,
  cylinderSpacing: 0.1,
  rotatingMass: 0.9,
  balanceShafts: 'none',
  crankAngle: 0.7,
} as const;

/** Every calculator that asks for the throws of a crank alone: a ready layout brings its usual firing order as well. */
const asking = Object.values<AnyCalculator>(calculators).filter(
  ({ inputs }) => inputs['crankLayout'] !== undefined && inputs['firingOrder'] === undefined,
);

describe.each(crankLayouts)('%s written throw by throw', (id) => {
  test('has the same throws, and the same result of every calculator', () => {
    const written = ownLayoutFrom(id);
    expect(throwsOf(written)).toEqual(throwsOf(id));
    for (const calculator of asking) {
      const input = exampleInput(calculator, 'baseline');
      const of = (layout: string) => outputsOrNone(calculator, { ...input, crankLayout: layout });
      // What the example's other numbers do not fit is refused of both.
      expect(of(written), calculator.id).toEqual(of(id));
    }
  });

  test('counted from another place along the crank it is the same crank', () => {
    const rows = writtenThrows(ownLayoutFrom(id));
    const moved = ownLayout(
      rows.map((row) => ({ ...row, place: String(Number(row.place) + 3.5) })),
    );
    expect(throwsOf(moved)).toEqual(throwsOf(id));
  });

  test('is said in the same words, but for what is only custom', () => {
    const written = ownLayoutFrom(id);
    expect(hangsWords(written)).toBe(hangsWords(id));
    expect(bobweightsWords(written)).toBe(bobweightsWords(id));
    expect(factorWords(id)).toContain(factorWords(written));
  });
});

describe('an own crank that no table has', () => {
  test('two throws at 76°, one bank: forward force 2 cos 38°/2, as two unit arrows make', () => {
    const layout = 'own: 0 at 1: 0; 76 at 2: 0';
    const { forwardForce, forwardCouple } = shakingForces.compute({
      ...parts,
      crankLayout: layout,
    });
    expect(forwardForce).toBeCloseTo(Math.cos((38 * Math.PI) / 180), 12);
    // Arrows of a half, half a spacing either side of the middle.
    expect(forwardCouple).toBeCloseTo(Math.sin((38 * Math.PI) / 180) / 2, 12);
    expect(layoutLabel(layout)).toBe('Own layout, 2 throws, 2 cylinders');
  });

  test('pins with one rod and with two: bobweights in proportion, none counted for all', () => {
    const layout = 'own: 0 at 1: -45 45; 180 at 2: 0';
    const found = crankLayout.compute({ crankLayout: layout });
    expect(found).toMatchObject({
      cylinders: 3,
      places: 2,
      bobweights: 2,
      rodsPerPin: { absent: 'pins carry different numbers of rods' },
    });
    expect(hangsWords(layout)).toBe('Two pins, with two and one rods');
    // 2·½ up against ½ down.
    const shaken = shakingForces.compute({ ...parts, crankLayout: layout });
    expect(shaken.rods).toBe(2);
    expect(shaken.forwardForce).toBeCloseTo(0.5, 12);
    const limit = shakingForces.limits.find(({ id }) => id === 'unlike-pins');
    expect(limit?.holds({ ...parts, crankLayout: layout }, shaken)).toBe(false);
    expect(limit?.holds({ ...parts, crankLayout: 'v8-cross' }, shaken)).toBe(true);
  });

  test('in signs, words and units of the reader', () => {
    expect(throwsOf('own: 0° at −1: −45°, 45°\n1.5707963267948966 rad at 1: 0,5 -0,5')).toEqual([
      { angle: 0, position: -1, banks: [-Math.PI / 4, Math.PI / 4] },
      { angle: Math.PI / 2, position: 1, banks: [Math.PI / 360, -Math.PI / 360] },
    ]);
  });
});

/** What a hand can type into one part of a row. */
const typed = fc.oneof(
  fc.stringMatching(/^[-+0-9., °a-z;:\n×−]{0,12}$/),
  fc.constantFrom('', 'at', '9 at 3', '12:30', '1;2', '-45 45', 'at at', ' : at ; '),
  evenly(-360, 360).map(String),
);
const row = fc.record({ angle: typed, place: typed, banks: typed });

describe('properties', () => {
  test('what was written is read back as the same rows, and rewriting changes nothing', () => {
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 6 }), (rows) => {
        const text = ownLayout(rows);
        const back = writtenThrows(text);
        expect(ownLayout(back)).toBe(text);
        const filled = rows.every(({ angle, place, banks }) =>
          [angle, place, banks].every((part) => /^[-0-9. ]*\d[-0-9. ]*$/.test(part)),
        );
        if (filled)
          expect(back).toEqual(
            rows.map(({ angle, place, banks }) => ({
              angle: angle.trim(),
              place: place.trim(),
              banks: banks.trim(),
            })),
          );
      }),
    );
  });

  test('no row is lost, whatever is typed into it', () => {
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 6 }), (rows) => {
        expect(writtenThrows(ownLayout(rows))).toHaveLength(rows.length);
      }),
    );
  });

  test('any text is read or refused in a sentence, and never breaks', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 60 }), (text) => {
        const read = readOwnLayout(`own: ${text}`);
        if ('problem' in read) expect(read.problem).toMatch(/^[A-Z“].*[.?]$/s);
        else expect(crankLayout.compute({ crankLayout: `own: ${text}` }).places).toBeGreaterThan(0);
        expect(isLayout(`own: ${text}`)).toBe('throws' in read);
      }),
    );
  });

  test('numbers of any crank come back as they went in', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ angle: evenly(-360, 360), bank: evenly(-90, 90) }), {
          minLength: 1,
          maxLength: 12,
        }),
        (list) => {
          const text = ownLayout(
            list.map(({ angle, bank }, at) => ({
              angle: String(angle),
              place: String(at),
              banks: String(bank),
            })),
          );
          const throws = throwsOf(text);
          for (const [at, { angle, bank }] of list.entries()) {
            expect(throws[at]?.angle).toBeCloseTo((angle * Math.PI) / 180, 12);
            expect(throws[at]?.banks[0]).toBeCloseTo((bank * Math.PI) / 180, 12);
            expect(throws[at]?.position).toBe(at - (list.length - 1) / 2);
          }
        },
      ),
    );
  });
});

test('a throw is moved by its angle alone, and what else was typed stays', () => {
  const text = 'own: 0 at 1: -45 45; 90 deg at 2: 45°, −45';
  expect(withThrowAt(text, 1, 76.456)).toBe('own: 0 at 1: -45 45; 76.46 at 2: 45°, −45');
  expect(withThrowAt(text, 0, 0)).toBe(text);
});

describe('refusals name the throw, what was entered, and the limit', () => {
  const many = Array.from({ length: 200 }, (_, at) => `0 at ${String(at / 4)}: 0`).join('; ');
  test.each([
    [many, 'A layout has at most 64 cylinders. This one has 200.', undefined],
    ['0 at 1: 0; ; 180 at 3: 0', 'Throw 2 is an empty row. Fill it, or remove it.', 1],
    ['0 at 1: 0; 180 at 2:', 'Throw 2 carries no cylinder.', 1],
    ['0 at 1: 0; 12o at 2: 0', 'Throw 2, angle', 1],
    ['0 at 1: 0; at 2: 0', 'Throw 2, angle: nothing is entered.', 1],
    ['0 at 1: 0; 90: 0', 'Throw 2, place along the crank: nothing is entered.', 1],
    ['0 at 1: 0; 90 at x: 0', 'Throw 2, place along the crank', 1],
    ['7200 at 1: 0', 'Throw 1, angle must be between −720° and 720°. You entered 7200.', 0],
    ['0 at 500: 0', 'must be between −100 and 100 pin spacings. You entered 500.', 0],
    ['0 at 1: 45 45', 'Throw 1 has two cylinders in one bank.', 0],
    [
      '0 at 1: -45 45; 90 at 1: 45',
      'Throws 1 and 2 have a cylinder in the same bank at the same place.',
      1,
    ],
    ['0 at 1: 180; 90 at 1: -180', 'Two cylinders cannot stand in one place.', 1],
    ['', 'Throw 1 is an empty row.', 0],
  ])('%s', (text, words, at) => {
    const read = readOwnLayout(`own: ${text}`);
    expect(read).toMatchObject({
      problem: expect.stringContaining(words) as string,
      ...(at === undefined ? {} : { row: at }),
    });
    expect(() => throwsOf(`own: ${text}`)).toThrow(RangeError);
    expect(isLayout(`own: ${text}`)).toBe(false);
  });

  test('at the limit a layout is worked', () => {
    const rows = (count: number): string =>
      `own: ${Array.from({ length: count }, (_, at) => `720 at ${String(at)}: 0`).join('; ')}`;
    expect(crankLayout.compute({ crankLayout: rows(64) }).cylinders).toBe(64);
    expect(isLayout(rows(65))).toBe(false);
    expect(isLayout('own: 0 at 100: 0')).toBe(true);
    expect(() => throwsOf('v16-135')).toThrow(RangeError);
  });
});
