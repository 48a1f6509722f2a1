import { seededRandom } from '../../core/math/random.ts';
import { fromSI, toSI, unitOf } from '../../units/units.ts';
import type { AnyCalculator, SetId, Value } from '../define.ts';
import {
  numberIn,
  outputsOrNone,
  rangeInSI,
  type InputValues,
  type OutputValues,
} from '../evaluate.ts';
import { unitFor } from '../output-unit.ts';
import { draw, kept, type Stated, type Units } from './draw.ts';
import type { Given } from './declare.ts';
import type { About, Plan } from './plan.ts';

/** Of the way questions are drawn: a link names it, since the same seed gives other numbers in another format. */
export const practiceFormat = 1;

/** One set of numbers in a question, and what the calculator gives for them. */
export interface Case {
  readonly stated: Readonly<Record<string, Stated>>;
  readonly input: InputValues;
  readonly output: OutputValues;
  /** [SI] */
  readonly answer: number;
}

interface Drawn {
  readonly plan: Plan;
  readonly seed: number;
  readonly units: Units;
  /** The example set that the numbers are drawn about. */
  readonly set: SetId;
  /** What stays as in the example. */
  readonly fixed: Readonly<Record<string, Stated>>;
}

/** A number is asked for. */
export interface NumberQuestion extends Drawn {
  readonly kind: 'number';
  readonly case: Case;
  /** [SI] */
  readonly answer: number;
  /** The unit in which the question asks. */
  readonly unit: string;
  /** Whether the question names that unit; else the answer has to. */
  readonly saysUnit: boolean;
}
/** Which of two sets has more; `right` is the place of the set, or 2 for neither. */
export interface ChoiceQuestion extends Drawn {
  readonly kind: 'choice';
  readonly cases: readonly [Case, Case];
  readonly right: 0 | 1 | 2;
}
/** Three sets in the order of a result; `right` is the place in {@link orders}. */
export interface OrderQuestion extends Drawn {
  readonly kind: 'order';
  readonly cases: readonly [Case, Case, Case];
  readonly right: number;
}
/** A height to be read off a curve. */
export interface ReadQuestion extends Drawn {
  readonly kind: 'read';
  readonly case: Case;
  /** Where on the axis, in the unit of that. */
  readonly at: number;
  readonly atUnit: string;
  /** [SI] */
  readonly answer: number;
  readonly unit: string;
  readonly saysUnit: true;
  /** [SI] How near it must be read. */
  readonly within: number;
  /** In the unit of the axis: what may be asked is a multiple of it. */
  readonly grid: number;
}
export type Question = NumberQuestion | ChoiceQuestion | OrderQuestion | ReadQuestion;

/** The orders of three sets, from least to greatest, by their places. */
export const orders: readonly (readonly [number, number, number])[] = [
  [0, 1, 2],
  [0, 2, 1],
  [1, 0, 2],
  [1, 2, 0],
  [2, 0, 1],
  [2, 1, 0],
];

/** Draws tried before giving up. */
const draws = 300;
/** Draws of a second and a third set that lie clear of the first. */
const further = 30;
/** An answer is like the example's: not the small difference of two numbers, and not another machine's. */
const unlike = 4;
/** Two sets differ at least so much in what is asked, so that one answer is right. */
const leastApart = 0.05;
/** One choice in so many is between sets that give the same. */
const sameOf = 4;
/** One number in so many is asked for in the other system, and one without naming a unit. */
const otherSystemOf = 4;
const noUnitOf = 3;

type Random = () => number;

/** Numbers for all that varies; undefined where the model refuses them, or a limit or a usual range is left. */
function drawCase(
  calculator: AnyCalculator,
  about: Drawn,
  given: Given<string>,
  random: Random,
  like?: Case,
): Case | undefined {
  const { set, units } = about;
  const stated: Record<string, Stated> = { ...like?.stated };
  for (const [name, spread] of Object.entries(given)) {
    const entry = calculator.inputs[name];
    if (entry === undefined || spread === undefined) continue;
    const drawn = draw(entry, set, spread, random, {
      units,
      like: like?.stated[name]?.unit,
    });
    if (drawn !== undefined) stated[name] = drawn;
  }
  return caseOf(calculator, about, stated);
}

function caseOf(
  calculator: AnyCalculator,
  { plan, set, units, fixed }: Drawn,
  stated: Readonly<Record<string, Stated>>,
): Case | undefined {
  const { beside } = plan.about[set];
  const input: Record<string, Value> = {};
  for (const [name, entry] of Object.entries(calculator.inputs)) {
    const value = stated[name] ?? fixed[name] ?? kept(entry, set, units);
    if (value !== undefined) input[name] = value.value;
  }
  const output = outputsOrNone(calculator, input);
  if (output === undefined || !isUsual(calculator, stated)) return undefined;
  if (!calculator.limits.every((limit) => beside.includes(limit.id) || limit.holds(input, output)))
    return undefined;
  const answer = plan.kind === 'read' ? 0 : numberIn(output[plan.ask]);
  return answer === undefined ? undefined : { stated, input, output, answer };
}

/** True where every number drawn lies in its usual range, but for the rounding of another unit. */
function isUsual(calculator: AnyCalculator, stated: Readonly<Record<string, Stated>>): boolean {
  return Object.entries(stated).every(([name, { value }]) => {
    const entry = calculator.inputs[name];
    if (entry === undefined || entry.type === 'choice') return true;
    const [low, high] = rangeInSI(entry, 'usual');
    const room = (high - low) * 1e-9;
    const all = typeof value === 'number' ? [value] : Array.isArray(value) ? value : [];
    return all.every((one) => one >= low - room && one <= high + room);
  });
}

/** True for an answer of the example's sign and size. */
function isLikeExample({ answer: example = 0 }: About, answer: number): boolean {
  if (example === 0) return answer !== 0;
  const share = answer / example;
  return share > 1 / unlike && share < unlike;
}

function one<T>(of: readonly [T, ...T[]], random: Random): T {
  return of[Math.floor(random() * of.length)] ?? of[0];
}

/** The unit an answer is asked in, and whether the question names it. */
function asking(calculator: AnyCalculator, { plan, units }: Drawn, random: Random) {
  const entry = calculator.outputs[plan.ask];
  if (entry === undefined || entry.type === 'series')
    throw new RangeError(`${plan.id} asks for what is no number`);
  const dice = random() < 1 / otherSystemOf ? 'inch' : 'metric';
  const unit = unitFor(entry, units === 'mixed' ? dice : units);
  const saysUnit = random() >= 1 / noUnitOf || unitOf(unit).symbol === '';
  return { unit, saysUnit };
}

function makeNumber(calculator: AnyCalculator, about: Drawn, random: Random) {
  const { plan, set } = about;
  const drawn = drawCase(calculator, about, plan.given, random);
  if (drawn === undefined || !isLikeExample(plan.about[set], drawn.answer)) return undefined;
  const how = asking(calculator, about, random);
  return { ...about, kind: 'number', case: drawn, answer: drawn.answer, ...how } as const;
}

/** How far two answers lie apart, as a share of the greater. */
export function apart(one: number, other: number): number {
  return Math.abs(one - other) / (Math.max(Math.abs(one), Math.abs(other)) || 1);
}

/** A further set beside others, drawn until it lies clear of each of them in what is asked. */
function drawClear(
  calculator: AnyCalculator,
  about: Drawn,
  from: readonly [Case, ...Case[]],
  random: Random,
): Case | undefined {
  const { plan } = about;
  const clear = Math.max(leastApart, 2 * plan.tolerance);
  for (let turn = 0; turn < further; turn += 1) {
    const drawn = drawCase(calculator, about, about.plan.given, random, from[0]);
    if (drawn === undefined) continue;
    const isClear = from.every(({ answer }) => apart(answer, drawn.answer) > clear);
    if (isClear && isWeighing(plan, from[0], drawn)) return drawn;
  }
  return undefined;
}

/** True where one number speaks for one set and another for the other, so that a choice has to weigh them. */
function isWeighing({ pulls }: Plan, one: Case, other: Case): boolean {
  const ways = Object.entries(pulls).map(([name, pull]) =>
    Math.sign(pull * (Number(other.input[name]) - Number(one.input[name]))),
  );
  return ways.length < 2 || (ways.includes(1) && ways.includes(-1));
}

function makeChoice(calculator: AnyCalculator, about: Drawn, random: Random) {
  const { plan } = about;
  // What does not count stands in the table as well: its place there says nothing.
  const names = Object.keys(plan.idle);
  const beside = names[Math.floor(random() * names.length)];
  const idle: Given<string> = beside === undefined ? {} : { [beside]: plan.idle[beside] ?? 0 };
  const first = drawCase(calculator, about, { ...plan.given, ...idle }, random);
  if (first === undefined) return undefined;
  const isSame = beside !== undefined && random() < 1 / sameOf;
  const second = isSame
    ? drawCase(calculator, about, idle, random, first)
    : drawClear(calculator, about, [first], random);
  if (second === undefined || differing([first, second]).length === 0) return undefined;
  if (isSame && apart(first.answer, second.answer) > 1e-9) return undefined;
  const right = isSame ? 2 : first.answer > second.answer ? 0 : 1;
  return { ...about, kind: 'choice', cases: [first, second], right } as const;
}

function makeOrder(calculator: AnyCalculator, about: Drawn, random: Random) {
  const first = drawCase(calculator, about, about.plan.given, random);
  if (first === undefined) return undefined;
  const second = drawClear(calculator, about, [first], random);
  if (second === undefined) return undefined;
  const third = drawClear(calculator, about, [first, second], random);
  if (third === undefined) return undefined;
  const cases = [first, second, third] as const;
  const right = orders.findIndex((order) => isRising(order.map((place) => cases[place]?.answer)));
  return right < 0 ? undefined : ({ ...about, kind: 'order', cases, right } as const);
}

function isRising([low = 0, middle = 0, high = 0]: readonly (number | undefined)[]): boolean {
  return low < middle && middle < high;
}

/** The names of what two or more sets state differently, in the order of the declaration. */
export function differing(cases: readonly Case[]): readonly string[] {
  const [first, ...others] = cases;
  if (first === undefined) return [];
  return Object.keys(first.stated).filter((name) =>
    others.some(({ stated }) => stated[name]?.text !== first.stated[name]?.text),
  );
}

function makeRead(calculator: AnyCalculator, about: Drawn, random: Random) {
  const { plan, units } = about;
  const drawn = drawCase(calculator, about, plan.given, random);
  const entry = calculator.outputs[plan.ask];
  const curve = drawn?.output[plan.ask];
  if (drawn === undefined || entry?.type !== 'series') return undefined;
  if (typeof curve !== 'object' || 'absent' in curve) return undefined;
  const system = units === 'inch' ? 'inch' : 'metric';
  // What is asked about is declared in the metric unit of the axis.
  const atUnit = unitFor(entry.x, plan.between === undefined ? system : 'metric');
  const inUnit = Array.from(curve.x, (x) => fromSI(x, atUnit));
  const [low, high] = plan.between ?? [Math.min(...inUnit), Math.max(...inUnit)];
  const grid = gridOf(high - low, atUnit);
  const first = Math.ceil(low / grid);
  const count = Math.floor(high / grid) - first;
  const at = (first + 1 + Math.floor(random() * Math.max(1, count - 1))) * grid;
  const answer = heightOn(curve, toSI(at, atUnit));
  const heights = Array.from(curve.y);
  const within = plan.tolerance * (Math.max(...heights) - Math.min(...heights));
  // What is near nothing beside the whole curve has no sign that could be read.
  if (answer === undefined || Math.abs(answer) < 4 * within) return undefined;
  const unit = unitFor(entry.y, system);
  return {
    ...about,
    kind: 'read',
    case: drawn,
    at,
    atUnit,
    answer,
    unit,
    saysUnit: true,
    within,
    grid,
  } as const;
}

/** A round division of an axis of this length: some ten to twenty of them; of a turn twelve. */
function gridOf(length: number, unit: string): number {
  if (unit === 'deg') return length > 300 ? 30 : 10;
  const rough = length / 12;
  const power = 10 ** Math.floor(Math.log10(rough));
  return power * ([1, 2, 5, 10].find((each) => each * power >= rough) ?? 10);
}

/** The height of a curve [SI] between its points, by a straight line. */
export function heightOn(
  { x, y }: { readonly x: ArrayLike<number>; readonly y: ArrayLike<number> },
  at: number,
): number | undefined {
  for (let place = 1; place < x.length; place += 1) {
    const [from = 0, to = 0] = [x[place - 1], x[place]];
    const room = (to - from) * 1e-9;
    if (at < from - room || at > to + room || to === from) continue;
    const [below = 0, above = 0] = [y[place - 1], y[place]];
    return below + ((above - below) * (at - from)) / (to - from);
  }
  return undefined;
}

const makers = {
  number: makeNumber,
  choice: makeChoice,
  order: makeOrder,
  read: makeRead,
} as const;

/**
 * The question that a seed gives: near one of the example's two sets, on figures as a shop has them, drawn until the
 * model accepts them, every limit holds and there is one answer. The same plan, seed and units give the same question.
 *
 * Throws RangeError where no draw does.
 */
export function makeQuestion(
  calculator: AnyCalculator,
  plan: Plan,
  seed: number,
  units: Units = 'mixed',
): Question {
  const random = seededRandom(seed);
  const set = one(['baseline', 'candidate'] as const, random);
  const fixed: Record<string, Stated> = {};
  for (const name of plan.fixed) {
    const entry = calculator.inputs[name];
    const value = entry === undefined ? undefined : kept(entry, set, units);
    if (value !== undefined) fixed[name] = value;
  }
  const about: Drawn = { plan, seed, units, set, fixed };
  for (let turn = 0; turn < draws; turn += 1) {
    const made = makers[plan.kind](calculator, about, random);
    if (made !== undefined) return made;
  }
  throw new RangeError(`${plan.id}, seed ${String(seed)}: no draw has one answer`);
}
