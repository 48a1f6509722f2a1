import type { AnyCalculator, Value } from '../../src/calculators/define.ts';
import type { Step } from '../../src/calculators/step.ts';
import { workPostfix } from '../../src/calculators/postfix.ts';
import { parseFormula } from '../../src/components/working/parse.ts';
import { toPostfix } from '../../src/components/working/postfix.ts';
import { usedBy } from '../../src/components/working/uses.ts';
import { type Drawn, drawsOf } from './draws.ts';
import { leftOut, workable } from './formula-math.ts';

/** What one draw gives for one line of the working, in SI. */
interface Outcome {
  /** What `compute` gives; a value on the way has none. */
  readonly asked: number | undefined;
  /** What the formula gives. */
  readonly worked: number;
  /** What the page makes of it. */
  readonly onPage: number;
}

/** A draw for which a line does not give what it should. */
export interface Miss extends Outcome {
  readonly input: Drawn['input'];
  /** The values that the line uses. */
  readonly used: Readonly<Record<string, Value>>;
}

/** A line of the working that does not give what `compute` gives. */
export interface Fault {
  /** What the line works out. */
  readonly of: string;
  readonly formula: string;
  readonly draws: number;
  /** For so many draws there is an answer; a tenth of the draws is wanted. */
  readonly answered: number;
  /** For so many of these the line gives another. */
  readonly missed: number;
  readonly first: Miss | undefined;
}

/** Rounding of two orders of the same arithmetic, relative to the value or, near zero, to its usual size. */
const allowed = 1e-12;

/** A step's formula, read. */
interface Formula {
  readonly of: string;
  readonly formula: string;
  readonly uses: readonly string[];
  readonly inLibrary: ReturnType<typeof workable>;
  readonly onPage: string;
}

const formulas = new WeakMap<Step, Formula>();

function read(step: Step, { inputs }: AnyCalculator): Formula | undefined {
  const { of, formula } = step;
  if (formula === undefined) return undefined;
  const known = formulas.get(step);
  if (known !== undefined) return known;
  const made = {
    of,
    formula,
    uses: usedBy(step),
    inLibrary: workable(formula),
    onPage: toPostfix(parseFormula(formula), (name) => inputs[name]?.optional === true),
  };
  formulas.set(step, made);
  return made;
}

function isOnTheWay({ inputs, outputs }: AnyCalculator, name: string): boolean {
  return !Object.hasOwn(outputs, name) && !Object.hasOwn(inputs, name);
}

/** The lines in which a fault of `step` shows: its own, and for a value on the way those of outputs that use it. */
function shownIn(step: Step, all: readonly Formula[], calculator: AnyCalculator): Formula[] {
  const reached = new Set([step.of]);
  for (const { of, uses } of all)
    if (uses.some((use) => reached.has(use) && isOnTheWay(calculator, use))) reached.add(of);
  return all.filter(({ of }) => reached.has(of) && (of === step.of || !isOnTheWay(calculator, of)));
}

/** The lines `wanted` and those that work out the values on the way that they need, in their order. */
function needed(
  wanted: readonly Formula[],
  all: readonly Formula[],
  calculator: AnyCalculator,
): Formula[] {
  const names = new Set(wanted.map(({ of }) => of));
  for (const { of, uses } of all.toReversed())
    if (names.has(of)) for (const use of uses) if (isOnTheWay(calculator, use)) names.add(use);
  return all.filter(({ of }) => names.has(of));
}

/** A draw worked through some lines. */
interface Worked {
  readonly outcomes: ReadonlyMap<string, Outcome>;
  /** All values by name, those on the way included. */
  readonly values: Readonly<Record<string, Value>>;
}

function workOut({ inputs }: AnyCalculator, drawn: Drawn, lines: readonly Formula[]): Worked {
  const { input, output } = drawn;
  const values: Record<string, Value> = { ...input, ...output };
  const absent = Object.keys(inputs).filter((name) => input[name] === undefined);
  const library: Record<string, unknown> = { ...values, [leftOut]: new Set(absent) };
  // What the reader may leave out counts as nothing.
  for (const name of absent) library[name] = 0;
  const outcomes = new Map<string, Outcome>();
  for (const { of, inLibrary, onPage } of lines) {
    const asked = output[of];
    // Where no answer exists there is no line of numbers either.
    if (asked === undefined && of in output) continue;
    const worked = inLibrary(library);
    const page = workPostfix(onPage, (name) => values[name]) ?? Number.NaN;
    outcomes.set(of, { asked, worked, onPage: page });
    if (asked !== undefined) continue;
    library[of] = worked;
    values[of] = page;
  }
  return { outcomes, values };
}

/** Draws worked through all lines of a calculator, kept for the next of its steps. */
const whole = new WeakMap<AnyCalculator['steps'], Map<string, readonly Worked[]>>();

function workAll(
  calculator: AnyCalculator,
  all: readonly Formula[],
  draws: number,
  seed: number,
): readonly Worked[] {
  const known = whole.get(calculator.steps) ?? new Map<string, readonly Worked[]>();
  whole.set(calculator.steps, known);
  const key = `${draws} from ${seed}`;
  const worked =
    known.get(key) ??
    drawsOf(calculator, draws, seed).map((each) => workOut(calculator, each, all));
  known.set(key, worked);
  return worked;
}

function faultIn(
  { of, formula, uses }: Formula,
  worked: readonly Worked[],
  draws: readonly Drawn[],
): Fault | undefined {
  const outcomes = worked.map((each) => each.outcomes.get(of));
  const sizes = outcomes
    .flatMap((each) => (each === undefined ? [] : [Math.abs(each.asked ?? each.worked)]))
    .sort((one, other) => one - other);
  // A result that passes through zero has no relative error there: it is measured by its usual size.
  const usual = sizes[Math.floor(sizes.length / 2)] ?? 0;
  const misses = outcomes.flatMap((outcome, place) => {
    if (outcome === undefined) return [];
    const { asked, worked, onPage } = outcome;
    const right = asked ?? worked;
    const most = allowed * Math.max(Math.abs(right), usual);
    const isRight = Math.abs(worked - right) <= most && Math.abs(onPage - right) <= most;
    return isRight ? [] : [{ outcome, place }];
  });
  const answered = sizes.length;
  if (misses.length === 0 && answered > draws.length / 10) return undefined;
  const [miss] = misses;
  const values = miss && worked[miss.place]?.values;
  const first = miss && {
    ...miss.outcome,
    input: draws[miss.place]?.input ?? {},
    used: Object.fromEntries(uses.map((name) => [name, values?.[name]])),
  };
  return { of, formula, draws: draws.length, answered, missed: misses.length, first };
}

/**
 * Works a step's formula for random usual inputs, by a library and by the page's own evaluator, and compares both
 * with `compute`. A value on the way is no output, so `compute` knows nothing of it: both evaluators must agree on
 * it, and the outputs whose lines use it, directly or through others, must still come out.
 *
 * @param step a step of the calculator, or one that stands in the place of the step of that name
 * @param draws how many inputs are drawn
 * @param seed the same seed draws the same inputs again
 * @returns the lines at fault; none for a step that has no formula
 */
export function formulaFaults(
  calculator: AnyCalculator,
  step: Step,
  draws: number,
  seed: number,
): readonly Fault[] {
  const own = calculator.steps.find(({ of }) => of === step.of);
  const all = calculator.steps
    .map((each) => read(each === own ? step : each, calculator))
    .filter((each) => each !== undefined);
  const wanted = step.formula === undefined ? [] : shownIn(step, all, calculator);
  const drawn = drawsOf(calculator, draws, seed);
  const lines = needed(wanted, all, calculator);
  const worked =
    step === own
      ? workAll(calculator, all, draws, seed)
      : drawn.map((each) => workOut(calculator, each, lines));
  return wanted
    .map((formula) => faultIn(formula, worked, drawn))
    .filter((fault) => fault !== undefined);
}
