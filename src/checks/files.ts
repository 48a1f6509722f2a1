import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { type CheckCase, readCases, readSource, type Source } from './case.ts';
import { readRoutes, type Route } from './route.ts';

/** The published cases of one topic and the independent routes to its answers, in the order of their files. */
export interface TopicChecks {
  readonly topic: string;
  readonly cases: readonly CheckCase[];
  readonly routes: readonly Route[];
}

/**
 * Reads content/topics/<topic>/checks.yaml and routes.yaml of every topic that has checks, topics in alphabetical
 * order.
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
      const read = (name: string): unknown => {
        const path = join(folder, topic, name);
        return existsSync(path) ? parse(readFileSync(path, 'utf8')) : [];
      };
      const path = `content/topics/${topic}`;
      return {
        topic,
        cases: readCases(`${path}/checks.yaml`, read('checks.yaml')),
        routes: readRoutes(`${path}/routes.yaml`, read('routes.yaml')),
      };
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
