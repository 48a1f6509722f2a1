import { z } from 'astro/zod';

/** A text that says something. */
const sentence = z.string().trim().min(1);

/** One step of a lesson: how many minutes, and what is done in them. */
const step = z.tuple([z.number().int().min(1), sentence]);

/** The steps of a lesson of so many minutes, which they must fill. */
function lesson(minutes: number) {
  return z
    .array(step)
    .min(2)
    .superRefine((steps, context) => {
      const sum = minutesOf(steps);
      if (sum !== minutes)
        context.addIssue({
          code: 'custom',
          message: `The steps of the lesson of ${minutes} minutes take ${sum}.`,
        });
    });
}

/** How long the steps of a lesson take together, in minutes. */
export function minutesOf(steps: readonly (readonly [number, string])[]): number {
  return steps.reduce((sum, [minutes]) => sum + minutes, 0);
}

/**
 * A topic's `teach.yaml`. Every text may hold numbers of the example, `{bobweight.bobweight@candidate}`: see
 * `numbers.ts`. What must be read before is not told here again: it stands in the topic's front matter (`needs`).
 */
export const noteSchema = z.strictObject({
  /** Each is one of the topic's `teaches`, word for word, and how one sees that it is reached. */
  aims: z
    .array(z.strictObject({ teaches: sentence, reached: sentence }))
    .min(2)
    .max(4),
  /** What the class must have met elsewhere. */
  before: z.array(sentence).min(1).max(5),
  demonstration: z.strictObject({
    title: sentence,
    bring: z.array(sentence).min(1).max(6),
    do: z.array(sentence).min(2).max(7),
    seen: sentence,
    shows: sentence,
    /** What spoils it, and how one notices. */
    wrong: sentence,
    /** Where it can hurt. */
    caution: sentence.optional(),
  }),
  questions: z
    .array(
      z.strictObject({
        ask: sentence,
        right: sentence,
        why: sentence,
        /** Usual wrong answers, each with the belief that it comes from. */
        wrong: z
          .array(z.strictObject({ says: sentence, from: sentence }))
          .min(1)
          .max(3),
      }),
    )
    .length(2),
  /** By their length in minutes. */
  plans: z.strictObject({ '10': lesson(10), '20': lesson(20), '45': lesson(45) }),
  homework: z.array(sentence).min(1).max(3),
});

/** The teacher's notes of one topic. */
export type TeachNote = z.output<typeof noteSchema>;
