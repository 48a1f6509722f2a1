import { describe, expect, test } from 'vitest';
import type { AnyCalculator } from '../../../src/calculators/define.ts';
import { calculators } from '../../../src/calculators/index.ts';
import { workPostfix } from '../../../src/components/slots/postfix.ts';
import { noNumber, slotContent, slotText } from '../../../src/components/slots/slots.ts';
import {
  stripAxis,
  stripPlace,
  stripSize,
  stripWords,
} from '../../../src/components/evidence/strips.ts';
import { numbersHtml } from '../../../src/components/working/numbers.ts';
import { parseFormula } from '../../../src/components/working/parse.ts';
import { expressionTex, symbolTex } from '../../../src/components/working/tex.ts';

const bobweight: AnyCalculator = calculators.bobweight;

describe('the text of a slot', () => {
  test.each([
    [0.4212, 'g', {}, '421.2\u00a0g'],
    [0.4212, 'g', { figures: 6, brief: true }, '421.2\u00a0g'],
    [-0.003, 'mm', { guarded: true }, '(−3.000\u00a0mm)'],
    [-0.003, 'mm', { guarded: false }, '−3.000\u00a0mm'],
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
    expect(slotContent({}, 'stroke', motion, values, 'metric')).toBe('50.80\u00a0mm');
    expect(slotContent({}, 'stroke', motion, values, 'inch')).toBe('2.000\u00a0in');
    expect(slotContent({ unit: 'm' }, 'stroke', motion, values, 'inch')).toBe('0.05080\u00a0m');
    expect(slotContent({ also: 'mm' }, 'stroke', motion, values, 'metric')).toBe('');
    expect(slotContent({ also: 'mm' }, 'stroke', motion, values, 'inch')).toBe(' = 2.000\u00a0in');
  });

  test('what may be left out counts as nothing where the formula says so, and is missing elsewhere', () => {
    expect(slotContent({ zero: '' }, 'partnerRotating', bobweight, { x: 1 }, 'metric')).toContain(
      '0',
    );
    expect(slotContent({}, 'partnerRotating', bobweight, { x: 1 }, 'metric')).toBe(noNumber);
  });
});

describe('postfix', () => {
  const values: Readonly<Record<string, number | readonly number[]>> = {
    a: 3,
    b: 4,
    list: [1, 2, 6],
  };
  test.each([
    ['=a 2 ^ =b 2 ^ + sqrt', 5],
    ['=list mean:1', 3],
    ['=list sum:1 =a max:2', 9],
    ['=a neg =b /', -0.75],
    ['=missing 1 +', undefined],
    ['=a 0 /', undefined],
  ])('%s', (line, answer) => {
    expect(workPostfix(line, (name) => values[name])).toBe(answer);
  });
});

describe('the line of symbols', () => {
  test.each([
    ['m_piston', '{m}_{\\text{piston}}'],
    ['θ', '\\theta '],
    ['Δm_f', '{\\Delta m}_{\\text{f}}'],
    ['CR', '\\text{CR}'],
  ])('%s', (symbol, tex) => {
    expect(symbolTex(symbol)).toBe(tex);
  });
  test('brackets grow only round what is tall', () => {
    const tex = (formula: string) => expressionTex(parseFormula(formula), (name) => name);
    expect(tex('2 * (a + b)')).not.toContain('\\left');
    expect(tex('2 * (a / b)^2')).toContain('\\left(\\frac');
  });
  test('refuses what it cannot print, naming the formula', () => {
    expect(() => parseFormula('a > b ? a : b')).toThrow(/a > b/u);
    expect(() => parseFormula('gamma(a)')).toThrow(/calls gamma/u);
  });
});

describe('the line of numbers', () => {
  function line(formula: string): string {
    return numbersHtml(
      parseFormula(formula),
      'baseline',
      (name) => ({ unit: name === 'n' ? 'count' : 'mm', isList: false, isOptional: false }),
      ({ name, guarded }, tag) => `<${tag}${guarded ? ' guarded' : ''}>${name}</${tag}>`,
    );
  }
  test.each([
    // A product is written with its sign; what stands behind a sign is bracketed when negative.
    ['a * b', '<span>a</span> × <span guarded>b</span>'],
    ['a - (b + c)', '<span>a</span> − (<span>b</span> + <span guarded>c</span>)'],
    // The brackets of a power hold number and unit together.
    ['a * b^2', '<span>a</span> × (<span>b</span>)<sup>2</sup>'],
    ['(a + b)^2', '(<span>a</span> + <span guarded>b</span>)<sup>2</sup>'],
    // A short quotient is a fraction, a long one a line.
    [
      'a / b',
      '<math displaystyle="true"><mfrac><mrow><mtext>a</mtext></mrow><mrow><mtext>b</mtext></mrow></mfrac></math>',
    ],
    [
      '(a + b + c) / d',
      '(<span>a</span> + <span guarded>b</span> + <span guarded>c</span>) / (<span>d</span>)',
    ],
    ['abs(a)', '|<span>a</span>|'],
    ['-a', '−<span guarded>a</span>'],
  ])('%s', (formula, html) => {
    expect(line(formula)).toBe(html);
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
