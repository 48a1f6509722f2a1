import type { AnyCalculator, Entry, Value } from '../../src/calculators/define.ts';
import { seededRandom } from '../../src/core/math/random.ts';
import { OutOfDomain } from '../../src/core/refuse.ts';
import { toSI } from '../../src/units/units.ts';

/** Inputs that a calculator accepts and what it gives for them, in SI; curves are left out. */
export interface Drawn {
  readonly input: Readonly<Record<string, Value>>;
  /** A number, or undefined where no answer exists for these inputs. */
  readonly output: Readonly<Record<string, number | undefined>>;
}

function drawValue(entry: Entry, random: () => number): Value {
  if (entry.type === 'choice') {
    const options = Object.keys(entry.options);
    return options[Math.floor(random() * options.length)];
  }
  const { kind, rangeUnit, usual } = entry;
  const [least, most] = usual;
  function one(): number {
    const value = least + (most - least) * random();
    return kind === 'count' ? Math.round(value) : toSI(value, rangeUnit);
  }
  if (entry.type === 'number') return one();
  return Array.from({ length: 1 + Math.floor(random() * entry.most) }, one);
}

/** Inputs inside the usual ranges that the model accepts; optional ones come and go. */
function draw(calculator: AnyCalculator, random: () => number): Drawn {
  for (let tries = 0; tries < 200; tries += 1) {
    const input: Record<string, Value> = {};
    for (const [name, entry] of Object.entries(calculator.inputs)) {
      if (entry.optional !== true || random() < 0.5) input[name] = drawValue(entry, random);
    }
    try {
      const results = Object.entries(calculator.compute(input))
        .filter(([, result]) => typeof result === 'number' || 'absent' in result)
        .map(([name, result]) => [name, typeof result === 'number' ? result : undefined] as const);
      return { input, output: Object.fromEntries(results) };
    } catch (error) {
      if (!(error instanceof OutOfDomain)) throw error;
    }
  }
  throw new Error(
    `${calculator.id} refuses nearly everything inside its usual ranges: correct the ranges of its inputs in the dictionary`,
  );
}

/** Draws made before, by the arithmetic that made them: a calculator with other steps shares them. */
const made = new WeakMap<AnyCalculator['compute'], Map<string, readonly Drawn[]>>();

/** So many draws of a calculator; the same seed gives the same ones again. */
export function drawsOf(calculator: AnyCalculator, count: number, seed: number): readonly Drawn[] {
  const { compute } = calculator;
  const known = made.get(compute) ?? new Map<string, readonly Drawn[]>();
  made.set(compute, known);
  const key = `${count} from ${seed}`;
  const random = seededRandom(seed);
  const draws = known.get(key) ?? Array.from({ length: count }, () => draw(calculator, random));
  known.set(key, draws);
  return draws;
}
