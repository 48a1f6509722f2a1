import { describe, expect, it } from 'vitest';
import type { AnyCalculator, Entry, Result, SetId } from '../../../src/calculators/define.ts';
import { outputsOrNone, type InputValues } from '../../../src/calculators/evaluate.ts';
import { calculators } from '../../../src/calculators/index.ts';
import { plainWords } from '../../../src/calculators/plain-words.ts';
import {
  sharedInputs,
  propagate,
  type PropagatedOutputs,
} from '../../../src/calculators/uncertainty.ts';
import { difference, isShown, present } from '../../../src/components/results/present.ts';
import { slotContent } from '../../../src/components/slots/content.ts';
import { exampleOf } from '../../../src/notebook/example.ts';
import { evaluate } from '../../../src/notebook/evaluation.ts';
import type { System } from '../../../src/units/kinds.ts';
import { toSI } from '../../../src/units/units.ts';

/** What one set gives, as a page has it: nothing where the model refuses, or nothing was entered. */
interface Set {
  readonly input: InputValues;
  readonly output: Readonly<Record<string, Result>>;
  readonly plusMinus: PropagatedOutputs;
}
interface State {
  readonly name: string;
  readonly baseline: Set;
  readonly candidate: Set;
}
const nothing: Set = { input: {}, output: {}, plusMinus: {} };

function exampleSet(calculator: AnyCalculator, set: SetId): Set {
  const stored = (entry: Entry) =>
    exampleOf(entry.type !== 'list' && entry.common === true ? 'baseline' : set, entry);
  const evaluation = evaluate(calculator, stored);
  const { input, output } = evaluation;
  if (input === undefined || output === undefined)
    throw new Error(`${calculator.id} has no example`);
  return { input, output, plusMinus: propagate(calculator, input, evaluation.plusMinus) };
}

/** A set with one input at an end of its range; nothing where the model refuses it. */
function atEnd(calculator: AnyCalculator, set: Set, name: string, end: 0 | 1): Set {
  const entry = calculator.inputs[name];
  if (entry === undefined || entry.type === 'choice') return nothing;
  // A model that takes longer than a frame is not driven beyond the usual.
  const range = calculator.pace === 'idle' ? entry.usual : entry.hard;
  const value = toSI(range[end], entry.rangeUnit);
  const input = { ...set.input, [name]: entry.type === 'list' ? [value, value] : value };
  const output = outputsOrNone(calculator, input);
  return output === undefined ? nothing : { input, output, plusMinus: {} };
}

function statesOf(calculator: AnyCalculator): readonly State[] {
  const [baseline, candidate] = [
    exampleSet(calculator, 'baseline'),
    exampleSet(calculator, 'candidate'),
  ];
  const extremes = Object.keys(calculator.inputs).flatMap((name) =>
    ([0, 1] as const).map((end) => ({
      name: `${name} at the ${end === 0 ? 'least' : 'most'}`,
      baseline,
      candidate: atEnd(calculator, candidate, name, end),
    })),
  );
  return [
    { name: 'the example untouched', baseline, candidate },
    { name: 'the candidate equal to the baseline', baseline, candidate: baseline },
    { name: 'only the baseline', baseline, candidate: nothing },
    ...extremes,
  ];
}

const systems: readonly System[] = ['metric', 'inch'];
const all: readonly AnyCalculator[] = Object.values(calculators);
const numbers = (calculator: AnyCalculator) =>
  Object.entries(calculator.outputs).flatMap(([name, output]) =>
    isShown(output) ? [{ name, output }] : [],
  );

function comparisonOf(calculator: AnyCalculator, { baseline, candidate }: State) {
  if (baseline === nothing || candidate === nothing) return undefined;
  return calculator.compare?.({ baseline, candidate });
}

/** The sentences of the plain-words paragraph. */
function sentences(calculator: AnyCalculator, state: State, system: System): readonly string[] {
  const comparison = comparisonOf(calculator, state);
  const show = (name: string, si: number, plusMinus?: number): string => {
    const output = calculator.outputs[name] ?? calculator.comparisons?.[name];
    if (output === undefined || !isShown(output)) throw new Error(`${calculator.id}: ${name}`);
    return present(output, si, system, plusMinus);
  };
  return plainWords(
    calculator,
    {
      ...state,
      shared: sharedInputs(calculator, state.baseline.input, state.candidate.input),
      ...(comparison === undefined ? {} : { comparison }),
    },
    show,
  );
}

/** All cells of the results table. */
function cells(
  calculator: AnyCalculator,
  { baseline, candidate }: State,
  system: System,
): readonly string[] {
  return numbers(calculator).flatMap(({ name, output }) => [
    ...[baseline, candidate].map((set) =>
      typeof set.output[name] === 'number'
        ? present(output, set.output[name], system, set.plusMinus[name]?.plusMinus)
        : '',
    ),
    difference(
      output,
      { baseline: baseline.output[name], candidate: candidate.output[name] },
      system,
    ),
  ]);
}

/** Verbs that a phrase would bring where the sentence brings its own. */
const verbs =
  /\b(?:is|has|rises|falls|stays|comes|counts|weighs|passes|adds|presses|uses|leaves?|bends|makes|carries|gives)\b/u;
/** What begins a clause with a verb of its own. */
const clause = /\b(?:that|which|what|where|when|who)\b/iu;

/** What is wrong with the words of a sentence; nothing where they are right. */
function faultOfWords(sentence: string): string | undefined {
  const twice = /\b([a-z]+) \1\b/iu.exec(sentence);
  if (twice !== null) return `“${twice[0]}”`;
  if (/\b(?:by|with|of|as|on average|that|which) (?:rises|falls|stays)\b/u.test(sentence))
    return 'no subject before the verb';
  if (/\b(?:rises|falls)\b[^:;]*\b(?:rises|falls|stays)\b/u.test(sentence)) return 'two verbs';
  if (
    /, by (?:less than )?100\u00a0%/u.test(sentence) &&
    !/ to 0[\u00a0°,]/u.test(sentence) &&
    sentence.includes('falls')
  )
    return 'a loss of everything that is none';
  return undefined;
}

/** What is wrong with the digits of a text. */
function faultOfDigits(text: string): string | undefined {
  if (text.includes('(in in)')) return 'a unit taken for a word';
  // Below a part in 10⁹ of any unit here a number is the rounding of a sum.
  if (/10⁻(?:9|[1-9]\d)/u.test(text.replace(/[⁰¹²³⁴-⁹]/gu, (c) => String('⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(c)))))
    return 'rounding shown as a number';
  const isBesidePlusMinus = text.includes('±');
  for (const [number, unit = ''] of numbersIn(text)) {
    if (!isBesidePlusMinus && /\.\d*0$/u.test(number) && unit !== 'g')
      return `${number} ends on a false zero`;
    const figures = number.replace(/^[−0.]+|[.\u202f]/gu, '').replace(/0+$/u, '');
    // A length beside its ± may have the places of a micrometer: 105.994 ± 0.003 mm.
    const most = ['rpm', 'g', 'mm', 'in'].includes(unit) || isBesidePlusMinus ? 6 : 5;
    if (figures.length > most) return `${number} claims ${figures.length} figures`;
  }
  return undefined;
}

/** The numbers of a text, each with the word behind it. */
function numbersIn(text: string): readonly (readonly [string, string | undefined])[] {
  return [...text.matchAll(/(−?[\d\u202f]*\.?\d+)(?:\u00a0([^\s,.;]+))?/gu)].map(
    ([, number = '', unit]) => [number, unit],
  );
}

describe.each(all.map((calculator) => [calculator.id, calculator] as const))(
  '%s',
  (_, calculator) => {
    const states = statesOf(calculator);

    it('has phrases that bring no verb of their own', () => {
      const faults = numbers(calculator)
        .map(({ output }) => output.phrase ?? '')
        .concat(Object.values(calculator.comparisons ?? {}).map(({ phrase }) => phrase ?? ''))
        .filter(
          (phrase) =>
            verbs.test(phrase.split(clause)[0] ?? '') || /\b(?:that|which|by|with)$/u.test(phrase),
        );
      expect(faults).toEqual([]);
    });

    it('says “it” only of what the sentence before was about', () => {
      const told = numbers(calculator).filter(({ output }) => output.phrase !== undefined);
      const inOrder = [
        ...told.filter(({ output }) => output.main),
        ...told.filter(({ output }) => !output.main),
      ];
      const faults = inOrder.filter(({ output }, place) => {
        const before = inOrder[place - 1]?.output;
        return (
          /\bit$/iu.test(output.phrase ?? '') &&
          (before === undefined || before.kind !== output.kind)
        );
      });
      expect(faults.map(({ output }) => output.phrase)).toEqual([]);
    });

    it.each(systems)('writes sentences that can be read aloud, in every state (%s)', (system) => {
      for (const state of states)
        for (const sentence of sentences(calculator, state, system)) {
          expect(faultOfWords(sentence), `${state.name}: ${sentence}`).toBeUndefined();
          expect(faultOfDigits(sentence), `${state.name}: ${sentence}`).toBeUndefined();
        }
    });

    it.each(systems)(
      'writes results whose digits mean something, in every state (%s)',
      (system) => {
        for (const state of states)
          for (const cell of cells(calculator, state, system))
            expect(faultOfDigits(cell), `${state.name}: ${cell}`).toBeUndefined();
      },
    );

    it.each(systems)('finds no difference between a set and itself (%s)', (system) => {
      const same = states[1];
      if (same === undefined) throw new Error('there is no such state');
      for (const { name, output } of numbers(calculator))
        if (typeof same.baseline.output[name] === 'number')
          expect(
            difference(
              output,
              { baseline: same.baseline.output[name], candidate: same.candidate.output[name] },
              system,
            ),
          ).toBe('none');
      for (const sentence of sentences(calculator, same, system))
        expect(sentence).not.toMatch(/ (?:rises|falls) from /u);
    });

    it.each(systems)('prints a result in prose with the digits of the table (%s)', (system) => {
      const { baseline } = states[0] ?? { baseline: nothing };
      for (const { name, output } of numbers(calculator)) {
        const result = baseline.output[name];
        if (typeof result !== 'number') continue;
        const plusMinus = baseline.plusMinus[name]?.plusMinus;
        const inProse = slotContent(
          {},
          name,
          calculator,
          baseline.output,
          system,
          baseline.plusMinus,
        );
        const inTable = present(output, result, system, plusMinus).replace(/ ± [^\u00a0°]*/u, '');
        expect(inProse, name).toBe(inTable);
      }
    });

    it('speaks of sizes that a shop speaks of', () => {
      const { baseline } = states[0] ?? { baseline: nothing };
      for (const system of systems)
        for (const { name, output } of numbers(calculator)) {
          const result = baseline.output[name];
          if (typeof result !== 'number') continue;
          const text = present(output, result, system);
          // A hundred thousand bar is a modulus in the wrong unit.
          if (/(?:bar|psi|MPa)$/u.test(text)) expect(text, name).not.toMatch(/\d{2,}\u202f\d{3}/u);
        }
    });
  },
);

it('gives a bobweight and its half alike', () => {
  const { bobweight } = calculators;
  for (const grams of [1967.6, 1685.2, 1233.1, 988.3]) {
    const whole = present(bobweight.outputs.bobweight, grams / 1e3, 'metric');
    const half = present(bobweight.outputs.halfBobweight, grams / 2e3, 'metric');
    expect(Math.abs(2 * Number.parseFloat(half) - Number.parseFloat(whole))).toBeLessThan(0.11);
    expect(half).toMatch(/\.\d\u00a0g$/u);
    expect(whole).toMatch(/\.\d\u00a0g$/u);
  }
});

it('gives the misfit of ends that fit as nothing', () => {
  const weighing: AnyCalculator = calculators['rod-weighing'];
  const { input } = exampleSet(weighing, 'baseline');
  const ends = { bigEndReadings: [0.4212], smallEndReadings: [0.1708], rodMass: 0.592 };
  const { closure } = weighing.compute({ ...input, ...ends });
  const output = weighing.outputs['closure'];
  if (output === undefined || !isShown(output)) throw new Error('there is no misfit');
  expect(present(output, closure, 'metric')).toBe('0\u00a0g');
});

describe('the rules', () => {
  it.each([
    'At most the pressure falls short of the cylinder’s by falls from 1\u00a0bar to 2\u00a0bar.',
    'Over the power stroke gas adds on average rises from 1\u00a0bar to 2\u00a0bar.',
    'The clearance clearance stays at 1\u00a0mm.',
    'It falls from 51.46\u00a0bar to 0.2332\u00a0bar, by 100\u00a0%.',
  ])('find fault with the words of “%s”', (sentence) => {
    expect(faultOfWords(sentence)).toBeDefined();
  });
  it.each([
    '−1.110\u00a0×\u00a010⁻¹³\u00a0g',
    '0.002800\u00a0in',
    '82.55012°',
    '20\u202f606.53\u00a0m/s²',
    '[mm] (in in)',
  ])('find fault with the digits of “%s”', (text) => {
    expect(faultOfDigits(text)).toBeDefined();
  });
  it.each([
    '1685.0\u00a0g',
    '10\u202f599\u00a0rpm',
    '0.0280 ± 0.0005\u00a0in',
    '35\u202f300 ± 600\u00a0m/s²',
    '100\u00a0%',
  ])('leave “%s” alone', (text) => {
    expect(faultOfDigits(text)).toBeUndefined();
  });
});
