import type { AnyCalculator } from '../../calculators/define.ts';
import { calculators } from '../../calculators/index.ts';
import { unitFor } from '../../calculators/output-unit.ts';
import { plansOf, type Plan } from '../../calculators/practice/plan.ts';
import { demoWork } from '../calculator/demo-work.ts';
import { declared } from '../slots/content.ts';
import { know } from '../working/know.ts';
import { workingLines, type StepLines } from '../working/lines.ts';
import { linesOf } from './lines-of.ts';

/** What a page of practice tells its script, as JSON. */
export interface Sheet {
  readonly plans: readonly Plan[];
  /** How a value on the way is asked for, by `calculator.name`. */
  readonly values: Readonly<Record<string, ValueWords>>;
}

/** How a value of the working is asked for. */
export interface ValueWords {
  readonly symbol: string;
  /** What it is: a result's label, or how a value on the way is worked out. */
  readonly label: string;
  readonly unit: string;
  /** The unit on a sheet in inches. */
  readonly inch: string;
}

/** One calculator's part of a page of practice. */
export interface Part {
  readonly calculator: AnyCalculator;
  readonly plans: readonly Plan[];
  /** The printed lines of its working, those that lead to an answer. */
  readonly lines: readonly StepLines[];
}

const made = new Map<string, Part>();

/** The exercises of a calculator and the lines that lead to their answers. Build only; made once. */
export function partOf(calculator: AnyCalculator): Part {
  const known = made.get(calculator.id);
  if (known !== undefined) return known;
  const { baseline, candidate } = demoWork(calculator).sets;
  const plans = plansOf(calculator, linesOf(calculator));
  const wanted = new Set(plans.flatMap(({ way }) => way.map(({ of }) => of)));
  const lines = workingLines(calculator, {
    baseline: { ...baseline.input, ...baseline.output },
    candidate: { ...candidate.input, ...candidate.output },
  }).filter(({ of }) => wanted.has(of));
  const part: Part = { calculator, plans, lines };
  made.set(calculator.id, part);
  return part;
}

/** The parts of a topic, in the order of its calculators. Build only. */
export function partsOf(ids: readonly string[]): readonly Part[] {
  const declared: Readonly<Record<string, AnyCalculator>> = calculators;
  return ids.flatMap((id) => {
    const calculator = declared[id];
    return calculator === undefined ? [] : [partOf(calculator)];
  });
}

function valueWords(calculator: AnyCalculator, name: string): ValueWords {
  const { symbol, label, kind = 'ratio' } = know(calculator, name);
  const entry = declared(calculator, name);
  const step = calculator.steps.find(({ of }) => of === name);
  const shown = entry !== undefined && 'kind' in entry ? entry : undefined;
  const own = shown === undefined ? step?.units?.[kind] : unitFor(shown, 'metric');
  return {
    symbol,
    label,
    unit: own ?? unitFor({ kind }, 'metric'),
    inch: unitFor(shown ?? { kind }, 'inch'),
  };
}

/** What the script of a page with these calculators needs. */
export function sheetOf(parts: readonly Part[]): Sheet {
  const values = parts.flatMap(({ calculator, lines, plans }) =>
    [...new Set([...lines.map(({ of }) => of), ...plans.flatMap(({ told }) => told)])].map(
      (name) => [`${calculator.id}.${name}`, valueWords(calculator, name)] as const,
    ),
  );
  return { plans: parts.flatMap(({ plans }) => plans), values: Object.fromEntries(values) };
}
