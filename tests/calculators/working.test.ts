import { beforeAll, describe, expect, test } from 'vitest';
import type { AnyCalculator } from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';
import { setIds, workingLines } from '../../src/components/working/lines.ts';
import { usedBy } from '../../src/components/working/uses.ts';
import { drawsOf } from './draws.ts';
import { faultText, fileOf } from './fault-text.ts';
import { formulaFaults } from './formula-faults.ts';

/** Draws for each calculator; fewer for a model that needs many milliseconds. */
const usualDraws = 1000;
const slowDraws = 40;
/** A failing draw is the same draw again. */
const seed = 20_261_125;

const all: readonly AnyCalculator[] = Object.values(calculators);

/** Fails with what is wrong, one line each; a list of what a reader can act on, never a dump of values. */
function expectNone(mistakes: readonly string[]): void {
  if (mistakes.length > 0) expect.fail(mistakes.join('\n'));
}

/** Names that the line of an output uses, directly or through values on the way. */
function reachedByOutputs({ steps, outputs }: AnyCalculator): ReadonlySet<string> {
  const reached = new Set(Object.keys(outputs));
  for (const step of steps.toReversed())
    if (reached.has(step.of)) for (const name of usedBy(step)) reached.add(name);
  return reached;
}

describe.each(all.map((calculator) => [calculator.id, calculator] as const))(
  'the working of %s',
  (_, calculator) => {
    const { inputs, outputs, steps } = calculator;
    const draws = calculator.pace === 'idle' ? slowDraws : usualDraws;
    const place = (step: string): string => `${fileOf(calculator, step)}, step "${step}"`;

    // Made before they are asked for: a slow model takes its time on a busy machine.
    beforeAll(() => {
      drawsOf(calculator, draws, seed);
    }, 60_000);

    test('every symbol of a formula is declared, or worked by a step before it', () => {
      const known = new Set([...Object.keys(inputs), ...Object.keys(outputs)]);
      const mistakes: string[] = [];
      for (const step of steps) {
        // A line without a formula may show its own symbol in the middle of a balance.
        if (step.formula === undefined) known.add(step.of);
        for (const name of usedBy(step).filter((used) => !known.has(used)))
          mistakes.push(
            `${place(step.of)}: "${name}" is no input, no output and no step before this one. Correct the name, or move its step up.`,
          );
        known.add(step.of);
      }
      expectNone(mistakes);
    });

    test('every main result is reached by a step', () => {
      const missing = Object.entries(outputs)
        .filter(([, output]) => output.type !== 'series' && output.main === true)
        .filter(([name]) => !steps.some(({ of }) => of === name));
      expectNone(
        missing.map(
          ([name]) =>
            `${fileOf(calculator)}: no step works out the main result "${name}". Add the line that gives it.`,
        ),
      );
    });

    test('every value on the way is used by the line of an output', () => {
      const reached = reachedByOutputs(calculator);
      expectNone(
        steps
          .filter(({ of }) => !reached.has(of))
          .map(
            ({ of }) =>
              `${place(of)}: no output's line uses this value. Use it in one, declare it as an output, or drop the step.`,
          ),
      );
    });

    test('a step has a formula, or says why it has none', () => {
      expectNone(
        steps
          .filter(({ formula, tex }) => (formula === undefined) === (tex === undefined))
          .map(({ of }) => `${place(of)}: give it a formula, or tex(…) and the reason.`),
      );
    });

    test('a step cites a source that the calculator names', () => {
      expectNone(
        steps
          .filter(({ source }) => source !== undefined && !calculator.sources.includes(source))
          .map(
            ({ of, source }) =>
              `${place(of)}: add "${source}" to the sources in ${fileOf(calculator)}.`,
          ),
      );
    });

    test.each(steps.filter(({ formula }) => formula !== undefined))(
      'the step of $of gives what compute gives',
      (step) => {
        const faults = formulaFaults(calculator, step, draws, seed);
        // A value on the way is also seen through the outputs that use it, which have tests of their own.
        const own = faults.filter(({ of }) => of === step.of);
        expectNone(own.map((fault) => faultText(calculator, fault)));
      },
    );

    test('every line is printed whole: symbols that can be questioned, no number missing', () => {
      const [one, two] = drawsOf(calculator, 2, seed);
      const lines = workingLines(calculator, {
        baseline: { ...one?.input, ...one?.output },
        candidate: { ...two?.input, ...two?.output },
      });
      const mistakes = lines.flatMap(({ of, formula, numbers, result }) => {
        const html = setIds.map((set) => `${numbers[set] ?? ''}${result[set] ?? ''}`).join('');
        const holes = [
          ...(/href| style=|annotation|merror|undefined|NaN/gu.exec(formula) ?? []),
          ...(/ style=|undefined|NaN|Infinity/gu.exec(html) ?? []),
          ...(formula.includes(`data-q="${of}"`) ? [] : [`no data-q="${of}"`]),
        ];
        return holes.map((hole) => `${place(of)}: its line is printed with “${hole}”.`);
      });
      expectNone(mistakes);
      expect(lines).toHaveLength(steps.length);
    });
  },
);
