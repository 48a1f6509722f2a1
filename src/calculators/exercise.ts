import { seededRandom } from '../core/math/random.ts';
import type { System } from '../units/kinds.ts';
import { withUnit } from '../units/format.ts';
import { fromSI, toSI } from '../units/units.ts';
import type { AnyCalculator, Entry, ListEntry, NumberEntry, Value } from './define.ts';
import {
  numberIn,
  outputsOrNone,
  rangeInSI,
  type InputValues,
  type OutputValues,
} from './evaluate.ts';
import { unitFor } from './output-unit.ts';

// The exercises of the topic pages will stand on this. No page asks one yet; tests drive it for every calculator.

/** A question with fresh numbers, and all that a page needs to mark and to work it. */
export interface Exercise {
  readonly seed: number;
  /** The inputs as text with unit, as they stand in the question, by name. */
  readonly given: Readonly<Record<string, string>>;
  /** The same in SI. */
  readonly input: InputValues;
  /** Name of the output asked for. */
  readonly ask: string;
  /** [SI] */
  readonly answer: number;
  /** Relative to the answer. */
  readonly tolerance: number;
  /** Every output, for the worked answer. */
  readonly output: OutputValues;
}

export interface Mark {
  readonly right: boolean;
  /** (given − right)/right; the plain difference [SI] where the right answer is zero. */
  readonly error: number;
  /** Says what the error looks like; nothing where it fits no known slip. */
  readonly hint?: string;
}

/** Draws tried before giving up: a draw is dropped where the calculator refuses it or a limit is broken. */
const draws = 400;

interface Drawn {
  readonly value: Value;
  readonly text: string;
}

/** One value of the usual range in the reader's unit, with about three figures of that range. */
function drawNumber(
  entry: NumberEntry | ListEntry,
  system: System,
  random: () => number,
  spread?: readonly [number, number],
): { si: number; text: string; unit: string } {
  const unit = unitFor(entry, system);
  const usual = rangeInSI(entry, 'usual');
  const [low, high] = spread ?? [fromSI(usual[0], unit), fromSI(usual[1], unit)];
  const step =
    entry.kind === 'count'
      ? 1
      : 10 ** Math.floor(Math.log10((high - low || Math.abs(high) || 1) / 100));
  const places = Math.max(0, -Math.round(Math.log10(step)));
  const raw = low + (high - low) * random();
  const value = Number((Math.round(raw / step) * step).toFixed(places));
  return { si: toSI(value, unit), text: withUnit(value.toFixed(places), unit), unit };
}

function draw(entry: Entry, system: System, random: () => number): Drawn {
  if (entry.type === 'choice') {
    const keys = Object.keys(entry.options);
    const key = keys[Math.floor(random() * keys.length)] ?? '';
    return { value: key, text: entry.options[key] ?? key };
  }
  const first = drawNumber(entry, system, random);
  if (entry.type === 'number') return { value: first.si, text: first.text };
  // Repeats of one weighing: five readings within a third of a per cent of the first.
  const middle = fromSI(first.si, first.unit);
  const near = [middle * 0.997, middle * 1.003] as const;
  const repeats = Array.from({ length: Math.min(5, entry.most) }, () =>
    drawNumber(entry, system, random, near),
  );
  return {
    value: repeats.map(({ si }) => si),
    text: repeats.map(({ text }) => text).join('; '),
  };
}

/**
 * An exercise from a seed: usual values for every input, drawn until the calculator accepts them and every
 * limit of the model holds. The same seed, system and declaration give the same exercise.
 *
 * Throws RangeError where {@link draws} draws yield none (a declaration whose usual ranges never meet).
 */
export function makeExercise(
  calculator: AnyCalculator,
  seed: number,
  system: System = 'metric',
): Exercise {
  const random = seededRandom(seed);
  const { ask, tolerance } = calculator.exercise;
  for (let turn = 0; turn < draws; turn++) {
    const drawn = Object.entries(calculator.inputs).map(
      ([name, entry]) => [name, draw(entry, system, random)] as const,
    );
    const input = Object.fromEntries(drawn.map(([name, { value }]) => [name, value]));
    const output = outputsOrNone(calculator, input);
    const answer = numberIn(output?.[ask]);
    if (output === undefined || answer === undefined) continue;
    if (!calculator.limits.every((limit) => limit.holds(input, output))) continue;
    const given = Object.fromEntries(drawn.map(([name, { text }]) => [name, text]));
    return { seed, given, input, ask, answer, tolerance, output };
  }
  throw new RangeError(`${calculator.id}: no usual values found that the model accepts`);
}

/** Slips that leave a known factor behind, with what to look at. */
const slips: readonly (readonly [number, string])[] = [
  [-1, 'The size is right, the sign is not.'],
  [2, 'Twice the right size: was a diameter or the stroke taken for a radius?'],
  [0.5, 'Half the right size: was a radius taken for a diameter or the stroke?'],
  [1000, 'A thousand times too large: look at grams and kilograms, millimetres and metres.'],
  [1e-3, 'A thousand times too small: look at grams and kilograms, millimetres and metres.'],
  [1e6, 'A million times too large: a squared length in millimetres?'],
  [1e-6, 'A million times too small: a squared length in millimetres?'],
  [25.4, '25.4 times too large: an inch value taken as millimetres?'],
  [1 / 25.4, '25.4 times too small: a millimetre value taken as inches?'],
  [30 / Math.PI, 'Too large by 30/π: turns a minute taken as radians a second?'],
  [Math.PI / 30, 'Too small by π/30: radians a second taken as turns a minute?'],
  [
    (30 / Math.PI) ** 2,
    'Too large by (30/π)²: turns a minute squared instead of radians a second?',
  ],
  [180 / Math.PI, 'Too large by 180/π: degrees taken as radians?'],
  [Math.PI / 180, 'Too small by π/180: radians taken as degrees?'],
];

/** Marks an answer [SI] against an exercise, and names the slip that its error looks like. */
export function markAnswer(exercise: Exercise, given: number): Mark {
  const { answer, tolerance } = exercise;
  if (answer === 0) return { right: Math.abs(given) <= tolerance, error: given };
  const error = (given - answer) / Math.abs(answer);
  if (Math.abs(error) <= tolerance) return { right: true, error };
  const near = Math.max(tolerance, 1e-3);
  const slip = slips.find(([factor]) => Math.abs(given / answer / factor - 1) <= near);
  return slip === undefined ? { right: false, error } : { right: false, error, hint: slip[1] };
}
