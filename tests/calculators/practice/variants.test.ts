import { describe, expect, it, test } from 'vitest';
import type { AnyCalculator } from '../../../src/calculators/define.ts';
import { numberIn } from '../../../src/calculators/evaluate.ts';
import { calculators } from '../../../src/calculators/index.ts';
import type { Stated, Units } from '../../../src/calculators/practice/draw.ts';
import { exampleInput } from '../../../src/calculators/practice/example.ts';
import { keyOf } from '../../../src/calculators/practice/key.ts';
import {
  heightOn,
  makeQuestion,
  type Case,
  type Question,
} from '../../../src/calculators/practice/make.ts';
import { plansOf } from '../../../src/calculators/practice/plan.ts';
import { readAnswer } from '../../../src/calculators/practice/read-answer.ts';
import {
  nextVariant,
  seedOf,
  textOf,
  type Draws,
  type Task,
  type Variant,
} from '../../../src/calculators/practice/variants.ts';
import { answerWords } from '../../../src/calculators/practice/words.ts';
import { linesOf } from '../../../src/components/practice/lines-of.ts';
import { readAs } from '../../../src/units/field.ts';
import { toSI, unitOf } from '../../../src/units/units.ts';
import { must } from '../must.ts';

const all: readonly AnyCalculator[] = Object.values(calculators);
const tasksOf = (calculator: AnyCalculator): readonly Task[] =>
  plansOf(calculator, linesOf(calculator)).map((plan) => ({ calculator, plan }));
/** A slow model is worked some hundred times. */
const patience = 120_000;

function variants(tasks: readonly Task[], draws: Draws, count: number): readonly Variant[] {
  const made: Variant[] = [];
  while (made.length < count) made.push(nextVariant(tasks, draws, made));
  return made;
}

/** A stated number read from its print by the site's own parser; a choice by its words. */
function readStated(calculator: AnyCalculator, name: string, { text, unit }: Stated) {
  const entry = must(calculator.inputs[name]);
  if (entry.type === 'choice') {
    const [key] = must(Object.entries(entry.options).find(([, words]) => words === text));
    return key;
  }
  const read = readAs(entry, text.replaceAll('\u202f', ''), unit);
  if (!read.ok) throw new Error(`${name}: “${text}”: ${read.say}`);
  return read.si;
}

/** What the calculator gives for the numbers as printed; what is not printed is `rest`’s, and must not count. */
function fromPrint(
  calculator: AnyCalculator,
  question: Question,
  { stated }: Case,
  rest: 'baseline' | 'candidate',
) {
  const printed = Object.entries({ ...question.fixed, ...stated }).map(
    ([name, one]) => [name, readStated(calculator, name, one)] as const,
  );
  const example = exampleInput(calculator, rest);
  // What the example of the set leaves out is none of the exercise's numbers.
  return calculator.compute({ ...example, ...Object.fromEntries(printed) });
}

function expectKey(calculator: AnyCalculator, question: Question): void {
  const { plan, set } = question;
  const where = `${plan.id}, seed ${String(question.seed)}, ${question.units}`;
  const answerOf = (each: Case): number =>
    must(numberIn(fromPrint(calculator, question, each, set)[plan.ask]));
  const { answer } = keyOf(calculator, question);
  switch (question.kind) {
    case 'number': {
      const again = answerOf(question.case);
      // Its print may lose a fifth of the tolerance, no more.
      const printed = readAnswer(answer, question);
      expect(printed.ok, where).toBe(true);
      if (printed.ok)
        expect(Math.abs(printed.si / again - 1), where).toBeLessThan(0.21 * plan.tolerance);
      return;
    }
    case 'choice': {
      const [a, b] = question.cases.map(answerOf);
      const more = must(a) - must(b);
      const isSame = Math.abs(more) < 1e-9 * Math.abs(must(a));
      expect(answer, where).toBe(
        isSame ? 'Neither: both give the same' : more > 0 ? 'Set A' : 'Set B',
      );
      return;
    }
    case 'order': {
      const rising = question.cases
        .map((each, at) => ({ letter: 'ABC'.charAt(at), value: answerOf(each) }))
        .sort((one, other) => one.value - other.value);
      expect(answer, where).toBe(rising.map(({ letter }) => letter).join(' < '));
      return;
    }
    case 'read': {
      // The curve itself is what is printed.
      const curve = question.case.output[plan.ask];
      if (typeof curve !== 'object' || 'absent' in curve) throw new Error(`${where}: no curve`);
      const height = must(heightOn(curve, toSI(question.at, question.atUnit)));
      const printed = readAnswer(answer, question);
      if (!printed.ok) throw new Error(`${where}: ${printed.say}`);
      expect(Math.abs(printed.si - height), where).toBeLessThan(question.within / 2);
    }
  }
}

describe.each(all.map((calculator) => [calculator.id, calculator] as const))(
  'a sheet of %s',
  (_, calculator) => {
    const tasks = tasksOf(calculator);
    test.each<Units>(['mixed', 'metric', 'inch'])(
      'in %s units: the key is what its printed numbers give, worked again',
      { timeout: patience },
      (units) => {
        for (const { questions } of variants(tasks, { seed: 4821, units }, 3))
          for (const question of questions) expectKey(calculator, question);
      },
    );

    it('asks no variant what another was asked', { timeout: patience }, () => {
      const texts = variants(tasks, { seed: 7, units: 'mixed' }, 6).map(({ questions }) =>
        questions.map(textOf),
      );
      tasks.forEach(({ plan }, at) => {
        const asked = texts.map((questions) => questions[at]);
        expect(new Set(asked).size, plan.id).toBe(asked.length);
      });
    });

    it.each(['metric', 'inch'] as const)('states in %s units what it can', (units) => {
      const other = units === 'metric' ? 'inch' : 'metric';
      for (const { plan } of tasks)
        for (const seed of [1, 2, 3]) {
          const question = makeQuestion(calculator, plan, seed, units);
          const cases = 'cases' in question ? question.cases : [question.case];
          const stated = [question.fixed, ...cases.map((each) => each.stated)];
          for (const [name, { unit, text }] of stated.flatMap((each) => Object.entries(each))) {
            const entry = must(calculator.inputs[name]);
            if (entry.type === 'choice' || unitOf(entry[units]).system === other) continue;
            expect(unitOf(unit).system, `${plan.id}: ${name} ${text}`).not.toBe(other);
          }
        }
    });
  },
);

describe('thirty variants', () => {
  const tasks = tasksOf(calculators.bobweight);
  const draws: Draws = { seed: 31, units: 'mixed' };
  const thirty = variants(tasks, draws, 30);

  it('all differ, in every exercise', () => {
    tasks.forEach((task, at) => {
      const asked = thirty.map(({ questions }) => textOf(must(questions[at])));
      expect(new Set(asked).size, task.plan.id).toBe(30);
    });
  });

  it('come out the same each time, whatever their number and whatever stands beside an exercise', () => {
    const answers = (made: readonly Variant[], id: string): readonly string[] =>
      made.flatMap(({ questions }) =>
        questions
          .filter(({ plan }) => plan.id === id)
          .map((question) => textOf(question) + answerWords(question)),
      );
    const last = must(tasks.at(-1));
    const alone = variants([last], draws, 12);
    expect(answers(alone, last.plan.id)).toEqual(answers(thirty, last.plan.id).slice(0, 12));
    expect(answers(variants(tasks, draws, 2), last.plan.id)).toEqual(
      answers(alone, last.plan.id).slice(0, 2),
    );
  });

  it('are others with another seed', () => {
    const [first] = variants(tasks, { ...draws, seed: 32 }, 1);
    expect(must(first).questions.map(textOf)).not.toEqual(must(thirty[0]).questions.map(textOf));
  });
});

describe('the seed of an exercise', () => {
  it('is one that a link can hold, and another for each place on each sheet', () => {
    const seeds = [0, 1, 999_999_999].flatMap((sheet) =>
      [1, 2, 30].flatMap((place) =>
        ['bobweight.bobweight', 'bobweight.bobweight.order'].map((id) =>
          seedOf(sheet, place, id, 0),
        ),
      ),
    );
    expect(new Set(seeds).size).toBe(seeds.length);
    for (const seed of seeds) expect(String(seed)).toMatch(/^\d{1,9}$/);
  });

  it('is the published 32-bit FNV-1a of its text', () => {
    // From memory: the hash of `a` in the authors' own test vectors (draft-eastlake-fnv, appendix) is e40c292c; the
    // text here is longer, so the value is worked by its definition, letter by letter, with whole numbers of any size.
    let hash = 2166136261n;
    for (const letter of '4821/3/a.b/0')
      hash = ((hash ^ BigInt(letter.charCodeAt(0))) * 16777619n) % 4294967296n;
    expect(seedOf(4821, 3, 'a.b', 0)).toBe(Number(hash % 1_000_000_000n));
  });
});

it('the tolerance in the key is that of the marking', () => {
  const calculator: AnyCalculator = calculators.bobweight;
  const plan = must(tasksOf(calculator)[0]).plan;
  const question = makeQuestion(calculator, plan, 5, 'metric');
  if (question.kind !== 'number') throw new Error('the first exercise is no number');
  const [low, high] = (keyOf(calculator, question).beside.match(/\d+\.\d+/g) ?? []).map(Number);
  expect(must(low)).toBeCloseTo(1000 * question.answer * (1 - plan.tolerance), 1);
  expect(must(high)).toBeCloseTo(1000 * question.answer * (1 + plan.tolerance), 1);
});

it('the way in the key ends at the answer', () => {
  for (const calculator of all)
    for (const { plan } of tasksOf(calculator)) {
      if (plan.way.length === 0) continue;
      const question = makeQuestion(calculator, plan, 3, 'mixed');
      if (question.kind !== 'number') continue;
      const last = must(keyOf(calculator, question).way.at(-1));
      expect(last.of).toBe(plan.ask);
      expect(last.value / question.answer, plan.id).toBeCloseTo(1, 9);
    }
});
