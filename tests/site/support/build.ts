import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { inject } from 'vitest';

/** One HTML file of the build. */
export interface Built {
  /** Path in the folder: `bobweight/index.html`. */
  readonly file: string;
  /** Path in the site: `bobweight/`; '' is the first page. */
  readonly path: string;
  readonly html: string;
}

/** Every page of the build. */
export function builtPages(): readonly Built[] {
  const folder = inject('folder');
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((name) => name.replaceAll('\\', '/'))
    .filter((name) => name.endsWith('.html'))
    .sort()
    .map((file) => ({
      file,
      path: file.replace(/(^|\/)index\.html$/, '$1'),
      html: readFileSync(join(folder, file), 'utf8'),
    }));
}

/** The pages for a reader of the site: all but the parts for pages of other sites, which repeat those of the topics. */
export function sitePages(): readonly Built[] {
  return builtPages().filter(({ path }) => !/^embed\/./.test(path));
}

/** The pages that teach a topic: those that ask before they tell, or hold a calculator. */
export function topicPages(): readonly Built[] {
  return sitePages().filter(({ html }) => /\sdata-calculator="/.test(html));
}
