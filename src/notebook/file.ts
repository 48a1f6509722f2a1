import * as v from 'valibot';
import { tidyValue } from '../units/field.ts';
import { few } from './few.ts';
import { nameToday } from './renamed.ts';
import { asJobSets, plainSets } from './job-sets.ts';
import {
  asValue,
  emptySets,
  isName,
  keptSets,
  parsed,
  parseValue,
  type Contents,
  type KeptSet,
} from './values.ts';

/** The name by which a file of ours is known, and the version that {@link toFile} writes. */
export const fileFormat = 'throwbook-notebook';
export const fileVersion = 2;
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
    third: v.optional(v.record(v.string(), v.unknown())),
    fourth: v.optional(v.record(v.string(), v.unknown())),
  }),
  setNames: v.optional(v.unknown()),
  shown: v.optional(v.unknown()),
  was: v.optional(v.string()),
});

/**
 * Writes a notebook as the text of a JSON file, one value a line, so that a damaged file can still be read by
 * eye and by {@link fromFile}. `public/notebook.schema.json` describes it.
 *
 * @param when the date to record, as ISO 8601.
 */
export function toFile(contents: Contents, when: string): string {
  const { job, values, was = '', sets: { kept, names, shown } = plainSets } = contents;
  const sets = kept.map((set) => {
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
  },
${was === '' ? '' : `  "was": ${JSON.stringify(was)},\n`}  "setNames": ${JSON.stringify(names)},
  "shown": ${JSON.stringify(shown)}
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
  const whole = parsed(text.replace(/^\uFEFF/, ''));
  return whole === undefined ? salvage(text) : fromParsed(whole);
}

/** {@link fromFile} for what was parsed already, as a part of a greater file. */
export function fromParsed(something: unknown): ReadFile {
  const outline = v.safeParse(Outline, something);
  if (!outline.success) {
    const place = v.getDotPath(outline.issues[0]) ?? 'the whole';
    return nothing(
      `This file is no job saved here: what stands at “${place}” is not as a job has it. None of it was used.`,
    );
  }
  const { version, job, sets, setNames, shown, was } = outline.output;
  const problems: string[] = [];
  if (version > fileVersion) {
    problems.push(
      `This file was saved by a later version of these pages (${String(version)}; this one knows ${String(fileVersion)}). What could be read is used.`,
    );
  }
  const values = emptySets();
  const damaged: string[] = [];
  for (const set of keptSets) {
    for (const [name, something] of Object.entries(sets[set] ?? {})) {
      const value = isName(name) ? asValue(something) : undefined;
      if (value === undefined)
        damaged.push(`The value of ${name} (${set}) is damaged; it is not used.`);
      else values[set][nameToday(name)] = value;
    }
  }
  const arranged = asJobSets({
    kept: keptSets.filter((set) => sets[set] !== undefined),
    names: setNames,
    shown,
  });
  return {
    job,
    values,
    sets: arranged,
    ...(was === undefined ? {} : { was }),
    problems: [...problems, ...few(damaged)],
    usable: true,
  };
}

function nothing(say: string): ReadFile {
  return { job: '', values: emptySets(), problems: [say], usable: false };
}

/** A file that is no longer JSON, cut short for instance: the lines that are whole are used. */
function salvage(text: string): ReadFile {
  const values = emptySets();
  let set: KeptSet | undefined;
  const kept = new Set<KeptSet>();
  let job = '';
  let lines = 0;
  for (const line of text.split(/\r?\n/)) {
    const [, key, rest = ''] = /^\s*"([A-Za-z0-9]+)":\s*(.*?),?\s*$/.exec(line) ?? [];
    if (key === undefined) continue;
    const opened = keptSets.find((one) => one === key);
    if (opened !== undefined) {
      set = opened;
      kept.add(opened);
    } else if (key === 'job' && set === undefined) job = parsedText(rest) ?? '';
    else if (set !== undefined && isName(key)) {
      const value = parseValue(rest);
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
        sets: asJobSets({ kept: [...kept] }),
        problems: [
          `This file is damaged. ${String(lines)} ${lines === 1 ? 'value' : 'values'} could still be read; the others are lost.`,
        ],
        usable: true,
      };
}

function parsedText(json: string): string | undefined {
  const text = parsed(json);
  return typeof text === 'string' ? text : undefined;
}
