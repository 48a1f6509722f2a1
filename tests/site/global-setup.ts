import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { findEngine, findMiniBrowser, noEngine } from '../../src/build/browser.js';
import { serve } from '../../src/build/serve.js';
import { build, root } from '../../src/build/tool.js';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Where the built site is served; ends in a slash. */
    readonly address: string;
    /** Program file of the Chromium to drive. */
    readonly browser: string;
    /** Program file of the Firefox to drive; undefined where there is none. */
    readonly firefox: string | undefined;
    /** Program files of WebKit's driver and of what it drives; undefined where there is none. */
    readonly webkit: { readonly driver: string; readonly browser: string } | undefined;
    /** Folder of the built site. */
    readonly folder: string;
  }
}

/**
 * Builds the site once as it is published and serves it on a free port for all tests of this folder.
 * The build is a process of its own: inside the test runner it would be a development build.
 */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const browser = findEngine('chromium');
  if (browser === undefined) throw new Error(noEngine('chromium'));
  const [firefox, driver, mini] = [findEngine('firefox'), findEngine('webkit'), findMiniBrowser()];
  const webkit = driver === undefined || mini === undefined ? undefined : { driver, browser: mini };
  if (firefox === undefined) console.log(`Not tried: ${noEngine('firefox')}`);
  if (webkit === undefined) console.log(`Not tried: ${noEngine('webkit')}`);
  const began = Date.now();
  const built = await build({ quiet: true });
  if (built.code !== 0) throw new Error(`The site was not built.\n${built.text}`);
  console.log(`Site built in ${((Date.now() - began) / 1000).toFixed(1)} s`);
  const folder = join(root, 'dist');
  const server = await serve(folder, 0);
  project.provide('address', server.address);
  project.provide('browser', browser);
  project.provide('firefox', firefox);
  project.provide('webkit', webkit);
  project.provide('folder', folder);
  return server.close;
}
