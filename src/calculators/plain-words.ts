import type { AnyCalculator, OutputEntry, Result } from './define.ts';
import { numberIn, type OutputValues } from './evaluate.ts';
import { ofDifference, type PropagatedOutputs } from './uncertainty.ts';

/** Above this share of the value a ± is wide enough that the value is called "about". */
const wide = 0.03;

/** What the paragraph needs of each set: its results, and their ± where inputs carry one. */
export interface SetResults {
  readonly output: OutputValues;
  readonly plusMinus?: PropagatedOutputs;
}

export interface Comparison {
  readonly baseline: SetResults;
  readonly candidate: SetResults;
  /** The inputs whose error is one and the same in both sets. */
  readonly shared: readonly string[];
  /** Results that need both sets, from the declaration's `compare`. */
  readonly comparison?: Readonly<Record<string, Result>>;
}

/** Writes a result's SI value with its unit; `plusMinus` [SI] may set how many figures it keeps. */
export type ShowResult = (name: string, si: number, plusMinus?: number) => string;

/** A change as a share of the first value: a loss that is not whole is never called one of 100 %. */
function percent(part: number): string {
  const size = Math.abs(part) * 100;
  if (size < 0.1) return 'less than 0.1\u00a0%';
  if (part < 0 && size < 100 && size > 99.9) return 'more than 99.9\u00a0%';
  const fine = size < 10 || (part < 0 && size < 100 && size >= 99.5);
  return `${Number(size.toFixed(fine ? 1 : 0))}\u00a0%`;
}

/** From this factor on a rise is told as a factor; per cents of a thousand and more say nothing. */
const manifold = 10;

/** What follows the two values: the change in per cent, or as a factor where it is a great one. */
function howMuch(before: number, after: number): string {
  if (before === 0 || before > 0 !== after > 0) return '';
  const times = after / before;
  if (times < manifold) return `, by ${percent(times - 1)}`;
  return times < 1e4 ? `, to ${Number(times.toPrecision(2))} times as much` : '';
}

/** Angles have no natural zero here, and a change of per cents in per cent is taken for points. */
function hasShare(output: OutputEntry | undefined): boolean {
  if (output === undefined || output.type === 'series') return false;
  return output.kind !== 'angle' && output.kind !== 'temperature' && output.metric !== 'pct';
}

/** A direction neither rises nor falls. */
function points(output: OutputEntry | undefined): boolean {
  return output !== undefined && output.type !== 'series' && output.direction === true;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function sentence(text: string): string {
  return /[.!?]$/.test(text) ? capital(text) : `${capital(text)}.`;
}

function absence(result: Result | undefined): string | undefined {
  return typeof result === 'object' && 'absent' in result ? result.absent : undefined;
}

function ofOutput(
  name: string,
  phrase: string,
  { baseline, candidate, shared }: Comparison,
  show: ShowResult,
  { withShare, isDirection }: { readonly withShare: boolean; readonly isDirection: boolean },
): string {
  const before = numberIn(baseline.output[name]);
  const after = numberIn(candidate.output[name]);
  const u = { before: baseline.plusMinus?.[name], after: candidate.plusMinus?.[name] };
  const written = (si: number, plusMinus?: number): string =>
    (plusMinus !== undefined && plusMinus > wide * Math.abs(si) ? 'about ' : '') +
    show(name, si, plusMinus);

  const missing = (set: SetResults): string => {
    const reason = absence(set.output[name]);
    return `has no value${reason === undefined ? '' : `: ${reason}`}`;
  };
  const alone = (value: string, other: string, set: SetResults): string =>
    sentence(`${phrase} is ${value} with the ${other} set; with the other it ${missing(set)}`);
  if (before === undefined)
    return after === undefined
      ? sentence(`${phrase} ${missing(baseline)}`)
      : alone(written(after, u.after?.plusMinus), 'candidate', baseline);
  if (after === undefined)
    return alone(written(before, u.before?.plusMinus), 'baseline', candidate);

  const from = written(before, u.before?.plusMinus);
  const to = written(after, u.after?.plusMinus);
  if (from === to) return sentence(`${phrase} stays at ${to}`);

  const difference = after - before;
  const doubt =
    u.before !== undefined && u.after !== undefined
      ? ofDifference(u.before, u.after, shared).plusMinus
      : 0;
  if (Math.abs(difference) < doubt)
    return sentence(
      `${phrase} is ${from} with the baseline set and ${to} with the candidate set: ` +
        `the difference is smaller than its own ± of ${show(name, doubt, doubt)}, so the numbers given are too coarse to show one`,
    );
  const share = withShare ? howMuch(before, after) : '';
  const verb = isDirection ? 'goes' : difference > 0 ? 'rises' : 'falls';
  return sentence(`${phrase} ${verb} from ${from} to ${to}${share}`);
}

/**
 * Says in plain sentences what the candidate set changes against the baseline: one for each result whose
 * declaration gives a `phrase` (main results first), then one for each comparison that has one. It judges
 * nothing: rises, falls, stays, goes (a direction), both values, the change in per cent of the baseline (or, from tenfold on, as a
 * factor) where both have the same sign and a share means something. "About" stands before a value whose ± is over 3 % of it; a difference smaller than its own ±
 * is said to be so.
 *
 * `show` writes a value in the reader's units.
 */
export function plainWords(
  calculator: AnyCalculator,
  compared: Comparison,
  show: ShowResult,
): string[] {
  const spoken = Object.entries(calculator.outputs).flatMap(([name, output]) =>
    output.type === 'series' || output.phrase === undefined
      ? []
      : [{ name, phrase: output.phrase, main: output.main === true }],
  );
  const sentences = [
    ...spoken.filter(({ main }) => main),
    ...spoken.filter(({ main }) => !main),
  ].map(({ name, phrase }) =>
    ofOutput(name, phrase, compared, show, {
      withShare: hasShare(calculator.outputs[name]),
      isDirection: points(calculator.outputs[name]),
    }),
  );
  for (const [name, { phrase }] of Object.entries(calculator.comparisons ?? {})) {
    const result = compared.comparison?.[name];
    const value = numberIn(result);
    const reason = absence(result);
    if (phrase === undefined) continue;
    if (value !== undefined) sentences.push(sentence(`${phrase} is ${show(name, value)}`));
    else if (reason !== undefined) sentences.push(sentence(`${phrase} has no value: ${reason}`));
  }
  return sentences;
}
