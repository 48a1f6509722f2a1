import { describe, expect, test } from 'vitest';
import type { AnyCalculator, Entry } from '../../../src/calculators/define.ts';
import { rangeInSI } from '../../../src/calculators/evaluate.ts';
import { calculators } from '../../../src/calculators/index.ts';
import {
  apart,
  makeQuestion,
  orders,
  type Case,
  type Question,
} from '../../../src/calculators/practice/make.ts';
import {
  markChoice,
  markNumber,
  markOrder,
  markRead,
  type Mark,
} from '../../../src/calculators/practice/mark.ts';
import { plansOf, type Plan } from '../../../src/calculators/practice/plan.ts';
import { readAnswer } from '../../../src/calculators/practice/read-answer.ts';
import { slipsOf } from '../../../src/calculators/practice/slips.ts';
import { workWay } from '../../../src/calculators/practice/way.ts';
import { linesOf } from '../../../src/components/practice/lines-of.ts';
import { readAs } from '../../../src/units/field.ts';
import { formatPlain } from '../../../src/units/format.ts';
import { fromSI, unitOf } from '../../../src/units/units.ts';
import { evaluate } from '../../../src/notebook/evaluation.ts';
import { exampleOf } from '../../../src/notebook/example.ts';
import { homeSet } from '../../../src/notebook/values.ts';
import { must } from '../must.ts';

/** Of each exercise; what a build could hand out wrongly fails here. */
const seeds = Array.from({ length: 200 }, (_, place) => place + 1);
/** A slow model is worked again for its slips and its marks for so many of them. */
const slowSeeds = 20;
/** A test of these works out a slow model some thousand times. */
const patience = 300_000;

const all: readonly AnyCalculator[] = Object.values(calculators);
const plans = all.flatMap((calculator) =>
  plansOf(calculator, linesOf(calculator)).map((plan) => ({ id: plan.id, calculator, plan })),
);

function casesOf(question: Question): readonly Case[] {
  return 'cases' in question ? question.cases : [question.case];
}

/** An answer as a reader types it who has worked with all figures. */
function typed(si: number, unit: string): string {
  const { symbol } = unitOf(unit);
  return `${formatPlain(Number(fromSI(si, unit).toPrecision(10)))} ${symbol}`;
}

function markRight(calculator: AnyCalculator, question: Question): Mark {
  switch (question.kind) {
    case 'number':
      return markNumber(calculator, question, typed(question.answer, question.unit));
    case 'choice':
      return markChoice(calculator, question, question.right);
    case 'order':
      return markOrder(calculator, question, question.right);
    case 'read':
      return markRead(question, typed(question.answer, question.unit));
  }
}

/** What is stated of a quantity is inside its usual range, and its text reads back as what is worked with. */
function expectStated(entry: Entry, { text, value, unit }: Case['stated'][string]): void {
  if (entry.type === 'choice') {
    expect(Object.keys(entry.options)).toContain(value);
    return;
  }
  const [low, high] = rangeInSI(entry, 'usual');
  const room = (high - low) * 1e-9;
  const numbers = typeof value === 'number' ? [value] : (value as readonly number[]);
  for (const number of numbers) {
    expect(number, `${entry.name}: ${text}`).toBeGreaterThanOrEqual(low - room);
    expect(number, `${entry.name}: ${text}`).toBeLessThanOrEqual(high + room);
  }
  const read = readAs(entry, text.replaceAll('\u202f', '').replace('−', '-'), unit);
  expect(read.ok && read.si, `${entry.name}: ${text}`).toEqual(value);
}

/** What is said of the example where it leaves a limit, to show what then happens. */
const saidOfExample = new Map(
  all.map((calculator) => [
    calculator.id,
    (['baseline', 'candidate'] as const).flatMap(
      (set) => evaluate(calculator, (entry) => exampleOf(homeSet(set, entry), entry)).limits,
    ),
  ]),
);

/** The limits that the example keeps hold in what is drawn, but for those that speak of what is not stated. */
function expectLimits(calculator: AnyCalculator, plan: Plan, drawn: Case): void {
  const { id, exercise } = calculator;
  const declared = exercise.also?.find((each) => plan.id.startsWith(`${id}.${each.ask}`))?.beside;
  const { input, output } = drawn;
  for (const limit of calculator.limits) {
    const isBeside = (declared ?? exercise.beside ?? []).includes(limit.id);
    if (isBeside || must(saidOfExample.get(id)).includes(limit.say)) continue;
    expect(limit.holds(input, output), `${plan.id}: the limit ${limit.id}`).toBe(true);
  }
}

function expectOneAnswer(calculator: AnyCalculator, plan: Plan, question: Question): void {
  if (question.kind === 'choice') {
    const [first, second] = question.cases.map(({ answer }) => answer);
    const share = apart(must(first), must(second));
    if (question.right === 2) expect(share).toBeLessThan(1e-9);
    else {
      expect(share).toBeGreaterThan(2 * plan.tolerance);
      expect(must(first) > must(second)).toBe(question.right === 0);
    }
  }
  if (question.kind === 'order') {
    const rising = must(orders[question.right]).map((place) => must(question.cases[place]).answer);
    expect(rising).toEqual(rising.toSorted((one, other) => one - other));
    for (const at of [0, 1])
      expect(apart(must(rising[at]), must(rising[at + 1]))).toBeGreaterThan(2 * plan.tolerance);
  }
  if (question.kind === 'number') {
    if (calculator.pace === 'idle' && question.seed > slowSeeds) return;
    const { answer } = question;
    const read = readAnswer(typed(answer, question.unit), question);
    if (!read.ok) return expect.fail(read.say);
    for (const slip of slipsOf(calculator, question, read))
      expect(Math.abs(slip.value - answer), slip.id).toBeGreaterThan(
        2 * plan.tolerance * Math.abs(answer),
      );
  }
}

describe.each(plans)('$id', ({ calculator, plan }) => {
  test(
    'two hundred seeds: the same again, realistic, with one answer that is taken',
    { timeout: patience },
    () => {
      for (const seed of seeds) {
        const question = makeQuestion(calculator, plan, seed);
        if (seed <= 3) expect(makeQuestion(calculator, plan, seed)).toEqual(question);
        for (const drawn of casesOf(question)) {
          for (const [name, stated] of Object.entries(drawn.stated))
            expectStated(must(calculator.inputs[name]), stated);
          expectLimits(calculator, plan, drawn);
        }
        expectOneAnswer(calculator, plan, question);
        if (calculator.pace === 'idle' && seed > slowSeeds) continue;
        const mark = markRight(calculator, question);
        expect(mark, `seed ${String(seed)}: ${mark.say}`).toMatchObject({ outcome: 'right' });
      }
    },
  );

  test('its lines lead to the answer', () => {
    if (plan.way.length === 0) return;
    const question = makeQuestion(calculator, plan, 1);
    if (question.kind !== 'number') return expect.fail('only a number has a way to it');
    const { input, output } = question.case;
    const told = Object.fromEntries(plan.told.map((name) => [name, output[name] as number]));
    const worked = workWay(plan.way, { ...input, ...told });
    // The same arithmetic in another order.
    expect(Number(worked[plan.ask]) / question.answer).toBeCloseTo(1, 9);
  });
});

describe('all of them together', () => {
  test('every calculator has a number, a choice and an order, each with a name of its own', () => {
    for (const { id } of all) {
      const kinds = plans
        .filter(({ calculator }) => calculator.id === id)
        .map((each) => each.plan.kind);
      expect(kinds, id).toEqual(expect.arrayContaining(['number', 'choice', 'order']));
    }
    const ids = plans.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('a number states at least two quantities, and at most five of them vary', () => {
    for (const { id, plan } of plans) {
      const given = Object.keys(plan.given).length;
      expect(given, id).toBeLessThanOrEqual(5);
      if (plan.kind === 'number')
        expect(given + plan.fixed.length + plan.told.length, id).toBeGreaterThanOrEqual(
          id === 'bearing-crush.interference' || id === 'bearing-clearance.practiceHigh' ? 1 : 2,
        );
    }
  });
});
