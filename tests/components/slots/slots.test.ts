import { describe, expect, test } from 'vitest';
import type { AnyCalculator } from '../../../src/calculators/define.ts';
import { calculators } from '../../../src/calculators/index.ts';
import { type Operand, workPostfix } from '../../../src/calculators/postfix.ts';
import { noNumber, slotContent, slotText } from '../../../src/components/slots/content.ts';
import {
  stripAxis,
  stripPlace,
  stripSize,
  stripWords,
} from '../../../src/components/evidence/strips.ts';

const bobweight: AnyCalculator = calculators.bobweight;

describe('the text of a slot', () => {
  test.each([
    [0.4212, 'g', {}, '421.2\u00a0g'],
    [0.4212, 'g', { figures: 6, brief: true }, '421.2\u00a0g'],
    [-0.003, 'mm', { guarded: true }, '(−3\u00a0mm)'],
    [-0.003, 'mm', { guarded: false }, '−3\u00a0mm'],
    [2, 'count', {}, '2'],
    [0.5, 'ratio', { figures: 5, brief: true }, '0.5'],
    [1000, 'm', { figures: 5, brief: true }, '1000\u00a0m'],
    [Number.NaN, 'g', {}, noNumber],
    [{ absent: 'because' }, 'g', {}, noNumber],
    [undefined, 'g', {}, noNumber],
    [[0.1, 0.2], 'g', {}, '100.0\u00a0g; 200.0\u00a0g'],
  ] as const)('%j in %s', (value, unit, how, text) => {
    expect(slotText(value, unit, how)).toBe(text);
  });

  test('follows the unit of the reader, unless it has its own', () => {
    const values = { stroke: 0.0508 };
    const motion: AnyCalculator = calculators['piston-motion'];
    expect(slotContent({}, 'stroke', motion, values, 'metric')).toBe('50.8\u00a0mm');
    expect(slotContent({}, 'stroke', motion, values, 'inch')).toBe('2\u00a0in');
    expect(slotContent({ unit: 'm' }, 'stroke', motion, values, 'inch')).toBe('0.0508\u00a0m');
    expect(slotContent({ also: 'mm' }, 'stroke', motion, values, 'metric')).toBe('');
    expect(slotContent({ also: 'mm' }, 'stroke', motion, values, 'inch')).toBe(' = 2\u00a0in');
  });

  test('what may be left out counts as nothing where the formula says so, and is missing elsewhere', () => {
    expect(slotContent({ zero: '' }, 'partnerRotating', bobweight, { x: 1 }, 'metric')).toContain(
      '0',
    );
    expect(slotContent({}, 'partnerRotating', bobweight, { x: 1 }, 'metric')).toBe(noNumber);
  });
});

describe('postfix', () => {
  const values: Readonly<Record<string, Operand>> = {
    a: 3,
    b: 4,
    list: [1, 2, 6],
    rig: 'knife-edge',
  };
  test.each([
    ['=a 2 ^ =b 2 ^ + sqrt', 5],
    ['=list mean:1', 3],
    ['=list sum:1 =a max:2', 9],
    ['=a neg =b /', -0.75],
    ['=missing 1 +', undefined],
    ['=a 0 /', undefined],
    ['=list count:1', 3],
    ['=missing count:1', undefined],
    // 1, 2 and 6 lie 2, 1 and 3 from their mean.
    ['=list =list mean:1 squares:2', 14],
    ['0 exp 1 exp ln +', 2],
    // What may be left out counts as nothing where the line says so.
    ['=missing 0 or 1 +', 1],
    ['=a 0 or 1 +', 4],
    // The case that is not taken may be no number: the other stands.
    ['=a =b below =b =missing when', 4],
    ['=a =b below =missing =b when', undefined],
    ['=b =a below =missing 0 / =a when', 3],
    ['=a 3 atMost 1 2 when', 1],
    ['=a 3 below 1 2 when', 2],
    ['rig=knife-edge 1 2 when', 1],
    ['rig=bifilar 1 2 when', 2],
    ['=a given 1 2 when', 1],
    ['=missing given 1 2 when', 2],
    // Where nothing decides there is no answer, rather than the second case.
    ['=missing =b below 1 2 when', undefined],
    ['missing=i 1 2 when', undefined],
  ])('%s', (line, answer) => {
    expect(workPostfix(line, (name) => values[name])).toBe(answer);
  });
});

describe('a strip of validity', () => {
  const strip = { possible: [0, 1], tested: [0.2, 0.4] } as const;
  test('says where a number stands', () => {
    expect(stripWords(strip, 0.2)).toBe('inside the range of the published cases');
    expect(stripWords(strip, 0.5)).toBe('possible, but no published case reaches so far');
    expect(stripWords(strip, 1.1)).toBe('outside what is possible');
  });
  test('keeps every mark on the drawing', () => {
    expect(stripPlace(strip, -5)).toBe(0);
    expect(stripPlace(strip, 5)).toBe(stripSize.width);
    expect(stripPlace(strip, 0.5)).toBeCloseTo(stripSize.width / 2, 6);
  });
  test('ends beyond what is tested where nothing bounds the possible', () => {
    const { from, to } = stripAxis({ possible: [0, Infinity], tested: [10, 20] });
    expect(from).toBeLessThan(0);
    expect(to).toBeGreaterThan(20);
    expect(Number.isFinite(to)).toBe(true);
  });
});
