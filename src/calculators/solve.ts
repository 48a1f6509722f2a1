import { rootsBetween } from '../core/math/roots.ts';
import type { AnyCalculator } from './define.ts';
import { continuousInput, outputAt, rangeInSI, type InputValues } from './evaluate.ts';

/** Which input is sought, and which value [SI] of which output it shall give. */
export interface Question {
  readonly unknown: string;
  readonly output: string;
  readonly target: number;
}

export interface Answer {
  /** Values of the unknown [SI], rising. */
  readonly roots: readonly number[];
  /** There may be more than these: the output moves faster than the search can follow. */
  readonly maybeMore: boolean;
  /** Least and greatest output [SI] met on the way; absent where nothing computes. */
  readonly reach?: readonly [number, number];
  /** Two sentences at most: what was found, or why nothing was. */
  readonly say: string;
}

/** Writes an input's or output's SI value with its unit. */
export type Show = (name: string, si: number) => string;

/** Cells of the search: a plain relation needs one, a curve with a few turns some tens. */
const cells = 64;

function listed(texts: readonly string[]): string {
  const last = texts.at(-1) ?? '';
  return texts.length < 2 ? last : `${texts.slice(0, -1).join(', ')} and ${last}`;
}

/** A label inside a sentence: "Bore" becomes "bore", "TDC pull" stays. */
function inSentence(label: string): string {
  return /^[A-Z][a-z]/.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label;
}

/**
 * Runs a calculator backwards: every value of one input, inside its hard range, that makes one output
 * reach the target, the other inputs held. Places where the calculator refuses are passed over; a jump
 * through a pole is no answer. About 64 computations, and 20 more for each answer.
 *
 * Throws RangeError for an unknown that cannot run through a range (a count, a list, a choice).
 */
export function solveFor(
  calculator: AnyCalculator,
  input: InputValues,
  { unknown, output, target }: Question,
  show: Show,
): Answer {
  const entry = continuousInput(calculator, unknown);
  const [low, high] = rangeInSI(entry, 'hard');
  let least = Infinity;
  let greatest = -Infinity;
  const miss = (x: number): number => {
    const y = outputAt(calculator, { ...input, [unknown]: x }, output);
    if (y === undefined) return Number.NaN;
    least = Math.min(least, y);
    greatest = Math.max(greatest, y);
    return y - target;
  };
  const { roots, maybeMore } = rootsBetween(miss, low, high, cells);

  const result = inSentence(calculator.outputs[output]?.label ?? output);
  const range = `between ${show(unknown, low)} and ${show(unknown, high)}`;
  if (least > greatest)
    return {
      roots: [],
      maybeMore: false,
      say: `${entry.label}: no value ${range} gives a result at all with the other inputs as they are.`,
    };
  const reach = [least, greatest] as const;
  if (greatest - least <= 1e-12 * Math.max(Math.abs(least), Math.abs(greatest)))
    return {
      roots: [],
      maybeMore: false,
      reach,
      say: `${entry.label}: the ${result} does not depend on it. It is ${show(output, greatest)} throughout.`,
    };
  if (roots.length === 0) {
    const none = maybeMore ? `no value was found ${range} that gives` : `no value ${range} gives`;
    const span = `from about ${show(output, least)} to ${show(output, greatest)}`;
    return {
      roots,
      maybeMore,
      reach,
      say: `${entry.label}: ${none} ${show(output, target)}; there the ${result} runs ${span}.`,
    };
  }

  const [ordinary, extreme] = rangeInSI(entry, 'usual');
  const strange = roots.filter((x) => x < ordinary || x > extreme);
  const found = listed(roots.map((x) => show(unknown, x)));
  const atLeast = maybeMore ? 'at least ' : '';
  const first =
    roots.length === 1 && !maybeMore
      ? `${entry.label}: ${found} gives ${show(output, target)}.`
      : `${entry.label}: ${atLeast}${roots.length} ${roots.length === 1 ? 'value gives' : 'values give'} ${show(output, target)}: ${found}.`;
  const second =
    strange.length === 0
      ? ''
      : ` Outside the usual range of ${show(unknown, ordinary)} to ${show(unknown, extreme)}: ${listed(strange.map((x) => show(unknown, x)))}.`;
  return { roots, maybeMore, reach, say: first + second };
}
