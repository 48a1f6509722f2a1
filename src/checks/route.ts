import * as v from 'valibot';
import { complain, sentence } from './case.ts';

const route = v.strictObject({
  kind: v.picklist(
    ['second route', 'closed form', 'property'],
    'must be second route, closed form or property',
  ),
  /** What is compared with what, for the reader. */
  say: sentence,
  /** The test's file and its name in it, word for word; a test of its own asserts that it is there. */
  file: sentence,
  test: sentence,
  /** Outputs it stands for, as `calculator.output`: another leg for values that are only remembered. */
  legs: v.optional(v.array(sentence), []),
});

/** A way to the same answer that shares no published number: a second method, a limit, a law that must hold. */
export type Route = v.InferOutput<typeof route>;

/**
 * Reads the content of a topic's routes.yaml.
 *
 * @throws Error naming file, place and field when it is not as it should be
 */
export function readRoutes(file: string, data: unknown): readonly Route[] {
  const read = v.safeParse(v.array(route, 'must be a list of routes'), data);
  if (!read.success) complain(file, data, read.issues);
  return read.output;
}
