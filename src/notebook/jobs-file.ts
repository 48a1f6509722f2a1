import * as v from 'valibot';
import { few } from './few.ts';
import { fromFile, fromParsed, longestFile, toFile } from './file.ts';
import { asAbout, type WholeJob } from './jobs.ts';

/** The name by which a file of several jobs is known, and the version that {@link toJobsFile} writes. */
const jobsFormat = 'throwbook-jobs';
const jobsVersion = 1;
/** A longer file is not read: a hundred full jobs are half of it. */
export const longestJobsFile = 20 * longestFile;

const Outline = v.object({
  format: v.literal(jobsFormat),
  version: v.pipe(v.number(), v.integer(), v.minValue(1)),
  jobs: v.array(
    v.object({
      about: v.optional(v.unknown()),
      example: v.optional(v.unknown()),
      notebook: v.unknown(),
    }),
  ),
});

/**
 * Writes jobs as the text of one JSON file; each holds a notebook as a file of one job has it.
 *
 * @param when the date to record, as ISO 8601
 */
export function toJobsFile(jobs: readonly WholeJob[], when: string): string {
  const file = {
    format: jobsFormat,
    version: jobsVersion,
    saved: when,
    jobs: jobs.map(({ about, hasExample, ...contents }) => ({
      about,
      example: hasExample,
      notebook: JSON.parse(toFile(contents, when)) as unknown,
    })),
  };
  return `${JSON.stringify(file, undefined, 2)}\n`;
}

/**
 * Reads the text of a file of several jobs, or of one. Never throws: what is damaged is named in a sentence, the rest
 * is used.
 */
export function fromJobsFile(text: string): {
  readonly jobs: readonly WholeJob[];
  readonly problems: readonly string[];
} {
  if (text.length > longestJobsFile)
    return {
      jobs: [],
      problems: [
        `This file is ${String(text.length)} characters long; at most ${String(longestJobsFile)} are read. None of it was used.`,
      ],
    };
  let parsed: unknown;
  try {
    parsed = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    parsed = undefined;
  }
  const outline = v.safeParse(Outline, parsed);
  if (!outline.success) {
    const { usable, problems, ...contents } = fromFile(text);
    return {
      jobs: usable ? [{ ...contents, about: asAbout(undefined), hasExample: true }] : [],
      problems,
    };
  }
  const { version, jobs } = outline.output;
  const problems: string[] = [];
  if (version > jobsVersion)
    problems.push(
      `This file was saved by a later version of these pages (${String(version)}; this one knows ${String(jobsVersion)}). What could be read is used.`,
    );
  const read = jobs.flatMap(({ about, example, notebook }, place): readonly WholeJob[] => {
    const { usable, problems: own, ...contents } = fromParsed(notebook);
    const name = contents.job.trim() === '' ? `number ${String(place + 1)}` : contents.job;
    problems.push(...own.map((problem) => `Job ${name}: ${problem}`));
    return usable ? [{ ...contents, about: asAbout(about), hasExample: example !== false }] : [];
  });
  return { jobs: read, problems: few(problems) };
}
