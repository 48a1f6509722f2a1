import type { Step } from '../../calculators/step.ts';
import type { AnyCalculator, SetId } from '../../calculators/define.ts';
import type { Kind } from '../../units/kinds.ts';
import { declared, valueOnTheWay, type SlotValues } from '../slots/slots.ts';
import { mathML } from './mathml.ts';
import { numbersHtml } from './numbers.ts';
import { type Expression, namesIn, parseFormula } from './parse.ts';
import { toPostfix } from './postfix.ts';
import { slotHtml } from '../slots/slot-html.ts';
import { expressionTex, questionable, symbolTex } from './tex.ts';

export const setIds = ['baseline', 'candidate'] as const satisfies readonly SetId[];

/** Figures of the numbers put into a formula: one more than the result shows, so that it can be worked again. */
const workingFigures = '5';

/** The units a formula's numbers stand in unless the step names others: coherent, but angles in degrees. */
const coherent: Readonly<Record<Kind, string>> = {
  length: 'm',
  area: 'm2',
  volume: 'm3',
  secondMoment: 'm4',
  mass: 'kg',
  density: 'kg/m3',
  unbalance: 'kgm',
  inertia: 'kgm2',
  angle: 'deg',
  angularSpeed: 'rad/s',
  angularAcceleration: 'rad/s2',
  speed: 'm/s',
  acceleration: 'm/s2',
  force: 'N',
  torque: 'Nm',
  energy: 'J',
  power: 'W',
  specificEnergy: 'J/kg',
  pressure: 'Pa',
  viscosity: 'm2/s',
  temperature: 'K',
  expansion: 'perK',
  time: 's',
  ratio: 'ratio',
  count: 'count',
};

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
  /** HTML of the line of numbers with its result; absent for a step that is no expression. */
  readonly numbers: Readonly<Record<SetId, string | undefined>>;
  /** HTML of the result alone; absent for a value on the way that no expression gives. */
  readonly result: Readonly<Record<SetId, string | undefined>>;
  readonly symbols: readonly StepSymbol[];
}

interface Known {
  readonly symbol: string;
  readonly label: string;
  readonly kind: Kind | undefined;
  readonly isList: boolean;
  readonly isOptional: boolean;
}

/** What a name means to a calculator's working. Throws, naming both, when it is not declared. */
function know(calculator: AnyCalculator, name: string): Known {
  const entry = declared(calculator, name);
  const step = calculator.steps.find(({ of }) => of === name);
  if (entry === undefined && step === undefined)
    throw new Error(`${calculator.id}: a step uses "${name}", which is not declared`);
  if (entry === undefined) {
    if (step?.symbol === undefined)
      throw new Error(
        `${calculator.id}: the step of "${name}" needs a symbol and a kind of its own`,
      );
    return {
      symbol: step.symbol,
      label: step.say,
      kind: step.kind ?? 'ratio',
      isList: false,
      isOptional: false,
    };
  }
  const whole = entry as { readonly symbol: string; readonly label: string };
  return {
    symbol: whole.symbol,
    label: whole.label,
    kind: 'kind' in entry ? entry.kind : undefined,
    isList: 'type' in entry && entry.type === 'list',
    isOptional: 'optional' in entry && entry.optional === true,
  };
}

function unitIn(step: Step, kind: Kind): string {
  return step.units?.[kind] ?? coherent[kind];
}

/** The formula of a step, and the names it uses; a step in TeX may mark a symbol as `\q{name}`. */
function read(step: Step): { expression?: Expression; names: readonly string[] } {
  if (step.formula !== undefined) {
    const expression = parseFormula(step.formula);
    return { expression, names: namesIn(expression) };
  }
  const marks = [...(step.tex ?? '').matchAll(/\\q\{([A-Za-z][A-Za-z0-9]*)\}/gu)];
  return { names: [...new Set(marks.map(([, name]) => name ?? ''))] };
}

function texOf(step: Step, calculator: AnyCalculator, expression: Expression | undefined): string {
  const left = questionable(step.of, know(calculator, step.of).symbol);
  if (expression !== undefined)
    return `${left}=${expressionTex(expression, (name) => know(calculator, name).symbol)}`;
  if (step.tex === undefined)
    throw new Error(`${calculator.id}: the step of "${step.of}" has neither formula nor tex`);
  const marked = step.tex.replace(/\\q\{([A-Za-z][A-Za-z0-9]*)\}/gu, (_, name: string) =>
    questionable(name, know(calculator, name).symbol),
  );
  // A statement whose left side is the result's own symbol gets the one that can be questioned.
  const ownLeft = /^\s*[^=+\-/]+?=/u.exec(marked)?.[0];
  if (ownLeft !== undefined && !ownLeft.includes('\\frac'))
    return `${left}=${marked.slice(ownLeft.length)}`;
  return marked.includes('=') ? marked : `${left}=${marked}`;
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
  const values: Record<SetId, Record<string, SlotValues[string]>> = {
    baseline: { ...sets.baseline },
    candidate: { ...sets.candidate },
  };
  return calculator.steps.map((step) => {
    const { expression, names } = read(step);
    const own = know(calculator, step.of);
    const isOnTheWay = declared(calculator, step.of) === undefined;
    const postfix = isOnTheWay && expression !== undefined ? toPostfix(expression) : undefined;

    function lines(set: SetId): { numbers: string | undefined; result: string | undefined } {
      if (isOnTheWay && postfix === undefined) return { numbers: undefined, result: undefined };
      if (postfix !== undefined)
        values[set][step.of] = valueOnTheWay(postfix, calculator, values[set]);
      const unit = own.kind === undefined ? undefined : unitIn(step, own.kind);
      const also =
        isOnTheWay || unit === undefined || expression === undefined
          ? ''
          : slotHtml({ name: step.of, set, also: unit, figures: '4' }, calculator, values[set]);
      const result =
        slotHtml(
          {
            name: step.of,
            set,
            unit: expression === undefined && !isOnTheWay ? undefined : unit,
            figures: isOnTheWay ? workingFigures : '4',
            brief: isOnTheWay ? '' : undefined,
            postfix,
          },
          calculator,
          values[set],
        ) + also;
      if (expression === undefined) return { numbers: undefined, result };
      const numbers = numbersHtml(
        expression,
        set,
        (name) => {
          const { kind = 'ratio', isList, isOptional } = know(calculator, name);
          return { unit: unitIn(step, kind), isList, isOptional };
        },
        ({ name, unit, guarded, zero }, tag) =>
          slotHtml(
            {
              name,
              set,
              unit,
              figures: workingFigures,
              guarded: guarded ? '' : undefined,
              zero: zero ? '' : undefined,
              brief: '',
            },
            calculator,
            values[set],
            tag,
          ),
        unit === 'deg' ? '180°' : 'π',
      );
      return { numbers, result };
    }

    const [baseline, candidate] = [lines('baseline'), lines('candidate')];
    return {
      of: step.of,
      label: isOnTheWay ? '' : own.label,
      formula: mathML(texOf(step, calculator, expression), true),
      say: step.say,
      source: step.source,
      numbers: { baseline: baseline.numbers, candidate: candidate.numbers },
      result: { baseline: baseline.result, candidate: candidate.result },
      symbols: [...new Set([step.of, ...names])].map((name) => {
        const { symbol, label } = know(calculator, name);
        return {
          name,
          symbol,
          math: mathML(symbolTex(symbol), false),
          label,
          inDictionary: (calculator.inputs[name]?.type ?? 'choice') !== 'choice',
        };
      }),
    };
  });
}
