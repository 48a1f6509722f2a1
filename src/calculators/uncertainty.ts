import type { AnyCalculator } from './define.ts';
import {
  continuousInputs,
  numberIn,
  numericOutputs,
  outputsOrNone,
  type InputValues,
} from './evaluate.ts';

/** What one input's ± does to one output. */
export interface Share {
  readonly name: string;
  /** Signed change of the output [SI] when the input grows by its ±. */
  readonly effect: number;
  /** Part of the squared ± of the output that this input makes, 0 to 1; the shares sum to 1. */
  readonly share: number;
}

/** The ± of one output. */
export interface Propagated {
  /** [SI], never negative; in the same sense as the inputs' (both about 2 s, or both 1 s). */
  readonly plusMinus: number;
  /** Greatest first. Inputs without effect are not listed. */
  readonly shares: readonly Share[];
  /** Inputs whose effect is not known, because neither side of their ± can be computed. */
  readonly unknown: readonly string[];
}

/** A ± and what makes it. */
export type Spread = Pick<Propagated, 'plusMinus' | 'shares'>;

export type PropagatedOutputs = Readonly<Record<string, Propagated>>;

/** The ± that independent effects make together, and the share of each; what has no effect is left out. */
function together(effects: readonly Pick<Share, 'name' | 'effect'>[]): Spread {
  const some = effects.filter(({ effect }) => effect !== 0);
  const plusMinus = Math.hypot(...some.map(({ effect }) => effect));
  const shares = some
    .map(({ name, effect }) => ({ name, effect, share: (effect / plusMinus) ** 2 }))
    .sort((p, q) => q.share - p.share);
  return { plusMinus, shares };
}

/** True for a result that is counted: it jumps, so that no ± of a measurement can be followed through it. */
function isCounted({ outputs }: AnyCalculator, name: string): boolean {
  const output = outputs[name];
  return output !== undefined && output.type !== 'series' && output.kind === 'count';
}

/** A propagation cut into one task for each input, to be run in idle slices. */
export interface Propagation {
  /** The inputs that carry a ±; each is handed to `step` once, in any order. */
  readonly inputs: readonly string[];
  step(name: string): void;
  /** Of the steps taken so far: complete once every input had its turn. */
  result(): PropagatedOutputs;
}

/**
 * Half of up − down, or 0 where the two differ by no more than rounding may make of them. A sum of
 * harmonics loses some digits of its smallest terms; a share of 1e-10 is far below any measurement.
 */
function halfDifference(up: number, down: number): number {
  const rounding = 1e-10 * Math.max(Math.abs(up), Math.abs(down));
  return Math.abs(up - down) <= rounding ? 0 : (up - down) / 2;
}

/**
 * First-order propagation of the inputs' ± [SI, by input name] to every numeric output:
 * u(y)² = Σ u_i(y)² (JCGM 100:2008, 5.1.2), the inputs taken as independent.
 *
 * u_i(y) is half the difference of the outputs at x_i ± u(x_i) (5.1.3, note 2), so no step has to be
 * chosen. Where one of the two sides is refused, the difference to the side that computes is taken whole.
 * Counts, choices and lists have no ±, and neither has a result that is counted. Two computations for each input.
 *
 * Neglected: correlated inputs of one set (one scale behind several masses), and curvature, so that at a peak
 * the effect reads zero. Throws OutOfDomain where `input` itself is refused.
 */
export function propagation(
  calculator: AnyCalculator,
  input: InputValues,
  plusMinus: Readonly<Record<string, number>>,
): Propagation {
  const centre = calculator.compute(input);
  const outputs = numericOutputs(calculator).flatMap((name) => {
    const y = numberIn(centre[name]);
    return y === undefined ? [] : [{ name, y }];
  });
  const effects = new Map<string, Map<string, number | undefined>>();

  const inputs = continuousInputs(calculator)
    .map((entry) => entry.name)
    .filter((name) => {
      const u = plusMinus[name];
      return typeof input[name] === 'number' && u !== undefined && Number.isFinite(u) && u > 0;
    });

  function step(name: string): void {
    const x = input[name];
    const u = plusMinus[name];
    if (typeof x !== 'number' || u === undefined) return;
    const above = outputsOrNone(calculator, { ...input, [name]: x + u });
    const below = outputsOrNone(calculator, { ...input, [name]: x - u });
    const row = new Map<string, number | undefined>();
    for (const { name: output, y } of outputs) {
      const up = numberIn(above?.[output]);
      const down = numberIn(below?.[output]);
      if (up !== undefined && down !== undefined) row.set(output, halfDifference(up, down));
      else if (up !== undefined) row.set(output, up - y);
      else row.set(output, down === undefined ? undefined : y - down);
    }
    effects.set(name, row);
  }

  function ofOutput(output: string): Propagated {
    if (isCounted(calculator, output)) return { plusMinus: 0, shares: [], unknown: [] };
    const known: { name: string; effect: number }[] = [];
    const unknown: string[] = [];
    for (const [name, row] of effects) {
      const effect = row.get(output);
      if (effect === undefined) unknown.push(name);
      else known.push({ name, effect });
    }
    return { ...together(known), unknown };
  }

  return {
    inputs,
    step,
    result: () => Object.fromEntries(outputs.map(({ name }) => [name, ofOutput(name)])),
  };
}

/** {@link propagation} in one go: the ± of every numeric output that exists for `input`. */
export function propagate(
  calculator: AnyCalculator,
  input: InputValues,
  plusMinus: Readonly<Record<string, number>>,
): PropagatedOutputs {
  const whole = propagation(calculator, input, plusMinus);
  whole.inputs.forEach((name) => whole.step(name));
  return whole.result();
}

/** The ± [SI] of one output if every input's error fell the worst way at once: the sum of all effects' sizes. */
export function worstCase({ shares }: Pick<Propagated, 'shares'>): number {
  return shares.reduce((sum, { effect }) => sum + Math.abs(effect), 0);
}

/**
 * The inputs whose error is one and the same in both sets, by their {@link Origin}: assumptions and choices,
 * and things as long as both sets have the same number. What a part measures is measured on each, unless it is
 * one and the same part in both.
 *
 * @param onePart the inputs that measure such a part
 */
export function sharedInputs(
  calculator: AnyCalculator,
  baseline: InputValues,
  candidate: InputValues,
  onePart: readonly string[] = [],
): readonly string[] {
  return continuousInputs(calculator)
    .filter(({ name, origin, common }) => {
      if (onePart.includes(name)) return true;
      if (common === true || origin === 'assumption' || origin === 'choice') return true;
      return origin === 'thing' && baseline[name] === candidate[name];
    })
    .map(({ name }) => name);
}

/**
 * The ± of `weights.candidate`·y_candidate + `weights.baseline`·y_baseline to first order. An input named in
 * `shared` moves both results together, so its two effects are added before they are squared; all others are
 * independent. This is u² = Σ uᵢ² + 2 Σ Σ u(xᵢ, xⱼ) (JCGM 100:2008, 5.2.2) for correlations of 1 and 0.
 */
function ofTwo(
  baseline: Spread,
  candidate: Spread,
  shared: readonly string[],
  weights: Readonly<Record<'baseline' | 'candidate', number>>,
): Spread {
  const moved = new Map<string, number>();
  const terms: { name: string; effect: number }[] = [];
  for (const [side, weight] of [
    [baseline, weights.baseline],
    [candidate, weights.candidate],
  ] as const)
    for (const { name, effect } of side.shares) {
      if (shared.includes(name)) moved.set(name, (moved.get(name) ?? 0) + weight * effect);
      else terms.push({ name, effect: weight * effect });
    }
  return together([...terms, ...[...moved].map(([name, effect]) => ({ name, effect }))]);
}

/**
 * The ± [SI] of the difference candidate − baseline of one output, with its shares; `shared` names the inputs
 * whose error is one for both sets ({@link sharedInputs}).
 */
export function ofDifference(
  baseline: Spread,
  candidate: Spread,
  shared: readonly string[],
): Spread {
  return ofTwo(baseline, candidate, shared, { baseline: -1, candidate: 1 });
}

/**
 * The ± of the ratio candidate/baseline of one output, whose values are given [SI]: dr = dc/b − c·db/b².
 * The baseline must not be 0.
 */
export function ofRatio(
  values: Readonly<Record<'baseline' | 'candidate', number>>,
  baseline: Spread,
  candidate: Spread,
  shared: readonly string[],
): Spread {
  const { baseline: b, candidate: c } = values;
  return ofTwo(baseline, candidate, shared, { baseline: -c / b / b, candidate: 1 / b });
}
