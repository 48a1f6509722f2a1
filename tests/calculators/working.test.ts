import { compile } from 'mathjs';
import { describe, expect, test } from 'vitest';
import type { AnyCalculator, Entry, Result, Value } from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';
import { workPostfix } from '../../src/components/slots/postfix.ts';
import { setIds, workingLines } from '../../src/components/working/lines.ts';
import { namesIn, parseFormula } from '../../src/components/working/parse.ts';
import { toPostfix } from '../../src/components/working/postfix.ts';
import { OutOfDomain } from '../../src/core/refuse.ts';
import { toSI } from '../../src/units/units.ts';

/** Draws for each calculator; fewer for a model that needs many milliseconds. */
const usualDraws = 1000;
const slowDraws = 40;

/** A small generator of its own, so that a failing draw is the same draw again. */
function generator(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

function drawValue(entry: Entry, random: () => number): Value {
  if (entry.type === 'choice') {
    const options = Object.keys(entry.options);
    return options[Math.floor(random() * options.length)];
  }
  const [least, most] = entry.usual;
  function one(): number {
    if (entry.type !== 'choice' && entry.kind === 'count')
      return Math.round(least + (most - least) * random());
    return entry.type === 'choice'
      ? Number.NaN
      : toSI(least + (most - least) * random(), entry.rangeUnit);
  }
  if (entry.type === 'number') return one();
  return Array.from({ length: 1 + Math.floor(random() * entry.most) }, one);
}

interface Drawn {
  readonly input: Readonly<Record<string, Value>>;
  readonly output: Readonly<Record<string, Result>>;
}

/** Inputs inside the usual ranges that the model accepts, with their outputs; optional ones come and go. */
function draw(calculator: AnyCalculator, random: () => number): Drawn {
  for (let tries = 0; tries < 200; tries += 1) {
    const input: Record<string, Value> = {};
    for (const [name, entry] of Object.entries(calculator.inputs)) {
      if (entry.optional !== true || random() < 0.5) input[name] = drawValue(entry, random);
    }
    try {
      return { input, output: calculator.compute(input) };
    } catch (error) {
      if (!(error instanceof OutOfDomain)) throw error;
    }
  }
  throw new Error(`${calculator.id} refuses nearly everything inside its usual ranges`);
}

/** Names of a formula's scope: given, computed, and worked by the steps before. */
function scopeOf(calculator: AnyCalculator, { input, output }: Drawn): Record<string, Value> {
  const scope: Record<string, Value> = {};
  for (const [name, entry] of Object.entries(calculator.inputs))
    scope[name] =
      input[name] ?? (entry.optional === true && entry.type === 'number' ? 0 : undefined);
  for (const [name, result] of Object.entries(output))
    if (typeof result === 'number') scope[name] = result;
  return scope;
}

const all: readonly AnyCalculator[] = Object.values(calculators);

describe.each(all.map((calculator) => [calculator.id, calculator] as const))(
  'the working of %s',
  (_, calculator) => {
    const draws = calculator.pace === 'idle' ? slowDraws : usualDraws;
    const formulas = calculator.steps.flatMap((step) =>
      step.formula === undefined ? [] : [{ ...step, formula: step.formula }],
    );

    test('every symbol of a formula is declared, or worked by a step before it', () => {
      const known = new Set([
        ...Object.keys(calculator.inputs),
        ...Object.keys(calculator.outputs),
        'pi',
      ]);
      const between = new Set<string>();
      for (const { of, formula, symbol, kind } of calculator.steps) {
        for (const name of formula === undefined ? [] : namesIn(parseFormula(formula)))
          expect(known.has(name) || between.has(name), `${name} in the step of ${of}`).toBe(true);
        if (known.has(of)) continue;
        between.add(of);
        expect([symbol, kind], `symbol and kind of ${of}`).not.toContain(undefined);
      }
    });

    test('every main result is reached by a step', () => {
      const reached = calculator.steps.map(({ of }) => of);
      for (const [name, output] of Object.entries(calculator.outputs))
        if (output.type !== 'series' && output.main === true) expect(reached).toContain(name);
    });

    /** For each step: what compute returns, what the formula gives, and what the page's own evaluator gives. */
    function workAll(): Map<string, { asked: number; worked: number; postfix: number }[]> {
      const random = generator(20_261_125);
      const all = new Map(formulas.map(({ of }) => [of, [] as ReturnType<typeof one>[]]));
      function one(asked: number, worked: number, postfix: number) {
        return { asked, worked, postfix };
      }
      for (let count = 0; count < draws; count += 1) {
        const drawn = draw(calculator, random);
        const scope = scopeOf(calculator, drawn);
        for (const { of, compiled, postfix } of compiledFormulas) {
          const own = drawn.output[of];
          // No answer exists for these inputs, and so no line of numbers either.
          if (typeof own === 'object') continue;
          const worked = Number(compiled.evaluate({ ...scope }));
          const onPage = workPostfix(postfix, (name) => {
            const value = scope[name];
            return typeof value === 'string' ? undefined : value;
          });
          all.get(of)?.push(one(own ?? worked, worked, onPage ?? Number.NaN));
          if (own === undefined) scope[of] = worked;
        }
      }
      return all;
    }
    const compiledFormulas = formulas.map(({ of, formula }) => ({
      of,
      compiled: compile(formula),
      postfix: toPostfix(parseFormula(formula)),
    }));
    let cases: ReturnType<typeof workAll> | undefined;

    test.each(formulas)('the step of $of gives what compute gives', ({ of }) => {
      cases ??= workAll();
      const own = cases.get(of) ?? [];
      expect(own.length).toBeGreaterThan(draws / 10);
      // A result that passes through zero has no relative error there: it is measured by its usual size.
      const sizes = own.map(({ asked }) => Math.abs(asked)).sort((one, other) => one - other);
      const usual = sizes[Math.floor(sizes.length / 2)] ?? 0;
      const missed = own.filter(({ asked, worked, postfix }) => {
        const allowed = 1e-12 * Math.max(Math.abs(asked), usual);
        return !(Math.abs(worked - asked) <= allowed && Math.abs(postfix - asked) <= allowed);
      });
      expect(missed).toEqual([]);
    });

    test('every line is printed whole: symbols that can be questioned, no number missing', () => {
      const random = generator(1);
      const [one, two] = [draw(calculator, random), draw(calculator, random)];
      const lines = workingLines(calculator, {
        baseline: { ...one.input, ...one.output },
        candidate: { ...two.input, ...two.output },
      });
      expect(lines).toHaveLength(calculator.steps.length);
      for (const line of lines) {
        expect(line.formula).toContain(`data-q="${line.of}"`);
        expect(line.formula).not.toMatch(/href| style=|annotation|merror|undefined|NaN/u);
        for (const set of setIds) {
          expect(`${line.numbers[set] ?? ''}${line.result[set] ?? ''}`).not.toMatch(
            / style=|undefined|NaN|Infinity/u,
          );
        }
      }
    });
  },
);
