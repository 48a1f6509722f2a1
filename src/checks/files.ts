import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { type CheckCase, readCases, readSource, type Source } from './case.ts';

/** The published cases of one topic, in the order of their file. */
export interface TopicChecks {
  readonly topic: string;
  readonly cases: readonly CheckCase[];
}

/**
 * Reads content/topics/<topic>/checks.yaml of every topic that has checks, topics in alphabetical order.
 *
 * @param root the project's folder
 * @throws Error naming file, case and field when a file is not as it should be
 */
export function loadChecks(root = process.cwd()): readonly TopicChecks[] {
  const folder = join(root, 'content', 'topics');
  return readdirSync(folder)
    .sort()
    .filter((topic) => existsSync(join(folder, topic, 'checks.yaml')))
    .map((topic) => {
      const path = join(folder, topic, 'checks.yaml');
      const cases = parse(readFileSync(path, 'utf8')) as unknown;
      return { topic, cases: readCases(`content/topics/${topic}/checks.yaml`, cases) };
    });
}

/**
 * Reads content/sources/<id>.yaml: a record from id to source.
 *
 * @param root the project's folder
 * @throws Error naming file and field when a file is not as it should be
 */
export function loadSources(root = process.cwd()): Readonly<Record<string, Source>> {
  const folder = join(root, 'content', 'sources');
  const sources: Record<string, Source> = {};
  for (const name of readdirSync(folder).sort()) {
    if (!name.endsWith('.yaml')) continue;
    const text = readFileSync(join(folder, name), 'utf8');
    sources[name.slice(0, -'.yaml'.length)] = readSource(`content/sources/${name}`, parse(text));
  }
  return sources;
}
