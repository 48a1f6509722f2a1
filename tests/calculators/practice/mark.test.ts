import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { bobweight } from '../../../src/calculators/balance/bobweight.ts';
import { partialBalance } from '../../../src/calculators/balance/partial-balance.ts';
import type { AnyCalculator, Value } from '../../../src/calculators/define.ts';
import { reversalLoad } from '../../../src/calculators/loads/reversal-load.ts';
import { pistonMotion } from '../../../src/calculators/motion/piston-motion.ts';
import { rodAngularity } from '../../../src/calculators/motion/rod-angularity.ts';
import {
  heightOn,
  makeQuestion,
  type ChoiceQuestion,
  type NumberQuestion,
  type OrderQuestion,
  type ReadQuestion,
} from '../../../src/calculators/practice/make.ts';
import {
  markChoice,
  markNumber,
  markOrder,
  markRead,
} from '../../../src/calculators/practice/mark.ts';
import { plansOf } from '../../../src/calculators/practice/plan.ts';
import { linesOf } from '../../../src/components/practice/lines-of.ts';
import { fromSI, unitOf } from '../../../src/units/units.ts';
import { must } from '../must.ts';

/** The first question of a plan that is as wanted. */
function question<Q extends ReturnType<typeof makeQuestion>>(
  calculator: AnyCalculator,
  id: string,
  isWanted: (made: Q) => boolean = () => true,
): Q {
  const plan = must(plansOf(calculator, linesOf(calculator)).find((each) => each.id === id));
  for (let seed = 1; seed < 2000; seed += 1) {
    const made = makeQuestion(calculator, plan, seed) as Q;
    if (isWanted(made)) return made;
  }
  throw new Error(`no question of ${id} is as wanted`);
}
/** An answer in the unit of the question, with as many figures as a reader keeps. */
function typed(si: number, { unit }: { readonly unit: string }, figures = 5): string {
  return `${String(Number(fromSI(si, unit).toPrecision(figures)))} ${unitOf(unit).symbol}`;
}

describe('a number', () => {
  const pull = question<NumberQuestion>(
    reversalLoad,
    'reversal-load.partingPull',
    ({ case: { stated }, unit }) => stated['stroke']?.unit === 'in' && unit === 'kN',
  );
  const mark = (si: number, figures?: number) =>
    markNumber(reversalLoad, pull, typed(si, pull, figures));
  /** What the reader gets who slips at one quantity. */
  const slipped = (name: string, change: (value: number) => Value): number => {
    const input = { ...pull.case.input, [name]: change(Number(pull.case.input[name])) };
    return reversalLoad.compute(input as Parameters<typeof reversalLoad.compute>[0]).partingPull;
  };

  it('is right within its tolerance and nowhere else', () => {
    for (const share of [-0.0099, 0, 0.0099])
      expect(mark(pull.answer * (1 + share), 9).outcome).toBe('right');
    for (const share of [-0.0101, 0.0101, 0.5])
      expect(mark(pull.answer * (1 + share), 9).outcome).toBe('not yet');
  });

  it('says what the right one is and how near was asked', () => {
    expect(mark(pull.answer).say).toMatch(/^It is [\d.]+\u00a0kN; asked was within 1 %\.$/);
  });

  it.each([
    ['in for mm:stroke', 'stroke', (value: number) => value / 25.4],
    ['diameter:stroke', 'stroke', (value: number) => 2 * value],
    ['radius:stroke', 'stroke', (value: number) => value / 2],
    ['rpm for rad/s:maxSpeed', 'maxSpeed', (value: number) => (value * 30) / Math.PI],
    ['left out:pinMass', 'pinMass', () => 0],
  ])('names the slip %s', (slip, name, change) => {
    expect(mark(slipped(name, change))).toMatchObject({ outcome: 'not yet', slip });
  });

  it('names a sign, a power of ten, a factor of two and another unit', () => {
    expect(mark(-pull.answer).slip).toBe('sign');
    expect(mark(pull.answer * 10).slip).toBe('power:1');
    expect(mark(pull.answer / 100).slip).toBe('power:-2');
    const pounds = `${fromSI(pull.answer, 'lbf').toFixed(1)} kN`;
    expect(markNumber(reversalLoad, pull, pounds).slip).toBe('written:lbf');
    const newtons = `${pull.answer.toFixed(0)} kN`;
    expect(markNumber(reversalLoad, pull, newtons).slip).toBe('written:N');
  });

  it('names another quantity of the same sheet', () => {
    const { crankpinPull } = pull.case.output;
    expect(mark(Number(crankpinPull))).toMatchObject({ slip: 'another:crankpinPull' });
    expect(mark(Number(crankpinPull)).say).toContain('“Pull on the crankpin”');
  });

  it('tells rounding on the way from a slip', () => {
    expect(mark(pull.answer * 1.018)).toMatchObject({ outcome: 'not yet', slip: 'rounding' });
    expect(mark(pull.answer * 1.018).say).toContain('1.8 % too large');
    expect(mark(pull.answer * 0.97).slip).not.toBe('power:1');
  });

  it('knows one rod for two, the whole for a half, and an ounce for a gram', () => {
    const sum = question<NumberQuestion>(
      bobweight,
      'bobweight.bobweight',
      ({ case: { stated } }) => stated['pinMass']?.unit === 'oz',
    );
    const with_ = (change: Readonly<Record<string, number>>) => {
      const input = { ...sum.case.input, ...change } as Parameters<typeof bobweight.compute>[0];
      return markNumber(bobweight, sum, typed(bobweight.compute(input).bobweight, sum, 6)).slip;
    };
    expect(with_({ rodsPerPin: 1 })).toBe('one:rodsPerPin');
    expect(with_({ reciprocatingFraction: 1 })).toBe('whole:reciprocatingFraction');
    const ounces = fromSI(Number(sum.case.input['pinMass']), 'oz');
    expect(with_({ pinMass: ounces / 1000 })).toBe('oz for g:pinMass');
  });

  it('knows degrees taken as radians', () => {
    const lean = question<NumberQuestion>(rodAngularity, 'rod-angularity.rodAngle');
    const crankAngle = fromSI(Number(lean.case.input['crankAngle']), 'deg');
    const input = { ...lean.case.input, crankAngle } as Parameters<typeof rodAngularity.compute>[0];
    const { rodAngle } = rodAngularity.compute(input);
    expect(markNumber(rodAngularity, lean, typed(rodAngle, lean, 6)).slip).toBe(
      'deg for rad:crankAngle',
    );
  });

  test('a named slip gives the answer that was given, and never the right one', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 60, noNaN: true }), (factor) => {
        const made = mark(pull.answer * factor, 8);
        const isRight = Math.abs(factor - 1) <= pull.plan.tolerance;
        expect(made.outcome).toBe(isRight ? 'right' : 'not yet');
        if (isRight) expect(made).not.toHaveProperty('slip');
        if (made.slip === 'rounding') expect(Math.abs(factor - 1)).toBeLessThan(0.031);
        if (made.slip?.startsWith('power:') === true) {
          const power = 10 ** Number(made.slip.slice(6));
          expect(factor / power).toBeCloseTo(1, 2);
        }
      }),
    );
  });

  it('takes a direction that is named the other way round the circle', () => {
    const lean = question<NumberQuestion>(rodAngularity, 'rod-angularity.rodAngle');
    for (const turns of [-2, -1, 1])
      expect(
        markNumber(rodAngularity, lean, typed(lean.answer + turns * 2 * Math.PI, lean, 9)).outcome,
      ).toBe('right');
    expect(markNumber(rodAngularity, lean, typed(lean.answer + Math.PI, lean, 9)).outcome).toBe(
      'not yet',
    );
  });

  it('claims no slip where none fits', () => {
    const made = mark(pull.answer * 1.3779, 8);
    expect(made).not.toHaveProperty('slip');
    expect(made.say).toContain('step by step');
  });
});

describe('a choice', () => {
  const choice = (right: 0 | 1 | 2) =>
    question<ChoiceQuestion>(
      partialBalance,
      'partial-balance.inertiaForce.choice',
      (made) => made.right === right,
    );

  it.each([0, 1, 2] as const)('takes %s where that is right, and no other', (right) => {
    const made = choice(right);
    for (const place of [0, 1, 2])
      expect(markChoice(partialBalance, made, place).outcome).toBe(
        place === right ? 'right' : 'not yet',
      );
  });

  it('says what each number does by itself', () => {
    const made = choice(0);
    expect(markChoice(partialBalance, made, 1).say).toMatch(
      /alone makes it [\d.]+ % (greater|smaller)/,
    );
    expect(markChoice(partialBalance, choice(2), 0).say).toMatch(/changes nothing here/);
    expect(markChoice(partialBalance, made, 1).say).not.toMatch(/A: /);
    expect(markChoice(partialBalance, made, 0).say).toMatch(/^A: .* B: /);
  });

  it('says so where nothing is chosen', () => {
    expect(markChoice(partialBalance, choice(0), undefined).outcome).toBe('unread');
  });
});

describe('an order', () => {
  const made = question<OrderQuestion>(pistonMotion, 'piston-motion.meanSpeed.order');

  it('is one of six', () => {
    const outcomes = [0, 1, 2, 3, 4, 5].map(
      (place) => markOrder(pistonMotion, made, place).outcome,
    );
    expect(outcomes.filter((outcome) => outcome === 'right')).toHaveLength(1);
    expect(outcomes[made.right]).toBe('right');
    expect(markOrder(pistonMotion, made, undefined).outcome).toBe('unread');
  });

  it('names two sets that stand the wrong way round', () => {
    for (const place of [0, 1, 2, 3, 4, 5].filter((each) => each !== made.right)) {
      const [, low = '', high = ''] =
        /^Look at ([ABC]) and ([ABC]) again/u.exec(markOrder(pistonMotion, made, place).say) ?? [];
      const of = (letter: string): number => must(made.cases['ABC'.indexOf(letter)]).answer;
      expect(of(low)).toBeGreaterThan(of(high));
    }
  });
});

describe('a reading', () => {
  const made = question<ReadQuestion>(pistonMotion, 'piston-motion.accelerationCurve.read');
  const mark = (si: number) => markRead(made, typed(si, made, 6));

  it('is right as near as it was asked', () => {
    expect(mark(made.answer + 0.99 * made.within).outcome).toBe('right');
    expect(mark(made.answer - 1.01 * made.within).outcome).toBe('not yet');
    expect(markRead(made, '').outcome).toBe('unread');
  });

  it('names a sign and a power of ten', () => {
    expect(mark(-made.answer).slip).toBe('sign');
    expect(mark(made.answer * 1000).slip).toBe('power');
  });

  it('names the height beside the place', () => {
    const beside = (one: ReadQuestion, way: number): number => {
      const curve = one.case.output[one.plan.ask];
      if (typeof curve !== 'object' || 'absent' in curve) throw new Error('there is no curve');
      return must(heightOn(curve, (one.at + way * one.grid) * unitOf(one.atUnit).factor));
    };
    // Where the curve is steep, and no height is another one's opposite.
    const steep = question<ReadQuestion>(
      pistonMotion,
      'piston-motion.speedCurve.read',
      (one) =>
        one.at > 60 &&
        one.at < 300 &&
        Math.abs(beside(one, 1) - one.answer) > 3 * one.within &&
        Math.abs(beside(one, 1) + one.answer) > 3 * one.within &&
        Math.abs(beside(one, 1) - beside(one, 2)) > 3 * one.within,
    );
    const made = markRead(steep, typed(beside(steep, 1), steep, 6));
    expect(made).toMatchObject({ outcome: 'not yet', slip: 'beside' });
    expect(made.say).toContain(String(steep.at + steep.grid));
  });
});
