import * as v from 'valibot';

/** How the published text was met. `practice`: a rule of the trade that nobody has published with proof. */
export const evidenceWords = {
  read: 'read',
  quoted: 'quoted by another',
  transcribed: 'read in a retyped copy',
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

const printed = v.pipe(
  v.string('must stand in quotes, digit for digit as printed'),
  v.check((text) => Number.isFinite(printedNumber(text)), 'is not a number as books print it'),
);

/** What is rounded or taken short on the way to the print: how much of the value, in its unit, and why. */
const bookError = v.strictObject({ size: positive, reason: sentence });

/** A print that is wrong: what its own steps give when taken rightly, and where it slips. */
const misprint = v.strictObject({ instead: printed, reason: sentence });

/**
 * A value as its source prints it. The computed one must come within half a unit of its last digit, or within what
 * the machine rounds where the source means an exact number; to that comes an error of the print, where it has one.
 * Beside a misprint it must come to what the print should say, and the miss from the print is shown.
 */
const publishedValue = v.strictObject({
  output: sentence,
  published: printed,
  unit: sentence,
  /** Why the source means exactly this number: a whole multiple, a given of its example. */
  exact: v.optional(sentence),
  /** The step from what is printed to this value, which itself is not printed. */
  derived: v.optional(sentence),
  bookError: v.optional(bookError),
  misprint: v.optional(misprint),
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
  /** Who quoted or retyped the text that was met, where that was not the work itself. */
  quotedBy: v.optional(sentence),
  /** Set where neither author nor address leads back to the text. */
  lost: v.optional(v.literal(true, 'is true or absent')),
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

/** What double precision may round away of an exact number, as a share of it. */
const rounding = 1e-9;
/** Keeps a value that stands in the very middle between two digits on the good side, as a share of half a unit. */
const middle = 1e-6;

/** Half a unit of the last digit of a printed number: 0.005 for `33.47`, 0.5 for `10,962`, 5 for `4.79e3`. */
export function halfUnit(text: string): number {
  const [digits = '', power = '0'] = text.trim().toLowerCase().split('e');
  const decimals = /\.(\d*)$/u.exec(digits)?.[1]?.length ?? 0;
  return Number(`0.5e${Number(power) - decimals}`);
}

/** The number that the computed one is held to: the printed one, or what a misprint should say. */
export function wantedText({ published, misprint }: PublishedValue): string {
  return misprint?.instead ?? published;
}

/** How far the computed value may lie from the one it is held to, in the unit of the print. */
export function toleranceOf(value: PublishedValue): number {
  const text = wantedText(value);
  const wanted = Math.abs(printedNumber(text));
  const digits =
    value.exact === undefined ? halfUnit(text) * (1 + middle) : rounding * Math.max(1, wanted);
  return digits + (value.bookError?.size ?? 0);
}

/** A value that stands in the print itself and rightly: not worked out from it, and no misprint. */
export function isPrinted(value: Expected): value is PublishedValue {
  return 'published' in value && value.derived === undefined && value.misprint === undefined;
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
