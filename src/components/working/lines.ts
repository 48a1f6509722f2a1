import type { Step, Why } from '../../calculators/step.ts';
import type { AnyCalculator, SetId } from '../../calculators/define.ts';
import { caseHtml, slotHtml } from '../slots/slot-html.ts';
import { valueOnTheWay } from '../slots/on-the-way.ts';
import { declared, type SlotValues } from '../slots/content.ts';
import { applies, casesOf, symbolsIn } from './cases.ts';
import { know, type Known, optionsOf, unitIn } from './know.ts';
import { mathML } from './mathml.ts';
import { numbersHtml } from './numbers.ts';
import { type Expression, parseFormula } from './parse.ts';
import { toPostfix } from './postfix.ts';
import { expressionTex, questionable, symbolTex } from './tex.ts';
import { mark, marksIn } from './uses.ts';

export const setIds = ['baseline', 'candidate'] as const satisfies readonly SetId[];

/** Figures of the numbers put into a formula: one more than the result shows, so that it can be worked again. */
const workingFigures = '5';

/** A symbol that a step uses, as its list explains it. */
export interface StepSymbol {
  readonly name: string;
  readonly symbol: string;
  /** MathML of the symbol alone. */
  readonly math: string;
  readonly label: string;
  /** The Symbols page explains it. */
  readonly inDictionary: boolean;
}

/** One step ready for the page. */
export interface StepLines {
  readonly of: string;
  readonly label: string;
  /** MathML of the whole line of symbols. */
  readonly formula: string;
  readonly say: string;
  readonly source: string | undefined;
  /** Why it has no formula, where it has none. */
  readonly why: Why | undefined;
  /** HTML of the line of numbers, behind its equals sign; absent for a step that has no formula. */
  readonly numbers: Readonly<Record<SetId, string | undefined>>;
  /** HTML of the result alone; absent for a value on the way that no expression gives. */
  readonly result: Readonly<Record<SetId, string | undefined>>;
  readonly symbols: readonly StepSymbol[];
}

/** The values of one set, to which each step adds the value on the way that it works out. */
type Values = Record<string, SlotValues[string]>;

/** A step of a calculator with its formula read, and the marks of its own result. */
interface Line {
  readonly calculator: AnyCalculator;
  readonly step: Step;
  readonly expression: Expression | undefined;
  readonly own: Known;
  /** It works out no output. */
  readonly isOnTheWay: boolean;
  /** The unit of the result, where it has one of its own. */
  readonly unit: string | undefined;
}

function lineOf(calculator: AnyCalculator, step: Step): Line {
  const own = know(calculator, step.of);
  return {
    calculator,
    step,
    expression: step.formula === undefined ? undefined : parseFormula(step.formula),
    own,
    isOnTheWay: declared(calculator, step.of) === undefined,
    unit: own.kind === undefined ? undefined : unitIn(step, own.kind),
  };
}

function texOf({ calculator, step, expression, own }: Line): string {
  if (expression !== undefined) {
    const right = expressionTex(expression, {
      symbolOf: (name) => know(calculator, name).symbol,
      optionsOf: (choice) => optionsOf(calculator, choice),
    });
    return `${questionable(step.of, own.symbol)}=${right}`;
  }
  if (step.tex === undefined)
    throw new Error('it has neither a formula nor tex(…): give it one of them');
  const marked = step.tex.text.replace(mark, (_, name: string) =>
    questionable(name, know(calculator, name).symbol),
  );
  if (marksIn(step).includes(step.of)) return marked;
  throw new Error(`its TeX must show its own symbol as \\q{${step.of}}`);
}

function postfixOf({ calculator }: Line, expression: Expression): string {
  return toPostfix(expression, (name) => know(calculator, name).isOptional);
}

/** HTML of the numbers in the place of a formula's symbols; of a choice between cases, all, and one is shown. */
function numbersOf(line: Line, expression: Expression, set: SetId, values: Values): string {
  const { calculator, step, unit } = line;
  const cases = casesOf(expression);
  if (cases.length > 0)
    return cases
      .map(({ of }, place) => {
        const shown = postfixOf(line, applies(expression, place));
        const inside = numbersOf(line, of, set, values);
        return caseHtml(inside, shown, { name: step.of, set }, calculator, values);
      })
      .join('');
  return numbersHtml(
    expression,
    set,
    (name) => {
      const { kind = 'ratio', isList, isOptional } = know(calculator, name);
      return { unit: unitIn(step, kind), isList, isOptional };
    },
    ({ name, unit, guarded, zero }, tag) => {
      const marks = {
        figures: workingFigures,
        guarded: guarded ? '' : undefined,
        zero: zero ? '' : undefined,
        brief: '',
      };
      return slotHtml({ name, set, unit, ...marks }, calculator, values, tag);
    },
    unit === 'deg' ? '180°' : 'π',
  );
}

/** HTML of the line of numbers up to its result; nothing where a result that may not exist does not. */
function lineOfNumbers(line: Line, expression: Expression, set: SetId, values: Values): string {
  const { calculator, step } = line;
  const html = `= ${numbersOf(line, expression, set, values)}`;
  if (calculator.outputs[step.of]?.type !== 'maybe') return html;
  return caseHtml(html, `=${step.of} given`, { name: step.of, set }, calculator, values);
}

/** HTML of a line's result; an output that a formula gives is repeated in the reader's own unit. */
function resultOf(line: Line, set: SetId, values: Values, postfix: string | undefined): string {
  const { calculator, expression, isOnTheWay, unit } = line;
  const { of: name } = line.step;
  if (isOnTheWay) {
    const marks = { unit, figures: workingFigures, brief: '', postfix };
    return slotHtml({ name, set, ...marks }, calculator, values);
  }
  if (expression === undefined || unit === undefined)
    return slotHtml({ name, set, figures: workingFigures, brief: '' }, calculator, values);
  return (
    slotHtml({ name, set, unit, figures: workingFigures, brief: '' }, calculator, values) +
    slotHtml({ name, set, also: unit, figures: workingFigures, brief: '' }, calculator, values)
  );
}

/** Both lines of one set. A value on the way is worked first, for this line and those after it. */
function setLines(
  line: Line,
  set: SetId,
  values: Values,
): { readonly numbers: string | undefined; readonly result: string | undefined } {
  const { expression, isOnTheWay, step } = line;
  if (expression === undefined)
    return {
      numbers: undefined,
      result: isOnTheWay ? undefined : resultOf(line, set, values, undefined),
    };
  const postfix = isOnTheWay ? postfixOf(line, expression) : undefined;
  if (postfix !== undefined) values[step.of] = valueOnTheWay(postfix, values);
  return {
    numbers: lineOfNumbers(line, expression, set, values),
    result: resultOf(line, set, values, postfix),
  };
}

function symbolsOf({ calculator, step, expression }: Line): readonly StepSymbol[] {
  const names = expression === undefined ? marksIn(step) : symbolsIn(expression);
  return [...new Set([step.of, ...names])].map((name) => {
    const { symbol, label } = know(calculator, name);
    return {
      name,
      symbol,
      math: mathML(symbolTex(symbol), false),
      label,
      inDictionary: (calculator.inputs[name]?.type ?? 'choice') !== 'choice',
    };
  });
}

/**
 * The working of a calculator, step by step, made once at build: the line of symbols from the step's own
 * formula, and for each set the line of numbers with slots that the page's script fills again.
 *
 * @param sets inputs and outputs in SI of the numbers the page opens with
 * @throws Error naming calculator and step when a formula uses what is not declared or cannot be printed
 */
export function workingLines(
  calculator: AnyCalculator,
  sets: Readonly<Record<SetId, SlotValues>>,
): readonly StepLines[] {
  const values = { baseline: { ...sets.baseline }, candidate: { ...sets.candidate } };

  function printed(step: Step): StepLines {
    const line = lineOf(calculator, step);
    const baseline = setLines(line, 'baseline', values.baseline);
    const candidate = setLines(line, 'candidate', values.candidate);
    return {
      of: step.of,
      label: line.isOnTheWay ? '' : line.own.label,
      formula: mathML(texOf(line), true),
      say: step.say,
      source: step.source,
      why: step.tex?.why,
      numbers: { baseline: baseline.numbers, candidate: candidate.numbers },
      result: { baseline: baseline.result, candidate: candidate.result },
      symbols: symbolsOf(line),
    };
  }
  return calculator.steps.map((step) => {
    try {
      return printed(step);
    } catch (error) {
      const what = error instanceof Error ? error.message : String(error);
      throw new Error(`${calculator.id}, step "${step.of}": ${what}`, { cause: error });
    }
  });
}
