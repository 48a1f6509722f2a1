import * as v from 'valibot';
import { tidyValue } from '../units/field.ts';
import { few } from './few.ts';
import { nameToday } from './renamed.ts';
import {
  asValue,
  bothSets,
  isName,
  type Contents,
  type SetValues,
  type StoredValue,
} from './values.ts';

/** The name by which a file of ours is known, and the version that {@link toFile} writes. */
export const fileFormat = 'throwbook-notebook';
export const fileVersion = 1;
/** A longer file is not read. A full notebook is a hundredth of it. */
export const longestFile = 1_000_000;

/** What a file gave. */
export interface ReadFile extends Contents {
  /** What could not be used, one sentence each. */
  readonly problems: readonly string[];
  /** False when nothing in the file could be used. */
  readonly usable: boolean;
}

const Outline = v.object({
  format: v.literal(fileFormat),
  version: v.pipe(v.number(), v.integer(), v.minValue(1)),
  job: v.optional(v.string(), ''),
  sets: v.object({
    baseline: v.optional(v.record(v.string(), v.unknown()), {}),
    candidate: v.optional(v.record(v.string(), v.unknown()), {}),
  }),
});

/**
 * Writes a notebook as the text of a JSON file, one value a line, so that a damaged file can still be read by
 * eye and by {@link fromFile}. `public/notebook.schema.json` describes it.
 *
 * @param when the date to record, as ISO 8601.
 */
export function toFile(values: SetValues, job: string, when: string): string {
  const sets = bothSets.map((set) => {
    const lines = Object.entries(values[set])
      .sort(([one], [other]) => (one < other ? -1 : 1))
      .map(([name, value]) => `      ${JSON.stringify(name)}: ${JSON.stringify(tidyValue(value))}`);
    return `    "${set}": {${lines.length === 0 ? '' : `\n${lines.join(',\n')}\n    `}}`;
  });
  return `{
  "$schema": "notebook.schema.json",
  "format": "${fileFormat}",
  "version": ${String(fileVersion)},
  "saved": ${JSON.stringify(when)},
  "job": ${JSON.stringify(job)},
  "sets": {
${sets.join(',\n')}
  }
}
`;
}

/** Reads the text of a file. Never throws: what is damaged is named in a sentence, the rest is used. */
export function fromFile(text: string): ReadFile {
  if (text.length > longestFile) {
    return nothing(
      `This file is ${String(text.length)} characters long; at most ${String(longestFile)} are read. None of it was used.`,
    );
  }
  let parsed: unknown;
  try {
    parsed = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return salvage(text);
  }
  return fromParsed(parsed);
}

/** {@link fromFile} for what was parsed already, as a part of a greater file. */
export function fromParsed(parsed: unknown): ReadFile {
  const outline = v.safeParse(Outline, parsed);
  if (!outline.success) {
    const place = v.getDotPath(outline.issues[0]) ?? 'the whole';
    return nothing(
      `This file is no job saved here: what stands at “${place}” is not as a job has it. None of it was used.`,
    );
  }
  const { version, job, sets } = outline.output;
  const problems: string[] = [];
  if (version > fileVersion) {
    problems.push(
      `This file was saved by a later version of these pages (${String(version)}; this one knows ${String(fileVersion)}). What could be read is used.`,
    );
  }
  const values = empty();
  const damaged: string[] = [];
  for (const set of bothSets) {
    for (const [name, something] of Object.entries(sets[set])) {
      const value = isName(name) ? asValue(something) : undefined;
      if (value === undefined)
        damaged.push(`The value of ${name} (${set}) is damaged; it is not used.`);
      else values[set][nameToday(name)] = value;
    }
  }
  return { job, values, problems: [...problems, ...few(damaged)], usable: true };
}

type Filling = Record<(typeof bothSets)[number], Record<string, StoredValue>>;

function empty(): Filling {
  return { baseline: {}, candidate: {} };
}

function nothing(say: string): ReadFile {
  return { job: '', values: empty(), problems: [say], usable: false };
}

/** A file that is no longer JSON, cut short for instance: the lines that are whole are used. */
function salvage(text: string): ReadFile {
  const values = empty();
  let set: keyof Filling | undefined;
  let job = '';
  let lines = 0;
  for (const line of text.split(/\r?\n/)) {
    const [, key, rest = ''] = /^\s*"([A-Za-z0-9]+)":\s*(.*?),?\s*$/.exec(line) ?? [];
    if (key === undefined) continue;
    const opened = bothSets.find((one) => one === key);
    if (opened !== undefined) set = opened;
    else if (key === 'job' && set === undefined) job = parsedText(rest) ?? '';
    else if (set !== undefined && isName(key)) {
      const value = parsedValue(rest);
      if (value === undefined) continue;
      values[set][nameToday(key)] = value;
      lines += 1;
    }
  }
  return lines === 0 || !text.includes(fileFormat)
    ? nothing('This file is damaged, or no job saved here. None of it was used.')
    : {
        job,
        values,
        problems: [
          `This file is damaged. ${String(lines)} ${lines === 1 ? 'value' : 'values'} could still be read; the others are lost.`,
        ],
        usable: true,
      };
}

function parsed(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch {
    return undefined;
  }
}

function parsedValue(json: string): StoredValue | undefined {
  return asValue(parsed(json));
}

function parsedText(json: string): string | undefined {
  const text = parsed(json);
  return typeof text === 'string' ? text : undefined;
}
