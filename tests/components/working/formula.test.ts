import { describe, expect, test } from 'vitest';
import { applies, casesOf, symbolsIn } from '../../../src/components/working/cases.ts';
import { numbersHtml } from '../../../src/components/working/numbers.ts';
import { parseFormula } from '../../../src/components/working/parse.ts';
import { toPostfix } from '../../../src/components/working/postfix.ts';
import { expressionTex, symbolTex } from '../../../src/components/working/tex.ts';

describe('the line of symbols', () => {
  test.each([
    ['m_piston', '{m}_{\\text{piston}}'],
    ['θ', '\\theta '],
    ['Δm_f', '{\\Delta m}_{\\text{f}}'],
    ['CR', '\\text{CR}'],
  ])('%s', (symbol, tex) => {
    expect(symbolTex(symbol)).toBe(tex);
  });
  const meaning = {
    symbolOf: (name: string) => name,
    optionsOf: (choice: string) =>
      choice === 'rig'
        ? { two: 'two wires', three: 'three wires', edge: 'a knife edge' }
        : { i: 'an I', h: 'an H' },
  };
  const tex = (formula: string): string =>
    expressionTex(parseFormula(formula), meaning).replace(/\\href\{#q:\w+\}/gu, '');
  test('brackets grow only round what is tall', () => {
    expect(tex('2 * (a + b)')).not.toContain('\\left');
    expect(tex('2 * (a / b)^2')).toContain('\\left(\\frac');
  });
  test.each([
    // The option in the words of its choice; of two, the other's own words stand for what is left.
    ['when(shape == "i", a, b)', '{a}&\\text{an I}\\\\{b}&\\text{an H}'],
    [
      'when(rig == "edge", a, when(rig == "two", b, c))',
      '{a}&\\text{a knife edge}\\\\{b}&\\text{two wires}\\\\{c}&\\text{three wires}',
    ],
    ['when(rig == "edge", a, b)', '{a}&\\text{a knife edge}\\\\{b}&\\text{otherwise}'],
    ['when(a < b, a, b)', '{a}&{a}<{b}\\\\{b}&{a}\\ge {b}'],
    ['when(a <= 2, a, b)', '{a}&{a}\\le 2\\\\{b}&{a}>2'],
    ['when(given(a), a, b)', '{a}&{a}\\text{ given}\\\\{b}&{a}\\text{ not given}'],
    ['when(a < b, a, when(b < c, b, c))', '{a}&{a}<{b}\\\\{b}&{b}<{c}\\\\{c}&\\text{otherwise}'],
  ])('%s is a brace with its cases', (formula, cases) => {
    expect(tex(formula)).toBe(`\\begin{dcases}${cases}\\end{dcases}`);
  });
  test.each([
    ['1 - exp(-a)', '1-\\mathrm{e}^{-{a}}'],
    ['ln(1 / a)', '\\ln\\left(\\frac{1}{{a}}\\right)'],
    // The definition of a standard deviation, not its name.
    ['sqrt(squares(m, a) / (n - 1))', '\\sqrt{\\frac{\\sum_{i}{({m}-{a})}^{2}}{{n}-1}}'],
  ])('%s', (formula, printed) => {
    expect(tex(formula)).toBe(printed);
  });
  test.each([
    ['a > b ? a : b', /a > b/u],
    ['gamma(a)', /calls gamma/u],
    ['when(a > b, a, b)', /decides by "a > b"; a working decides by/u],
    ['when(shape == other, a, b)', /decides by "shape == other"/u],
    ['max(a, 1e-9)', /holds 1e-9/u],
  ])('refuses %s, which it cannot print, naming what is wrong', (formula, what) => {
    expect(() => parseFormula(formula)).toThrow(what);
  });
  test('refuses a brace inside a larger formula, and an option that the choice does not have', () => {
    expect(() => tex('2 * when(a < b, a, b)')).toThrow(/only as a whole formula/u);
    expect(() => tex('when(shape == "I", a, b)')).toThrow(/shape has no option "I"; it has i, h/u);
  });
  test('a choice stands in words and not as a symbol', () => {
    const formula = parseFormula('when(shape == "i", a, when(b < c, given, d))');
    expect(symbolsIn(formula)).toEqual(['a', 'b', 'c', 'given', 'd']);
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
    ['1 - exp(-a)', '1 − e<sup>−<span guarded>a</span></sup>'],
    ['squares(list, a)', 'Σ((<span>list</span>) − <span guarded>a</span>)<sup>2</sup>'],
  ])('%s', (formula, html) => {
    expect(line(formula)).toBe(html);
  });
});

describe('the postfix line', () => {
  function postfix(formula: string): string {
    return toPostfix(parseFormula(formula), (name) => name === 'spare');
  }
  test.each([
    ['(a + 2) * -b', '=a 2 + =b neg *'],
    ['max(a, mean(list))', '=a =list mean:1 max:2'],
    // What the reader may leave out counts as nothing, but is asked for as it is.
    ['a + spare', '=a =spare 0 or +'],
    ['when(given(spare), spare, a)', '=spare given =spare 0 or =a when'],
    [
      'when(rig == "knife-edge", a, when(a <= b, b, 0))',
      'rig=knife-edge =a =a =b atMost =b 0 when when',
    ],
  ])('%s', (formula, line) => {
    expect(postfix(formula)).toBe(line);
  });

  test('says of each case whether it applies', () => {
    const formula = parseFormula('when(a < b, a, when(b < c, b, c))');
    const lines = casesOf(formula).map((_, place) =>
      toPostfix(applies(formula, place), () => false),
    );
    expect(lines).toEqual([
      '=a =b below 1 =b =c below 0 0 when when',
      '=a =b below 0 =b =c below 1 0 when when',
      '=a =b below 0 =b =c below 0 1 when when',
    ]);
  });
});
