import { readdirSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calculators } from '../../../src/calculators/index.ts';
import {
  assemble,
  beamSection,
  beltHeight,
  grooves,
  onRod,
  pistonHalf,
  type Sizes,
} from '../../../src/components/home/assembly.ts';
import { drawAssembly } from '../../../src/components/home/assembly-drawing.ts';
import { axis, crankAngle, scale, sheet } from '../../../src/components/home/assembly-pen.ts';
import {
  partsOfDrawing,
  type PartOfDrawing,
} from '../../../src/components/home/assembly-topics.ts';
import { exampleSizes } from '../../../src/components/home/example-sizes.ts';

const sizes = exampleSizes(Object.values(calculators), 'candidate');
const angle = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true });
const some = fc
  .record({
    stroke: fc.double({ min: 40, max: 110, noNaN: true }),
    ratio: fc.double({ min: 1.3, max: 2.3, noNaN: true }),
  })
  .map(({ stroke, ratio }): Sizes => ({ ...sizes, stroke, rodLength: ratio * stroke }));
/** Rounding alone parts what is computed here from what the lengths say. */
const digits = 9;

describe('the drawn assembly', () => {
  it('takes the sizes of the example as they were typed', () => {
    expect(sizes).toMatchObject({ stroke: 73, rodLength: 146, bore: 90.5, crankpinDiameter: 46 });
  });
  it('turns its crankpin at half the stroke and keeps the rod as long as it is', () => {
    fc.assert(
      fc.property(some, angle, (given, at) => {
        const { crankpin, wristPin } = assemble(given, at);
        expect(Math.hypot(crankpin.x, crankpin.y)).toBeCloseTo(given.stroke / 2, digits);
        expect(wristPin.x).toBe(0);
        expect(Math.hypot(crankpin.x, wristPin.y - crankpin.y)).toBeCloseTo(
          given.rodLength,
          digits,
        );
      }),
    );
  });
  it('has the big end on the crankpin and the small end on the wrist pin', () => {
    fc.assert(
      fc.property(some, angle, (given, at) => {
        const assembly = assemble(given, at);
        expect(onRod(assembly, 0, 0)).toEqual(assembly.crankpin);
        const small = onRod(assembly, 0, given.rodLength);
        expect(small.x).toBeCloseTo(0, digits);
        expect(small.y).toBeCloseTo(assembly.wristPin.y, digits);
      }),
    );
  });
  it('reaches its dead centres, and leaves the set clearance below the head at TDC', () => {
    const [up, down] = [assemble(sizes, 0), assemble(sizes, Math.PI)];
    expect(up.wristPin.y).toBeCloseTo(up.top, digits);
    expect(down.wristPin.y).toBeCloseTo(down.bottom, digits);
    expect(up.top - down.bottom).toBeCloseTo(sizes.stroke, digits);
    expect(up.head - up.crown).toBeCloseTo(sizes.pistonToHead, digits);
  });
  it('has its rings below the top land, one below the other, above the pin', () => {
    const [top, second, oil] = grooves(sizes);
    expect(top?.from).toBe(sizes.topLandHeight);
    expect(second?.from).toBeCloseTo(
      sizes.topLandHeight + sizes.ring1Height + sizes.secondLandHeight,
      digits,
    );
    expect(oil?.from).toBeGreaterThan((second?.from ?? 0) + sizes.ring2Height);
    const { compressionHeight } = assemble(sizes, 0);
    expect(compressionHeight - beltHeight(sizes)).toBeGreaterThan(sizes.pinDiameter / 2);
  });
  it('keeps the piston inside the bore', () => {
    const widest = Math.max(...pistonHalf(sizes, assemble(sizes, 0)).map(({ x }) => x));
    expect(2 * widest).toBeCloseTo(sizes.bore - sizes.topLandClearance, digits);
  });
  it('shows a beam whose section has the area of two flanges and a web', () => {
    const outline = beamSection(sizes);
    const twice = outline.reduce((sum, { x, y }, at) => {
      const next = outline[(at + 1) % outline.length] ?? { x, y };
      return sum + x * next.y - next.x * y;
    }, 0);
    const { shankHeight, shankWidth, flangeThickness, webThickness } = sizes;
    expect(Math.abs(twice) / 2).toBeCloseTo(
      2 * shankWidth * flangeThickness + webThickness * (shankHeight - 2 * flangeThickness),
      digits,
    );
  });
});

describe('the index in the drawing', () => {
  const { picture, targets } = drawAssembly(sizes);
  it('leads to topics that there are, each from a shape', () => {
    expect(readdirSync('content/topics')).toEqual(
      expect.arrayContaining(Object.keys(partsOfDrawing)),
    );
    expect(Object.keys(targets).toSorted()).toEqual(Object.keys(partsOfDrawing).toSorted());
  });
  it('shows a main result of each', () => {
    for (const [topic, part] of Object.entries<PartOfDrawing>(partsOfDrawing)) {
      const { out, calculator = topic } = part;
      const outputs: Readonly<Record<string, unknown>> =
        Object.entries(calculators).find(([id]) => id === calculator)?.[1].outputs ?? {};
      expect(outputs[out], topic).toMatchObject({ main: true });
    }
  });
  it('draws within the sheet, numbers only', () => {
    expect(picture).not.toMatch(/NaN|undefined|Infinity/u);
    for (const [topic, { shape, at }] of Object.entries(targets)) {
      expect(shape, topic).toMatch(/^M-?[\d.]/u);
      expect(at.x, topic).toBeGreaterThan(sheet.left);
      expect(at.x, topic).toBeLessThan(sheet.right);
      expect(at.y, topic).toBeLessThan(sheet.height);
    }
  });
  it('bounds the overlap by two places that lie on both journals', () => {
    const { crankpin } = assemble(sizes, crankAngle);
    const corners = [...targets['crank-overlap'].shape.matchAll(/(-?[\d.]+) (-?[\d.]+)(?=A|z)/gu)];
    expect(corners).toHaveLength(3);
    for (const [, x, y] of corners) {
      const at = { x: (Number(x) - axis.x) / scale, y: (axis.y - Number(y)) / scale };
      // The path is written to a hundredth of a unit.
      expect(Math.hypot(at.x, at.y)).toBeCloseTo(sizes.mainDiameter / 2, 1);
      expect(Math.hypot(at.x - crankpin.x, at.y - crankpin.y)).toBeCloseTo(
        sizes.crankpinDiameter / 2,
        1,
      );
    }
  });
  it('keeps the labels of one side apart by what is shown below them', () => {
    for (const side of ['left', 'right']) {
      const lines = Object.values(partsOfDrawing)
        .filter((part) => part.side === side)
        .map(({ line }) => line)
        .toSorted((a, b) => a - b);
      for (const [at, line] of lines.slice(1).entries())
        expect(line - (lines[at] ?? 0)).toBeGreaterThanOrEqual(88);
    }
  });
});
