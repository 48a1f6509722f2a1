import type { AnyCalculator, NumberEntry, SetId } from '../define.ts';
import { numberIn, outputsOrNone, type InputValues } from '../evaluate.ts';
import type { Exercise, Given, Spread } from './declare.ts';
import { exampleInput } from './example.ts';
import { halfWidth } from './draw.ts';
import { wayTo, type Line } from './way.ts';

/** What all of an exercise's draws have in common: plain data, made when the pages are built. */
export interface Plan {
  /** Its name in a link and in what is kept of the reader's progress: `bobweight.bobweight.order`. */
  readonly id: string;
  readonly calculator: string;
  readonly kind: Exercise<string, string>['kind'];
  /** Name of the output asked for. */
  readonly ask: string;
  readonly tolerance: number;
  readonly given: Given<string>;
  /** Of the numbers among them: 1 where the answer rises with it, -1 where it falls. */
  readonly pulls: Readonly<Record<string, number>>;
  /** Inputs that the answer needs and that stay as in the example. */
  readonly fixed: readonly string[];
  /** Inputs of the sheet that the answer does not depend on, with their spreads. */
  readonly idle: Given<string>;
  /** Results that the working needs and that no line of it gives: stated with the givens. */
  readonly told: readonly string[];
  /** The lines of the working that lead to the answer, its own last; none where the model has no formula. */
  readonly way: readonly Line[];
  readonly between?: readonly [number, number];
  /** Of each set of the example: what it answers [SI], and the limits that no draw about it is held to. */
  readonly about: Readonly<Record<SetId, About>>;
}

export interface About {
  /** [SI] The example's own answer; none where a curve is read. */
  readonly answer?: number;
  /** Ids of limits that the example itself leaves, or that speak of numbers which the question does not state. */
  readonly beside: readonly string[];
}

const sets = ['baseline', 'candidate'] as const satisfies readonly SetId[];
/** More would be looking up, and not working. */
const mostGiven = 5;
const mostInSets = 3;
const fewestGiven = 3;

/** How far a number is drawn about the example's where the declaration says nothing. */
function usualSpread(entry: NumberEntry): Spread {
  switch (entry.kind) {
    case 'length':
      return 0.12;
    case 'temperature':
      return { by: 12 };
    case 'mass':
      return 0.2;
    default:
      return 0.15;
  }
}

/** What the answer does when one input moves by its spread, as a share of the answer; the greater of both ways. */
function influence(
  calculator: AnyCalculator,
  ask: string,
  input: InputValues,
  name: string,
  spread: Spread,
): number {
  const entry = calculator.inputs[name];
  const value = input[name];
  const right = numberIn(outputsOrNone(calculator, input)?.[ask]);
  if (entry === undefined || value === undefined || right === undefined) return 0;
  const others: InputValues[string][] =
    entry.type === 'choice'
      ? Object.keys(entry.options).filter((key) => key !== value)
      : Array.isArray(value)
        ? [value.map((one) => one * 1.05), [...value].reverse()]
        : entry.kind === 'count'
          ? [Number(value) + 1, Number(value) - 1]
          : [-1, 1].map((way) => Number(value) + way * halfWidth(entry, Number(value), spread));
  const moved = others.map((other) =>
    numberIn(outputsOrNone(calculator, { ...input, [name]: other })?.[ask]),
  );
  const size = Math.abs(right) || 1;
  return Math.max(
    0,
    ...moved.map((each) => (each === undefined ? 0 : Math.abs(each - right) / size)),
  );
}

/** Below this share of the answer an input is taken not to count: what is left is rounding. */
const nothing = 1e-9;

function plan(
  calculator: AnyCalculator,
  exercise: Exercise<string, string>,
  lines: readonly Line[],
  id: string,
): Plan {
  const { inputs, exercise: first } = calculator;
  const { ask, kind } = exercise;
  const tolerance = exercise.tolerance ?? (kind === 'read' ? 0.04 : first.tolerance);
  const declared: Given<string> | undefined = exercise.given ?? first.given;
  const spreadOf = (name: string): Spread => {
    const entry = inputs[name];
    return declared?.[name] ?? (entry?.type === 'number' ? usualSpread(entry) : 0.1);
  };
  const way = wayTo(ask, lines);
  const reached = way.length === 0 ? undefined : new Set(way.flatMap(({ uses }) => uses));
  const told = toldOf(calculator, way);
  const counts = (name: string): number => {
    if (kind === 'read') return Number(declared?.[name] !== undefined);
    // What no line uses cannot count; what stands behind a result that is told is found by trying.
    if (reached?.has(name) === false && told.length === 0) return 0;
    return Math.max(
      ...sets.map((set) =>
        influence(calculator, ask, exampleInput(calculator, set), name, spreadOf(name)),
      ),
    );
  };
  const all = Object.keys(inputs);
  const size = Object.fromEntries(all.map((name) => [name, counts(name)]));
  const needed = all.filter((name) => (size[name] ?? 0) > nothing);
  const free = (name: string): boolean => {
    const entry = inputs[name];
    return entry?.type === 'number' && entry.kind !== 'count';
  };
  const felt = (name: string): boolean => (size[name] ?? 0) >= Math.max(tolerance, 0.002);
  const asked = Object.keys(declared ?? {}).filter((name) => (size[name] ?? 0) > nothing);
  const offered = [...calculator.asks, ...all].filter((name) => free(name) && felt(name));
  const ofSheet = offered.filter((name) => calculator.asks.includes(name));
  const chosen =
    asked.length > 0
      ? asked
      : [...new Set(offered)].slice(0, Math.max(fewestGiven, ofSheet.length));
  const given = chosen.slice(0, kind === 'choice' || kind === 'order' ? mostInSets : mostGiven);
  const isIdle = (name: string): boolean => free(name) && (size[name] ?? 0) <= nothing;
  const idle =
    (exercise.beside ?? first.beside) === undefined ? calculator.asks.filter(isIdle) : [];
  return {
    id,
    calculator: calculator.id,
    kind,
    ask,
    tolerance,
    given: Object.fromEntries(given.map((name) => [name, spreadOf(name)])),
    pulls: kind === 'choice' ? pullsOf(calculator, ask, given) : {},
    fixed: kind === 'read' ? [] : needed.filter((name) => !given.includes(name)),
    idle: kind === 'choice' ? Object.fromEntries(idle.map((name) => [name, spreadOf(name)])) : {},
    told: kind === 'number' ? told : [],
    way: kind === 'number' ? way : [],
    about: {
      baseline: aboutOf(calculator, ask, 'baseline', exercise.beside ?? first.beside),
      candidate: aboutOf(calculator, ask, 'candidate', exercise.beside ?? first.beside),
    },
    ...(exercise.kind === 'read' && exercise.between !== undefined
      ? { between: exercise.between }
      : {}),
  };
}

function aboutOf(
  calculator: AnyCalculator,
  ask: string,
  set: SetId,
  beside: readonly string[] = [],
): About {
  const input = exampleInput(calculator, set);
  const output = outputsOrNone(calculator, input) ?? {};
  const broken = calculator.limits.filter((limit) => !limit.holds(input, output));
  const answer = numberIn(output[ask]);
  return {
    ...(answer === undefined ? {} : { answer }),
    beside: [...beside, ...broken.map(({ id }) => id)],
  };
}

/** Which way the answer goes with each number, at the example's baseline. */
function pullsOf(
  calculator: AnyCalculator,
  ask: string,
  names: readonly string[],
): Readonly<Record<string, number>> {
  const input = exampleInput(calculator, 'baseline');
  const at = (name: string, share: number): number => {
    const moved = { ...input, [name]: Number(input[name]) * (1 + share) };
    return numberIn(outputsOrNone(calculator, moved)?.[ask]) ?? Number.NaN;
  };
  const pulls = names
    .filter((name) => typeof input[name] === 'number' && input[name] !== 0)
    .map((name) => [name, Math.sign(at(name, 0.02) - at(name, -0.02))] as const);
  return Object.fromEntries(pulls.filter(([, pull]) => pull === 1 || pull === -1));
}

/** What the lines use and neither an input nor an earlier line gives. */
function toldOf({ inputs, outputs }: AnyCalculator, way: readonly Line[]): readonly string[] {
  const worked = new Set(way.map(({ of }) => of));
  const used = [...new Set(way.flatMap(({ uses }) => uses))];
  return used.filter(
    (name) => !worked.has(name) && !Object.hasOwn(inputs, name) && Object.hasOwn(outputs, name),
  );
}

/** The results that a choice or an order can be about, the main ones first. */
function comparable({ answers, outputs }: AnyCalculator): readonly string[] {
  const numbers = answers.filter((name) => outputs[name]?.type === 'number');
  const isMain = (name: string): boolean => {
    const output = outputs[name];
    return output?.type === 'number' && output.main === true;
  };
  return [...numbers.filter(isMain), ...numbers.filter((name) => !isMain(name))];
}

/** The exercises of a calculator in the order of asking: as declared, with a choice and an order where none is. */
function exercisesOf(calculator: AnyCalculator): readonly Exercise<string, string>[] {
  const { ask, tolerance, also = [] } = calculator.exercise;
  const [main = ask] = comparable(calculator);
  const has = (kind: string): boolean => also.some((each) => each.kind === kind);
  return [
    { kind: 'number', ask, tolerance },
    ...also,
    ...(has('choice') ? [] : [{ kind: 'choice', ask: main } as const]),
    ...(has('order') ? [] : [{ kind: 'order', ask } as const]),
  ];
}

/**
 * The plans of a calculator's exercises.
 *
 * @param lines the lines of its working, ready to be worked
 * @throws RangeError naming the exercise where nothing in it would vary
 */
export function plansOf(calculator: AnyCalculator, lines: readonly Line[]): readonly Plan[] {
  return exercisesOf(calculator).map((exercise) => {
    const { kind, ask } = exercise;
    const id = [calculator.id, ask, ...(kind === 'number' ? [] : [kind])].join('.');
    const made = plan(calculator, exercise, lines, id);
    if (Object.keys(made.given).length === 0)
      throw new RangeError(`the exercise ${id} varies nothing: declare what is given`);
    return made;
  });
}
