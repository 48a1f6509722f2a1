import type { AnyCalculator } from '../../calculators/define.ts';
import { nextVariant, type Task, type Variant } from '../../calculators/practice/variants.ts';
import type { Plan } from '../../calculators/practice/plan.ts';
import { wayTo } from '../../calculators/practice/way.ts';
import { demoWork } from '../calculator/demo-work.ts';
import { partsOf } from '../practice/sheet.ts';
import { slotContent } from '../slots/content.ts';
import { workingLines, type StepLines, type StepSymbol } from '../working/lines.ts';

/** A symbol of a handout; inputs with what the example has of them. */
export interface HandoutSymbol extends StepSymbol {
  readonly value: string | undefined;
}

/** What a handout prints of a topic's first calculator. */
export interface HandoutText {
  readonly calculator: AnyCalculator;
  /** The lines that give the main answers. */
  readonly formulas: readonly StepLines[];
  /** The lines of one answer, its own last. */
  readonly worked: readonly StepLines[];
  readonly symbols: readonly HandoutSymbol[];
}

/** The seed of the exercises that every handout prints; the key is the exercise sheet's of this seed. */
export const handoutSeed = 1;
/** As many exercises as the second side has room for; as many of them also where none is short. */
const mostTasks = 4;
const fewestTasks = 3;
/** More numbers than that are no short exercise; and no more than that of all exercises together. */
const mostNumbers = 12;
const mostInAll = 24;
/** A longer working is no case to follow on paper. */
const mostLines = 9;

/** The main answers that one line of the working gives. */
function mainLines({ answers, outputs }: AnyCalculator, lines: readonly StepLines[]) {
  const isMain = (name: string): boolean => {
    const output = outputs[name];
    return output !== undefined && 'main' in output && output.main === true;
  };
  return answers
    .filter(isMain)
    .flatMap((name) => lines.find(({ of, formula }) => of === name && formula !== '') ?? []);
}

/** The working of the first main answer, else the first exercise, that can be followed on paper. */
function workedCase(calculator: AnyCalculator, lines: readonly StepLines[]): readonly StepLines[] {
  const { ask, also = [] } = calculator.exercise;
  const exercises = also.filter(({ kind }) => kind === 'number').map((each) => each.ask);
  const ways = lines.map((line) => ({
    line,
    of: line.of,
    uses: line.symbols.map(({ name }) => name).filter((name) => name !== line.of),
  }));
  for (const asked of [...mainLines(calculator, lines).map(({ of }) => of), ask, ...exercises]) {
    const way = wayTo(asked, ways).map(({ line }) => line);
    const isWorked = way.every(({ numbers }) => numbers.baseline !== undefined);
    if (way.length > 0 && way.length <= mostLines && isWorked) return way;
  }
  return [];
}

/** What the handout of a topic says of its first calculator, with the numbers of the example's baseline. */
export function handoutOf(calculator: AnyCalculator): HandoutText {
  const { baseline, candidate } = demoWork(calculator).sets;
  const values = { ...baseline.input, ...baseline.output };
  const lines = workingLines(calculator, {
    baseline: values,
    candidate: { ...candidate.input, ...candidate.output },
  });
  const formulas = mainLines(calculator, lines);
  const worked = workedCase(calculator, lines);
  const named = new Map<string, StepSymbol>();
  const shown = new Set([...formulas, ...worked]);
  // The sentence of its own line says what a value on the way is.
  const told = new Set([...shown].filter(({ label }) => label === '').map(({ of }) => of));
  for (const { symbols } of shown)
    for (const symbol of symbols)
      if (!named.has(symbol.name) && !told.has(symbol.name)) named.set(symbol.name, symbol);
  const symbols = [...named.values()].map((symbol) => {
    const isGiven =
      Object.hasOwn(calculator.inputs, symbol.name) && values[symbol.name] !== undefined;
    const value = isGiven ? slotContent({}, symbol.name, calculator, values, 'metric') : undefined;
    return { ...symbol, value };
  });
  return { calculator, formulas, worked, symbols };
}

/** How many numbers an exercise states. */
function numbersOf({ given, fixed, told }: Plan): number {
  return Object.keys(given).length + fixed.length + told.length;
}

/** The short ones of the exercises that need no curve, in their order. */
function shortOnes(tasks: readonly Task[]): readonly Task[] {
  const [...byLength] = tasks.filter(({ plan }) => plan.kind !== 'read');
  byLength.sort((one, other) => numbersOf(one.plan) - numbersOf(other.plan));
  const short = byLength.filter(({ plan }) => numbersOf(plan) <= mostNumbers).length;
  const chosen = new Set(byLength.slice(0, Math.max(fewestTasks, short)));
  let sum = 0;
  return tasks
    .filter((task) => chosen.has(task))
    .filter(({ plan }, at) => {
      sum += numbersOf(plan);
      return at < fewestTasks || (at < mostTasks && sum <= mostInAll);
    });
}

/** The exercises of a handout, with the numbers of its seed. */
export function handoutTasks(ids: readonly string[]): Variant {
  const tasks: readonly Task[] = partsOf(ids).flatMap(({ calculator, plans }) =>
    plans.map((plan) => ({ calculator, plan })),
  );
  return nextVariant(shortOnes(tasks), { seed: handoutSeed, units: 'mixed' }, []);
}

/** The figure that a topic's text shows first. */
export function firstFigure(body: string): string {
  const id = /<Figure id="([\w-]+)"/u.exec(body)?.[1];
  if (id === undefined) throw new Error('The text of the topic has no figure.');
  return id;
}
