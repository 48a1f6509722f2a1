import * as v from 'valibot';

/** How the published text was met. `practice`: a rule of the trade that nobody has published with proof. */
export const evidenceWords = {
  read: 'read',
  quoted: 'quoted by another',
  transcribed: 'retyped by another',
  memory: 'from memory',
  practice: 'common practice, no source',
} as const;

export type Evidence = keyof typeof evidenceWords;

const id = v.pipe(
  v.string('must be text'),
  v.regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'must be lower-case words joined by hyphens'),
);
/** A text that says something. */
const sentence = v.pipe(v.string('must be text'), v.trim(), v.nonEmpty('must say something'));
const amount = v.pipe(v.number('must be a number'), v.finite('must be a finite number'));
const positive = v.pipe(amount, v.gtValue(0, 'must be greater than 0'));
const typed = v.pipe(
  v.union([v.string(), v.number()], 'must be text as a reader would type it'),
  v.transform(String),
);

/** A value as its source prints it, and how near the computed one must come. */
const publishedValue = v.strictObject({
  output: sentence,
  published: v.pipe(
    v.string('must stand in quotes, digit for digit as printed'),
    v.check((text) => Number.isFinite(printedNumber(text)), 'is not a number as books print it'),
  ),
  unit: sentence,
  tolerance: positive,
  absolute: v.optional(v.boolean('must be true or false')),
  why: sentence,
});

/** A band that the trade expects the answer to fall into. */
const band = v.pipe(
  v.strictObject({
    output: sentence,
    atLeast: v.optional(amount),
    atMost: v.optional(amount),
    unit: sentence,
    why: sentence,
  }),
  v.check(
    ({ atLeast, atMost }) => atLeast !== undefined || atMost !== undefined,
    'needs published, atLeast or atMost',
  ),
);

const checkCase = v.strictObject({
  id,
  calculator: id,
  title: sentence,
  source: id,
  where: sentence,
  evidence: v.picklist(
    ['read', 'quoted', 'transcribed', 'memory', 'practice'] satisfies readonly Evidence[],
    'must be read, quoted, transcribed, memory or practice',
  ),
  inputs: v.record(v.string(), typed),
  expected: v.pipe(
    v.array(
      v.lazy((row) =>
        typeof row === 'object' && row !== null && 'published' in row ? publishedValue : band,
      ),
      'must be a list',
    ),
    v.minLength(1, 'must hold at least one output'),
  ),
  note: v.optional(sentence),
});

const source = v.strictObject({
  authors: sentence,
  title: sentence,
  edition: v.optional(v.pipe(v.union([v.string(), v.number()]), v.transform(String))),
  publisher: v.optional(sentence),
  year: v.pipe(v.union([v.number(), v.string()], 'must be a year'), v.transform(String)),
  kind: v.picklist(
    ['book', 'standard', 'paper', 'report', 'course'],
    'must be book, standard, paper, report or course',
  ),
  note: v.optional(sentence),
});

export type PublishedValue = v.InferOutput<typeof publishedValue>;
export type Band = v.InferOutput<typeof band>;
export type Expected = PublishedValue | Band;
export type CheckCase = Omit<v.InferOutput<typeof checkCase>, 'expected'> & {
  readonly expected: readonly Expected[];
};
export type Source = v.InferOutput<typeof source>;

/**
 * The number that a printed figure stands for: `10,962` and `10 962` are 10962, `−0.67` is −0.67.
 * NaN when it is none.
 */
export function printedNumber(text: string): number {
  const plain = text
    .trim()
    .replace('\u2212', '-')
    .replace(/[\u00a0\u2009\u202f]/gu, ' ')
    .replace(/(?<=\d)[ ,](?=\d{3}(?!\d))/gu, '');
  return /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/iu.test(plain) ? Number(plain) : Number.NaN;
}

/** One line a problem: the file, the case and the field, and what is wrong with it. */
function complain(
  file: string,
  data: unknown,
  issues: readonly [v.BaseIssue<unknown>, ...v.BaseIssue<unknown>[]],
): never {
  const lines = issues.map((issue) => {
    const keys = (issue.path ?? []).map(({ key }) => key);
    const first = keys[0];
    const entry: unknown =
      Array.isArray(data) && typeof first === 'number' ? data[first] : undefined;
    const named =
      typeof entry === 'object' && entry !== null && 'id' in entry
        ? `case ${String(entry.id)}, `
        : typeof first === 'number'
          ? `case number ${first + 1}, `
          : '';
    const field = (typeof first === 'number' ? keys.slice(1) : keys).map(String).join('.');
    const what =
      issue.expected === 'never'
        ? 'is not a field that is known here'
        : issue.received === 'undefined'
          ? 'is missing'
          : issue.message;
    return `${file}, ${named}${field === '' ? 'the whole entry' : field}: ${what}`;
  });
  throw new Error(lines.join('\n'));
}

/**
 * Reads the content of a checks file.
 *
 * @param file name of the file, for the messages
 * @param data the file's content as parsed YAML: a list of cases
 * @throws Error with one line a problem, each naming file, case and field
 */
export function readCases(file: string, data: unknown): readonly CheckCase[] {
  const read = v.safeParse(v.array(checkCase, 'must be a list of cases'), data);
  if (!read.success) complain(file, data, read.issues);
  const seen = new Set<string>();
  for (const entry of read.output) {
    if (seen.has(entry.id)) throw new Error(`${file}, case ${entry.id}, id: is used twice`);
    seen.add(entry.id);
    if ((entry.source === 'practice') !== (entry.evidence === 'practice'))
      throw new Error(
        `${file}, case ${entry.id}, evidence: source and evidence must both be practice, or neither`,
      );
  }
  return read.output;
}

/** Reads the content of a source's file; throws as {@link readCases} does. */
export function readSource(file: string, data: unknown): Source {
  const read = v.safeParse(source, data);
  if (!read.success) complain(file, data, read.issues);
  return read.output;
}
