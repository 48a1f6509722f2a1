import { describe, expect, test } from 'vitest';
import type { AnyCalculator, Entry, Value } from '../../src/calculators/define.ts';
import { rangeInSI } from '../../src/calculators/evaluate.ts';
import { calculators } from '../../src/calculators/index.ts';
import { seededRandom } from '../../src/core/math/random.ts';
import { OutOfDomain } from '../../src/core/refuse.ts';
import { must } from './must.ts';

/**
 * A refusal is shown beside the field that it names, so that it must name one of the calculator at hand. Inputs
 * are drawn from a fixed seed: in the hard ranges and beyond them, many at a time; and one alone out of its
 * senses while all others are usual.
 */
const seed = 20240607;
const draws = 150;
const never = [0, -1, Number.NaN, Infinity, -Infinity];

type Random = () => number;
const within = (random: Random, low: number, high: number): number => low + random() * (high - low);

function numberFor(
  entry: Exclude<Entry, { type: 'choice' }>,
  random: Random,
  wild: number,
): number {
  const [low, high] = rangeInSI(entry, random() < wild ? 'hard' : 'usual');
  const usual = within(random, low, high);
  const drawn = random();
  if (drawn < 0.05 * wild) return must(never[Math.floor(random() * never.length)]);
  if (drawn < 0.1 * wild) return low - (high - low) * random();
  if (drawn < 0.15 * wild) return high + (high - low) * random();
  return entry.kind === 'count' && drawn < 0.9 ? Math.round(usual) : usual;
}

function valueFor(entry: Entry, random: Random, wild: number): Value {
  if (entry.optional === true && random() < 0.2) return undefined;
  if (entry.type === 'choice') {
    const options = Object.keys(entry.options);
    return must(options[Math.floor(random() * options.length)]);
  }
  if (entry.type === 'number') return numberFor(entry, random, wild);
  const length = Math.floor(random() * 4) + (wild === 0 ? 1 : 0);
  return Array.from({ length }, () => numberFor(entry, random, wild));
}

function inputFor(calculator: AnyCalculator, random: Random, wild: number): Record<string, Value> {
  const given = Object.entries(calculator.inputs)
    .map(([name, entry]) => [name, valueFor(entry, random, wild)] as const)
    .filter(([, value]) => value !== undefined);
  return Object.fromEntries(given);
}

/** The quantity refused; undefined where the input is taken. */
function refused(calculator: AnyCalculator, input: Record<string, Value>): string | undefined {
  try {
    calculator.compute(input);
  } catch (error) {
    if (error instanceof OutOfDomain) return error.quantity;
    throw error;
  }
  return undefined;
}

describe.each(Object.values<AnyCalculator>(calculators))(
  '$id refuses by a field of its own',
  (calculator) => {
    const fields = Object.keys(calculator.inputs);

    test('numbers in the hard ranges and beyond, many at a time', () => {
      const random = seededRandom(seed);
      for (let draw = 0; draw < draws; draw++) {
        const quantity = refused(calculator, inputFor(calculator, random, 1));
        if (quantity !== undefined) expect(fields).toContain(quantity);
      }
    });

    test('each number that cannot be, all others usual', () => {
      const random = seededRandom(seed);
      for (const [name, entry] of Object.entries(calculator.inputs)) {
        if (entry.type === 'choice') continue;
        const usual = inputFor(calculator, random, 0);
        for (const value of never) {
          const tried = entry.type === 'list' ? [value] : value;
          const quantity = refused(calculator, { ...usual, [name]: tried });
          if (quantity !== undefined) expect(fields).toContain(quantity);
        }
      }
    });
  },
);
