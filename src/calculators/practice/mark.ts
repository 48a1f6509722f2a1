import { formatNumber } from '../../units/format.ts';
import { formatResult } from '../../units/result.ts';
import type { Suggestion } from '../../units/read.ts';
import type { AnyCalculator } from '../define.ts';
import { numberIn, outputsOrNone } from '../evaluate.ts';
import {
  differing,
  heightOn,
  orders,
  type Case,
  type ChoiceQuestion,
  type NumberQuestion,
  type OrderQuestion,
  type ReadQuestion,
} from './make.ts';
import { readAnswer, type Answer } from './read-answer.ts';
import { answerWords } from './words.ts';
import { slipsOf, type Slip } from './slips.ts';
import { nearBy, unitOfResult } from './words.ts';
import { shorterWay } from '../../units/turn.ts';
import { toSI, unitOf } from '../../units/units.ts';

/** What comes of an answer: it could not be read, it is right, or it is not yet. */
export interface Mark {
  readonly outcome: 'unread' | 'right' | 'not yet';
  /** What the reader is told. */
  readonly say: string;
  /** Texts that may have been meant, where it could not be read. */
  readonly suggestions?: readonly Suggestion[];
  /** How the answer was read, where that does not go without saying. */
  readonly echo?: string;
  /** [SI] The answer as it was read. */
  readonly si?: number;
  /** The slip that it looks like. */
  readonly slip?: string;
}

/** Outside the tolerance, but not farther than so many of it: rounding on the way does that. */
const nearly = 3;
/** A slip fits where it comes this near, or as near as the figures typed let it: whoever made it rounded on the way. */
const fit = 0.0015;

/** The slip that an answer looks like: the one it comes nearest to, if it comes near enough. */
function looksLike(slips: readonly Slip[], given: Answer, tolerance: number): Slip | undefined {
  const rounded = (0.6 * given.step) / (Math.abs(given.value) || 1);
  const most = Math.min(tolerance, Math.max(fit, rounded));
  const distance = ({ value }: Slip): number =>
    value === 0 ? Infinity : Math.abs(given.si / value - 1);
  let best: Slip | undefined;
  for (const slip of slips)
    if (distance(slip) <= most && (best === undefined || distance(slip) < distance(best) / 3))
      best = slip;
  return best;
}

function off(share: number): string {
  return `${formatNumber(Math.abs(share) * 100, { significant: 2 })} % ${share > 0 ? 'too large' : 'too small'}`;
}

function unread(say: string, suggestions: readonly Suggestion[] = []): Mark {
  return { outcome: 'unread', say, suggestions };
}

/** What is told of an answer beside its outcome. */
function readings({ si, echo }: Answer): Pick<Mark, 'si' | 'echo'> {
  return { si, ...(echo === undefined ? {} : { echo }) };
}

/**
 * Marks a number. Where it is not right, the slip it looks like is named; a slip counts only where it gives this
 * answer and not the right one.
 */
export function markNumber(
  calculator: AnyCalculator,
  question: NumberQuestion,
  typed: string,
): Mark {
  const read = readAnswer(typed, question);
  if (!read.ok) return unread(read.say, read.suggestions);
  const { answer, plan } = question;
  const share = (nearestTurn(read.si, question) - answer) / Math.abs(answer);
  const told = readings(read);
  const within = nearBy(plan.tolerance);
  // Rounded to the last figure of a double, an answer just inside must not fall out.
  if (Math.abs(share) <= plan.tolerance * (1 + 1e-9))
    return {
      outcome: 'right',
      say: `It is ${answerWords(question)}; asked was ${within}.`,
      ...told,
    };
  const slip = looksLike(slipsOf(calculator, question, read), read, plan.tolerance);
  if (slip !== undefined) return { outcome: 'not yet', say: slip.say, slip: slip.id, ...told };
  if (Math.abs(share) <= nearly * plan.tolerance)
    return {
      outcome: 'not yet',
      say: `Near: ${off(share)}, and asked is ${within}. It looks like rounding on the way; keep all figures until the end.`,
      slip: 'rounding',
      ...told,
    };
  return {
    outcome: 'not yet',
    say: 'It fits none of the slips known here. Go through the working step by step to find where it differs.',
    ...told,
  };
}

/** The same direction within half a turn of the answer: 216° is −144° as well. Other quantities stay as they are. */
function nearestTurn(si: number, { answer, unit }: NumberQuestion): number {
  return unitOf(unit).kind === 'angle' ? answer + shorterWay(si - answer) : si;
}

/** Marks a height read off a curve. */
export function markRead(question: ReadQuestion, typed: string): Mark {
  const read = readAnswer(typed, question);
  if (!read.ok) return unread(read.say, read.suggestions);
  const { answer, within, unit, at, atUnit, grid } = question;
  const told = readings(read);
  const isNear = (value: number): boolean => Math.abs(read.si - value) <= within * (1 + 1e-9);
  if (isNear(answer))
    return {
      outcome: 'right',
      say: `The curve stands at ${formatResult(answer, unit)} there.`,
      ...told,
    };
  if (isNear(-answer))
    return {
      outcome: 'not yet',
      say: 'The size is right; it looks like the sign is the other way round. Look where the line of zero runs.',
      slip: 'sign',
      ...told,
    };
  const curve = question.case.output[question.plan.ask];
  const beside = [-1, 1].find((way) => {
    if (typeof curve !== 'object' || 'absent' in curve) return false;
    const height = heightOn(curve, toSI(at + way * grid, atUnit));
    return height !== undefined && isNear(height);
  });
  if (beside !== undefined)
    return {
      outcome: 'not yet',
      say: `It looks like the height at ${formatNumber(at + beside * grid)}, beside the place that is asked.`,
      slip: 'beside',
      ...told,
    };
  const power = [10, 100, 1000, 0.1, 0.01, 0.001].find(
    (factor) => Math.abs(read.si / (answer * factor) - 1) <= 2 * (within / Math.abs(answer)),
  );
  if (power !== undefined)
    return {
      outcome: 'not yet',
      say: 'It looks like a power of ten. Look at the unit of the axis.',
      slip: 'power',
      ...told,
    };
  return {
    outcome: 'not yet',
    say: 'The curve stands elsewhere there. Go up from the axis to the curve, then across to the scale.',
    ...told,
  };
}

export const choiceNames = ['Set A', 'Set B', 'neither'] as const;

/** What one set's number alone does to the answer of the first. */
function alone(calculator: AnyCalculator, ask: string, from: Case, to: Case, name: string): string {
  const label = calculator.inputs[name]?.label ?? name;
  const input = { ...from.input, [name]: to.input[name] };
  const value = numberIn(outputsOrNone(calculator, input)?.[ask]);
  if (value === undefined) return '';
  const share = value / from.answer - 1;
  if (Math.abs(share) < 1e-9) return `“${label}” changes nothing here.`;
  const size = formatNumber(Math.abs(share) * 100, { significant: 2 });
  return `“${label}” alone makes it ${size} % ${share > 0 ? 'greater' : 'smaller'} from A to B.`;
}

/** Marks which of two sets has more; `place` is 0, 1, or 2 for neither, and undefined where nothing is chosen. */
export function markChoice(
  calculator: AnyCalculator,
  question: ChoiceQuestion,
  place: number | undefined,
): Mark {
  if (place === undefined) return unread('Nothing is chosen. Choose one of the three answers.');
  const { cases, right, plan } = question;
  const [first, second] = cases;
  const unit = unitOfResult(calculator, plan.ask);
  const both = `A: ${formatResult(first.answer, unit)}, B: ${formatResult(second.answer, unit)}.`;
  const why = differing(cases)
    .map((name) => alone(calculator, plan.ask, first, second, name))
    .filter((sentence) => sentence !== '')
    .join(' ');
  return place === right
    ? { outcome: 'right', say: `${both} ${why}` }
    : { outcome: 'not yet', say: `${why} Put them together and choose again.` };
}

/** Marks the order of three sets; `place` is one of {@link orders}. */
export function markOrder(
  calculator: AnyCalculator,
  question: OrderQuestion,
  place: number | undefined,
): Mark {
  const order = place === undefined ? undefined : orders[place];
  if (order === undefined) return unread('No order is chosen. Choose one of the six.');
  const { cases, right, plan } = question;
  const unit = unitOfResult(calculator, plan.ask);
  const letters = 'ABC';
  const told = cases
    .map(({ answer }, at) => `${letters.charAt(at)}: ${formatResult(answer, unit)}`)
    .join(', ');
  if (place === right) return { outcome: 'right', say: `${told}.` };
  const wrong = [0, 1].find(
    (at) => (cases[order[at] ?? 0]?.answer ?? 0) > (cases[order[at + 1] ?? 0]?.answer ?? 0),
  );
  const [low = 0, high = 0] = [order[wrong ?? 0], order[(wrong ?? 0) + 1]];
  return {
    outcome: 'not yet',
    say: `Look at ${letters.charAt(low)} and ${letters.charAt(high)} again: ${letters.charAt(low)} is not the smaller of the two.`,
  };
}
