import { describe, expect, test } from 'vitest';
import type { AnyCalculator, Entry, Result, SetId } from '../../src/calculators/define.ts';
import { compareSets } from '../../src/calculators/evaluate.ts';
import { calculators } from '../../src/calculators/index.ts';
import { seededRandom } from '../../src/core/math/random.ts';
import { evaluate, type Evaluation } from '../../src/notebook/evaluation.ts';
import { exampleOf } from '../../src/notebook/example.ts';
import { bothSets, type StoredValue } from '../../src/notebook/values.ts';
import { cpuTime } from '../cpu-time.ts';

/**
 * Whatever stands in the fields, a set is worked to finite numbers or refused in a sentence, and the two are compared
 * or said to have nothing to compare, in bounded time. Drawn from a fixed seed: at the limits of the hard ranges,
 * inside them, beyond them by up to twenty powers of ten, zero, the least and the greatest doubles; a share of the
 * fields that is itself drawn, the others as in the example.
 */
const seed = 20240612;
const draws = 120;
/** Processor time [ms] that all draws of one calculator may take: a slow model's are some ten each. */
const most = 30_000;

type Random = () => number;

function numberFor(entry: Exclude<Entry, { type: 'choice' }>, random: Random): number {
  const [low, high] = entry.hard;
  const inside = low + random() * (high - low);
  const all = [
    low,
    high,
    inside,
    inside,
    0,
    -high,
    low / 1e9,
    high * 10 ** (20 * random()),
    5e-324,
    1e308,
  ];
  const value = all[Math.floor(random() * all.length)] ?? inside;
  return entry.kind === 'count' && random() < 0.8 ? Math.round(value) : value;
}

function typed(set: SetId, entry: Entry, random: Random, wild: number): StoredValue {
  if (random() >= wild) return exampleOf(set, entry);
  if (entry.optional === true && random() < 0.3) return { text: '', unit: '' };
  if (entry.type === 'choice') {
    const options = Object.keys(entry.options);
    return { text: options[Math.floor(random() * options.length)] ?? '', unit: '' };
  }
  const many = entry.type === 'list' ? 1 + Math.floor(random() * 4) : 1;
  const texts = Array.from({ length: many }, () => String(numberFor(entry, random)));
  return { text: texts.join('; '), unit: entry.rangeUnit };
}

function numbersIn(result: Result): readonly number[] {
  if (typeof result === 'number') return [result];
  return 'absent' in result ? [] : [...Array.from(result.x), ...Array.from(result.y)];
}

/** What a reader is told of a set without a result. */
function saidOf({ fields, fault }: Evaluation): string {
  const problems = Object.values(fields).map(({ problem }) => problem);
  return [fault, ...problems].filter((one) => one !== undefined).join(' ');
}

describe.each(Object.values<AnyCalculator>(calculators))('$id', (calculator) => {
  test(`${String(draws)} draws of both sets, from seed ${String(seed)}`, () => {
    const random = seededRandom(seed);
    const began = cpuTime();
    let worked = 0;
    for (let draw = 0; draw < draws; draw += 1) {
      const wild = random() ** 2;
      const [baseline, candidate] = bothSets.map((set) => {
        const values = new Map(
          Object.values(calculator.inputs).map((entry) => [
            entry.name,
            typed(set, entry, random, wild),
          ]),
        );
        const what = `draw ${String(draw)}, ${set}: ${JSON.stringify([...values])}`;
        const found = evaluate(
          calculator,
          (entry) => values.get(entry.name) ?? exampleOf(set, entry),
        );
        if (found.output === undefined) {
          expect(saidOf(found), what).toMatch(/^\S.{10,}[.?]$/s);
          expect(saidOf(found), what).not.toMatch(/NaN|Infinity|∞|undefined|\[object/);
          return undefined;
        }
        worked += 1;
        for (const [name, result] of Object.entries(found.output))
          if (!numbersIn(result).every(Number.isFinite)) expect.fail(`${name} in ${what}`);
        return { input: found.input ?? {}, output: found.output, what };
      });
      if (baseline === undefined || candidate === undefined) continue;
      for (const [name, result] of Object.entries(
        compareSets(calculator, { baseline, candidate }) ?? {},
      ))
        if (!numbersIn(result).every(Number.isFinite))
          expect.fail(`${name} of ${baseline.what} and ${candidate.what}`);
    }
    expect(worked).toBeGreaterThan(draws / 10);
    expect(cpuTime() - began).toBeLessThan(most);
  });
});

test('a number typed key by key is refused or worked at every key', () => {
  const { 'gas-port': gasPort } = calculators;
  const calculator: AnyCalculator = gasPort;
  for (const [whole, unit] of [
    ['45 um', 'mm'],
    ['1.5 thou', 'in'],
  ] as const)
    for (let keys = 1; keys <= whole.length; keys += 1) {
      const text = whole.slice(0, keys);
      const began = cpuTime();
      const { output, fields } = evaluate(calculator, (entry) =>
        entry.name === 'ringSideClearance' ? { text, unit } : exampleOf('baseline', entry),
      );
      const said = fields['ringSideClearance']?.problem;
      expect(output === undefined, text).toBe(said !== undefined);
      // An evaluation takes some ten milliseconds; the first one is compiled on the way.
      expect(cpuTime() - began, text).toBeLessThan(1000);
    }
});
