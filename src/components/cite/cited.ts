import { getCollection } from 'astro:content';
import { version } from '../../../package.json' with { type: 'json' };
import { calculationsVersion } from '../../calculators/version.ts';
import type { Cited } from './cite.ts';

/** A page with what this build is: the version of the site, and of the calculations with its day. Build only. */
export async function citedAs(title: string, path: string): Promise<Cited> {
  const changes = await getCollection('changes');
  const now = changes.find(({ data }) => data.version === calculationsVersion);
  if (now === undefined)
    throw new Error(
      `content/changes.yaml says nothing of version ${calculationsVersion} of the calculations.`,
    );
  return { title, path, version, calculations: calculationsVersion, date: now.data.date };
}
