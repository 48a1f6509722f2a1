import type { AnyCalculator } from '../define.ts';
import type { Units } from './draw.ts';
import { makeQuestion, type Question } from './make.ts';
import type { Plan } from './plan.ts';

/** One exercise of a sheet, before its numbers are drawn. */
export interface Task {
  readonly calculator: AnyCalculator;
  readonly plan: Plan;
}

/** What the numbers of a sheet's variants follow from, and nothing else. */
export interface Draws {
  /** Printed on the sheet, so that it can be made again. */
  readonly seed: number;
  readonly units: Units;
}

/** One variant of a sheet: its place, from 1, and a question for each of its exercises. */
export interface Variant {
  readonly place: number;
  readonly questions: readonly Question[];
}

/** Draws of one exercise before the numbers of another variant are taken a second time. */
const turns = 24;

/**
 * The seed of one exercise on one variant: the 32-bit FNV-1a hash (G. Fowler, L. C. Noll, K.-P. Vo, public domain) of
 * what it belongs to. So a sheet has the same numbers whichever other exercises stand on it.
 *
 * @param turn counts the draws of this exercise, from 0
 * @returns a whole number below 10⁹, so that a link to the exercise can hold it
 */
export function seedOf(sheet: number, place: number, id: string, turn: number): number {
  let hash = 0x811c9dc5;
  for (const letter of [sheet, place, id, turn].join('/'))
    hash = Math.imul(hash ^ letter.charCodeAt(0), 0x01000193) >>> 0;
  return hash % 1_000_000_000;
}

/** What a question states and asks, as one text: two questions with the same text are the same exercise. */
export function textOf(question: Question): string {
  const cases = 'cases' in question ? question.cases : [question.case];
  const stated = [question.fixed, ...cases.map((each) => each.stated)].map((all) =>
    Object.entries(all).map(([name, { text }]) => `${name} ${text}`),
  );
  return JSON.stringify([stated, question.kind === 'read' ? question.at : question.plan.ask]);
}

/** A question unlike those of the variants before, as long as there is one; the same each time it is made. */
function questionOf(
  { calculator, plan }: Task,
  { seed, units }: Draws,
  place: number,
  before: ReadonlySet<string>,
): Question {
  let repeated: Question | undefined;
  for (let turn = 0; turn < turns; turn += 1) {
    try {
      const drawn = makeQuestion(calculator, plan, seedOf(seed, place, plan.id, turn), units);
      if (!before.has(textOf(drawn))) return drawn;
      repeated ??= drawn;
    } catch (error) {
      // One seed in thousands has no draw.
      if (!(error instanceof RangeError)) throw error;
    }
  }
  if (repeated !== undefined) return repeated;
  throw new RangeError(`${plan.id}: no draw of sheet ${String(seed)} has one answer`);
}

/**
 * The next variant of a sheet.
 *
 * @param before all variants before it, in order: none of their questions is asked again where others can be drawn
 * @throws RangeError where an exercise cannot be drawn in these units
 */
export function nextVariant(
  tasks: readonly Task[],
  draws: Draws,
  before: readonly Variant[],
): Variant {
  const place = before.length + 1;
  const questions = tasks.map((task) => {
    const asked = before.flatMap(({ questions: all }) =>
      all.filter(({ plan }) => plan.id === task.plan.id).map(textOf),
    );
    return questionOf(task, draws, place, new Set(asked));
  });
  return { place, questions };
}
